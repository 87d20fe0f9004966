package org.leverbook.lift;

import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.support.Floor;
import org.leverbook.support.Footing;

/** A standing calf raise with a bar on the back, from flat feet to raised heels. */
public final class CalfRaise extends Lift<CalfRaise>
    implements Can.StepHeight<CalfRaise>,
        Can.HeelHeight<CalfRaise>,
        Can.Stance<CalfRaise>,
        With.HoldsBar<CalfRaise> {

  /** How far the heels sink below the plate at the start, metres: common practice, no source. */
  private static final double DROP = 0.03;

  /** The weight is just ahead of the joints of the toes, in shares of foot length. */
  private static final double OVER = 0.25;

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
    return "Rise onto the balls of the feet on a plate, heels free, a bar on the back: the calves.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.5, Site.UPPER_BACK_HIGH);
    double plate = p.value(Setting.STEP_HEIGHT, 0.05);
    double drop = Math.min(DROP, plate);
    double raised = p.between(-drop, p.value(Setting.HEEL_HEIGHT, 0.07));
    double width = p.value(Setting.STANCE_WIDTH, 2.2 * p.links().hipHalfWidth());
    for (Side side : p.sides()) {
      Vector3D middle = new Vector3D(0, plate, side.sign() * width / 2);
      Feet.foot(p, side, middle, p.angle(Setting.TURN_OUT, 5), raised);
    }
    // The heels have no ground under them but the floor.
    Map<Side, Double> heights = Map.of(Side.RIGHT, plate, Side.LEFT, plate);
    p.on(new Footing(p.body(), heights, -plate, Floor.SHOE_FRICTION));
    p.balancedOver(OVER * p.links().footLength()).spine();
    p.roughly(0, p.links().standingHipHeight() + plate + raised, 0);
    p.exactly(JointId.KNEE, "flexion", 3);
    p.usually(JointId.HIP, "flexion", 3, 0.5);
    Racked.onBack(p, Site.UPPER_BACK_HIGH);
  }
}
