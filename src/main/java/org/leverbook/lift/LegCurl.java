package org.leverbook.lift;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Site;
import org.leverbook.support.Pad;

/** A leg curl lying on the front: the heels go up against a lever that turns about the knee. */
public final class LegCurl extends Lift<LegCurl>
    implements Can.KneeBend<LegCurl>, With.PushesMass<LegCurl> {

  /** Height of the bench, metres: common practice, no source. */
  private static final double BENCH = 0.6;

  private LegCurl(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static LegCurl of(Person lifter) {
    return new LegCurl(nothingSaid(lifter));
  }

  @Override
  LegCurl changed(Setup changed) {
    return new LegCurl(changed);
  }

  @Override
  public String name() {
    return "lying leg curl";
  }

  @Override
  public String purpose() {
    return "Bend the knees against a machine, lying on the front: hamstrings " + "alone.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    p.roughly(0, BENCH, 90);
    p.usually(JointId.SHOULDER, "flexion", 120, 0.3);
    p.usually(JointId.ELBOW, "flexion", 60, 0.3);
    p.atForward(JointId.HIP, 0, "the bench");
    p.atHeight(Site.LOWER_CHEST, BENCH, "the bench");
    p.atHeight(Site.HIP_CREASE, BENCH, "the bench");
    p.atHeight(Site.THIGH, BENCH, "the bench");
    p.spine();
    double knees = p.angle(Setting.KNEE_BEND, 100);
    p.exactlyRadians(JointId.KNEE, "flexion", p.between(Math.toRadians(5), knees));
    p.exactly(JointId.ANKLE, "flexion", 0);
    p.against(
        new Pad(
            "bench",
            List.of(Site.UPPER_CHEST, Site.LOWER_CHEST, Site.HIP_CREASE, Site.THIGH),
            Vector3D.PLUS_J,
            Optional.empty(),
            2,
            0.5,
            Pad.CLOTH_FRICTION,
            false),
        Site.LOWER_CHEST,
        Site.HIP_CREASE,
        Site.THIGH);
    double ahead = 1.1 * (p.links().pelvisUp() + p.links().spine());
    Machines.handles(p, ahead, BENCH - 0.25, 2.6 * p.links().shoulderHalfWidth());
    Machines.atKnee(p, Weights.said(p, 0.25), Site.ANKLE);
  }
}
