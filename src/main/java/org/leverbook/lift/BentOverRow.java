package org.leverbook.lift;

import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;

/** A row of a bar with the trunk bent over, from hanging arms to the trunk. */
public final class BentOverRow extends Lift<BentOverRow>
    implements Can.TrunkLean<BentOverRow>,
        Can.KneeBend<BentOverRow>,
        Can.Stance<BentOverRow>,
        Can.SpineRounding<BentOverRow>,
        Can.ElbowsOut<BentOverRow>,
        With.GripWidth<BentOverRow>,
        With.Grips<BentOverRow>,
        With.HoldsBar<BentOverRow> {

  private BentOverRow(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static BentOverRow of(Person lifter) {
    return new BentOverRow(nothingSaid(lifter));
  }

  @Override
  BentOverRow changed(Setup changed) {
    return new BentOverRow(changed);
  }

  @Override
  public String name() {
    return "bent-over row";
  }

  @Override
  public String purpose() {
    return "Pull a bar to the trunk bent over: upper back, lats, elbow flexors; the hips and back hold.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    Weights.bar(p, 0.5, Site.HAND);
    Stands.bentOver(p, 65, 25);
    Grip grip = p.grip(Grip.OVERHAND);
    Hands.apart(p, Pulls.width(p, grip, 2.7 * p.links().shoulderHalfWidth()), grip);
    p.usually(JointId.SHOULDER, "flexion", p.between(65, -30), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(5, 40), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(0, 100), Posture.EASY);
    Pulls.bladesTogether(p);
    double out = p.angle(Setting.ELBOWS_OUT, 40);
    if (p.isStart()) {
      Pulls.hangingArms(p);
    } else if (p.isFinish()) {
      Pulls.touchTrunk(p, Barbell.GRIP_RADIUS);
      Hands.elbowsOut(p, out, 0.5);
      Hands.forearmUpright(p, 1);
    }
    Hands.straightWay(p);
  }
}
