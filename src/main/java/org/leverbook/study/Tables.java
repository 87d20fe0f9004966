package org.leverbook.study;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.display.FileCells;
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
        sheet.rows().forEach(row -> append(numbers, (Number) row.get(column)));
        table.addColumns(numbers);
      } else {
        StringColumn texts = StringColumn.create(heading);
        sheet.rows().forEach(row -> texts.append(text(row.get(column))));
        table.addColumns(texts);
      }
    }
    return table;
  }

  /** Numbers with a unit or decimals; a single text among them makes texts of all. */
  private static boolean numeric(Sheet sheet, int column) {
    boolean text = false;
    boolean number = false;
    for (List<Object> row : sheet.rows()) {
      text |= row.get(column) instanceof String;
      number |= row.get(column) instanceof Number;
    }
    Sheet.Column heading = sheet.columns().get(column);
    return !text && (number || heading.decimals() > 0 || !heading.unit().isEmpty());
  }

  private static String text(Object cell) {
    return cell instanceof Number number
        ? FileCells.number(number.doubleValue())
        : cell == null ? "" : cell.toString();
  }

  private static void append(DoubleColumn column, Number value) {
    if (value == null) {
      column.appendMissing();
    } else {
      column.append(value.doubleValue());
    }
  }

  /** Where the balance is, per cent of the foot from the heel; null where nothing stands. */
  static Double balance(Position position) {
    return position.onGround().filter(Balance::feet).map(b -> 100 * b.shareOfFoot()).orElse(null);
  }
}
