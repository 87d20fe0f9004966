package org.leverbook.lift;

import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.support.FixedBar;

/** A pull-up at a fixed bar, from a hang until the chin is over the bar. */
public final class PullUp extends Lift<PullUp>
    implements With.BarHeight<PullUp>,
        With.GripWidth<PullUp>,
        With.Grips<PullUp>,
        Can.KneeBend<PullUp>,
        Can.SpineRounding<PullUp> {

  private PullUp(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static PullUp of(Person lifter) {
    return new PullUp(nothingSaid(lifter));
  }

  @Override
  PullUp changed(Setup changed) {
    return new PullUp(changed);
  }

  @Override
  public String name() {
    return "pull-up";
  }

  @Override
  public String purpose() {
    return "Pull the body up to a bar: lats, upper back, elbow flexors.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    double height = p.value(Setting.BAR_HEIGHT, 1.3 * p.links().stature());
    double hips = height - p.between(1.15, 0.75) * p.links().reach();
    p.roughly(-0.05, hips, p.between(0, -15));
    p.balancedOver(0);
    p.spine(-5);
    Grip grip = p.grip(Grip.OVERHAND);
    double width = Pulls.width(p, grip, 2.8 * p.links().shoulderHalfWidth());
    Hands.onBar(p, 0, height, width, grip, p.between(-Hands.askew(p, width), 0));
    p.on(new FixedBar());
    p.exactlyRadians(JointId.KNEE, "flexion", p.angle(Setting.KNEE_BEND, 60));
    p.usually(JointId.HIP, "flexion", p.between(0, 10), 0.05);
    p.usually(JointId.ANKLE, "flexion", -25, 0.1);
    p.usually(JointId.SHOULDER, "flexion", p.between(165, 30), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(10, 40), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(0, 125), Posture.EASY);
    if (p.isStart()) {
      Hands.straight(p);
    } else if (p.isFinish()) {
      Pulls.chinOver(p, height);
      p.ratherTrunkLeans(Math.toRadians(-25), 1);
    }
  }
}
