package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.display.Sheet.Column;

/** The two forms a table of positions can have: wide, a row a position; tidy, one a joint too. */
enum Forms {
  /** One row for each position, columns for each joint. */
  WIDE {
    @Override
    List<Column> columns(List<Column> varied, List<JointId> joints) {
      List<Column> columns = new ArrayList<>(varied);
      joints.forEach(j -> columns.add(ColumnNames.moment(j)));
      joints.forEach(j -> columns.add(ColumnNames.arm(j)));
      columns.add(ColumnNames.BALANCE);
      columns.add(ColumnNames.REASON);
      return columns;
    }

    @Override
    void rows(List<Object> values, Kept kept, List<JointId> joints, List<List<Object>> rows) {
      rows.add(joined(values, kept.wide(joints)));
    }
  },
  /** One row for each position and joint. */
  TIDY {
    @Override
    List<Column> columns(List<Column> varied, List<JointId> joints) {
      List<Column> columns = new ArrayList<>(varied);
      columns.add(ColumnNames.JOINT);
      columns.add(ColumnNames.SIDE);
      columns.add(ColumnNames.MOMENT);
      columns.add(ColumnNames.ARM);
      columns.add(ColumnNames.TENDS_TO);
      columns.add(ColumnNames.OPPOSED_BY);
      columns.add(ColumnNames.REASON);
      return columns;
    }

    @Override
    void rows(List<Object> values, Kept kept, List<JointId> joints, List<List<Object>> rows) {
      joints.forEach(joint -> rows.add(joined(values, kept.tidy(joint))));
    }
  };

  /**
   * The columns.
   *
   * @param varied those of what is varied
   * @param joints which joints
   */
  abstract List<Column> columns(List<Column> varied, List<JointId> joints);

  /**
   * Adds the rows of one position.
   *
   * @param values of what is varied
   * @param kept its numbers
   * @param joints which joints
   * @param rows takes them
   */
  abstract void rows(List<Object> values, Kept kept, List<JointId> joints, List<List<Object>> rows);

  private static List<Object> joined(List<Object> values, List<Object> cells) {
    List<Object> row = new ArrayList<>(values);
    row.addAll(cells);
    return row;
  }

  /** The joints asked for, or the usual ones where none are. */
  static List<JointId> orUsual(JointId... joints) {
    return joints.length == 0 ? Tables.USUAL : Arrays.stream(joints).distinct().toList();
  }
}
