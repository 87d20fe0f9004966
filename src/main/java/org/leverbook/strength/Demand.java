package org.leverbook.strength;

import java.util.Locale;
import java.util.OptionalDouble;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Shown;

/**
 * What is asked of one joint in one direction, and what it can give there.
 *
 * @param joint which
 * @param side which half of the body
 * @param action what the joint must do, as in "extend"
 * @param unit N·m, or N for the grip
 * @param needed what is asked, above zero
 * @param canGive the most it can give; empty where nothing was measured
 * @param limits whether it can be what limits: false for a wrist that the lifter can lay the bar
 *     over
 * @param evidence where that comes from
 */
public record Demand(
    JointId joint,
    Side side,
    String action,
    String unit,
    double needed,
    OptionalDouble canGive,
    boolean limits,
    Evidence evidence)
    implements Shown {

  /** Weaker than this counts as this, so that a share stays a number. */
  private static final double WEAKEST = 0.01;

  /**
   * What is asked over what can be given.
   *
   * @return 1 at the limit; empty where the strength is not known
   */
  public OptionalDouble effort() {
    return canGive.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(needed / Math.max(WEAKEST, canGive.getAsDouble()));
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
   * What is asked of which joint.
   *
   * @return as in "right hip, extend"
   */
  public String what() {
    return jointName() + ", " + action;
  }

  @Override
  public String text() {
    return canGive.isEmpty()
        ? String.format(
            Locale.ROOT, "%s: %.0f %s asked; its strength is not known", what(), needed, unit)
        : String.format(
            Locale.ROOT,
            "%s: %.0f of %.0f %s, %.0f %%",
            what(),
            needed,
            canGive.getAsDouble(),
            unit,
            100 * effort().getAsDouble());
  }

  @Override
  public String toString() {
    return text();
  }
}
