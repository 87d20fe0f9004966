package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;

/** A conventional deadlift: a bar pulled from the floor to standing, hands outside the knees. */
public final class Deadlift extends Lift<Deadlift>
    implements Can.HipHeight<Deadlift>,
        Can.Stance<Deadlift>,
        Can.SpineRounding<Deadlift>,
        With.GripWidth<Deadlift>,
        With.BarHeight<Deadlift>,
        With.BarAhead<Deadlift>,
        With.HoldsBar<Deadlift> {

  private Deadlift(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static Deadlift of(Person lifter) {
    return new Deadlift(nothingSaid(lifter));
  }

  @Override
  Deadlift changed(Setup changed) {
    return new Deadlift(changed);
  }

  @Override
  public String name() {
    return "conventional deadlift";
  }

  @Override
  public String purpose() {
    return "Pull a bar from the floor to standing, hands outside the knees: "
        + "hips, back, thighs.";
  }

  @Override
  public String source() {
    return "stance, turn-out and hand spacing: means of Escamilla et al. 2000, Med Sci Sports Exerc"
        + " 32:1265-1275, abstract; the rest: common practice, no source";
  }

  @Override
  void say(Posture p) {
    FromFloor.deadlift(
        p,
        Weights.bar(p, 1.2, Site.HAND),
        new FromFloor.Style(0.32, 14, 0.55, 70, 60, FromFloor.SHOULDERS_AHEAD));
  }
}
