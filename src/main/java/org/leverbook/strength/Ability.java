package org.leverbook.strength;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.muscle.JointLoads;
import org.leverbook.pose.Placement;

/**
 * One way of one joint to act, and how strongly it can.
 *
 * @param joint which
 * @param side which half of the body
 * @param action what the joint does against the load, as in "extend"
 * @param unit N·m, or N for the grip
 * @param asked what loads ask of it
 * @param most the most it can give in a placement; empty where nothing was measured
 * @param evidence where that comes from
 */
public record Ability(
    JointId joint,
    Side side,
    String action,
    String unit,
    Asked asked,
    Optional<ToDoubleFunction<Placement>> most,
    Evidence evidence) {

  /** What loads ask of one action. */
  @FunctionalInterface
  public interface Asked {

    /**
     * The moment (or grip force) muscles must give in the action's direction.
     *
     * @param loads what acts
     * @param where where the body is
     * @return negative where the opposite action is asked
     */
    double of(JointLoads loads, Placement where);
  }

  /**
   * The joint with its side.
   *
   * @return as in "right hip" or "L5/S1"
   */
  public String jointName() {
    return joint.on(side);
  }
}
