package org.leverbook.language;

import org.leverbook.body.Person;
import org.leverbook.lift.BackExtension;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.CalfRaise;
import org.leverbook.lift.Deadlift;
import org.leverbook.lift.FrontSquat;
import org.leverbook.lift.GobletSquat;
import org.leverbook.lift.GoodMorning;
import org.leverbook.lift.HipThrust;
import org.leverbook.lift.LegCurl;
import org.leverbook.lift.LegExtension;
import org.leverbook.lift.LegPress;
import org.leverbook.lift.RackPull;
import org.leverbook.lift.RomanianDeadlift;
import org.leverbook.lift.SplitSquat;
import org.leverbook.lift.StepUp;
import org.leverbook.lift.StiffLegDeadlift;
import org.leverbook.lift.SumoDeadlift;
import org.leverbook.lift.SwingBottom;
import org.leverbook.lift.TrapBarDeadlift;

/** The words for lifts of legs and hips: a theme of {@link Vocabulary}, which sessions import. */
public abstract sealed class LegLiftWords extends MarkWords permits PressLiftWords {

  LegLiftWords() {}

  /**
   * Deadlift: conventional: setup and pull from the floor, hip height, stance, grip, as in {@code
   * deadlift(lifter).holding(barbell(kg(140))).hipHeight(cm(58)).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static Deadlift deadlift(Person lifter) {
    return Deadlift.of(lifter);
  }

  /**
   * Sumo deadlift: wide stance, hands inside the knees, as in {@code sumoDeadlift(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static SumoDeadlift sumoDeadlift(Person lifter) {
    return SumoDeadlift.of(lifter);
  }

  /**
   * Trap bar deadlift: hands at the sides, as in {@code trapBarDeadlift(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static TrapBarDeadlift trapBarDeadlift(Person lifter) {
    return TrapBarDeadlift.of(lifter);
  }

  /**
   * Stiff leg deadlift: from the floor with nearly straight knees, as in {@code
   * stiffLegDeadlift(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static StiffLegDeadlift stiffLegDeadlift(Person lifter) {
    return StiffLegDeadlift.of(lifter);
  }

  /**
   * Romanian deadlift: from standing to below the knees, as in {@code
   * romanianDeadlift(lifter).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static RomanianDeadlift romanianDeadlift(Person lifter) {
    return RomanianDeadlift.of(lifter);
  }

  /**
   * Rack pull: from pins: barHeight(cm(50)), as in {@code
   * rackPull(lifter).barHeight(cm(50)).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static RackPull rackPull(Person lifter) {
    return RackPull.of(lifter);
  }

  /**
   * Good morning: bar on the back, bent from the hips, as in {@code goodMorning(lifter).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static GoodMorning goodMorning(Person lifter) {
    return GoodMorning.of(lifter);
  }

  /**
   * Swing bottom: the turning point of a kettlebell swing, held still, as in {@code
   * swingBottom(lifter).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static SwingBottom swingBottom(Person lifter) {
    return SwingBottom.of(lifter);
  }

  /**
   * Back squat: bar high or low: depth, stance, heels, as in {@code
   * backSquat(lifter).holding(barbell(kg(100))).depth(deg(5)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static BackSquat backSquat(Person lifter) {
    return BackSquat.of(lifter);
  }

  /**
   * Front squat: bar on the front of the shoulders, as in {@code frontSquat(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static FrontSquat frontSquat(Person lifter) {
    return FrontSquat.of(lifter);
  }

  /**
   * Goblet squat: a weight at the chest, as in {@code gobletSquat(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static GobletSquat gobletSquat(Person lifter) {
    return GobletSquat.of(lifter);
  }

  /**
   * Split squat: a stride: stepLength(cm(70)), as in {@code
   * splitSquat(lifter).stepLength(cm(70)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static SplitSquat splitSquat(Person lifter) {
    return SplitSquat.of(lifter);
  }

  /**
   * Step up: onto a box: stepHeight(cm(40)), as in {@code
   * stepUp(lifter).stepHeight(cm(40)).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static StepUp stepUp(Person lifter) {
    return StepUp.of(lifter);
  }

  /**
   * Leg press: a sled on a rail, as in {@code legPress(lifter).machine(kg(150)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static LegPress legPress(Person lifter) {
    return LegPress.of(lifter);
  }

  /**
   * Hip thrust: bar on the hips, upper back on a bench, as in {@code hipThrust(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static HipThrust hipThrust(Person lifter) {
    return HipThrust.of(lifter);
  }

  /**
   * Back extension: over a pad at 45 degrees; padAngle(deg(0)) is flat, as in {@code
   * backExtension(lifter).padAngle(deg(0)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static BackExtension backExtension(Person lifter) {
    return BackExtension.of(lifter);
  }

  /**
   * Leg curl: lying, against a lever, as in {@code legCurl(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static LegCurl legCurl(Person lifter) {
    return LegCurl.of(lifter);
  }

  /**
   * Leg extension: seated, against a lever, as in {@code legExtension(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static LegExtension legExtension(Person lifter) {
    return LegExtension.of(lifter);
  }

  /**
   * Calf raise: bar on the back, onto the balls of the feet, as in {@code
   * calfRaise(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static CalfRaise calfRaise(Person lifter) {
    return CalfRaise.of(lifter);
  }
}
