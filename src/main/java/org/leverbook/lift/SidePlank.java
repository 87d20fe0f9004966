package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.statics.View;

/** A hold on one forearm and the edge of one foot, the body straight, the feet stacked. */
public final class SidePlank extends Lift<SidePlank>
    implements Can.HipHeight<SidePlank>, Can.OneSided<SidePlank> {

  private SidePlank(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static SidePlank of(Person lifter) {
    return new SidePlank(nothingSaid(lifter));
  }

  @Override
  SidePlank changed(Setup changed) {
    return new SidePlank(changed);
  }

  @Override
  public String name() {
    return "side plank";
  }

  @Override
  public String purpose() {
    return "Hold the body straight on one forearm and one foot: the side of the trunk and the hip.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  boolean bothSidesAlike() {
    return false;
  }

  @Override
  View view() {
    return View.FRONT;
  }

  @Override
  void say(Posture p) {

    Side down = setup().side().orElse(Side.RIGHT);
    Holds.straightOrHips(p, true);
    Holds.onEdgeOfFoot(p, down);
    Holds.forearmsDown(p, List.of(down));
    p.statements()
        .ratherTogether(
            p.place(Site.FOREARM, down), p.joint(JointId.ELBOW, down), Vector3D.PLUS_I, 3);
    Side up = down == Side.RIGHT ? Side.LEFT : Side.RIGHT;
    p.usually(JointId.SHOULDER, up, "flexion", 0, 1);
    p.usually(JointId.SHOULDER, up, "abduction", 5, 1);
    p.usually(JointId.SHOULDER, down, "abduction", 80, Posture.EASY);
    p.usually(JointId.ELBOW, down, "flexion", 90, Posture.EASY);
  }
}
