package org.leverbook.strength;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
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

  /** A hand that is pressed so straight at its forearm carries the bar over the wrist. */
  private static final double STRAIGHT = Math.cos(Math.toRadians(45));

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

  /** The same with a share of its strength. */
  Ability times(double share) {
    return new Ability(
        joint,
        side,
        action,
        unit,
        asked,
        most.map(whole -> where -> share * whole.applyAsDouble(where)),
        evidence);
  }

  /**
   * The joint with its side.
   *
   * @return as in "right hip" or "L5/S1"
   */
  public String jointName() {
    return joint.on(side);
  }

  /**
   * Whether it can be what limits. A wrist cannot where the load presses the hand along the
   * forearm: a lifter lays the bar over the wrist then, while here its place in the hand is fixed.
   *
   * @param loads what acts
   * @param where where the body is
   * @return true except for such a wrist
   */
  boolean limits(JointLoads loads, Placement where) {
    if (joint != JointId.WRIST) {
      return true;
    }
    Vector3D force = loads.force(where.tree().distalOf(jointName()));
    int forearm = where.tree().distalOf(JointId.ELBOW.on(side));
    return force.dotProduct(where.frame(forearm).y()) < STRAIGHT * force.getNorm();
  }
}
