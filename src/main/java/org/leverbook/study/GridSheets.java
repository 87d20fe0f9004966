package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;

/** The tables of a grid, and its short text. */
final class GridSheets {

  private static final String SIGNS =
      "Moments and arms: positive where they tend to flex the joint; of paired joints, one side.";

  /** What a terminal shows of a grid. */
  private static final int MOST_ACROSS = 12;

  private static final int MOST_DOWN = 30;

  private GridSheets() {}

  static Sheet tidy(Grid<?, ?> grid, List<JointId> joints) {
    List<Column> columns = new ArrayList<>();
    columns.add(column(grid.first()));
    columns.add(column(grid.second()));
    joints.forEach(j -> columns.add(new Column(j.word() + " moment", "N·m", 1)));
    joints.forEach(j -> columns.add(new Column(j.word() + " arm", "cm", 1)));
    columns.add(new Column("balance", "% of foot from heel", 1));
    columns.add(Column.text("reason"));
    List<List<Object>> rows = new ArrayList<>();
    for (Cell cell : grid.cells()) {
      List<Object> row = new ArrayList<>();
      row.add(cell.first());
      row.add(cell.second());
      joints.forEach(j -> row.add(cell.held() ? cell.moment(j) : null));
      joints.forEach(j -> row.add(cell.held() ? 100 * cell.arm(j) : null));
      row.add(cell.balance());
      row.add(cell.reason());
      rows.add(row);
    }
    String title = "Grid over " + grid.first().name() + " and " + grid.second().name();
    return new Sheet(title, columns, rows, List.of(SIGNS, Caution.TEXT));
  }

  private static Column column(Span<?> span) {
    return new Column(span.name(), span.symbol(), span.decimals());
  }

  static Sheet wide(Grid<?, ?> grid, JointId joint) {
    Span<?> across = grid.second();
    String start = joint.word() + " moment at " + across.name() + " ";
    return wide(grid, joint, value -> new Column(start + across.text(value), "N·m", 1), true);
  }

  private static Sheet wide(
      Grid<?, ?> grid, JointId joint, DoubleFunction<Column> heading, boolean withReasons) {
    List<Column> columns = new ArrayList<>();
    columns.add(column(grid.first()));
    int width = grid.second().values();
    for (int k = 0; k < width; k++) {
      columns.add(heading.apply(grid.second().value(k)));
    }
    if (withReasons) {
      columns.add(Column.text("reason"));
    }
    List<List<Object>> rows = new ArrayList<>();
    for (int i = 0; i < grid.first().values(); i++) {
      List<Cell> line = grid.cells().subList(i * width, (i + 1) * width);
      List<Object> row = new ArrayList<>();
      row.add(grid.first().value(i));
      line.forEach(cell -> row.add(cell.held() ? cell.moment(joint) : null));
      if (withReasons) {
        row.add(reasons(grid.second(), line));
      }
      rows.add(row);
    }
    String title =
        String.format(
            Locale.ROOT,
            "%s moment (N·m): %s down, %s across",
            joint.word(),
            grid.first().name(),
            grid.second().name());
    return new Sheet(title, columns, rows, List.of(SIGNS, Caution.TEXT));
  }

  private static String reasons(Span<?> across, List<Cell> line) {
    return Gap.in(line.stream().map(Cell::reason).toList()).stream()
        .map(
            gap -> {
              String from = across.text(line.get(gap.first()).second());
              String to = across.text(line.get(gap.last()).second());
              String where = gap.size() == 1 ? from : from + " to " + to;
              return across.name() + " " + where + ": " + gap.reason();
            })
        .collect(Collectors.joining(" "));
  }

  /** Why pairs are missing; reasons that differ in their numbers only are told once. */
  static List<String> reasons(Grid<?, ?> grid) {
    Map<String, List<Cell>> alike = new LinkedHashMap<>();
    for (Cell cell : grid.cells()) {
      if (!cell.held()) {
        alike.computeIfAbsent(Gap.wording(cell.reason()), w -> new ArrayList<>()).add(cell);
      }
    }
    return alike.values().stream()
        .map(
            cells ->
                String.format(
                    Locale.ROOT,
                    "No position for %,d of %,d pairs, as at %s: %s",
                    cells.size(),
                    grid.cells().size(),
                    pair(grid, cells.get(0)),
                    cells.get(0).reason()))
        .toList();
  }

  /** A pair in words, as in "hip height 48.0 cm, bar mass 40.0 kg". */
  static String pair(Grid<?, ?> grid, Cell cell) {
    return grid.first().name()
        + " "
        + grid.first().text(cell.first())
        + ", "
        + grid.second().name()
        + " "
        + grid.second().text(cell.second());
  }

  static String text(Grid<?, ?> grid) {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "grid over %s and %s: %,d of %,d positions could be held\n",
            ends(grid.first()),
            ends(grid.second()),
            grid.held(),
            grid.cells().size()));
    boolean fits = grid.second().values() <= MOST_ACROSS && grid.first().values() <= MOST_DOWN;
    if (fits && grid.held() > 0) {
      Span<?> across = grid.second();
      Sheet shown = wide(grid, most(grid), value -> new Column(across.text(value), "", 1), false);
      text.append(new Sheet(shown.title(), shown.columns(), shown.rows(), List.of(SIGNS)).text());
      text.append('\n');
    }
    reasons(grid).forEach(reason -> text.append(reason).append('\n'));
    text.append(
        "table() has a row for each pair; wideTable(HIP) and plot(HIP) are of one joint; at(…) gives"
            + " the position of a pair\n");
    return text.append(Caution.TEXT).toString();
  }

  private static String ends(Span<?> span) {
    return span.name() + " (" + span.text(span.from()) + " to " + span.text(span.to()) + ")";
  }

  /** Of the usual joints the one that is asked most somewhere in the grid. */
  private static JointId most(Grid<?, ?> grid) {
    return Tables.USUAL.stream()
        .max(
            Comparator.comparingDouble(
                joint ->
                    grid.cells().stream()
                        .filter(Cell::held)
                        .mapToDouble(cell -> Math.abs(cell.moment(joint)))
                        .max()
                        .orElse(0)))
        .orElseThrow();
  }
}
