package org.leverbook.notebook;

import java.nio.file.Path;
import java.util.Map;

/**
 * A notebook as a page for readers.
 *
 * @param notebook what is shown, as it was last run
 * @param name the file's name without ending: the title where the notebook has none, and the stem
 *     of the names of files
 * @param code how code is shown
 * @param folder where pictures lie that the text names
 */
public record Page(Notebook notebook, String name, CodeShown code, Path folder) {

  /**
   * One HTML page that needs no other file, no network and no script; only a moving picture brings
   * a script of its own, in a frame.
   *
   * @return the document
   */
  public String html() {
    return new HtmlPage(this).document();
  }

  /**
   * A Markdown page and the files it shows.
   *
   * @return contents by file name, the page first
   */
  public Map<String, byte[]> markdown() {
    return new MarkdownPage(this).files();
  }

  /**
   * How many cells of code have not been run.
   *
   * @param notebook any notebook
   * @return the count, blank cells left out
   */
  public static int notRun(Notebook notebook) {
    return (int)
        notebook.cells().stream()
            .filter(c -> c.kind() == Cell.Kind.CODE && !c.source().isBlank())
            .filter(c -> c.count().isEmpty() && c.outputs().isEmpty())
            .count();
  }

  String title() {
    return notebook.title().orElse(name);
  }

  /** What a reader must know of a notebook that was not wholly run; empty where it was. */
  String warning() {
    int missing = notRun(notebook);
    if (missing == 0) {
      return "";
    }
    return missing == notebook.codeCells().size()
        ? "This notebook had not been run when this page was made: its results are missing."
        : "Some cells had not been run when this page was made ("
            + missing
            + "): their results are"
            + " missing.";
  }
}
