package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;

/** A standing row of a bar along the front of the body, from hanging arms to the chest. */
public final class UprightRow extends Lift<UprightRow>
    implements With.GripWidth<UprightRow>,
        Can.ElbowsOut<UprightRow>,
        Can.TrunkLean<UprightRow>,
        With.HoldsBar<UprightRow> {

  private UprightRow(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static UprightRow of(Person lifter) {
    return new UprightRow(nothingSaid(lifter));
  }

  @Override
  UprightRow changed(Setup changed) {
    return new UprightRow(changed);
  }

  @Override
  public String name() {
    return "upright row";
  }

  @Override
  public String purpose() {
    return "Lift a bar along the front of the body, elbows out: shoulders and " + "upper back.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.3, Site.HAND);
    Stands.upright(p);
    Hands.apart(p, p.value(Setting.GRIP_WIDTH, 2 * p.links().shoulderHalfWidth()), Grip.OVERHAND);
    p.usually(JointId.SHOULDER, "flexion", p.between(10, 20), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(5, 80), Posture.EASY);
    p.usually(JointId.SHOULDER, "rotation", p.between(20, 50), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(2, 120), Posture.EASY);
    if (p.isStart()) {
      Hands.straight(p);
    } else if (p.isFinish()) {
      Hands.elbowsOut(p, p.angle(Setting.ELBOWS_OUT, 85), 1);
      p.statements()
          .together(
              "the bar",
              "the upper chest",
              p.place(Site.HAND, Side.RIGHT),
              p.place(Site.UPPER_CHEST, Side.RIGHT),
              new Vector3D(0.08, -0.04, 0),
              List.of(Vector3D.PLUS_I, Vector3D.PLUS_J));
    }
    Hands.straightWay(p);
  }
}
