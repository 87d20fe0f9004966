package org.leverbook.lift;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.support.Pad;

/** A back extension over a thigh pad, the legs held: at 45 degrees, or flat at 90. */
public final class BackExtension extends Lift<BackExtension>
    implements With.PadAngle<BackExtension>,
        Can.SpineRounding<BackExtension>,
        With.HoldsDumbbells<BackExtension> {

  private BackExtension(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static BackExtension of(Person lifter) {
    return new BackExtension(nothingSaid(lifter));
  }

  @Override
  BackExtension changed(Setup changed) {
    return new BackExtension(changed);
  }

  @Override
  public String name() {
    return "back extension";
  }

  @Override
  public String purpose() {
    return "Lower and raise the trunk over a pad: hip extensors and spinal " + "erectors.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    double legs = Math.PI / 2 - p.angle(Setting.PAD_ANGLE, 45);
    Vector3D along = new Vector3D(Math.sin(legs), Math.cos(legs), 0);
    Vector3D behind = new Vector3D(-Math.cos(legs), Math.sin(legs), 0);
    p.roughly(0, 1, Math.toDegrees(legs) + p.between(80, 0));
    p.atForward(JointId.HIP, 0, "the pad");
    p.atHeight(JointId.HIP, 0.95, "the pad");
    p.exactly(JointId.KNEE, "flexion", 0);
    p.exactly(JointId.ANKLE, "flexion", 0);
    p.exactly(JointId.HIP, "flexion", p.between(80, 0));
    p.statements()
        .inclined(
            "the legs", p.joint(JointId.ANKLE, Side.RIGHT), p.joint(JointId.HIP, Side.RIGHT), legs);
    p.spine();
    p.against(pad("thigh pad", behind, 0.6, Site.UPPER_THIGH, Site.THIGH));
    p.against(pad("heel roller", behind.negate(), 0.1, Site.ANKLE));
    p.against(pad("foot plate", along, 0.4, Site.HEEL, Site.BALL_OF_FOOT));
    Weights.handsOrNothing(p);
    Racked.atChest(p);
  }

  private static Pad pad(String name, Vector3D facing, double length, Site... sites) {
    return new Pad(
        name, List.of(sites), facing, Optional.empty(), length, 0.6, Pad.CLOTH_FRICTION, false);
  }
}
