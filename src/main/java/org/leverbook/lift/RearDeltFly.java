package org.leverbook.lift;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;

/** A raise of dumbbells to the sides with the trunk bent over. */
public final class RearDeltFly extends Lift<RearDeltFly>
    implements Can.TrunkLean<RearDeltFly>,
        Can.KneeBend<RearDeltFly>,
        Can.Stance<RearDeltFly>,
        Can.SpineRounding<RearDeltFly>,
        Can.Raise<RearDeltFly>,
        Can.ElbowBend<RearDeltFly>,
        With.HoldsDumbbells<RearDeltFly> {

  private RearDeltFly(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static RearDeltFly of(Person lifter) {
    return new RearDeltFly(nothingSaid(lifter));
  }

  @Override
  RearDeltFly changed(Setup changed) {
    return new RearDeltFly(changed);
  }

  @Override
  public String name() {
    return "rear-delt fly";
  }

  @Override
  public String purpose() {
    return "Raise dumbbells sideways bent over: back of the shoulders and upper back.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    Weights.hands(p, "dumbbell", 0.06, List.of(Side.RIGHT, Side.LEFT));
    Stands.bentOver(p, 75, 20);
    p.exactlyRadians(JointId.ELBOW, "flexion", p.angle(Setting.ELBOW_BEND, 20));
    p.usually(JointId.FOREARM, "rotation", 80, 0.5);
    double raised = p.between(Math.toRadians(6), p.angle(Setting.RAISE, 85));
    Hands.armsRaised(p, raised);
    p.usually(JointId.SHOULDER, "flexion", 75, Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", Math.toDegrees(raised), Posture.EASY);
    Pulls.armsAcross(p);
  }
}
