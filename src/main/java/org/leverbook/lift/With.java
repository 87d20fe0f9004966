package org.leverbook.lift;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.Grasps;
import org.leverbook.load.HandWeights;
import org.leverbook.load.NoLoad;
import org.leverbook.quantity.Ask;

/** What is lifted, held, pressed or sat on: a lift takes those that make sense for it. */
public final class With {

  private With() {}

  /**
   * The hands can be wider or narrower.
   *
   * @param <L> the lift
   */
  public interface GripWidth<L> {
    /**
     * With the middles of the hands this far apart.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L gripWidth(Quantity<Length> value) {
      return Lift.said(this, Setting.GRIP_WIDTH, Setting.GRIP_WIDTH.ofLength(value));
    }
  }

  /**
   * The bar can start higher or lower.
   *
   * @param <L> the lift
   */
  public interface BarHeight<L> {
    /**
     * With the bar's axis starting at this height, as on blocks, pins or hooks.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L barHeight(Quantity<Length> value) {
      return Lift.said(this, Setting.BAR_HEIGHT, Setting.BAR_HEIGHT.ofLength(value));
    }
  }

  /**
   * The bar can be further ahead.
   *
   * @param <L> the lift
   */
  public interface BarAhead<L> {
    /**
     * With the bar this far ahead of the middle of the foot; negative towards the shins.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L barAhead(Quantity<Length> value) {
      return Lift.said(this, Setting.BAR_AHEAD, Setting.BAR_AHEAD.ofLength(value));
    }
  }

  /**
   * Its pad can be tilted.
   *
   * @param <L> the lift
   */
  public interface PadAngle<L> {
    /**
     * With the face of the pad tilted by this much: 0 lies level, 90 degrees stands upright.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L padAngle(Quantity<Angle> value) {
      return Lift.said(this, Setting.PAD_ANGLE, Setting.PAD_ANGLE.ofAngle(value));
    }
  }

  /**
   * Its pad can be higher or lower.
   *
   * @param <L> the lift
   */
  public interface PadHeight<L> {
    /**
     * With the middle of the pad at this height.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L padHeight(Quantity<Length> value) {
      return Lift.said(this, Setting.PAD_HEIGHT, Setting.PAD_HEIGHT.ofLength(value));
    }
  }

  /**
   * Its bench can be tilted.
   *
   * @param <L> the lift
   */
  public interface BenchAngle<L> {
    /**
     * With the bench tilted by this much: 0 is flat, 90 degrees upright.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L benchAngle(Quantity<Angle> value) {
      return Lift.said(this, Setting.BENCH_ANGLE, Setting.BENCH_ANGLE.ofAngle(value));
    }
  }

  /**
   * Its bench can be higher or lower.
   *
   * @param <L> the lift
   */
  public interface BenchHeight<L> {
    /**
     * With the bench at this height.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L benchHeight(Quantity<Length> value) {
      return Lift.said(this, Setting.BENCH_HEIGHT, Setting.BENCH_HEIGHT.ofLength(value));
    }
  }

  /**
   * Its seat can be higher or lower.
   *
   * @param <L> the lift
   */
  public interface SeatHeight<L> {
    /**
     * With the seat at this height.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L seatHeight(Quantity<Length> value) {
      return Lift.said(this, Setting.SEAT_HEIGHT, Setting.SEAT_HEIGHT.ofLength(value));
    }
  }

  /**
   * Its pulley can be moved.
   *
   * @param <L> the lift
   */
  public interface Pulley<L> {
    /**
     * With the last pulley at this height.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L pulleyHeight(Quantity<Length> value) {
      return Lift.said(this, Setting.PULLEY_HEIGHT, Setting.PULLEY_HEIGHT.ofLength(value));
    }

    /**
     * With the last pulley this far ahead.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L pulleyAhead(Quantity<Length> value) {
      return Lift.said(this, Setting.PULLEY_AHEAD, Setting.PULLEY_AHEAD.ofLength(value));
    }
  }

  /**
   * It can be done without a load.
   *
   * @param <L> the lift
   */
  public interface EmptyHands<L> {
    /**
     * With nothing to lift.
     *
     * @param nothing as in {@code noLoad()}
     * @return the changed lift
     */
    default L holding(NoLoad nothing) {
      return Lift.changed(this, s -> s.lifting(Ask.present("load", nothing, "noLoad()")));
    }
  }

  /**
   * It is done with a barbell.
   *
   * @param <L> the lift
   */
  public interface HoldsBar<L> extends EmptyHands<L> {
    /**
     * With this bar; it lies where the lift has it.
     *
     * @param bar as in {@code barbell(kg(100))}
     * @return the changed lift
     */
    default L holding(Barbell bar) {
      return Lift.changed(this, s -> s.lifting(Ask.present("bar", bar, "barbell(kg(100))")));
    }
  }

  /**
   * It is done with dumbbells or kettlebells.
   *
   * @param <L> the lift
   */
  public interface HoldsDumbbells<L> extends EmptyHands<L> {
    /**
     * With these weights in the hands.
     *
     * @param weights as in {@code dumbbells(kg(20))}
     * @return the changed lift
     */
    default L holding(HandWeights weights) {
      return Lift.changed(
          this, s -> s.lifting(Ask.present("weights", weights, "dumbbells(kg(20))")));
    }
  }

  /**
   * It is done at a cable.
   *
   * @param <L> the lift
   */
  public interface PullsCable<L> {
    /**
     * With this mass on the stack.
     *
     * @param mass 0 to 300 kg
     * @return the changed lift
     */
    default L stack(Quantity<Mass> mass) {
      double kilograms = Ask.mass("stack", mass, 0, 300);
      return Lift.changed(
          this, s -> s.lifting(new Cable(kilograms, 1, 0, Vector3D.ZERO, Grasps.BOTH_HANDS)));
    }
  }

  /**
   * A machine gives way to it with a mass.
   *
   * @param <L> the lift
   */
  public interface PushesMass<L> {
    /**
     * With this mass on the machine.
     *
     * @param mass 0 to 600 kg
     * @return the changed lift
     */
    default L machine(Quantity<Mass> mass) {
      double kilograms = Ask.mass("mass on the machine", mass, 0, 600);
      return Lift.changed(this, s -> s.lifting(new Barbell(kilograms, 0.225)));
    }
  }

  /**
   * The hands can take it another way.
   *
   * @param <L> the lift
   */
  public interface Grips<L> {
    /**
     * With the hands turned this way.
     *
     * @param how {@code OVERHAND}, {@code UNDERHAND} or {@code NEUTRAL}
     * @return the changed lift
     */
    default L grip(Grip how) {
      return Lift.changed(this, s -> s.gripped(Ask.present("grip", how, "OVERHAND")));
    }
  }
}
