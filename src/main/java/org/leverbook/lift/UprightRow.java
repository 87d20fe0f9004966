package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.solve.Feature;

/** A standing row of a bar along the front of the body, from hanging arms to the chest. */
public final class UprightRow extends Lift<UprightRow>
    implements With.GripWidth<UprightRow>,
        Can.Raise<UprightRow>,
        Can.TrunkLean<UprightRow>,
        Can.Stance<UprightRow>,
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
    return "grip between one and two shoulder breadths (McAllister et al. 2013, abstract);"
        + " else common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.3, Site.HAND);
    Stands.upright(p);
    Arms.grasp(p, p.value(Setting.GRIP_WIDTH, 3.2 * p.links().shoulderHalfWidth()), Grip.OVERHAND);
    p.usually(JointId.SHOULDER, "flexion", p.between(10, 20), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(5, 80), Posture.EASY);
    p.usually(JointId.SHOULDER, "rotation", p.between(20, 65), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(2, 120), Posture.EASY);
    if (p.isStart()) {
      Hands.straight(p);
      inFrontOf(p, Site.HIP_CREASE, 0.035);
    } else if (p.isFinish()) {
      Hands.armsRaised(p, p.angle(Setting.RAISE, 90));
      Hands.elbowsOut(p, Math.toRadians(70), 1);
      for (Side side : p.sides()) {
        Feature arm = p.direction(side.of("upper arm"), Vector3D.MINUS_J);
        p.statements().rather(arm, Vector3D.PLUS_I, 0.3, 1);
      }
      Hands.forearmUpright(p, 0.5);
      inFrontOf(p, Site.LOWER_CHEST, 0.05);
    }
    Hands.straightWay(p);
  }

  /** The bar's axis is so far ahead of a place of the skin, metres. */
  private static void inFrontOf(Posture p, Site skin, double ahead) {
    p.statements()
        .together(
            "the bar",
            "in front of the " + skin.word(),
            p.place(Site.HAND, Side.RIGHT),
            p.place(skin, Side.RIGHT),
            new Vector3D(ahead, 0, 0),
            List.of(Vector3D.PLUS_I));
  }
}
