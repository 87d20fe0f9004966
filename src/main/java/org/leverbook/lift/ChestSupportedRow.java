package org.leverbook.lift;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;

/** A row of dumbbells with the chest on a pad, from hanging arms to the sides of the trunk. */
public final class ChestSupportedRow extends Lift<ChestSupportedRow>
    implements With.PadAngle<ChestSupportedRow>,
        With.PadHeight<ChestSupportedRow>,
        Can.ElbowsOut<ChestSupportedRow>,
        With.Grips<ChestSupportedRow>,
        With.GripWidth<ChestSupportedRow>,
        With.HoldsDumbbells<ChestSupportedRow> {

  private ChestSupportedRow(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static ChestSupportedRow of(Person lifter) {
    return new ChestSupportedRow(nothingSaid(lifter));
  }

  @Override
  ChestSupportedRow changed(Setup changed) {
    return new ChestSupportedRow(changed);
  }

  @Override
  public String name() {
    return "chest-supported row";
  }

  @Override
  public String purpose() {
    return "Pull dumbbells with the chest on a pad: upper back and lats, the low back relieved.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    Weights.hands(p, "dumbbell", 0.2, List.of(Side.RIGHT, Side.LEFT));
    double tilt = p.angle(Setting.PAD_ANGLE, 40);
    Bodies.chestOnPad(p, tilt);
    double width = p.value(Setting.GRIP_WIDTH, Hands.usualWidth(p));
    Hands.apart(p, width, p.grip(Grip.NEUTRAL));
    double lean = 90 - Math.toDegrees(tilt);
    p.usually(JointId.SHOULDER, "flexion", p.between(lean, -30), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(5, 25), Posture.EASY);
    Pulls.bladesTogether(p);
    double out = p.angle(Setting.ELBOWS_OUT, 30);
    if (p.isStart()) {
      Pulls.hangingArms(p);
    } else if (p.isFinish()) {
      p.usually(JointId.ELBOW, "flexion", 100, Posture.EASY);
      Pulls.touchTrunk(p, -0.02);
      Hands.elbowsOut(p, out, 0.5);
      Hands.forearmUpright(p, 1);
    }
    Hands.straightWay(p);
  }
}
