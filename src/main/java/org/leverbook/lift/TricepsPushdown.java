package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.load.Grasps;

/** A standing pushdown at a high pulley, the upper arms still at the sides. */
public final class TricepsPushdown extends Lift<TricepsPushdown>
    implements With.GripWidth<TricepsPushdown>,
        With.Grips<TricepsPushdown>,
        With.Pulley<TricepsPushdown>,
        Can.ElbowBend<TricepsPushdown>,
        Can.TrunkLean<TricepsPushdown>,
        Can.Stance<TricepsPushdown>,
        With.PullsCable<TricepsPushdown> {

  /** Where the floor's push is at the start, ahead of the middle of the foot, metres. */
  private static final double AT_START = -0.05;

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
    Weights.cable(p, 0.2, pulley, Grasps.BOTH_HANDS);
    double width = p.value(Setting.STANCE_WIDTH, 2.2 * p.links().hipHalfWidth());
    Feet.stand(p, width / 2, p.angle(Setting.TURN_OUT, 10));
    p.roughly(-0.1, p.links().standingHipHeight(), 15);
    p.exactly(JointId.KNEE, "flexion", 10);
    p.trunkLeans(p.angle(Setting.TRUNK_LEAN, 15));
    // The body keeps still: under the hands that come in, the floor's push goes ahead.
    if (p.isStart()) {
      p.balancedOver(AT_START);
    } else {
      p.stays("the hips", p.joint(JointId.HIP, Side.RIGHT), List.of(Vector3D.PLUS_I));
    }
    p.spine();
    Hands.apart(p, p.value(Setting.GRIP_WIDTH, Hands.usualWidth(p)), p.grip(Grip.OVERHAND));
    p.exactlyRadians(
        JointId.ELBOW, "flexion", p.between(p.angle(Setting.ELBOW_BEND, 100), Math.toRadians(5)));
    Hands.upperArm(p, 0);
  }
}
