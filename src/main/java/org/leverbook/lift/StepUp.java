package org.leverbook.lift;

import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;

/** A step onto a box, balanced over the leg that works; the other one hangs. */
public final class StepUp extends Lift<StepUp>
    implements Can.StepHeight<StepUp>,
        Can.TrunkLean<StepUp>,
        With.HoldsDumbbells<StepUp>,
        Can.OneSided<StepUp> {

  private StepUp(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static StepUp of(Person lifter) {
    return new StepUp(nothingSaid(lifter));
  }

  @Override
  StepUp changed(Setup changed) {
    return new StepUp(changed);
  }

  @Override
  public String name() {
    return "step-up";
  }

  @Override
  public String purpose() {
    return "Step onto a box with one leg: hip and knee of one side.";
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
  void say(Posture p) {
    Side works = setup().side().orElse(Side.RIGHT);
    Side hangs = works == Side.RIGHT ? Side.LEFT : Side.RIGHT;
    Weights.hands(p, "dumbbell", 0.1, List.of(Side.RIGHT, Side.LEFT));
    double height = p.value(Setting.STEP_HEIGHT, 0.35);
    double aside = works.sign() * 0.5 * p.links().hipHalfWidth();
    Feet.foot(p, works, new Vector3D(0, height, aside), 0, 0);
    Feet.ground(p, Map.of(works, height));
    p.balancedOver(0).balancedSideways(aside).spine();
    p.roughly(-0.1, height + p.between(0.65, 1) * p.links().standingHipHeight(), 0);
    p.usually(JointId.KNEE, works, "flexion", p.between(90, 3), Posture.EASY);
    p.usually(JointId.ANKLE, works, "flexion", p.between(18, 3), 1);
    p.usually(JointId.HIP, works, "flexion", p.between(90, 3), Posture.EASY);
    p.usually(JointId.HIP, hangs, "flexion", p.between(10, 20), 0.1);
    p.usually(JointId.KNEE, hangs, "flexion", p.between(20, 40), 0.1);
    p.ratherTrunkLeans(p.angle(Setting.TRUNK_LEAN, 35) * (1 - p.share()), 1);
    if (p.isStart()) {
      // The toes of the other foot just leave the floor.
      p.statements()
          .along(
              "the " + hangs.of("ankle"),
              "its height as it leaves the floor",
              p.joint(JointId.ANKLE, hangs),
              new Vector3D(0, p.links().footHeight() + 0.08, 0),
              List.of(Vector3D.PLUS_J));
      p.usually(JointId.ANKLE, hangs, "flexion", -25, 0.3);
    } else if (p.isFinish()) {
      p.exactly(JointId.KNEE, works, "flexion", 3);
    }
    Legs.squareHips(p);
    Hands.hang(p);
  }
}
