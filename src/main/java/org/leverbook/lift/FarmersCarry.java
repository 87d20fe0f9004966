package org.leverbook.lift;

import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.statics.View;

/** A walk with a weight in one hand: one step, frozen on the other leg. */
public final class FarmersCarry extends Lift<FarmersCarry>
    implements Can.StepLength<FarmersCarry>,
        Can.OneSided<FarmersCarry>,
        With.HoldsDumbbells<FarmersCarry> {

  private FarmersCarry(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static FarmersCarry of(Person lifter) {
    return new FarmersCarry(nothingSaid(lifter));
  }

  @Override
  FarmersCarry changed(Setup changed) {
    return new FarmersCarry(changed);
  }

  @Override
  public String name() {
    return "farmer's carry on one side";
  }

  @Override
  public String purpose() {
    return "Walk with a weight in one hand: the side of the trunk and the hip that stands.";
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

    Side works = setup().side().orElse(Side.RIGHT);
    Side stands = works == Side.RIGHT ? Side.LEFT : Side.RIGHT;
    Weights.hands(p, "dumbbell", 0.3, List.of(works));
    double aside = stands.sign() * 0.5 * p.links().hipHalfWidth();
    Feet.foot(p, stands, new Vector3D(0, 0, aside), Math.toRadians(5), 0);
    Feet.ground(p, Map.of(stands, 0.0));
    // The weight comes over the inner edge of the foot.
    p.balancedOver(0).balancedSideways(aside + works.sign() * 0.02).spine();
    p.roughly(0, p.links().standingHipHeight(), 0);
    p.exactly(JointId.KNEE, stands, "flexion", 5);
    p.trunkLeans(Math.toRadians(2));
    Bodies.level(p);
    Bodies.swings(p, works, p.value(Setting.STEP_LENGTH, 0.35 * p.links().stature()));
    Hands.hang(p);
    Bodies.armsStill(p);
  }
}
