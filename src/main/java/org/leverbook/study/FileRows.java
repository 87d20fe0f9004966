package org.leverbook.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Csv;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Sheet.Column;
import org.leverbook.statics.Position;

/**
 * Writes rows to a file as they are computed: formatted by all threads, written in order by the one
 * that asked. The note of a row is written when the next row comes, so that the last row can still
 * tell of a stop.
 */
final class FileRows {

  private final Forms form;
  private final List<Span<?>> spans;
  private final List<JointId> joints;
  private String note = ColumnNames.SIGNS + " " + Caution.TEXT;
  private boolean begun;
  private long rows;
  private long held;
  private String firstReason = "";

  /** The lines of one position. */
  private record Lines(List<String> lines, String reason) {}

  FileRows(Forms form, List<Span<?>> spans, List<JointId> joints) {
    this.form = form;
    this.spans = spans;
    this.joints = joints;
  }

  /**
   * Computes and writes.
   *
   * @param name of the file
   * @param count how many positions
   * @param positions from the places of the values to a position
   * @return what was written
   */
  Written write(String name, int count, Function<int[], Position> positions) {
    Span<?>[] faster = spans.subList(1, spans.size()).toArray(new Span<?>[0]);
    int[] done = new int[1];
    Path file =
        OutputFolder.writeText(
            name,
            text -> {
              text.write(header());
              try {
                done[0] =
                    Many.each(
                        "rows of " + name,
                        count,
                        i -> {
                          int[] places = Places.of(i, faster);
                          return lines(places, Attempt.at(() -> positions.apply(places)));
                        },
                        (i, lines) -> take(text, lines));
              } catch (UncheckedIOException e) {
                throw e.getCause();
              }
              finish(text, Stopped.note(done[0], count));
            });
    return new Written(file, rows, held, done[0], count, firstReason);
  }

  private String header() {
    List<Column> varied = new ArrayList<>();
    spans.forEach(span -> varied.add(new Column(span.name(), span.symbol(), 1)));
    List<String> heads = new ArrayList<>();
    form.columns(varied, joints).forEach(column -> heads.add(column.heading()));
    heads.add("note");
    return Csv.line(heads) + "\n";
  }

  private Lines lines(int[] places, Attempt tried) {
    List<Object> values = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      values.add(spans.get(i).value(places[i]));
    }
    List<List<Object>> cells = new ArrayList<>();
    form.rows(values, Kept.of(tried, joints), joints, cells);
    return new Lines(cells.stream().map(Csv::line).toList(), tried.reason());
  }

  private void take(Writer text, Lines lines) {
    try {
      for (String line : lines.lines()) {
        endRow(text);
        text.write(line);
        begun = true;
        rows++;
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    held += lines.reason().isEmpty() ? 1 : 0;
    firstReason = firstReason.isEmpty() ? lines.reason() : firstReason;
  }

  private void endRow(Writer text) throws IOException {
    if (begun) {
      text.write("," + Csv.cell(note) + "\n");
      note = "";
    }
  }

  private void finish(Writer text, List<String> more) throws IOException {
    List<String> all = new ArrayList<>(List.of(note));
    all.addAll(more);
    note = String.join(" ", all).strip();
    endRow(text);
  }
}
