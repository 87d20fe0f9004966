package org.leverbook.script;

import java.io.PrintStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.IntUnaryOperator;
import java.util.function.Supplier;
import org.leverbook.desk.Desk;
import org.leverbook.display.OnStage;
import org.leverbook.display.Shown;
import org.leverbook.display.Stage;
import org.leverbook.language.Leaving;
import org.leverbook.notebook.Cell;
import org.leverbook.notebook.MimeBundle;
import org.leverbook.notebook.Notebook;
import org.leverbook.notebook.Output;
import org.leverbook.notebook.Recording;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Problem;
import org.leverbook.session.Value;

/**
 * Runs the cells of one notebook at a desk of their own, from the first to the last or to the first
 * mistake, and takes down what they give.
 *
 * <p>Two marks on a cell are heeded, as is usual with notebooks: {@code raises-exception} (a
 * mistake there does not end the run) and {@code skip-execution} (the cell stays as it is).
 */
final class CellRunner {

  private static final String MAY_FAIL = "raises-exception";
  private static final String SKIP = "skip-execution";

  private final Notebook notebook;
  private final Recording recording;
  private final Map<Integer, Integer> counts = new HashMap<>();
  private Optional<Duration> limit = Optional.empty();
  private IntUnaryOperator firstLine = cell -> 1;
  private OnTheWay onTheWay = (outputs, sofar) -> {};

  /** Hears of each cell that was run. */
  @FunctionalInterface
  interface OnTheWay {

    /**
     * A cell has ended, well or not.
     *
     * @param outputs what it gave
     * @param sofar the notebook as it stands
     */
    void ran(List<Output> outputs, Supplier<Notebook> sofar);
  }

  /**
   * A runner.
   *
   * @param notebook what to run; what its cells gave before is forgotten
   * @param forms makes the forms of a value that are kept
   */
  CellRunner(Notebook notebook, Function<Shown, MimeBundle> forms) {
    this.notebook = notebook;
    this.recording = new Recording(forms);
  }

  /** Lets no cell run longer. */
  CellRunner limitedTo(Optional<Duration> each) {
    limit = each;
    return this;
  }

  /** Counts the lines of each cell from this one, in complaints too; cells of code from 1. */
  CellRunner countingLinesFrom(IntUnaryOperator first) {
    firstLine = first;
    return this;
  }

  /** Tells of each cell that was run. */
  CellRunner telling(OnTheWay after) {
    onTheWay = after;
    return this;
  }

  /** Runs all of it. What it prints is taken down, not printed. */
  Finished run() {
    Leaving.forget();
    PrintStream out = System.out;
    PrintStream err = System.err;
    Stage.Audience watched = Stage.watch(recording);
    System.setOut(recording.stream("stdout"));
    System.setErr(recording.stream("stderr"));
    try (Desk desk = Desk.open();
        Watch watch = new Watch(limit, () -> desk.session().stop())) {
      Optional<Trouble> trouble = cells(desk, watch);
      return new Finished(sofar(), counts.size(), trouble);
    } finally {
      System.setErr(err);
      System.setOut(out);
      Stage.watch(watched);
    }
  }

  private Optional<Trouble> cells(Desk desk, Watch watch) {
    List<Cell> cells = notebook.cells();
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = cells.get(i);
      if (cell.kind() != Cell.Kind.CODE || cell.source().isBlank() || cell.tags().contains(SKIP)) {
        continue;
      }
      recording.begin(i);
      counts.put(i, counts.size() + 1);
      Optional<Trouble> trouble =
          problem(desk, watch, cell).map(problem -> new Trouble(counts.size(), problem));
      trouble.ifPresent(t -> recording.fail(t.output()));
      onTheWay.ran(recording.outputs(i), this::sofar);
      if (trouble.isPresent() && !cell.tags().contains(MAY_FAIL)) {
        return trouble;
      }
      if (Leaving.isAsked()) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }

  private Optional<Problem> problem(Desk desk, Watch watch, Cell cell) {
    List<Problem> problems = new ArrayList<>();
    String source = "\n".repeat(firstLine.applyAsInt(counts.size()) - 1) + cell.source();
    watch.over(() -> problems.addAll(evaluated(desk, source)));
    return problems.stream().findFirst().map(p -> watch.struck() ? reworded(p, watch.words()) : p);
  }

  private List<Problem> evaluated(Desk desk, String source) {
    Value[] showing = new Value[1];
    try {
      Evaluation evaluation =
          desk.evaluate(
              source,
              value -> {
                showing[0] = value;
                recording.value(value.object());
              });
      evaluation
          .value()
          .filter(value -> !(value.object() instanceof OnStage))
          .ifPresent(value -> recording.lastIsResult());
      evaluation.notes().forEach(note -> recording.print("stderr", note + "\n"));
      return evaluation.problem().map(List::of).orElse(List.of());
    } catch (Refused e) {
      // The value is worked out only when it is shown.
      return List.of(refusal(e, source, showing[0].line()));
    }
  }

  private static Problem refusal(Refused refused, String source, int line) {
    String at = source.lines().skip(line - 1L).findFirst().orElse("");
    int column = at.length() - at.stripLeading().length() + 1;
    return new Problem(
        Problem.Kind.REFUSAL,
        "Refused",
        refused.getMessage(),
        line,
        column,
        at,
        List.of(),
        "",
        Optional.of(refused));
  }

  private static Problem reworded(Problem problem, String words) {
    return new Problem(
        problem.kind(),
        problem.name(),
        words,
        problem.line(),
        problem.column(),
        problem.source(),
        problem.trail(),
        problem.original(),
        problem.thrown());
  }

  private Notebook sofar() {
    List<Cell> cells = new ArrayList<>(notebook.cells());
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = cells.get(i);
      if (counts.containsKey(i)) {
        cells.set(i, cell.ran(OptionalInt.of(counts.get(i)), recording.outputs(i)));
      } else if (cell.kind() == Cell.Kind.CODE && !cell.tags().contains(SKIP)) {
        // What it gave in an earlier run does not belong to this one.
        cells.set(i, cell.ran(OptionalInt.empty(), List.of()));
      }
    }
    return notebook.with(cells);
  }
}
