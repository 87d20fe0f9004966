package org.leverbook.script;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leverbook.desk.Desk;
import org.leverbook.display.InputFile;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Progress;
import org.leverbook.display.ProgressLines;
import org.leverbook.display.Saved;
import org.leverbook.notebook.CodeShown;
import org.leverbook.notebook.MimeBundle;
import org.leverbook.notebook.Notebook;
import org.leverbook.notebook.Page;
import org.leverbook.quantity.Refused;
import org.leverbook.session.Completeness;

/** Makes a page for readers of a notebook or a script, or one of the two of the other. */
public final class Export {

  /** What is made. */
  public enum To {
    /** One HTML page that needs no other file. */
    HTML,
    /** A Markdown page, its pictures as files beside it. */
    MD,
    /** A notebook. */
    IPYNB,
    /** A script. */
    JSH
  }

  /**
   * What is wished.
   *
   * @param to what is made
   * @param code how code is shown on a page
   * @param run whether a notebook is run first, or a script that becomes a notebook; a script that
   *     becomes a page always is
   * @param limit how long a cell may take; empty for as long as it takes
   */
  public record Wish(To to, CodeShown code, boolean run, Optional<Duration> limit) {}

  private final PrintStream out;
  private final PrintStream err;
  private final Wish wish;

  /**
   * An export.
   *
   * @param out where the names of the written files go
   * @param err where notes and errors go
   * @param wish what is wished
   */
  public Export(PrintStream out, PrintStream err, Wish wish) {
    this.out = out;
    this.err = err;
    this.wish = wish;
  }

  /**
   * Exports one file.
   *
   * @param file a notebook or a script
   * @return whether it was written; otherwise the reason stands on the error stream, and nothing is
   *     written
   */
  public boolean run(Path file) {
    Progress.Listener listened =
        Progress.listen(new ProgressLines(line -> err.println(file + ": " + line)));
    Path before = InputFile.runs(file);
    try {
      Optional<Notebook> notebook = ScriptFile.isNotebook(file) ? notebook(file) : script(file);
      notebook.ifPresent(n -> out.println(write(file, n).text()));
      out.flush();
      return notebook.isPresent();
    } catch (Refused e) {
      err.println(e.getMessage());
      return false;
    } finally {
      InputFile.lookIn(before);
      Progress.listen(listened);
    }
  }

  private Optional<Notebook> notebook(Path file) {
    checkOther(file, To.IPYNB, "a notebook");
    if (!wish.run()) {
      Notebook notebook = Notebook.read(file);
      if (isPage() && Page.notRun(notebook) > 0) {
        err.println(
            file
                + ": cells that have not been run: "
                + Page.notRun(notebook)
                + "; the page says so. With --run they are run first.");
      }
      return Optional.of(notebook);
    }
    Finished finished = runner(NotebookRun.readJava(file)).run();
    finished.trouble().ifPresent(t -> complain(t.text(file.toString())));
    return finished.trouble().isEmpty() ? Optional.of(finished.notebook()) : Optional.empty();
  }

  private Optional<Notebook> script(Path file) {
    ScriptFile script = ScriptFile.read(file);
    checkOther(file, To.JSH, "a script");
    ScriptCells cut;
    try (Desk desk = Desk.open()) {
      cut =
          ScriptCells.of(
              script.text(), code -> desk.session().completeness(code) == Completeness.INCOMPLETE);
    }
    if (!isPage() && !wish.run()) {
      return Optional.of(cut.notebook());
    }
    Finished finished = runner(cut.notebook()).countingLinesFrom(cut::line).run();
    finished.trouble().ifPresent(t -> complain(t.problem().text(file + ":")));
    return finished.trouble().isEmpty() ? Optional.of(finished.notebook()) : Optional.empty();
  }

  private void checkOther(Path file, To same, String what) {
    if (wish.to() == same) {
      throw new Refused(
          file + " is " + what + " already; --to html or --to md makes a page of it.");
    }
  }

  private CellRunner runner(Notebook notebook) {
    // Only a Markdown page has no place where a moving picture's own page could run.
    return new CellRunner(notebook, wish.to() == To.MD ? MimeBundle::withGif : MimeBundle::of)
        .limitedTo(wish.limit());
  }

  private boolean isPage() {
    return wish.to() == To.HTML || wish.to() == To.MD;
  }

  private void complain(String trouble) {
    err.println(trouble);
    err.println("Nothing was exported.");
  }

  private Saved write(Path file, Notebook notebook) {
    String stem = String.valueOf(file.getFileName()).replaceFirst("\\.[^.]*$", "");
    Path folder = file.toAbsolutePath().getParent();
    Page page = new Page(notebook, stem, wish.code(), folder);
    return switch (wish.to()) {
      case HTML -> new Saved(List.of(OutputFolder.write(stem + ".html", page.html())));
      case MD -> files(page.markdown(), folder);
      case IPYNB -> notebook.save(stem + ".ipynb");
      case JSH -> new Saved(List.of(OutputFolder.write(stem + ".jsh", notebook.script())));
    };
  }

  /** What lies in its place already, such as a picture that the text names, stays. */
  private static Saved files(Map<String, byte[]> contents, Path folder) {
    List<Path> files = new ArrayList<>();
    contents.forEach(
        (name, bytes) -> {
          Path there = folder.resolve(name).toAbsolutePath().normalize();
          boolean travels = files.isEmpty() || !Files.exists(there);
          if (travels || !OutputFolder.resolve(name).toAbsolutePath().normalize().equals(there)) {
            files.add(OutputFolder.write(name, bytes));
          }
        });
    return new Saved(files);
  }
}
