package org.leverbook.lift;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.support.Footing;

/** A standing calf raise with a bar on the back, from flat feet to raised heels. */
public final class CalfRaise extends Lift<CalfRaise>
    implements Can.HeelHeight<CalfRaise>, Can.Stance<CalfRaise>, With.HoldsBar<CalfRaise> {

  private CalfRaise(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static CalfRaise of(Person lifter) {
    return new CalfRaise(nothingSaid(lifter));
  }

  @Override
  CalfRaise changed(Setup changed) {
    return new CalfRaise(changed);
  }

  @Override
  public String name() {
    return "standing calf raise";
  }

  @Override
  public String purpose() {
    return "Rise onto the balls of the feet with a bar on the back: the calves.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.5, Site.UPPER_BACK_HIGH);
    double raised = p.between(0, p.value(Setting.HEEL_HEIGHT, 0.07));
    double width = p.value(Setting.STANCE_WIDTH, 2.2 * p.links().hipHalfWidth());
    for (Side side : p.sides()) {
      Vector3D middle = new Vector3D(0, 0, side.sign() * width / 2);
      Feet.foot(p, side, middle, p.angle(Setting.TURN_OUT, 5), raised);
    }
    p.on(Footing.feet(p.body()));
    // On the balls of the feet, already before the heels leave the floor.
    p.balancedOver(0.19 * p.links().footLength()).spine();
    p.roughly(0, p.links().standingHipHeight() + raised, 0);
    p.exactly(JointId.KNEE, "flexion", 3);
    p.usually(JointId.HIP, "flexion", 3, 0.5);
    Racked.onBack(p, Site.UPPER_BACK_HIGH);
  }
}
