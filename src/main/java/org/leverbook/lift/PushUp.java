package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;

/** A push-up on hands and toes, from straight arms down to the floor, the body straight. */
public final class PushUp extends Lift<PushUp>
    implements With.GripWidth<PushUp>, Can.ElbowsOut<PushUp> {

  private PushUp(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static PushUp of(Person lifter) {
    return new PushUp(nothingSaid(lifter));
  }

  @Override
  PushUp changed(Setup changed) {
    return new PushUp(changed);
  }

  @Override
  public String name() {
    return "push-up";
  }

  @Override
  public String purpose() {
    return "Press the body off the floor: chest, front of the shoulders, "
        + "triceps, and a trunk that stays straight.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    p.roughly(0, 0.5, 75);
    Props.straightBody(p);
    // The toes stay at x = 0, the hands where the shoulders were at the start.
    Props.toes(p, 0);
    double width = p.value(Setting.GRIP_WIDTH, Arms.USUAL_PALMS * p.links().shoulderHalfWidth());
    Arms.palmsOnFloor(p, width);
    p.on(Props.floor("floor", Site.HEEL_OF_HAND, Site.BALL_OF_HAND, Site.BALL_OF_FOOT));
    p.usually(JointId.WRIST, "flexion", -80, 0.05);
    p.usually(JointId.FOREARM, "rotation", p.between(155, 120), 0.3);
    p.usually(JointId.SHOULDER, "flexion", p.between(85, -10), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(10, 45), Posture.EASY);
    Arms.heightEvenly(p, p.place(Site.LOWER_CHEST, Side.RIGHT), 2);
    Arms.forearmsEvenly(p, 2);
    if (p.isStart()) {
      Hands.straight(p);
      p.statements()
          .ratherTogether(
              p.joint(JointId.WRIST, Side.RIGHT),
              p.joint(JointId.SHOULDER, Side.RIGHT),
              Vector3D.PLUS_I,
              10);
    } else if (p.isFinish()) {
      Hands.elbowsOut(p, p.angle(Setting.ELBOWS_OUT, 50), 1);
      Hands.forearmUpright(p, 1);
      p.usually(JointId.ELBOW, "flexion", 105, Posture.EASY);
      p.statements()
          .along(
              "the chest",
              "just over the floor",
              p.place(Site.LOWER_CHEST, Side.RIGHT),
              new Vector3D(0, 0.07, 0),
              List.of(Vector3D.PLUS_J));
    }
  }
}
