package org.leverbook.lift;

import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.load.Barbell;
import org.leverbook.support.FixedBar;

/** A row of the straight body under a fixed bar, on the heels, from straight arms to the chest. */
public final class InvertedRow extends Lift<InvertedRow>
    implements With.BarHeight<InvertedRow>,
        Can.StepHeight<InvertedRow>,
        With.GripWidth<InvertedRow>,
        With.Grips<InvertedRow>,
        Can.ElbowsOut<InvertedRow> {

  private InvertedRow(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static InvertedRow of(Person lifter) {
    return new InvertedRow(nothingSaid(lifter));
  }

  @Override
  InvertedRow changed(Setup changed) {
    return new InvertedRow(changed);
  }

  @Override
  public String name() {
    return "inverted row";
  }

  @Override
  public String purpose() {
    return "Pull the chest to a fixed bar lying under it: upper back and elbow flexors, the body held straight.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    double height = p.value(Setting.BAR_HEIGHT, 0.43 * p.links().stature());
    Bodies.straightOnHeels(p, height, p.value(Setting.STEP_HEIGHT, 0));
    Grip grip = p.grip(Grip.OVERHAND);
    Hands.onBar(p, 0, height, Pulls.width(p, grip, 3.4 * p.links().shoulderHalfWidth()), grip);
    Pulls.bladesTogether(p);
    p.on(new FixedBar());
    p.usually(JointId.SHOULDER, "flexion", p.between(80, 0), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(10, 55), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(0, 105), Posture.EASY);
    double out = p.angle(Setting.ELBOWS_OUT, 55);
    if (p.isStart()) {
      Hands.straight(p);
    } else if (p.isFinish()) {
      Hands.elbowsOut(p, out, 0.5);
      Pulls.touchTrunk(p, Barbell.GRIP_RADIUS);
    }
  }
}
