package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;

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
    Barbell bar = Weights.bar(p, 1.2, Site.HAND);
    Feet.stand(p, p.value(Setting.STANCE_WIDTH, 0.70) / 2, p.angle(Setting.TURN_OUT, 42));
    FromFloor.bar(p, 0.47);
    if (p.isStart()) {
      double height = p.value(Setting.BAR_HEIGHT, bar.plateRadius());
      FromFloor.barAt(p, height);
      FromFloor.shinsAtBar(p, height);
      FromFloor.down(p, 85, 50, 0.03);
    } else if (p.isFinish()) {
      FromFloor.lockedOut(p);
    }
  }
}
