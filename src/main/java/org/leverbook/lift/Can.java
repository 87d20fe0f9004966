package org.leverbook.lift;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.leverbook.body.Side;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/** Settings of the body that lifts have in common: a lift takes those that make sense for it. */
public final class Can {

  private Can() {}

  /**
   * The hips can be set at a height.
   *
   * @param <L> the lift
   */
  public interface HipHeight<L> {
    /**
     * With the axis through both hip joints at this height above the floor.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L hipHeight(Quantity<Length> value) {
      return Lift.said(this, Setting.HIP_HEIGHT, Setting.HIP_HEIGHT.ofLength(value));
    }
  }

  /**
   * The knees can be bent more or less.
   *
   * @param <L> the lift
   */
  public interface KneeBend<L> {
    /**
     * With the knees bent by this much; 0 is straight.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L kneeBend(Quantity<Angle> value) {
      return Lift.said(this, Setting.KNEE_BEND, Setting.KNEE_BEND.ofAngle(value));
    }
  }

  /**
   * The trunk can lean more or less.
   *
   * @param <L> the lift
   */
  public interface TrunkLean<L> {
    /**
     * With the line from hip to shoulder leaning forward by this much; negative leans back.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L trunkLean(Quantity<Angle> value) {
      return Lift.said(this, Setting.TRUNK_LEAN, Setting.TRUNK_LEAN.ofAngle(value));
    }
  }

  /**
   * The spine can be rounded or arched.
   *
   * @param <L> the lift
   */
  public interface SpineRounding<L> {
    /**
     * With the trunk bent in itself by this much, shared over its levels; negative is arched.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L spineRounding(Quantity<Angle> value) {
      return Lift.said(this, Setting.SPINE_ROUNDING, Setting.SPINE_ROUNDING.ofAngle(value));
    }
  }

  /**
   * The feet can stand wider and turn out.
   *
   * @param <L> the lift
   */
  public interface Stance<L> {
    /**
     * With the ankle centres this far apart.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L stanceWidth(Quantity<Length> value) {
      return Lift.said(this, Setting.STANCE_WIDTH, Setting.STANCE_WIDTH.ofLength(value));
    }

    /**
     * With each foot pointing outward by this much.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L turnOut(Quantity<Angle> value) {
      return Lift.said(this, Setting.TURN_OUT, Setting.TURN_OUT.ofAngle(value));
    }
  }

  /**
   * Plates can lie under the heels.
   *
   * @param <L> the lift
   */
  public interface HeelHeight<L> {
    /**
     * With the heels raised by this much, on plates or by a shoe.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L heelHeight(Quantity<Length> value) {
      return Lift.said(this, Setting.HEEL_HEIGHT, Setting.HEEL_HEIGHT.ofLength(value));
    }
  }

  /**
   * It can go more or less deep.
   *
   * @param <L> the lift
   */
  public interface Depth<L> {
    /**
     * With the thighs this far below level at the bottom; negative stays above.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L depth(Quantity<Angle> value) {
      return Lift.said(this, Setting.DEPTH, Setting.DEPTH.ofAngle(value));
    }
  }

  /**
   * The step can be longer or shorter.
   *
   * @param <L> the lift
   */
  public interface StepLength<L> {
    /**
     * With the front foot this far ahead of the rear one.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L stepLength(Quantity<Length> value) {
      return Lift.said(this, Setting.STEP_LENGTH, Setting.STEP_LENGTH.ofLength(value));
    }
  }

  /**
   * The step or box can be higher or lower.
   *
   * @param <L> the lift
   */
  public interface StepHeight<L> {
    /**
     * With the step or box this high.
     *
     * @param value a length
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L stepHeight(Quantity<Length> value) {
      return Lift.said(this, Setting.STEP_HEIGHT, Setting.STEP_HEIGHT.ofLength(value));
    }
  }

  /**
   * The elbows can stand off the trunk.
   *
   * @param <L> the lift
   */
  public interface ElbowsOut<L> {
    /**
     * With the upper arms standing off the sides of the trunk by this much.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L elbowsOut(Quantity<Angle> value) {
      return Lift.said(this, Setting.ELBOWS_OUT, Setting.ELBOWS_OUT.ofAngle(value));
    }
  }

  /**
   * The arms can be raised more or less.
   *
   * @param <L> the lift
   */
  public interface Raise<L> {
    /**
     * With the arms raised by this much at the end; 90 degrees is level.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L raise(Quantity<Angle> value) {
      return Lift.said(this, Setting.RAISE, Setting.RAISE.ofAngle(value));
    }
  }

  /**
   * The elbows can be bent more or less.
   *
   * @param <L> the lift
   */
  public interface ElbowBend<L> {
    /**
     * With the elbows bent by this much at the end.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L elbowBend(Quantity<Angle> value) {
      return Lift.said(this, Setting.ELBOW_BEND, Setting.ELBOW_BEND.ofAngle(value));
    }
  }

  /**
   * The shoulders can be raised more or less.
   *
   * @param <L> the lift
   */
  public interface Shrug<L> {
    /**
     * With the collar bones raised by this much at the end.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L shrug(Quantity<Angle> value) {
      return Lift.said(this, Setting.SHRUG, Setting.SHRUG.ofAngle(value));
    }
  }

  /**
   * The trunk can be turned.
   *
   * @param <L> the lift
   */
  public interface Turn<L> {
    /**
     * With the trunk turned by this much; positive to the left.
     *
     * @param value an angle
     * @return the changed lift
     * @throws org.leverbook.quantity.Refused if it is missing or makes no sense
     */
    default L turn(Quantity<Angle> value) {
      return Lift.said(this, Setting.TURN, Setting.TURN.ofAngle(value));
    }
  }

  /**
   * One side works.
   *
   * @param <L> the lift
   */
  public interface OneSided<L> {
    /**
     * With this side working.
     *
     * @param which {@code LEFT} or {@code RIGHT}
     * @return the changed lift
     */
    default L working(Side which) {
      Ask.present("side", which, "RIGHT");
      if (which == Side.MIDLINE) {
        throw new Refused("One side works: say LEFT or RIGHT.");
      }
      return Lift.changed(this, s -> s.working(which));
    }
  }
}
