package org.leverbook.language;

import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTable;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.Hinge;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.study.Sweep;
import org.leverbook.support.FixedBar;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;
import org.leverbook.support.Rings;

/**
 * The words of every session: shell, script and notebook alike. Each is an ordinary Java method or
 * constant.
 *
 * <p>Promises: nothing to extend, no annotations, no second syntax, it is just Java.
 */
public final class Vocabulary extends LoadWords {

  /** A man's lengths and masses. */
  public static final Sex MALE = Sex.MALE;

  /** A woman's lengths and masses. */
  public static final Sex FEMALE = Sex.FEMALE;

  /** The person's left. */
  public static final Side LEFT = Side.LEFT;

  /** The person's right. */
  public static final Side RIGHT = Side.RIGHT;

  /** Hip joint. */
  public static final JointId HIP = JointId.HIP;

  /** Knee joint. */
  public static final JointId KNEE = JointId.KNEE;

  /** Ankle joint. */
  public static final JointId ANKLE = JointId.ANKLE;

  /** Low back: sacrum to fifth lumbar vertebra. */
  public static final JointId L5_S1 = JointId.L5_S1;

  /** Low back: fourth to fifth lumbar vertebra. */
  public static final JointId L4_L5 = JointId.L4_L5;

  /** Low back: third to fourth lumbar vertebra. */
  public static final JointId L3_L4 = JointId.L3_L4;

  /** Where the rib cage begins. */
  public static final JointId T12_L1 = JointId.T12_L1;

  /** Mid back. */
  public static final JointId T7_T8 = JointId.T7_T8;

  /** Base of the neck. */
  public static final JointId C7_T1 = JointId.C7_T1;

  /** Shoulder joint. */
  public static final JointId SHOULDER = JointId.SHOULDER;

  /** Sternoclavicular joint, which carries the shoulder. */
  public static final JointId SHOULDER_GIRDLE = JointId.SHOULDER_GIRDLE;

  /** Elbow joint. */
  public static final JointId ELBOW = JointId.ELBOW;

  /** Wrist joint. */
  public static final JointId WRIST = JointId.WRIST;

  /** Hand on the bar. */
  public static final JointId GRIP = JointId.GRIP;

  /** Feet, for changing a build. */
  public static final Part FOOT = Part.FOOT;

  /** Ankle to knee, for changing a build. */
  public static final Part SHANK = Part.SHANK;

  /** Knee to hip, for changing a build. */
  public static final Part THIGH = Part.THIGH;

  /** Hip axis to the base of the neck, for changing a build. */
  public static final Part TRUNK = Part.TRUNK;

  /** Shoulder to elbow, for changing a build. */
  public static final Part UPPER_ARM = Part.UPPER_ARM;

  /** Elbow to wrist, for changing a build. */
  public static final Part FOREARM = Part.FOREARM;

  /** Wrist to fingertips, for changing a build. */
  public static final Part HAND = Part.HAND;

  /** Masses after de Leva (1996). */
  public static final SegmentTable DE_LEVA_1996 = SegmentTable.DE_LEVA_1996;

  /** Masses after Winter (2009). */
  public static final SegmentTable WINTER_2009 = SegmentTable.WINTER_2009;

  private Vocabulary() {}

  /**
   * A lifter of usual proportions, as in {@code person(MALE, kg(85), cm(178))}.
   *
   * @param sex {@code MALE} or {@code FEMALE}
   * @param mass body mass, 30 to 300 kg
   * @param stature standing height, 120 to 230 cm
   * @return the person; change the build by {@code .longer(THIGH, percent(8))} and its like
   * @throws Refused if a value is missing or outside
   */
  public static Person person(Sex sex, Quantity<Mass> mass, Quantity<Length> stature) {
    return Person.of(sex, mass, stature);
  }

  /**
   * A hip hinge of this lifter, as in {@code
   * hinge(lifter).holding(barbell(kg(140))).hipHeight(cm(58)).start()}.
   *
   * @param lifter who lifts
   * @return the hinge, hands still empty
   */
  public static Hinge hinge(Person lifter) {
    return Hinge.of(lifter);
  }

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

  /**
   * One quantity varied, as in {@code sweep("hip height", cm(50), cm(72), 23, h ->
   * pull.hipHeight(h).start())}.
   *
   * @param <Q> what kind of quantity
   * @param name what is varied
   * @param from first value
   * @param to last value
   * @param values how many, both ends included
   * @param position from a value to a position
   * @return the sweep; what cannot be held is kept as a row with its reason
   * @throws Refused if the range is no range
   */
  public static <Q extends Quantity<Q>> Sweep sweep(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      int values,
      Function<Quantity<Q>, Position> position) {
    return Sweep.over(name, from, to, values, position);
  }

  /**
   * The words by theme, each with an example.
   *
   * @return a short text
   */
  public static Help help() {
    return Help.overview();
  }

  /**
   * What one word or value is for, as in {@code help("hinge")} or {@code help(pull)}.
   *
   * @param topic a word in quotes, or any value
   * @return a short text
   * @throws Refused if there is no such word
   */
  public static Help help(Object topic) {
    return Help.of(topic);
  }

  /** Leaves the shell, or ends the script here, without an error. */
  public static void quit() {
    Leaving.ask();
  }
}
