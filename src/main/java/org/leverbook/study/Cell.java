package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.leverbook.body.JointId;
import org.leverbook.quantity.Refused;

/**
 * What came of one pair of a {@link Grid}, or of three values of a {@link GridOfThree}. It keeps
 * the numbers and lets the position go, so that large grids fit.
 */
public final class Cell {

  private final double[] values;
  private final Kept kept;

  private Cell(double[] values, Kept kept) {
    this.values = values;
    this.kept = kept;
  }

  static Cell of(Attempt tried, double... values) {
    return new Cell(values, Kept.of(tried));
  }

  /** The same without the value that varies slowest. */
  Cell inSlice() {
    return new Cell(Arrays.copyOfRange(values, 1, values.length), kept);
  }

  /**
   * Value of the first quantity.
   *
   * @return in its unit
   */
  public double first() {
    return values[0];
  }

  /**
   * Value of the second quantity.
   *
   * @return in its unit
   */
  public double second() {
    return values[1];
  }

  /**
   * Value of the third quantity.
   *
   * @return in its unit
   * @throws Refused if there are only two
   */
  public double third() {
    if (values.length < 3) {
      throw new Refused("This grid varies two quantities: there is no third value.");
    }
    return values[2];
  }

  /** All its values, slowest first. */
  List<Object> values() {
    List<Object> all = new ArrayList<>();
    for (double value : values) {
      all.add(value);
    }
    return all;
  }

  double value(int which) {
    return values[which];
  }

  Kept kept() {
    return kept;
  }

  /**
   * Whether there is a position, and its supports hold it.
   *
   * @return true if so
   */
  public boolean held() {
    return kept.held();
  }

  /**
   * Why there is no position, or why it cannot be held.
   *
   * @return a sentence; empty where it is held
   */
  public String reason() {
    return kept.reason();
  }

  /**
   * The moment at a joint; of a paired joint, the side where it is greater.
   *
   * @param joint which
   * @return newton metres, positive where the resistance flexes
   * @throws Refused if nothing is held here; says why
   */
  public double moment(JointId joint) {
    return kept.moment(joint);
  }

  /**
   * The arm at a joint about its flexion axis.
   *
   * @param joint which
   * @return metres, with the sign of the moment
   * @throws Refused if nothing is held here; says why
   */
  public double arm(JointId joint) {
    return kept.arm(joint);
  }

  @Override
  public String toString() {
    List<String> told = new ArrayList<>();
    values().forEach(value -> told.add(String.valueOf(value)));
    return String.format(
        Locale.ROOT, "%s: %s", String.join(", ", told), held() ? "held" : reason());
  }
}
