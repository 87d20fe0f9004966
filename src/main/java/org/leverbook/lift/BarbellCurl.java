package org.leverbook.lift;

import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Site;

/** A standing curl of a bar, the upper arms still at the sides. */
public final class BarbellCurl extends Lift<BarbellCurl>
    implements With.GripWidth<BarbellCurl>,
        With.Grips<BarbellCurl>,
        Can.ElbowBend<BarbellCurl>,
        Can.TrunkLean<BarbellCurl>,
        Can.Stance<BarbellCurl>,
        With.HoldsBar<BarbellCurl> {

  private BarbellCurl(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static BarbellCurl of(Person lifter) {
    return new BarbellCurl(nothingSaid(lifter));
  }

  @Override
  BarbellCurl changed(Setup changed) {
    return new BarbellCurl(changed);
  }

  @Override
  public String name() {
    return "barbell curl";
  }

  @Override
  public String purpose() {
    return "Bend the elbows against a bar, standing: elbow flexors.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.3, Site.HAND);
    Stands.upright(p);
    Hands.apart(p, p.value(Setting.GRIP_WIDTH, Hands.usualWidth(p)), p.grip(Grip.UNDERHAND));
    p.exactlyRadians(
        JointId.ELBOW, "flexion", p.between(Math.toRadians(10), p.angle(Setting.ELBOW_BEND, 130)));
    Hands.upperArm(p, 0);
  }
}
