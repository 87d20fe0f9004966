package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;

/** A standing press with a bar, from the front of the shoulders to straight arms overhead. */
public final class OverheadPress extends Lift<OverheadPress>
    implements With.GripWidth<OverheadPress>,
        Can.Stance<OverheadPress>,
        Can.TrunkLean<OverheadPress>,
        With.HoldsBar<OverheadPress> {

  private OverheadPress(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static OverheadPress of(Person lifter) {
    return new OverheadPress(nothingSaid(lifter));
  }

  @Override
  OverheadPress changed(Setup changed) {
    return new OverheadPress(changed);
  }

  @Override
  public String name() {
    return "overhead press";
  }

  @Override
  public String purpose() {
    return "Press a bar from the shoulders to overhead: shoulders, triceps, "
        + "and a trunk that holds.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.35, Site.HAND);
    Stands.feet(p, 2.2 * p.links().hipHalfWidth(), 10);
    p.roughly(-0.05, p.links().standingHipHeight(), -3);
    p.exactly(JointId.KNEE, "flexion", 5);
    // The head stays back until the bar has passed it.
    double back = p.angle(Setting.TRUNK_LEAN, -8);
    p.trunkLeans(back + Math.pow(p.share(), 3) * (Math.toRadians(2) - back));
    p.spine();
    Arms.grasp(p, p.value(Setting.GRIP_WIDTH, 2.6 * p.links().shoulderHalfWidth()), Grip.OVERHAND);
    p.usually(JointId.SHOULDER, "flexion", p.between(45, 165), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(20, 10), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(120, 0), Posture.EASY);
    p.usually(JointId.WRIST, "flexion", -25, 0.2);
    if (p.isStart()) {
      Hands.forearmUpright(p, 0.5);
      p.statements()
          .together(
              "the bar",
              "the front of the shoulders",
              p.place(Site.HAND, Side.RIGHT),
              p.place(Site.UPPER_CHEST, Side.RIGHT),
              new Vector3D(0.04, 0.10, 0),
              List.of(Vector3D.PLUS_I, Vector3D.PLUS_J));
    } else if (p.isFinish()) {
      Hands.straight(p);
      p.statements()
          .along(
              "the bar",
              "over the middle of the foot",
              p.place(Site.HAND, Side.RIGHT),
              Vector3D.ZERO,
              List.of(Vector3D.PLUS_I));
    }
    Hands.straightWay(p);
    Arms.forearmsEvenly(p, 3);
  }
}
