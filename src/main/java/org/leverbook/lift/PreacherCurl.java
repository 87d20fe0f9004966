package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.quantity.Units;
import org.leverbook.support.Pad;

/** A seated curl with the upper arms on a sloping pad and the chest against its rear edge. */
public final class PreacherCurl extends Lift<PreacherCurl>
    implements With.GripWidth<PreacherCurl>,
        With.Grips<PreacherCurl>,
        With.PadAngle<PreacherCurl>,
        Can.ElbowBend<PreacherCurl>,
        With.HoldsBar<PreacherCurl> {

  private PreacherCurl(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static PreacherCurl of(Person lifter) {
    return new PreacherCurl(nothingSaid(lifter));
  }

  @Override
  PreacherCurl changed(Setup changed) {
    return new PreacherCurl(changed);
  }

  @Override
  public String name() {
    return "preacher curl";
  }

  @Override
  public String purpose() {
    return "Bend the elbows with the upper arms on a pad: hard where the "
        + "forearm is level, which the pad decides.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.2, Site.HAND);
    double slope = p.angle(Setting.PAD_ANGLE, 50);
    Rests.seated(p, Rests.usualSeat(p), Math.toRadians(12));
    p.spine(10);
    Hands.apart(p, p.value(Setting.GRIP_WIDTH, Hands.usualWidth(p)), p.grip(Grip.UNDERHAND));
    p.exactlyRadians(
        JointId.ELBOW, "flexion", p.between(Math.toRadians(15), p.angle(Setting.ELBOW_BEND, 125)));
    Hands.upperArm(p, Math.PI / 2 - slope);
    p.against(Arms.armPad(slope));
    Vector3D out = new Vector3D(Math.sin(slope), Math.cos(slope), 0);
    for (Side side : p.sides()) {
      p.stays("the " + side.of("arm"), p.place(Site.BACK_OF_ARM, side), List.of(out));
      p.stays("the chest", p.place(Site.UPPER_CHEST, side), List.of(Vector3D.PLUS_I));
    }
    // The pad pushes the arms up and ahead; its rear edge holds the trunk back.
    p.against(Pad.chest(Units.deg(90)));
  }
}
