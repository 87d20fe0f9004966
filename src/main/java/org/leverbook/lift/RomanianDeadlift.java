package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;

/** A deadlift lowered from standing to below the knees, the hips going back. */
public final class RomanianDeadlift extends Lift<RomanianDeadlift>
    implements Can.KneeBend<RomanianDeadlift>,
        Can.Stance<RomanianDeadlift>,
        Can.SpineRounding<RomanianDeadlift>,
        With.GripWidth<RomanianDeadlift>,
        With.BarHeight<RomanianDeadlift>,
        With.BarAhead<RomanianDeadlift>,
        With.HoldsBar<RomanianDeadlift> {

  private RomanianDeadlift(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static RomanianDeadlift of(Person lifter) {
    return new RomanianDeadlift(nothingSaid(lifter));
  }

  @Override
  RomanianDeadlift changed(Setup changed) {
    return new RomanianDeadlift(changed);
  }

  @Override
  public String name() {
    return "Romanian deadlift";
  }

  @Override
  public String purpose() {
    return "Lower a bar from standing along the thighs to below the knees: "
        + "hip extensors at length.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.75, Site.HAND);
    Feet.stand(p, p.value(Setting.STANCE_WIDTH, 0.30) / 2, p.angle(Setting.TURN_OUT, 8));
    FromFloor.bar(p, Hands.usualWidth(p));
    double knees = p.angle(Setting.KNEE_BEND, 20);
    double midShin = p.links().footHeight() + 0.6 * p.links().shank();
    double low = p.value(Setting.BAR_HEIGHT, midShin);
    if (p.isFinish()) {
      FromFloor.hinged(p, knees, 70);
      FromFloor.barAt(p, low);
    } else if (p.isStart()) {
      FromFloor.lockedOut(p);
    }
  }
}
