package org.leverbook.study;

import java.util.Locale;
import java.util.function.Supplier;
import org.leverbook.body.JointId;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** What came of one value of a {@link Sweep}. */
public final class SweepRow {

  /** Up to so many rows a sweep keeps its positions whole: each holds some 70 kilobytes. */
  static final int KEPT = 500;

  private final double value;
  private final String name;
  private final Kept kept;
  private final Flexions flexions;
  private final Position whole;
  private final Supplier<Position> again;

  private SweepRow(
      double value,
      String name,
      Kept kept,
      Flexions flexions,
      Position whole,
      Supplier<Position> again) {
    this.value = value;
    this.name = name;
    this.kept = kept;
    this.flexions = flexions;
    this.whole = whole;
    this.again = again;
  }

  static SweepRow of(double value, String name, int rows, Supplier<Position> positions) {
    Attempt tried = Attempt.at(positions);
    Position found = tried.position();
    Flexions flexions = found == null ? null : Flexions.of(found);
    Position whole = rows <= KEPT ? found : null;
    return new SweepRow(value, name, Kept.of(tried), flexions, whole, positions);
  }

  /** The same position against a joint's angle, degrees; there must be one. */
  SweepRow against(JointId joint) {
    return new SweepRow(flexions.degrees(joint), "", kept, flexions, whole, again);
  }

  /** The same position against any number of it; there must be one. */
  SweepRow against(double number) {
    return new SweepRow(number, "", kept, flexions, whole, again);
  }

  /**
   * The value.
   *
   * @return in the sweep's unit; of named things their number, from 1
   */
  public double value() {
    return value;
  }

  /**
   * The thing's name.
   *
   * @return as in "overhand"; empty where a quantity is varied
   */
  public String name() {
    return name;
  }

  /**
   * Whether there is a position, and its supports hold it.
   *
   * @return true if so
   */
  public boolean held() {
    return kept.held();
  }

  /** Whether there is a position, held or not. */
  boolean found() {
    return kept.found();
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
   * The position, to be drawn or asked further.
   *
   * @return what came of the value; in a sweep of more than 500 rows computed anew
   * @throws Refused if nothing came of it; says why
   */
  public Position position() {
    if (whole != null) {
      return whole;
    }
    if (!found()) {
      throw new Refused("There is no position here: " + reason());
    }
    return Ask.present("lambda's position", again.get(), "pull.start()");
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

  Kept kept() {
    return kept;
  }

  @Override
  public String toString() {
    String at = name.isEmpty() ? String.format(Locale.ROOT, "%s", value) : name;
    return at + ": " + (held() ? "held" : reason());
  }
}
