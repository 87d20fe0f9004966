package org.leverbook.terminal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jline.keymap.KeyMap;
import org.jline.reader.LineReader;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.InfoCmp.Capability;
import org.leverbook.desk.Desk;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Problem;
import org.leverbook.session.Session;
import org.leverbook.terminal.Palette.Role;

/** The editor of a conversation: set up, with its prompt, its keys and what they tell. */
final class Editing {

  private static final String PROMPT = "lever> ";
  private static final String CONTINUATION = "   ... ";
  private static final int REMEMBERED = 5_000;
  private static final String F1 = "\033OP";
  private static final String F2 = "\033OQ";

  /** What stands below an explanation: the prompt, the line and some of what was before. */
  private static final int KEPT_ROWS = 4;

  private final Terminal terminal;
  private final Supplier<Desk> desk;
  private final Palette palette;
  private final OurWords words = new OurWords();
  private final LineEditor editor;
  private Optional<Problem> last = Optional.empty();
  private boolean keyTold;

  Editing(
      Terminal terminal, Supplier<Desk> desk, Map<String, String> environment, Palette palette) {
    this.terminal = terminal;
    this.desk = desk;
    this.palette = palette;
    this.editor = editor(environment);
  }

  LineEditor editor() {
    return editor;
  }

  String prompt() {
    return styled(PROMPT, Role.PROMPT).toAnsi(terminal);
  }

  private LineEditor editor(Map<String, String> environment) {
    JavaInput input =
        new JavaInput(
            text -> desk.get().session().completeness(text),
            (text, at) -> desk.get().session().completions(text, at));
    LineEditor made =
        new LineEditor(
            terminal, input, palette, (text, at) -> desk.get().session().callAt(text, at));
    made.usual(REMEMBERED, () -> styled(CONTINUATION, Role.ASIDE));
    made.setHighlighter(new JavaColours(palette, words::names));
    HistoryFile.ready(HistoryFile.place(environment, System.getProperties()))
        .ifPresent(file -> made.variable(LineReader.HISTORY_FILE, file));
    String help = made.key(Capability.key_f1, F1);
    String why = made.key(Capability.key_f2, F2);
    made.tells("leverbook-explain", this::explained, help, F1, KeyMap.alt('h'));
    made.tells("leverbook-original", (text, at) -> original(), why, F2, KeyMap.alt('e'));
    made.hints()
        .behind(
            () -> {
              // Not before the session stands: the first answer is more urgent.
              desk.get();
              words.read();
            });
    return made;
  }

  /**
   * A text was evaluated.
   *
   * @return what to add, once in a conversation
   */
  Optional<String> evaluated(Evaluation evaluation) {
    last = evaluation.problem();
    boolean more = last.map(problem -> !problem.original().isEmpty()).orElse(false);
    if (!more || keyTold || palette.isDumb()) {
      return Optional.empty();
    }
    keyTold = true;
    return Optional.of(
        "(F2 or Alt-E: the compiler's own words; F1 or Alt-H: about the word at the cursor)");
  }

  private String original() {
    String said =
        last.map(
                problem ->
                    problem.original().isBlank()
                        ? "The compiler had nothing to say about the last input."
                        : "The compiler's own words:\n" + problem.original().stripTrailing())
            .orElse("The last input went well: the compiler had nothing to say.");
    return aside(said);
  }

  private String explained(String text, int cursor) {
    Session session = desk.get().session();
    List<String> known = session.documentation(text, cursor, true);
    if (known.isEmpty()) {
      // A word without its brackets yet may be a method.
      int end = wordEnd(text, cursor);
      known = session.documentation(text.substring(0, end) + "(", end, true);
    }
    return known.isEmpty()
        ? aside("Nothing is known of this place. Put the cursor on a word, and ask again.")
        : aside(String.join("\n\n", known));
  }

  private static int wordEnd(String text, int cursor) {
    int end = cursor;
    while (end < text.length() && Character.isJavaIdentifierPart(text.charAt(end))) {
      end++;
    }
    return end;
  }

  /** A text to read between, at most a screen of it. */
  private String aside(String text) {
    int columns = Math.max(20, terminal.getSize().getColumns());
    List<String> lines = new Fitting(columns, Integer.MAX_VALUE).fit(text).lines().toList();
    int room = Math.max(3, terminal.getSize().getRows() - KEPT_ROWS);
    StringBuilder shown = new StringBuilder();
    for (String line : lines.subList(0, Math.min(lines.size(), room))) {
      shown.append(styled(line, Role.ASIDE).toAnsi(terminal)).append('\n');
    }
    if (lines.size() > room) {
      shown.append("… ").append(lines.size() - room).append(" more lines\n");
    }
    return shown.toString();
  }

  private AttributedString styled(String text, Role role) {
    return new AttributedString(text, palette.style(role));
  }
}
