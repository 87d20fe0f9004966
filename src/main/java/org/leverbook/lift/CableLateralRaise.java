package org.leverbook.lift;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Grasps;
import org.leverbook.statics.View;

/**
 * A one-armed raise to the side against a cable from the other side; the height of the pulley
 * decides where it is hard.
 */
public final class CableLateralRaise extends Lift<CableLateralRaise>
    implements Can.Raise<CableLateralRaise>,
        Can.ElbowBend<CableLateralRaise>,
        With.Pulley<CableLateralRaise>,
        With.PullsCable<CableLateralRaise>,
        Can.TrunkLean<CableLateralRaise>,
        Can.Stance<CableLateralRaise>,
        Can.OneSided<CableLateralRaise> {

  private CableLateralRaise(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static CableLateralRaise of(Person lifter) {
    return new CableLateralRaise(nothingSaid(lifter));
  }

  @Override
  CableLateralRaise changed(Setup changed) {
    return new CableLateralRaise(changed);
  }

  @Override
  public String name() {
    return "cable lateral raise";
  }

  @Override
  public String purpose() {
    return "Raise one arm to the side against a cable: where it is hard "
        + "depends on the height of the pulley.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  boolean bothSidesAlike() {
    return false;
  }

  @Override
  View view() {
    return View.FRONT;
  }

  @Override
  void say(Posture p) {
    Side works = setup().side().orElse(Side.RIGHT);
    Vector3D pulley =
        new Vector3D(
            p.value(Setting.PULLEY_AHEAD, 0.05),
            p.value(Setting.PULLEY_HEIGHT, 0.15),
            -works.sign() * 0.6);
    Weights.cable(p, 0.06, pulley, Grasps.at(Site.HAND, works));
    Stands.upright(p);
    p.balancedSideways(0);
    double up = p.angle(Setting.RAISE, 90);
    double raised = p.between(Math.toRadians(8), up);
    p.exactly(JointId.ELBOW, works, "flexion", Math.toDegrees(p.angle(Setting.ELBOW_BEND, 15)));
    p.usually(JointId.SHOULDER, works, "abduction", Math.toDegrees(raised), Posture.EASY);
    p.exactly(JointId.FOREARM, works, "rotation", 80);
    Hands.armRaised(p, works, raised);
    Hands.hang(p, works == Side.RIGHT ? Side.LEFT : Side.RIGHT);
  }
}
