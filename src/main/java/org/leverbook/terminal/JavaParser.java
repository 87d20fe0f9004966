package org.leverbook.terminal;

import java.util.List;
import java.util.function.Function;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.EOFError;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.leverbook.session.Completeness;

/** Tells the line reader when what was typed is finished, by asking the session. */
final class JavaParser implements Parser {

  private final Function<String, Completeness> completeness;

  JavaParser(Function<String, Completeness> completeness) {
    this.completeness = completeness;
  }

  @Override
  public ParsedLine parse(String line, int cursor, ParseContext context) {
    if (context == ParseContext.ACCEPT_LINE
        && completeness.apply(line) == Completeness.INCOMPLETE) {
      throw new EOFError(-1, -1, "more to come");
    }
    int start = cursor;
    while (start > 0 && Character.isJavaIdentifierPart(line.charAt(start - 1))) {
      start--;
    }
    return new Word(line, cursor, line.substring(start, cursor));
  }

  /** Nothing is escaped in Java code outside quotes: a backslash is a backslash. */
  @Override
  public boolean isEscapeChar(char character) {
    return false;
  }

  /** The line as one word: the identifier before the cursor. */
  private record Word(String line, int cursor, String word) implements CompletingParsedLine {
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
