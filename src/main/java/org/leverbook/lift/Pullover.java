package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;

/** A pullover lying on a bench: a weight in both hands from above the chest to behind the head. */
public final class Pullover extends Lift<Pullover>
    implements Can.Raise<Pullover>, Can.ElbowBend<Pullover>, With.HoldsDumbbells<Pullover> {

  private Pullover(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static Pullover of(Person lifter) {
    return new Pullover(nothingSaid(lifter));
  }

  @Override
  Pullover changed(Setup changed) {
    return new Pullover(changed);
  }

  @Override
  public String name() {
    return "pullover";
  }

  @Override
  public String purpose() {
    return "Lower a weight behind the head with long arms, lying: lats, chest "
        + "and the long head of the triceps.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.hands(p, "dumbbell", 0.1, List.of(Side.RIGHT, Side.LEFT));
    Rests.supine(p, 0);
    p.spine(-5);
    Hands.apart(p, 0.12, Grip.NEUTRAL);
    p.exactlyRadians(JointId.ELBOW, "flexion", p.angle(Setting.ELBOW_BEND, 25));
    double back = p.angle(Setting.RAISE, 155);
    double raised = p.between(Math.toRadians(90), back);
    p.usually(JointId.SHOULDER, "flexion", Math.toDegrees(raised), Posture.EASY);
    p.usually(JointId.SHOULDER, "rotation", 20, Posture.EASY);
    if (p.isStart()) {
      p.statements()
          .together(
              "the weight",
              "over the shoulders",
              p.place(Site.HAND, Side.RIGHT),
              p.joint(JointId.SHOULDER, Side.RIGHT),
              Vector3D.ZERO,
              List.of(Vector3D.PLUS_I));
    } else if (p.isFinish()) {
      // The trunk lies with the head towards -x: an arm raised by 90 degrees points up, by 180
      // along the bench; held together the hands draw the elbows in.
      p.statements()
          .leans(
              "the upper arm",
              "its height",
              p.direction(Side.RIGHT.of("upper arm"), Vector3D.MINUS_J),
              Vector3D.PLUS_J,
              Math.sin(back));
    }
  }
}
