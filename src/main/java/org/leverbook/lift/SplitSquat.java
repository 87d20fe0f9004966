package org.leverbook.lift;

import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;

/** A squat in a stride: front foot flat, rear foot on its ball. */
public final class SplitSquat extends Lift<SplitSquat>
    implements Can.Depth<SplitSquat>,
        Can.StepLength<SplitSquat>,
        Can.TrunkLean<SplitSquat>,
        With.HoldsDumbbells<SplitSquat>,
        Can.OneSided<SplitSquat> {

  /**
   * How high the rear heel stands at the bottom, as a share of foot length: common practice, no
   * source.
   */
  private static final double REAR_HEEL = 0.53;

  /** The front foot carries this share: common practice, no source. */
  private static final double ON_FRONT = 0.50;

  /** From the middle of a foot to the joints of its toes, in shares of its length. */
  private static final double BALL_AHEAD = 0.435 - Feet.MIDFOOT_AHEAD;

  private SplitSquat(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static SplitSquat of(Person lifter) {
    return new SplitSquat(nothingSaid(lifter));
  }

  @Override
  SplitSquat changed(Setup changed) {
    return new SplitSquat(changed);
  }

  @Override
  public String name() {
    return "split squat";
  }

  @Override
  public String purpose() {
    return "Lower the rear knee in a long stride: one thigh and hip at a time.";
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
    Side front = setup().side().orElse(Side.RIGHT);
    Side rear = front == Side.RIGHT ? Side.LEFT : Side.RIGHT;
    Weights.hands(p, "dumbbell", 0.12, List.of(Side.RIGHT, Side.LEFT));
    double half = p.value(Setting.STEP_LENGTH, 0.44 * p.links().stature()) / 2;
    double aside = 1.1 * p.links().hipHalfWidth();
    Feet.foot(p, front, new Vector3D(half, 0, front.sign() * aside), Math.toRadians(5), 0);
    Feet.foot(
        p,
        rear,
        new Vector3D(-half, 0, rear.sign() * aside),
        0,
        p.between(0.09, REAR_HEEL * p.links().footLength()));
    Feet.ground(p, Map.of(Side.RIGHT, 0.0, Side.LEFT, 0.0));
    double depth = p.angle(Setting.DEPTH, -15);
    p.spine();
    over(p, front, half, aside);
    p.trunkLeans(p.angle(Setting.TRUNK_LEAN, 8));
    p.roughly(0, p.links().standingHipHeight() - 0.3 * p.share(), 5);
    p.usually(JointId.HIP, rear, "flexion", -10, 0.1);
    p.usually(JointId.KNEE, rear, "flexion", p.between(20, 90), 0.1);
    // A shin nearly upright over the front foot.
    p.usually(JointId.ANKLE, front, "flexion", 6, 1);
    if (p.isStart()) {
      p.exactly(JointId.KNEE, front, "flexion", 20);
    } else if (p.isFinish()) {
      Legs.thigh(p, front, depth);
    }
    Legs.squareHips(p);
    Hands.hang(p);
  }

  /** The weight on the line from the ball of the rear foot to the middle of the front one. */
  private static void over(Posture p, Side front, double half, double aside) {
    double ball = -half + BALL_AHEAD * p.links().footLength();
    p.balancedOver(ball + ON_FRONT * (half - ball));
    p.balancedSideways(front.sign() * aside * (2 * ON_FRONT - 1));
  }
}
