package org.leverbook.language;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.load.Sled;
import org.leverbook.quantity.Refused;
import org.leverbook.support.FixedBar;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;
import org.leverbook.support.Rings;

/** Words for what carries the lifter or is leaned on; {@link Vocabulary} passes them on. */
public abstract sealed class SupportWords extends LoadWords permits MovementWords {

  SupportWords() {}

  /**
   * A chest pad set against the ribs, as in {@code start.on(chestPad(deg(45)))}.
   *
   * @param tilt of its face: 0 lies level, 90 degrees stands upright
   * @return the pad; {@code .middleAt}, {@code .size} and {@code .friction} change it
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad chestPad(Quantity<Angle> tilt) {
    return Pad.chest(tilt);
  }

  /**
   * A back rest set against the back, as in {@code start.on(backPad(deg(80)))}.
   *
   * @param tilt of its face: 0 lies level, 90 degrees stands upright
   * @return the pad
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad backPad(Quantity<Angle> tilt) {
    return Pad.back(tilt);
  }

  /**
   * A pad that holds the thighs down, as in {@code seated.on(thighPad())}.
   *
   * @return the pad
   */
  public static Pad thighPad() {
    return Pad.thighs();
  }

  /**
   * A pad or roller in front of the shins, as in {@code seated.on(shinPad(deg(90)))}.
   *
   * @param tilt of its face: 0 lies level, 90 degrees stands upright
   * @return the pad
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad shinPad(Quantity<Angle> tilt) {
    return Pad.shins(tilt);
  }

  /**
   * A bench under head, back and hips, as in {@code lying.on(bench(deg(0)))}.
   *
   * @param tilt of its face: 0 for a flat bench
   * @return the bench
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad bench(Quantity<Angle> tilt) {
    return Pad.bench(tilt);
  }

  /**
   * A level seat, as in {@code sitting.on(seat())}.
   *
   * @return the seat
   */
  public static Pad seat() {
    return Pad.seat();
  }

  /**
   * A plate ahead of the feet that does not move, as in {@code sitting.on(footPlate(deg(60)))}.
   *
   * @param tilt of its face: 90 degrees stands upright
   * @return the plate
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad footPlate(Quantity<Angle> tilt) {
    return Pad.footPlate(tilt);
  }

  /**
   * A plate on a sled that both feet press up a rail, as in {@code sled(kg(150), deg(45))}.
   *
   * @param mass sled, plate and discs together
   * @param slope of the rail: 0 level, 90 degrees upright
   * @return the load
   * @throws Refused if a value is missing or outside
   */
  public static Sled sled(Quantity<Mass> mass, Quantity<Angle> slope) {
    return Sled.of(mass, slope);
  }

  /**
   * The floor under both hands, as in {@code pushUp.on(handsOnFloor())}.
   *
   * @return the support
   */
  public static Pad handsOnFloor() {
    return Pad.underHands();
  }

  /**
   * The floor under knees and insteps, as in {@code start.on(kneesOnFloor())}.
   *
   * @return the support
   */
  public static Pad kneesOnFloor() {
    return Pad.underKnees();
  }

  /**
   * A bar that does not move, in both hands, as in {@code hanging.on(fixedBar())}.
   *
   * @return the support
   */
  public static FixedBar fixedBar() {
    return new FixedBar();
  }

  /**
   * Rings or handles on straps, as in {@code start.on(rings(cm(0), m(2.5), cm(50)))}.
   *
   * @param forward place of the beam they hang from, ahead of the middle of the feet
   * @param up its height
   * @param span distance between the straps above
   * @return the support
   * @throws Refused if a length is missing or outside
   */
  public static Rings rings(Quantity<Length> forward, Quantity<Length> up, Quantity<Length> span) {
    return Rings.from(forward, up, span);
  }

  /**
   * Both feet on the floor, with as much of each sole as touches, as in {@code
   * start.without("floor").on(feet(lifter).friction(0.4))}.
   *
   * @param lifter whose feet
   * @return the support; {@code .step}, {@code .platesUnderHeels} and {@code .friction} change it
   */
  public static Footing feet(Person lifter) {
    return Footing.feet(lifter.body());
  }

  /**
   * One foot on the floor, as in {@code start.without("floor").on(oneFoot(lifter, RIGHT))}.
   *
   * @param lifter whose foot
   * @param side which foot
   * @return the support
   */
  public static Footing oneFoot(Person lifter, Side side) {
    return Footing.foot(lifter.body(), side);
  }
}
