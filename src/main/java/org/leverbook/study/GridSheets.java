package org.leverbook.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;

/** The tables of a grid, and its short text. */
final class GridSheets {

  /** What a terminal shows of a grid. */
  private static final int MOST_ACROSS = 12;

  private static final int MOST_DOWN = 30;

  private GridSheets() {}

  /** A table of all cells in one of the two forms. */
  static Sheet form(Forms form, List<Span<?>> spans, List<Cell> cells, List<JointId> joints) {
    List<List<Object>> rows = new ArrayList<>();
    cells.forEach(cell -> form.rows(cell.values(), cell.kept(), joints, rows));
    List<String> names = spans.stream().map(Span::name).toList();
    List<String> notes = new ArrayList<>(stopped(spans, cells));
    notes.add(ColumnNames.SIGNS);
    notes.add(Caution.TEXT);
    return new Sheet(
        "Grid over "
            + String.join(", ", names.subList(0, names.size() - 1))
            + " and "
            + names.get(names.size() - 1),
        form.columns(spans.stream().map(GridSheets::column).toList(), joints),
        rows,
        notes);
  }

  /** What is to be said where the user stopped a grid. */
  static List<String> stopped(List<Span<?>> spans, List<Cell> cells) {
    int asked = spans.stream().mapToInt(Span::values).reduce(1, (a, b) -> a * b);
    return Stopped.note(cells.size(), asked);
  }

  private static Column column(Span<?> span) {
    return new Column(span.name(), span.symbol(), span.decimals());
  }

  static Sheet cross(Grid<?, ?> grid, JointId joint) {
    Span<?> across = grid.second();
    String start = joint.word() + " moment at " + across.name() + " ";
    return cross(grid, joint, value -> new Column(start + across.text(value), "N·m", 1), true);
  }

  private static Sheet cross(
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
      int done = grid.cells().size();
      List<Cell> line =
          grid.cells().subList(Math.min(done, i * width), Math.min(done, (i + 1) * width));
      List<Object> row = new ArrayList<>();
      row.add(grid.first().value(i));
      line.forEach(cell -> row.add(cell.held() ? cell.moment(joint) : null));
      row.addAll(Collections.nCopies(width - line.size(), null));
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
    List<String> notes = new ArrayList<>(stopped(grid.spans(), grid.cells()));
    notes.add(ColumnNames.SIGNS);
    notes.add(Caution.TEXT);
    return new Sheet(title, columns, rows, notes);
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

  /** Why cells are missing; reasons that differ in their numbers only are told once. */
  static List<String> reasons(List<Span<?>> spans, List<Cell> cells, String called) {
    Map<String, List<Cell>> alike = new LinkedHashMap<>();
    for (Cell cell : cells) {
      if (!cell.held()) {
        alike.computeIfAbsent(Gap.wording(cell.reason()), w -> new ArrayList<>()).add(cell);
      }
    }
    List<String> reasons = new ArrayList<>(stopped(spans, cells));
    for (List<Cell> group : alike.values()) {
      reasons.add(
          String.format(
              Locale.ROOT,
              "No position for %,d of %,d %s, as at %s: %s",
              group.size(),
              cells.size(),
              called,
              words(spans, group.get(0)),
              group.get(0).reason()));
    }
    return reasons;
  }

  /** A cell in words, as in "hip height 48.0 cm, bar mass 40.0 kg". */
  static String words(List<Span<?>> spans, Cell cell) {
    return IntStream.range(0, spans.size())
        .mapToObj(i -> spans.get(i).name() + " " + spans.get(i).text(cell.value(i)))
        .collect(Collectors.joining(", "));
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
      Sheet shown = cross(grid, most(grid), value -> new Column(across.text(value), "", 1), false);
      text.append(
          new Sheet(shown.title(), shown.columns(), shown.rows(), List.of(ColumnNames.SIGNS))
              .text());
      text.append('\n');
    }
    grid.reasons().forEach(reason -> text.append(reason).append('\n'));
    text.append(
        "table() has a row for each pair, tidyTable() one for each pair and joint; crossTable(HIP)"
            + " and plot(HIP) are of one joint; at(…) gives the position of a pair\n");
    return text.append(Caution.TEXT).toString();
  }

  static String ends(Span<?> span) {
    return span.name() + " (" + span.text(span.from()) + " to " + span.text(span.to()) + ")";
  }

  /** Of the usual joints the one that is asked most somewhere in the grid. */
  private static JointId most(Grid<?, ?> grid) {
    return Tables.USUAL.stream()
        .max(Comparator.comparingDouble(joint -> greatest(grid.cells(), joint)))
        .orElseThrow();
  }

  private static double greatest(List<Cell> cells, JointId joint) {
    return cells.stream()
        .filter(Cell::held)
        .mapToDouble(cell -> Math.abs(cell.moment(joint)))
        .max()
        .orElse(0);
  }
}
