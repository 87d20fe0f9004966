package org.leverbook.study;

import java.util.Locale;
import org.leverbook.body.JointId;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Position;

/**
 * What came of one pair of a {@link Grid}. It keeps the numbers and lets the position go, so that
 * large grids fit.
 */
public final class Cell {

  private static final JointId[] JOINTS = JointId.values();

  private final double first;
  private final double second;
  private final String reason;
  private final double[] moments;
  private final double[] arms;
  private final Double balance;

  private Cell(double first, double second, Attempt tried) {
    this.first = first;
    this.second = second;
    this.reason = tried.reason();
    boolean held = tried.held();
    Position position = tried.position();
    moments = new double[held ? JOINTS.length : 0];
    arms = new double[moments.length];
    for (int j = 0; j < moments.length; j++) {
      JointMoment moment = position.moment(JOINTS[j]);
      moments[j] = moment.signed();
      arms[j] = moment.signedArm();
    }
    balance = held ? Tables.balance(position) : null;
  }

  static Cell of(double first, double second, Attempt tried) {
    return new Cell(first, second, tried);
  }

  /**
   * Value of the first quantity.
   *
   * @return in its unit
   */
  public double first() {
    return first;
  }

  /**
   * Value of the second quantity.
   *
   * @return in its unit
   */
  public double second() {
    return second;
  }

  /**
   * Whether there is a position, and its supports hold it.
   *
   * @return true if so
   */
  public boolean held() {
    return moments.length > 0;
  }

  /**
   * Why there is no position, or why it cannot be held.
   *
   * @return a sentence; empty where it is held
   */
  public String reason() {
    return reason;
  }

  /**
   * The moment at a joint; of a paired joint, the side where it is greater.
   *
   * @param joint which
   * @return newton metres, positive where the resistance flexes
   * @throws Refused if nothing is held here; says why
   */
  public double moment(JointId joint) {
    return known(moments)[joint.ordinal()];
  }

  /**
   * The arm at a joint about its flexion axis.
   *
   * @param joint which
   * @return metres, with the sign of the moment
   * @throws Refused if nothing is held here; says why
   */
  public double arm(JointId joint) {
    return known(arms)[joint.ordinal()];
  }

  /** Per cent of the foot from the heel; null where nothing stands on level ground. */
  Double balance() {
    return balance;
  }

  private double[] known(double[] numbers) {
    if (!held()) {
      throw new Refused("There is no moment here: " + reason);
    }
    return numbers;
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s, %s: %s", first, second, held() ? "held" : reason);
  }
}
