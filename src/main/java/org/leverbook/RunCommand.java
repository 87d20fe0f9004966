package org.leverbook;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.leverbook.display.OutputFolder;
import org.leverbook.script.NotebookRun;
import org.leverbook.script.ScriptRun;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code run FILE [--out DIR] [--in-place] [--light] [--limit SECONDS]}. */
@Command(
    name = "run",
    description = "Runs a .jsh script or an .ipynb notebook from its first line to its last.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionLine.class,
    footer = {
      "",
      "The value of each bare expression is printed. With --out a notebook is not printed but"
          + " written to DIR under its own name with what its cells gave; with --in-place it is"
          + " written where it was.",
      "",
      "Exit code 0 when all of it ran, 1 when it did not: the error stream then says"
          + " FILE:LINE:COLUMN, or FILE: cell N, line N, and the reason. Files written before the"
          + " error stay, and a written notebook keeps what its cells gave until then."
    })
final class RunCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "The script or notebook, UTF-8.")
  private Path file;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Where saved files go; made if missing. Without it: the working folder.")
  private Path folder;

  @Option(names = "--in-place", description = "Writes a notebook's results into it.")
  private boolean inPlace;

  @Option(
      names = "--light",
      description = "Writes drawings into a notebook as SVG alone, without PNG copies.")
  private boolean light;

  @Option(
      names = "--limit",
      paramLabel = "SECONDS",
      converter = Seconds.class,
      description = "Stops a notebook's cell that takes longer, and the run with it.")
  private Duration limit;

  @Override
  public Integer call() {
    boolean notebook = file.toString().toLowerCase(Locale.ROOT).endsWith(".ipynb");
    check(notebook);
    if (folder != null) {
      OutputFolder.choose(folder);
    }
    return (notebook ? ranNotebook() : new ScriptRun(System.out, System.err).run(file)) ? 0 : 1;
  }

  private boolean ranNotebook() {
    NotebookRun run = new NotebookRun(System.out, System.err);
    if (limit != null) {
      run.limitedTo(limit);
    }
    if (light) {
      run.light();
    }
    NotebookRun.Into elsewhere = folder == null ? NotebookRun.Into.PRINT : NotebookRun.Into.FOLDER;
    return run.run(file, inPlace ? NotebookRun.Into.SAME_FILE : elsewhere);
  }

  private void check(boolean notebook) {
    if (!notebook && (inPlace || light || limit != null)) {
      throw new ParameterException(
          spec.commandLine(),
          "--in-place, --light and --limit are for notebooks; " + file + " is none.");
    }
  }
}
