package org.leverbook.lift;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;

/** A row of a dumbbell in one hand, the other hand on a bench. */
public final class OneArmRow extends Lift<OneArmRow>
    implements Can.TrunkLean<OneArmRow>,
        Can.KneeBend<OneArmRow>,
        Can.Stance<OneArmRow>,
        Can.SpineRounding<OneArmRow>,
        Can.Raise<OneArmRow>,
        With.BenchHeight<OneArmRow>,
        With.HoldsDumbbells<OneArmRow>,
        Can.OneSided<OneArmRow> {

  private OneArmRow(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static OneArmRow of(Person lifter) {
    return new OneArmRow(nothingSaid(lifter));
  }

  @Override
  OneArmRow changed(Setup changed) {
    return new OneArmRow(changed);
  }

  @Override
  public String name() {
    return "one-arm row";
  }

  @Override
  public String purpose() {
    return "Pull a dumbbell to the hip with one arm, the other hand on a bench: lats and upper back of one side, the back relieved.";
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
    Side leans = works == Side.RIGHT ? Side.LEFT : Side.RIGHT;
    Weights.hands(p, "dumbbell", 0.25, List.of(works));
    Feet.stand(
        p,
        p.value(Setting.STANCE_WIDTH, 3.5 * p.links().hipHalfWidth()) / 2,
        p.angle(Setting.TURN_OUT, 10));
    p.roughly(-0.2, 0.9 * p.links().standingHipHeight(), 70);
    p.trunkLeans(p.angle(Setting.TRUNK_LEAN, 75));
    p.spine();
    Bodies.kneesBent(p, p.angle(Setting.KNEE_BEND, 30));
    Bodies.square(p);
    Bodies.handOnBench(p, leans, p.value(Setting.BENCH_HEIGHT, Rests.BENCH_HEIGHT));
    // More weight than the feet can balance: the hand takes the rest.
    p.balancedOver(0.15);
    p.exactly(JointId.FOREARM, works, "rotation", 80);
    p.usually(JointId.SHOULDER, works, "flexion", p.between(70, -20), 0.2);
    p.usually(JointId.SHOULDER, works, "abduction", p.between(5, 12), 1);
    double raise = p.angle(Setting.RAISE, 85);
    if (p.isStart()) {
      Hands.hang(p, works);
    } else if (p.isFinish()) {
      Hands.armRaised(p, works, raise);
      p.usually(JointId.ELBOW, works, "flexion", 95, Posture.EASY);
      Pulls.forearmUpright(p, works, 1);
    }
    Pulls.straightWay(p, works);
  }
}
