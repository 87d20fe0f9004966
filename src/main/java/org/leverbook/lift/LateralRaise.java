package org.leverbook.lift;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.statics.View;

/** A standing raise of dumbbells to the sides, elbows a little bent. */
public final class LateralRaise extends Lift<LateralRaise>
    implements Can.Raise<LateralRaise>,
        Can.ElbowBend<LateralRaise>,
        Can.TrunkLean<LateralRaise>,
        Can.Stance<LateralRaise>,
        With.HoldsDumbbells<LateralRaise> {

  private LateralRaise(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static LateralRaise of(Person lifter) {
    return new LateralRaise(nothingSaid(lifter));
  }

  @Override
  LateralRaise changed(Setup changed) {
    return new LateralRaise(changed);
  }

  @Override
  public String name() {
    return "lateral raise";
  }

  @Override
  public String purpose() {
    return "Raise dumbbells to the sides: the middle of the shoulder.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  View view() {
    return View.FRONT;
  }

  @Override
  void say(Posture p) {
    Weights.hands(p, "dumbbell", 0.08, List.of(Side.RIGHT, Side.LEFT));
    Stands.upright(p);
    p.exactlyRadians(JointId.ELBOW, "flexion", p.angle(Setting.ELBOW_BEND, 15));
    double up = p.angle(Setting.RAISE, 90);
    double raised = p.between(Math.toRadians(8), up);
    // Out to the side of the world, however the trunk leans: else the arm's height leaves two ways.
    double lean = Math.toDegrees(p.angle(Setting.TRUNK_LEAN, 2));
    p.usually(JointId.SHOULDER, "flexion", lean + p.between(0, 10), 0.3);
    p.usually(JointId.SHOULDER, "abduction", Math.toDegrees(raised), 0.3);
    p.usually(JointId.SHOULDER, "rotation", 10, 0.3);
    p.exactly(JointId.FOREARM, "rotation", 80);
    Hands.armsRaised(p, raised);
  }
}
