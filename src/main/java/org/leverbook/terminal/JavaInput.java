package org.leverbook.terminal;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.EOFError;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.leverbook.session.Completeness;
import org.leverbook.session.Completion;

/**
 * Tells the line editor what the session knows of a text: whether it is finished, and how it may go
 * on.
 */
final class JavaInput implements Parser, Completer {

  /** The compiler would look for seconds whether this much text is finished: brackets must do. */
  private static final int LONG = 20_000;

  private final Function<String, Completeness> completeness;
  private final BiFunction<String, Integer, List<Completion>> completions;

  JavaInput(
      Function<String, Completeness> completeness,
      BiFunction<String, Integer, List<Completion>> completions) {
    this.completeness = completeness;
    this.completions = completions;
  }

  @Override
  public ParsedLine parse(String line, int cursor, ParseContext context) {
    if (context == ParseContext.ACCEPT_LINE && !isFinished(line)) {
      throw new EOFError(-1, -1, "more to come");
    }
    List<Completion> found =
        context == ParseContext.COMPLETE ? completions.apply(line, cursor) : List.of();
    int start = found.stream().mapToInt(Completion::from).min().orElse(wordStart(line, cursor));
    return new Word(line, cursor, line.substring(Math.min(start, cursor), cursor), found);
  }

  /** Whether a text can be evaluated, for better or worse. */
  boolean isFinished(String text) {
    return text.length() > LONG
        ? !JavaTokens.of(text).isOpen()
        : completeness.apply(text) != Completeness.INCOMPLETE;
  }

  private static int wordStart(String line, int cursor) {
    int start = cursor;
    while (start > 0 && Character.isJavaIdentifierPart(line.charAt(start - 1))) {
      start--;
    }
    return start;
  }

  @Override
  public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
    if (line instanceof Word word) {
      int columns = reader.getTerminal().getSize().getColumns();
      for (Completion each : word.found()) {
        candidates.add(candidate(word, each, candidates.size() + 1, columns));
      }
    }
  }

  private static Candidate candidate(Word word, Completion each, int place, int columns) {
    // All that is offered begins where the word does, also what replaces less of it.
    String value = word.line().substring(word.start(), each.from()) + each.text();
    boolean told = each.signature().startsWith(each.text());
    String shown = Fitting.cut(told ? each.signature() : each.text(), columns - 1);
    String about = Fitting.cut(each.about().strip(), columns - shown.length() - 4);
    // Not "complete": no blank is to follow an opening bracket.
    return new Candidate(
        value, shown, null, about.isBlank() ? null : about, null, null, false, place);
  }

  /** Nothing is escaped in Java code outside quotes: a backslash is a backslash. */
  @Override
  public boolean isEscapeChar(char character) {
    return false;
  }

  /** The line as one word: what the completions would replace, or else the identifier. */
  private record Word(String line, int cursor, String word, List<Completion> found)
      implements CompletingParsedLine {

    int start() {
      return cursor - word.length();
    }

    @Override
    public int wordCursor() {
      return word.length();
    }

    @Override
    public int wordIndex() {
      return 0;
    }

    @Override
    public List<String> words() {
      return List.of(word);
    }

    @Override
    public CharSequence escape(CharSequence candidate, boolean complete) {
      return candidate;
    }

    @Override
    public int rawWordCursor() {
      return word.length();
    }

    @Override
    public int rawWordLength() {
      return word.length();
    }
  }
}
