package org.leverbook;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.leverbook.display.OutputFolder;
import org.leverbook.notebook.CodeShown;
import org.leverbook.script.Export;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code export FILE --to html|md|ipynb|jsh [--out DIR] [--code folded|shown|none] [--run]}. */
@Command(
    name = "export",
    description = "Makes a page for readers of a notebook or a script, or one of the other.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionLine.class,
    footer = {
      "",
      "html: one page that needs no other file and no network. md: a Markdown page, its"
          + " pictures as files beside it. A script is run first, so that its values stand on the"
          + " page; a notebook shows what it gave when it was last run.",
      "",
      "Of a script, comment lines that begin at the line's start become text (Markdown), and a"
          + " blank line ends a piece of code.",
      "",
      "Exit code 0 when it was written, 1 when it was not: the error stream then says why, and"
          + " nothing is written but what the code itself saved."
    })
final class ExportCommand implements Callable<Integer> {

  @Parameters(index = "0", paramLabel = "FILE", description = "The .ipynb notebook or .jsh script.")
  private Path file;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "KIND",
      completionCandidates = Kinds.class,
      description = "What is made: ${COMPLETION-CANDIDATES}.")
  private Export.To to;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Where it goes, and saved files; made if missing. Without it: the working folder.")
  private Path folder;

  @Option(
      names = "--code",
      paramLabel = "HOW",
      defaultValue = "folded",
      completionCandidates = Ways.class,
      description = "How a page shows code: ${COMPLETION-CANDIDATES}; folded if not said.")
  private CodeShown code;

  @Option(names = "--run", description = "Runs a notebook first.")
  private boolean run;

  @Option(
      names = "--limit",
      paramLabel = "SECONDS",
      converter = Seconds.class,
      description = "Stops a cell that takes longer; nothing is exported then.")
  private Duration limit;

  /** The kinds as they are typed. */
  static final class Kinds implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return typed(Export.To.values());
    }
  }

  /** The ways as they are typed. */
  static final class Ways implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return typed(CodeShown.values());
    }
  }

  private static Iterator<String> typed(Enum<?>[] values) {
    return Arrays.stream(values).map(v -> v.name().toLowerCase(Locale.ROOT)).iterator();
  }

  @Override
  public Integer call() {
    if (folder != null) {
      OutputFolder.choose(folder);
    }
    Export.Wish wish = new Export.Wish(to, code, run, Optional.ofNullable(limit));
    return new Export(System.out, System.err, wish).run(file) ? 0 : 1;
  }
}
