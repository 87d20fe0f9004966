package org.leverbook.lift;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.load.Grasps;

/** A pull of a rope at a high pulley towards the face, elbows high. */
public final class FacePull extends Lift<FacePull>
    implements Can.TrunkLean<FacePull>,
        Can.KneeBend<FacePull>,
        Can.Stance<FacePull>,
        Can.Raise<FacePull>,
        With.Pulley<FacePull>,
        With.PullsCable<FacePull> {

  private FacePull(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static FacePull of(Person lifter) {
    return new FacePull(nothingSaid(lifter));
  }

  @Override
  FacePull changed(Setup changed) {
    return new FacePull(changed);
  }

  @Override
  public String name() {
    return "face pull";
  }

  @Override
  public String purpose() {
    return "Pull a rope towards the forehead, elbows high: back of the shoulders, upper back, outward rotators.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    Vector3D pulley =
        new Vector3D(
            p.value(Setting.PULLEY_AHEAD, 1.6),
            p.value(Setting.PULLEY_HEIGHT, 0.95 * p.links().stature()),
            0);
    Weights.cable(p, 0.09, pulley, Grasps.BOTH_HANDS);
    Stands.feet(p, 2.6 * p.links().hipHalfWidth(), 10);
    // The pull tips forward: the feet press with the ball.
    p.balancedOver(0.07);
    p.roughly(-0.1, p.links().standingHipHeight(), -5);
    p.exactlyRadians(JointId.KNEE, "flexion", p.angle(Setting.KNEE_BEND, 15));
    p.trunkLeans(p.angle(Setting.TRUNK_LEAN, -6));
    p.spine();
    Hands.apart(p, p.between(0.16, 3 * p.links().shoulderHalfWidth()), Grip.NEUTRAL);
    p.usually(JointId.SHOULDER, "flexion", p.between(95, 40), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(0, 80), Posture.EASY);
    p.usually(JointId.SHOULDER, "rotation", p.between(0, -40), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(0, 110), Posture.EASY);
    Pulls.bladesTogether(p);
    double raise = p.angle(Setting.RAISE, 90);
    if (p.isStart()) {
      Hands.straight(p);
      Pulls.reachTo(p, pulley, p.links().standingHipHeight() + Bodies.trunk(p));
    } else if (p.isFinish()) {
      Hands.armsRaised(p, raise);
      Hands.elbowsOut(p, Math.toRadians(80), 1);
      Pulls.besideForehead(p);
    }
    Hands.straightWay(p);
  }
}
