package org.leverbook.language;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTable;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Training;
import org.leverbook.lift.Hinge;
import org.leverbook.lift.Library;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.strength.Capacity;

/**
 * The words of every session: shell, script and notebook alike. Each is an ordinary Java method or
 * constant.
 *
 * <p>Promises: nothing to extend, no annotations, no second syntax, it is just Java.
 */
public final class Vocabulary extends DeskWords {

  /** A man's lengths and masses, as in {@code person(MALE, kg(85), cm(178))}. */
  public static final Sex MALE = Sex.MALE;

  /** A woman's lengths and masses, as in {@code person(FEMALE, kg(65), cm(168))}. */
  public static final Sex FEMALE = Sex.FEMALE;

  /** The person's left, as in {@code start.moment(KNEE, LEFT)}. */
  public static final Side LEFT = Side.LEFT;

  /** The person's right, as in {@code start.moment(KNEE, RIGHT)}. */
  public static final Side RIGHT = Side.RIGHT;

  /** Hip joint, as in {@code start.moment(HIP)}. */
  public static final JointId HIP = JointId.HIP;

  /** Knee joint, as in {@code start.moment(KNEE)}. */
  public static final JointId KNEE = JointId.KNEE;

  /** Ankle joint, as in {@code start.moment(ANKLE)}. */
  public static final JointId ANKLE = JointId.ANKLE;

  /** Low back: sacrum to fifth lumbar vertebra, as in {@code start.moment(L5_S1)}. */
  public static final JointId L5_S1 = JointId.L5_S1;

  /** Low back: fourth to fifth lumbar vertebra, as in {@code start.moment(L4_L5)}. */
  public static final JointId L4_L5 = JointId.L4_L5;

  /** Low back: third to fourth lumbar vertebra, as in {@code start.moment(L3_L4)}. */
  public static final JointId L3_L4 = JointId.L3_L4;

  /** Where the rib cage begins, as in {@code start.moment(T12_L1)}. */
  public static final JointId T12_L1 = JointId.T12_L1;

  /** Mid back, as in {@code start.moment(T7_T8)}. */
  public static final JointId T7_T8 = JointId.T7_T8;

  /** Base of the neck, as in {@code start.moment(C7_T1)}. */
  public static final JointId C7_T1 = JointId.C7_T1;

  /** Shoulder joint, as in {@code start.moment(SHOULDER)}. */
  public static final JointId SHOULDER = JointId.SHOULDER;

  /**
   * Sternoclavicular joint, which carries the shoulder, as in {@code
   * start.moment(SHOULDER_GIRDLE)}.
   */
  public static final JointId SHOULDER_GIRDLE = JointId.SHOULDER_GIRDLE;

  /** Elbow joint, as in {@code start.moment(ELBOW)}. */
  public static final JointId ELBOW = JointId.ELBOW;

  /** Wrist joint, as in {@code start.moment(WRIST)}. */
  public static final JointId WRIST = JointId.WRIST;

  /** Hand on the bar, as in {@code start.moment(GRIP)}. */
  public static final JointId GRIP = JointId.GRIP;

  /** Feet, for changing a build, as in {@code lifter.longer(FOOT, percent(8))}. */
  public static final Part FOOT = Part.FOOT;

  /** Ankle to knee, for changing a build, as in {@code lifter.longer(SHANK, percent(8))}. */
  public static final Part SHANK = Part.SHANK;

  /** Knee to hip, for changing a build, as in {@code lifter.longer(THIGH, percent(8))}. */
  public static final Part THIGH = Part.THIGH;

  /**
   * Hip axis to the base of the neck, for changing a build, as in {@code lifter.longer(TRUNK,
   * percent(8))}.
   */
  public static final Part TRUNK = Part.TRUNK;

  /**
   * Shoulder to elbow, for changing a build, as in {@code lifter.longer(UPPER_ARM, percent(8))}.
   */
  public static final Part UPPER_ARM = Part.UPPER_ARM;

  /** Elbow to wrist, for changing a build, as in {@code lifter.longer(FOREARM, percent(8))}. */
  public static final Part FOREARM = Part.FOREARM;

  /** Wrist to fingertips, for changing a build, as in {@code lifter.longer(HAND, percent(8))}. */
  public static final Part HAND = Part.HAND;

  /** Masses after de Leva (1996), as in {@code lifter.weighedBy(DE_LEVA_1996)}. */
  public static final SegmentTable DE_LEVA_1996 = SegmentTable.DE_LEVA_1996;

  /** Masses after Winter (2009), as in {@code lifter.weighedBy(WINTER_2009)}. */
  public static final SegmentTable WINTER_2009 = SegmentTable.WINTER_2009;

  /** A healthy adult who does not train with weights, as in {@code lifter.trained(UNTRAINED)}. */
  public static final Training UNTRAINED = Training.UNTRAINED;

  /** Has trained with weights for a year or more, as in {@code lifter.trained(TRAINED)}. */
  public static final Training TRAINED = Training.TRAINED;

  /** Competes in strength sports at national level, as in {@code lifter.trained(COMPETITIVE)}. */
  public static final Training COMPETITIVE = Training.COMPETITIVE;

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
   * How strong a lifter is at each joint, by published measurements, as in {@code
   * strengthOf(lifter.aged(40).trained(TRAINED))}.
   *
   * <p>{@code .curve(KNEE)} gives the knee's strength against its angle; {@code .curve(GRIP)} is
   * refused: "No strength against the angle was found for the grip: it is not known."
   *
   * @param lifter who; says age and training
   * @return a row for each joint and direction, with source and status
   */
  public static Capacity strengthOf(Person lifter) {
    return Capacity.of(Ask.present("lifter", lifter, "person(MALE, kg(85), cm(178))").body());
  }

  /**
   * The library of lifts, each with its usual settings, as in {@code allLifts(lifter).named("back
   * squat")}.
   *
   * @param lifter who lifts
   * @return one lift each; {@code .named("back squat")}, {@code .table()}, {@code .save()}
   */
  public static Library allLifts(Person lifter) {
    return Library.of(lifter);
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
   * The words by theme, each with an example, as in {@code help()}.
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

  /** Leaves the shell, or ends the script here, without an error, as in {@code quit()}. */
  public static void quit() {
    Leaving.ask();
  }
}
