package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;

/** A sumo deadlift: a bar pulled from the floor in a wide stance, hands inside the knees. */
public final class SumoDeadlift extends Lift<SumoDeadlift>
    implements Can.HipHeight<SumoDeadlift>,
        Can.Stance<SumoDeadlift>,
        Can.SpineRounding<SumoDeadlift>,
        With.GripWidth<SumoDeadlift>,
        With.BarHeight<SumoDeadlift>,
        With.BarAhead<SumoDeadlift>,
        With.HoldsBar<SumoDeadlift> {

  private SumoDeadlift(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static SumoDeadlift of(Person lifter) {
    return new SumoDeadlift(nothingSaid(lifter));
  }

  @Override
  SumoDeadlift changed(Setup changed) {
    return new SumoDeadlift(changed);
  }

  @Override
  public String name() {
    return "sumo deadlift";
  }

  @Override
  public String purpose() {
    return "Pull a bar from the floor in a wide stance, hands inside the "
        + "knees: more upright than the conventional one.";
  }

  @Override
  public String source() {
    return "stance, turn-out and hand spacing: means of Escamilla et al. 2000, Med Sci Sports Exerc"
        + " 32:1265-1275, abstract; the rest: common practice, no source";
  }

  @Override
  void say(Posture p) {
    FromFloor.deadlift(
        p, Weights.bar(p, 1.2, Site.HAND), new FromFloor.Style(0.70, 42, 0.47, 85, 50, 0.03));
  }
}
