package org.leverbook.lift;

import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.quantity.Units;
import org.leverbook.support.Pad;

/** A seated leg extension: the shins go up against a lever that turns about the knee. */
public final class LegExtension extends Lift<LegExtension>
    implements Can.KneeBend<LegExtension>, With.PushesMass<LegExtension> {

  private LegExtension(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static LegExtension of(Person lifter) {
    return new LegExtension(nothingSaid(lifter));
  }

  @Override
  LegExtension changed(Setup changed) {
    return new LegExtension(changed);
  }

  @Override
  public String name() {
    return "leg extension";
  }

  @Override
  public String purpose() {
    return "Straighten the knees against a machine, seated: the front of the " + "thigh alone.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    p.roughly(0, 0.6, -10);
    p.trunkLeans(Math.toRadians(-15));
    p.atForward(JointId.HIP, 0, "the seat");
    p.atHeight(Site.SITTING_BONE, 0.55, "the seat");
    p.spine();
    p.statements()
        .inclined(
            "the thigh",
            p.joint(JointId.HIP, Side.RIGHT),
            p.joint(JointId.KNEE, Side.RIGHT),
            Math.toRadians(90));
    p.usually(JointId.HIP, "flexion", 75, Posture.EASY);
    double bent = p.angle(Setting.KNEE_BEND, 90);
    p.exactlyRadians(JointId.KNEE, "flexion", p.between(bent, Math.toRadians(5)));
    p.exactly(JointId.ANKLE, "flexion", 0);
    Machines.handles(p, 0.05, 0.60, 2.6 * p.links().shoulderHalfWidth());
    p.against(Pad.seat(), Site.SITTING_BONE);
    p.against(Pad.back(Units.deg(75)));
    Machines.atKnee(p, Weights.said(p, 0.25), Site.SHIN);
  }
}
