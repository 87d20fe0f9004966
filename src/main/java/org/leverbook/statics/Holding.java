package org.leverbook.statics;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.display.Shown;

/**
 * Whether the supports can hold the person still, and if not, what is lacking.
 *
 * @param verdict in one word
 * @param sentence in the coach's words; empty when held
 * @param missingForce the smallest force that would have to be added to hold it, in the world,
 *     newtons; zero when held
 * @param missingMoment what would have to be added besides, about the middle of the contacts, in
 *     the world, newton metres; zero when held
 * @param neededFriction the least coefficient of friction with which it would hold; where it holds,
 *     or where no friction helps, zero
 */
public record Holding(
    Verdict verdict,
    String sentence,
    Vector3D missingForce,
    Vector3D missingMoment,
    double neededFriction)
    implements Shown {

  /** The supports hold. */
  public static final Holding FIRM = new Holding(Verdict.HELD, "", Vector3D.ZERO, Vector3D.ZERO, 0);

  /** What the supports can do. */
  public enum Verdict {
    /** They hold the person still. */
    HELD,
    /** More friction would be needed. */
    SLIPS,
    /** The person would turn over an edge of what carries them. */
    TIPS,
    /** Nothing takes up a force or a turning. */
    NOT_HELD
  }

  /**
   * Whether it is held.
   *
   * @return true if so
   */
  public boolean held() {
    return verdict == Verdict.HELD;
  }

  @Override
  public String text() {
    return held() ? "held" : sentence;
  }

  @Override
  public String toString() {
    return text();
  }
}
