package org.leverbook.muscle;

import java.util.Locale;
import org.leverbook.body.JointId;
import org.leverbook.display.Shown;

/**
 * What one disc carries, muscles included.
 *
 * <p>Sign by a worked case: 150 N·m at L5/S1, held by a muscle along the disc's axis with an arm of
 * 67 mm, under 1000 N of weight, the disc tilted forward by 34 degrees: compression 150/0.067 +
 * 1000 cos 34° = 3068 N, forward shear 1000 sin 34° = 559 N.
 *
 * @param level L5/S1 to T12/L1
 * @param weight compression from loads, weight and supports above, newtons
 * @param muscles compression from muscles, newtons
 * @param tissue compression from stretched tissue, newtons
 * @param shear how hard the upper vertebra is pushed forward along the disc, newtons
 * @param lateral how hard it is pushed to the right, newtons
 * @param area of the disc, m²
 */
public record DiscLoad(
    JointId level,
    double weight,
    double muscles,
    double tissue,
    double shear,
    double lateral,
    double area)
    implements Shown {

  /**
   * How hard the disc is pressed.
   *
   * @return newtons, normal to the disc
   */
  public double compression() {
    return weight + muscles + tissue;
  }

  /**
   * The pressure that would be measured inside the disc: compression / (0.66 area). The factor
   * (Dreischarf et al. 2013) and the area are from memory.
   *
   * @return pascals
   */
  public double pressure() {
    return compression() / (Discs.PRESSURE_FACTOR * area);
  }

  @Override
  public String text() {
    return String.format(
        Locale.ROOT,
        "%s: pressed with %.0f N (weight and load %.0f, muscles %.0f, stretched tissue %.0f),"
            + " shear %.0f N %s",
        level.word(),
        compression(),
        weight,
        muscles,
        tissue,
        Math.abs(shear),
        shear < 0 ? "backward" : "forward");
  }

  @Override
  public String toString() {
    return text();
  }
}
