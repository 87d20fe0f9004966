package org.leverbook.lift;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.load.Grasps;

/** A standing pushdown at a high pulley, the upper arms still at the sides. */
public final class TricepsPushdown extends Lift<TricepsPushdown>
    implements With.GripWidth<TricepsPushdown>,
        With.Grips<TricepsPushdown>,
        With.Pulley<TricepsPushdown>,
        Can.ElbowBend<TricepsPushdown>,
        Can.TrunkLean<TricepsPushdown>,
        With.PullsCable<TricepsPushdown> {

  private TricepsPushdown(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static TricepsPushdown of(Person lifter) {
    return new TricepsPushdown(nothingSaid(lifter));
  }

  @Override
  TricepsPushdown changed(Setup changed) {
    return new TricepsPushdown(changed);
  }

  @Override
  public String name() {
    return "triceps pushdown";
  }

  @Override
  public String purpose() {
    return "Straighten the elbows against a cable from above: triceps.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Vector3D pulley =
        new Vector3D(p.value(Setting.PULLEY_AHEAD, 0.40), p.value(Setting.PULLEY_HEIGHT, 2.1), 0);
    Weights.cable(p, 0.25, pulley, Grasps.BOTH_HANDS);
    Stands.feet(p, 2.2 * p.links().hipHalfWidth(), 10);
    // The pull lifts the hands ahead: the weight goes towards the heels.
    p.balancedOver(-0.06);
    p.roughly(-0.1, p.links().standingHipHeight(), 10);
    p.exactly(JointId.KNEE, "flexion", 10);
    p.trunkLeans(p.angle(Setting.TRUNK_LEAN, 10));
    p.spine();
    Hands.apart(p, p.value(Setting.GRIP_WIDTH, Hands.usualWidth(p)), p.grip(Grip.OVERHAND));
    p.exactlyRadians(
        JointId.ELBOW, "flexion", p.between(p.angle(Setting.ELBOW_BEND, 100), Math.toRadians(5)));
    Hands.upperArm(p, Math.toRadians(5));
  }
}
