package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.support.Pad;

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
    Props.toesOnFloor(p, 0);
    double width = p.value(Setting.GRIP_WIDTH, 2.6 * p.links().shoulderHalfWidth());
    for (Side side : p.sides()) {
      String hand = "the " + side.of("hand");
      for (Site site : List.of(Site.HEEL_OF_HAND, Site.BALL_OF_HAND)) {
        p.statements()
            .along(hand, "the floor", p.place(site, side), Vector3D.ZERO, List.of(Vector3D.PLUS_J));
      }
      p.statements()
          .along(
              hand,
              "its place on the floor",
              p.place(Site.HEEL_OF_HAND, side),
              new Vector3D(0, 0, side.sign() * width / 2),
              List.of(Vector3D.PLUS_K));
      p.stays(hand, p.place(Site.HEEL_OF_HAND, side), List.of(Vector3D.PLUS_I));
      p.statements().rather(p.direction(side.of("hand"), Vector3D.PLUS_K), Vector3D.PLUS_I, 0, 1);
    }
    p.on(Pad.underHands());
    p.usually(JointId.WRIST, "flexion", -65, 0.05);
    p.usually(JointId.FOREARM, "rotation", 120, Posture.EASY);
    p.usually(JointId.SHOULDER, "flexion", p.between(85, 20), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(10, 45), Posture.EASY);
    if (p.isStart()) {
      Hands.straight(p);
      p.statements()
          .ratherTogether(
              p.joint(JointId.WRIST, Side.RIGHT),
              p.joint(JointId.SHOULDER, Side.RIGHT),
              Vector3D.PLUS_I,
              3);
    } else if (p.isFinish()) {
      Hands.elbowsOut(p, p.angle(Setting.ELBOWS_OUT, 50), 0.5);
      p.usually(JointId.ELBOW, "flexion", 105, Posture.EASY);
      p.statements()
          .along(
              "the chest",
              "just over the floor",
              p.place(Site.LOWER_CHEST, Side.RIGHT),
              new Vector3D(0, 0.05, 0),
              List.of(Vector3D.PLUS_J));
    }
  }
}
