package org.leverbook.lift;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.load.Grasps;

/** A row at a low pulley, seated with the feet against a plate, from straight arms to the trunk. */
public final class SeatedCableRow extends Lift<SeatedCableRow>
    implements Can.TrunkLean<SeatedCableRow>,
        Can.KneeBend<SeatedCableRow>,
        Can.SpineRounding<SeatedCableRow>,
        With.GripWidth<SeatedCableRow>,
        With.Grips<SeatedCableRow>,
        With.SeatHeight<SeatedCableRow>,
        With.Pulley<SeatedCableRow>,
        With.PullsCable<SeatedCableRow> {

  private SeatedCableRow(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static SeatedCableRow of(Person lifter) {
    return new SeatedCableRow(nothingSaid(lifter));
  }

  @Override
  SeatedCableRow changed(Setup changed) {
    return new SeatedCableRow(changed);
  }

  @Override
  public String name() {
    return "seated cable row";
  }

  @Override
  public String purpose() {
    return "Pull a cable to the waist sitting upright: upper back, lats, elbow flexors.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    double seat = p.value(Setting.SEAT_HEIGHT, 0.40);
    Bodies.seatedAtPlate(p, seat, p.angle(Setting.KNEE_BEND, 25));
    p.trunkLeans(p.angle(Setting.TRUNK_LEAN, -5));
    p.spine();
    Grip grip = p.grip(Grip.NEUTRAL);
    Hands.apart(p, p.value(Setting.GRIP_WIDTH, grip == Grip.NEUTRAL ? 0.14 : 0.5), grip);
    Vector3D pulley =
        new Vector3D(
            p.value(Setting.PULLEY_AHEAD, 1.05 * p.links().standingHipHeight() + 0.4),
            p.value(Setting.PULLEY_HEIGHT, seat + 0.2),
            0);
    Weights.cable(p, 0.5, pulley, Grasps.BOTH_HANDS);
    p.usually(JointId.SHOULDER, "flexion", p.between(60, -25), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(0, 8), 0.3);
    p.usually(JointId.SHOULDER, "rotation", 15, 0.3);
    p.usually(JointId.ELBOW, "flexion", p.between(0, 95), Posture.EASY);
    Pulls.bladesTogether(p);
    if (p.isStart()) {
      Hands.straight(p);
      Pulls.reachTo(p, pulley, seat + 0.1 + Bodies.trunk(p));
    } else if (p.isFinish()) {
      Pulls.touchTrunk(p, 0.03);
      Pulls.alongTrunk(p, 0.12);
    }
    Hands.straightWay(p);
  }
}
