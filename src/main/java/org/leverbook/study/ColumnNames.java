package org.leverbook.study;

import org.leverbook.body.JointId;
import org.leverbook.display.Sheet.Column;

/**
 * The columns of all tables of positions. They are stable: a script may rely on them.
 *
 * <table>
 * <caption>Columns, in their order</caption>
 * <tr><th>column</th><th>in the wide form</th><th>in the tidy form</th></tr>
 * <tr><td>what is varied, as in {@code hip height (cm)}</td><td>one each</td><td>one each</td></tr>
 * <tr><td>{@code joint}</td><td></td><td>as in "hip", "L5/S1"</td></tr>
 * <tr><td>{@code side}</td><td></td><td>"left" or "right"; empty in the midline</td></tr>
 * <tr><td>{@code moment (N·m)}</td><td>{@code hip moment (N·m)}, one for each joint</td><td>one
 * </td></tr>
 * <tr><td>{@code arm (cm)}</td><td>{@code hip arm (cm)}, one for each joint</td><td>one</td></tr>
 * <tr><td>{@code tends to}</td><td></td><td>a verb, as in "flex"</td></tr>
 * <tr><td>{@code opposed by}</td><td></td><td>as in "hip extensors"</td></tr>
 * <tr><td>{@code balance (% of foot from heel)}</td><td>yes</td><td></td></tr>
 * <tr><td>{@code reason}</td><td>yes</td><td>yes</td></tr>
 * </table>
 *
 * <p>Moments and arms are signed, positive where the resistance flexes (or turns the joint in its
 * motion's positive direction); of paired joints they are of the side where the moment is greater.
 * Where nothing is held these cells are empty and {@code reason} says why.
 */
final class ColumnNames {

  static final Column JOINT = Column.text("joint");
  static final Column SIDE = Column.text("side");
  static final Column MOMENT = new Column("moment", "N·m", 1);
  static final Column ARM = new Column("arm", "cm", 1);
  static final Column TENDS_TO = Column.text("tends to");
  static final Column OPPOSED_BY = Column.text("opposed by");
  static final Column BALANCE = new Column("balance", "% of foot from heel", 1);
  static final Column REASON = Column.text("reason");

  /** What stands below every such table. */
  static final String SIGNS =
      "Moments and arms: positive where they tend to flex the joint; of paired joints, one side.";

  private ColumnNames() {}

  static Column moment(JointId joint) {
    return new Column(joint.word() + " moment", "N·m", 1);
  }

  static Column arm(JointId joint) {
    return new Column(joint.word() + " arm", "cm", 1);
  }
}
