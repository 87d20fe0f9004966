package org.leverbook.script;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.leverbook.notebook.Cell;
import org.leverbook.notebook.Notebook;

/**
 * A script as a notebook: comment lines that begin at the line's start become text, and a blank
 * line ends a cell of code wherever the code can end. The text is Markdown: {@code // # Heading}
 * gives a heading, an empty {@code //} a new paragraph, a row of dashes nothing.
 */
final class ScriptCells {

  /** A line that begins so goes on with the line before, across a comment. */
  private static final Pattern GOES_ON =
      Pattern.compile("\\s*(?:[.?:%^&|=<>*+)\\]}-]|!=|else\\b|instanceof\\b).*");

  private static final Pattern RULE = Pattern.compile("[-=*_/#~\\s]*");

  private final List<String> lines;
  private final Predicate<String> unfinished;
  private final List<Cell> cells = new ArrayList<>();
  private final List<Integer> starts = new ArrayList<>();
  private final List<String> code = new ArrayList<>();
  private int codeStart;

  private ScriptCells(String text, Predicate<String> unfinished) {
    this.lines = text.lines().toList();
    this.unfinished = unfinished;
  }

  /**
   * Cuts a script.
   *
   * @param text the script
   * @param unfinished tells of a piece of code whether it needs more text
   */
  static ScriptCells of(String text, Predicate<String> unfinished) {
    ScriptCells cut = new ScriptCells(text, unfinished);
    cut.cut();
    return cut;
  }

  /** The notebook, not run. */
  Notebook notebook() {
    return Notebook.ofCells(cells);
  }

  /** The line of the script, from 1, on which a cell of code begins; cells of code from 1. */
  int line(int cell) {
    return starts.get(cell - 1);
  }

  private void cut() {
    int at = 0;
    while (at < lines.size()) {
      String line = lines.get(at);
      if (line.isBlank() && canEnd()) {
        end();
        at++;
      } else if (line.startsWith("//") && canEnd() && (code.isEmpty() || !goesOn(at))) {
        end();
        at = prose(at);
      } else {
        if (code.isEmpty()) {
          codeStart = at + 1;
        }
        code.add(line);
        at++;
      }
    }
    end();
  }

  private boolean canEnd() {
    return code.isEmpty() || !unfinished.test(String.join("\n", code));
  }

  private boolean goesOn(int comment) {
    int at = comment;
    while (at < lines.size() && lines.get(at).startsWith("//")) {
      at++;
    }
    return at < lines.size() && GOES_ON.matcher(lines.get(at)).matches();
  }

  private void end() {
    String source = String.join("\n", code).stripTrailing();
    if (!source.isBlank()) {
      cells.add(Cell.code(source));
      starts.add(codeStart);
    }
    code.clear();
  }

  private int prose(int from) {
    List<String> text = new ArrayList<>();
    int at = from;
    while (at < lines.size() && lines.get(at).startsWith("//")) {
      text.add(said(lines.get(at)));
      at++;
    }
    String all = String.join("\n", text).strip();
    if (!all.isEmpty()) {
      cells.add(Cell.prose(all));
    }
    return at;
  }

  private static String said(String comment) {
    String text = comment.substring(2);
    if (RULE.matcher(text).matches()) {
      return "";
    }
    text = text.startsWith(" ") ? text.substring(1) : text;
    // A type in angle brackets would be taken for a mark of HTML.
    return text.contains("`") ? text : text.replace("<", "\\<");
  }
}
