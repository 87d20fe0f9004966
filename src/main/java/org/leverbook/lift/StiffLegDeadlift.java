package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;

/** A deadlift from the floor with nearly straight knees. */
public final class StiffLegDeadlift extends Lift<StiffLegDeadlift>
    implements Can.KneeBend<StiffLegDeadlift>,
        Can.Stance<StiffLegDeadlift>,
        Can.SpineRounding<StiffLegDeadlift>,
        With.GripWidth<StiffLegDeadlift>,
        With.BarHeight<StiffLegDeadlift>,
        With.BarAhead<StiffLegDeadlift>,
        With.HoldsBar<StiffLegDeadlift> {

  private StiffLegDeadlift(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static StiffLegDeadlift of(Person lifter) {
    return new StiffLegDeadlift(nothingSaid(lifter));
  }

  @Override
  StiffLegDeadlift changed(Setup changed) {
    return new StiffLegDeadlift(changed);
  }

  @Override
  public String name() {
    return "stiff-leg deadlift";
  }

  @Override
  public String purpose() {
    return "Pull a bar from the floor with nearly straight knees: hip " + "extensors and back.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Barbell bar = Weights.bar(p, 0.75, Site.HAND);
    Feet.stand(p, p.value(Setting.STANCE_WIDTH, 0.30) / 2, p.angle(Setting.TURN_OUT, 8));
    FromFloor.bar(p, Hands.usualWidth(p));
    double knees = p.angle(Setting.KNEE_BEND, 20);
    if (p.isStart()) {
      FromFloor.hinged(p, knees, 80);
      FromFloor.barAt(p, p.value(Setting.BAR_HEIGHT, bar.plateRadius()));
    } else if (p.isFinish()) {
      FromFloor.lockedOut(p);
    }
  }
}
