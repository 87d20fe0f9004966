package org.leverbook.script;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.leverbook.display.InputFile;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Progress;
import org.leverbook.display.ProgressLines;
import org.leverbook.display.Shown;
import org.leverbook.notebook.MimeBundle;
import org.leverbook.notebook.Notebook;
import org.leverbook.notebook.Output;
import org.leverbook.quantity.Refused;

/** Runs a notebook headless and writes what its cells gave into it. */
public final class NotebookRun {

  /** Between two writes on the way, in nanoseconds. */
  private static final long PAUSE = 10_000_000_000L;

  private final PrintStream out;
  private final PrintStream err;
  private Optional<Duration> limit = Optional.empty();
  private Function<Shown, MimeBundle> forms = MimeBundle::of;

  /** Where the notebook goes with its results. */
  public enum Into {
    /** Nowhere: its values are printed, as of a script. */
    PRINT,
    /** Into the file it was read from. */
    SAME_FILE,
    /** Under the same name into the folder for saved files. */
    FOLDER
  }

  /**
   * A run.
   *
   * @param out where values, or the name of the written file, go
   * @param err where notes and the error go
   */
  public NotebookRun(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  /**
   * The same run with a limit for each cell.
   *
   * @param each how long a cell may take; one that takes longer is stopped and ends the run
   * @return this run
   */
  public NotebookRun limitedTo(Duration each) {
    limit = Optional.of(each);
    return this;
  }

  /**
   * The same run into a small file: drawings as SVG alone, without their PNG copies.
   *
   * @return this run
   */
  public NotebookRun light() {
    forms = MimeBundle::light;
    return this;
  }

  /**
   * Runs one notebook.
   *
   * @param path the file
   * @param into where it goes with its results
   * @return whether all of it took effect; otherwise the reason stands on the error stream, and the
   *     results until then are written
   */
  public boolean run(Path path, Into into) {
    try {
      String target = target(path, into);
      Notebook notebook = readJava(path);
      Path before = InputFile.runs(path);
      try {
        return run(path.toString(), notebook, target);
      } finally {
        InputFile.lookIn(before);
      }
    } catch (Refused e) {
      err.println(e.getMessage());
      return false;
    }
  }

  private boolean run(String name, Notebook notebook, String target) {
    Progress.Listener listened =
        Progress.listen(new ProgressLines(line -> err.println(name + ": " + line)));
    try {
      CellRunner runner = new CellRunner(notebook, forms).limitedTo(limit);
      Finished finished = target.isEmpty() ? printed(runner) : written(runner, target);
      finished.trouble().ifPresent(t -> err.println(t.text(name)));
      return finished.trouble().isEmpty();
    } finally {
      Progress.listen(listened);
    }
  }

  private Finished printed(CellRunner runner) {
    return runner.telling((outputs, sofar) -> tell(outputs)).run();
  }

  private void tell(List<Output> outputs) {
    for (Output output : outputs) {
      if (output instanceof Output.Printed printed) {
        (printed.stream().equals("stderr") ? err : out).print(printed.text());
      } else if (output instanceof Output.Given given) {
        out.println(given.bundle().text());
      }
    }
    out.flush();
  }

  private Finished written(CellRunner runner, String target) {
    long[] last = {System.nanoTime()};
    Finished finished =
        runner
            .telling(
                (outputs, sofar) -> {
                  // So that a run of an hour that is killed leaves more than nothing.
                  if (System.nanoTime() - last[0] > PAUSE) {
                    sofar.get().save(target);
                    last[0] = System.nanoTime();
                  }
                })
            .run();
    String saved = finished.notebook().save(target).text();
    out.println(saved + " (cells run: " + finished.ran() + ")");
    out.flush();
    return finished;
  }

  private static String target(Path path, Into into) {
    try {
      return switch (into) {
        case PRINT -> "";
        // A link stays one: what it leads to is written.
        case SAME_FILE ->
            Files.exists(path) ? path.toRealPath().toString() : path.toAbsolutePath().toString();
        case FOLDER -> {
          Path target = OutputFolder.resolve(String.valueOf(path.getFileName()));
          if (Files.exists(target) && Files.exists(path) && Files.isSameFile(target, path)) {
            throw new Refused(
                target
                    + " is the notebook itself; say --in-place to have its results written into"
                    + " it, or name another folder.");
          }
          yield String.valueOf(path.getFileName());
        }
      };
    } catch (IOException e) {
      throw new Refused(path + " cannot be read: " + e + ".", e);
    }
  }

  /** Reads a notebook whose code is Java. */
  static Notebook readJava(Path path) {
    Notebook notebook = Notebook.read(path);
    Optional<String> other = notebook.language().filter(said -> !said.equalsIgnoreCase("java"));
    if (other.isPresent()) {
      throw new Refused(
          path
              + " is a notebook in "
              + other.get()
              + ", as it says itself; only Java can be run here. Nothing was run.");
    }
    return notebook;
  }
}
