package org.leverbook.study;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.display.Sheet;
import org.leverbook.statics.Balance;
import org.leverbook.statics.Position;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.numbers.NumberColumnFormatter;

/** What the tables of sweeps and grids have in common. */
final class Tables {

  /** The joints a table holds when none are named. */
  static final List<JointId> USUAL =
      List.of(
          JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.L5_S1, JointId.T7_T8, JointId.SHOULDER);

  private Tables() {}

  /** The same cells as a Tablesaw table. */
  static Table of(Sheet sheet) {
    Table table = Table.create(sheet.title());
    for (int c = 0; c < sheet.columns().size(); c++) {
      int column = c;
      String heading = sheet.columns().get(c).heading();
      if (numeric(sheet, c)) {
        DoubleColumn numbers = DoubleColumn.create(heading);
        // For reading only: files keep every digit.
        numbers.setPrintFormatter(NumberColumnFormatter.fixedWithGrouping(1));
        sheet.rows().forEach(row -> append(numbers, (Double) row.get(column)));
        table.addColumns(numbers);
      } else {
        StringColumn texts = StringColumn.create(heading);
        sheet.rows().forEach(row -> texts.append((String) row.get(column)));
        table.addColumns(texts);
      }
    }
    return table;
  }

  /** A column with decimals, or of whole numbers. */
  private static boolean numeric(Sheet sheet, int column) {
    return sheet.columns().get(column).decimals() > 0
        || sheet.rows().stream().anyMatch(row -> row.get(column) instanceof Double);
  }

  private static void append(DoubleColumn column, Double value) {
    if (value == null) {
      column.appendMissing();
    } else {
      column.append(value);
    }
  }

  /** Where the balance is, per cent of the foot from the heel; null where nothing stands. */
  static Double balance(Position position) {
    return position.onGround().filter(Balance::feet).map(b -> 100 * b.shareOfFoot()).orElse(null);
  }
}
