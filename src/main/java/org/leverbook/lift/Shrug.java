package org.leverbook.lift;

import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Site;

/** A lift of the shoulders with a bar in hanging arms. */
public final class Shrug extends Lift<Shrug>
    implements Can.Shrug<Shrug>,
        Can.TrunkLean<Shrug>,
        Can.Stance<Shrug>,
        With.GripWidth<Shrug>,
        With.Grips<Shrug>,
        With.HoldsBar<Shrug> {

  private Shrug(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static Shrug of(Person lifter) {
    return new Shrug(nothingSaid(lifter));
  }

  @Override
  Shrug changed(Setup changed) {
    return new Shrug(changed);
  }

  @Override
  public String name() {
    return "shrug";
  }

  @Override
  public String purpose() {
    return "Lift the shoulders against a bar: the upper trapezius.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    Weights.bar(p, 0.6, Site.HAND);
    Stands.upright(p);
    double width = p.value(Setting.GRIP_WIDTH, Hands.usualWidth(p));
    Hands.apart(p, width, p.grip(Grip.OVERHAND), Hands.askew(p, width));
    p.exactlyRadians(JointId.SHOULDER_GIRDLE, "abduction", p.share() * p.angle(Setting.SHRUG, 22));
    p.exactly(JointId.ELBOW, "flexion", 0);
    Pulls.touchThighs(p);
  }
}
