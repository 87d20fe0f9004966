package org.leverbook.lift;

import org.leverbook.body.JointId;
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
    Stands.feet(p, 0.30, 8);
    FromFloor.hands(p, Hands.usualWidth(p), Grip.OVERHAND);
    double knees = p.angle(Setting.KNEE_BEND, 20);
    if (p.isFinish()) {
      p.roughly(-0.25, 0.9 * p.links().standingHipHeight(), 75);
      p.usually(JointId.HIP, "flexion", 95, Posture.EASY);
      p.usually(JointId.SHOULDER, "flexion", 75, Posture.EASY);
      p.exactlyRadians(JointId.KNEE, "flexion", knees);
      FromFloor.barAt(
          p, p.value(Setting.BAR_HEIGHT, p.links().footHeight() + 0.75 * p.links().shank()));
    } else if (p.isStart()) {
      Stands.tall(p);
    }
  }
}
