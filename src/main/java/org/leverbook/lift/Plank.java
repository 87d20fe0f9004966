package org.leverbook.lift;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;

/** A hold on forearms and toes, the body straight. */
public final class Plank extends Lift<Plank>
    implements Can.HipHeight<Plank>, Can.SpineRounding<Plank> {

  private Plank(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static Plank of(Person lifter) {
    return new Plank(nothingSaid(lifter));
  }

  @Override
  Plank changed(Setup changed) {
    return new Plank(changed);
  }

  @Override
  public String name() {
    return "plank";
  }

  @Override
  public String purpose() {
    return "Hold the body straight on forearms and toes: the front of the trunk.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    p.roughly(0.85, 0.35, 80);
    Holds.straightOrHips(p, false);
    Props.toesOnFloor(p, 0);
    Holds.forearmsDown(p, p.sides());
    for (Side side : p.sides()) {
      p.statements()
          .ratherTogether(
              p.place(Site.FOREARM, side), p.joint(JointId.ELBOW, side), Vector3D.PLUS_K, 3);
    }
  }
}
