package org.leverbook.lift;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;

/** A standing raise of dumbbells forward with nearly straight arms. */
public final class FrontRaise extends Lift<FrontRaise>
    implements Can.Raise<FrontRaise>,
        Can.ElbowBend<FrontRaise>,
        Can.TrunkLean<FrontRaise>,
        Can.Stance<FrontRaise>,
        With.HoldsDumbbells<FrontRaise> {

  private FrontRaise(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static FrontRaise of(Person lifter) {
    return new FrontRaise(nothingSaid(lifter));
  }

  @Override
  FrontRaise changed(Setup changed) {
    return new FrontRaise(changed);
  }

  @Override
  public String name() {
    return "front raise";
  }

  @Override
  public String purpose() {
    return "Raise dumbbells forward: the front of the shoulder.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.hands(p, "dumbbell", 0.08, List.of(Side.RIGHT, Side.LEFT));
    Stands.upright(p);
    p.exactlyRadians(JointId.ELBOW, "flexion", p.angle(Setting.ELBOW_BEND, 10));
    double up = p.angle(Setting.RAISE, 90);
    double raised = p.between(Math.toRadians(5), up);
    p.usually(JointId.SHOULDER, "flexion", Math.toDegrees(raised), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", 0, 0.5);
    p.usually(JointId.SHOULDER, "rotation", 40, 0.3);
    p.exactly(JointId.FOREARM, "rotation", 120);
    Hands.armsRaised(p, raised);
  }
}
