package org.leverbook.study;

import java.util.Optional;
import org.leverbook.display.Shown;
import org.leverbook.display.ShownAdapter;
import tech.tablesaw.api.Table;

/** Shows a Tablesaw table: long ones folded, with their counts. */
public final class TableAdapter implements ShownAdapter {

  private static final int LONGEST = 40;

  @Override
  public Optional<Shown> show(Object value) {
    return value instanceof Table table ? Optional.of(() -> text(table)) : Optional.empty();
  }

  private static String text(Table table) {
    String printed = table.printAll();
    if (table.rowCount() > LONGEST) {
      printed = table.print(LONGEST);
    }
    return printed.stripTrailing() + "\n" + table.rowCount() + " rows";
  }
}
