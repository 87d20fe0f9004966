package org.leverbook.display;

import java.util.ArrayList;
import java.util.List;

/** A table in the units and with the digits that its reader prefers. */
final class ReaderSheet {

  private ReaderSheet() {}

  static Sheet of(Sheet sheet, Preferences chosen) {
    boolean pounds = chosen.measure() == Preferences.Measure.POUNDS;
    List<Sheet.Column> columns = new ArrayList<>();
    for (Sheet.Column column : sheet.columns()) {
      InPounds.Other other = pounds ? InPounds.of(column.unit()) : null;
      String name = pounds ? InPounds.text(column.name()) : column.name();
      String unit = other == null ? column.unit() : other.symbol();
      columns.add(new Sheet.Column(name, unit, chosen.decimals(column.decimals())));
    }
    List<List<Object>> rows = new ArrayList<>();
    for (List<Object> row : sheet.rows()) {
      rows.add(pounds ? row(row, sheet.columns()) : row);
    }
    String title = pounds ? InPounds.text(sheet.title()) : sheet.title();
    List<String> notes =
        pounds ? sheet.notes().stream().map(InPounds::text).toList() : sheet.notes();
    return new Sheet(title, columns, rows, notes);
  }

  private static List<Object> row(List<Object> row, List<Sheet.Column> columns) {
    InPounds.Other own = null;
    for (int c = 0; c < row.size(); c++) {
      // Where rows are of different kinds, the unit stands in a column of its own.
      if (columns.get(c).name().equals("unit") && row.get(c) instanceof String unit) {
        own = InPounds.of(unit);
      }
    }
    List<Object> cells = new ArrayList<>();
    for (int c = 0; c < row.size(); c++) {
      InPounds.Other other =
          columns.get(c).unit().isEmpty() ? own : InPounds.of(columns.get(c).unit());
      boolean unit = own != null && columns.get(c).name().equals("unit");
      cells.add(unit ? own.symbol() : cell(row.get(c), other));
    }
    return cells;
  }

  private static Object cell(Object cell, InPounds.Other other) {
    if (cell instanceof Number number && other != null) {
      return number.doubleValue() * other.factor();
    }
    return cell instanceof String text ? InPounds.text(text) : cell;
  }
}
