package org.leverbook.session;

import java.util.regex.Pattern;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;

/**
 * Cuts a text into units.
 *
 * <p>To the compiler alone, {@code start}, a line end and {@code start.moments()} would read as the
 * declaration of a variable. So a line end closes a unit wherever the unit can be closed there,
 * unless the next line goes on with it: it begins with a dot, an operator or {@code else}.
 */
final class Splitter {

  private static final Pattern COMMAND = Pattern.compile("/[A-Za-z?!-]");

  /** A next line that begins so belongs to the line before. A bare + or - could be a sign. */
  private static final Pattern GOES_ON =
      Pattern.compile("\\.(?!\\d)|[?:%^&|=<>*]|!=|->|/(?![/*A-Za-z])|[+-]\\s|instanceof\\b");

  /** An annotation waits for what it is about, although the compiler takes it for complete. */
  private static final Pattern ANNOTATION =
      Pattern.compile("(?:@(?!interface)[\\w.]+(?:\\([^()]*\\))?\\s*)+");

  private static final Pattern ELSE = Pattern.compile("else\\b");

  /** A line that ends so needs more, whatever stands before; but {@code i++} does not. */
  private static final Pattern WANTS_MORE =
      Pattern.compile("(?s).*(?:[=,.&|^?%/]|[^+]\\+|[^-]-|->)");

  /** Brackets in one another that the compiler bears on any thread, with a wide margin. */
  private static final int DEEPEST = 300;

  /** Signs in one expression, likewise: with 1000 the compiler's own stack overflows. */
  private static final int MOST_LINKS = 400;

  private final SourceCodeAnalysis analysis;

  Splitter(SourceCodeAnalysis analysis) {
    this.analysis = analysis;
  }

  /** The next unit from a place on; the caller holds the compile lock. */
  Unit next(SourceText source, int from) {
    String text = source.text();
    Brackets brackets = new Brackets(text, from);
    for (int line = source.lineAt(from); line <= source.lines(); line++) {
      int end = source.nextStart(line);
      brackets.readTo(end);
      int start = brackets.firstCode();
      if (start < 0) {
        continue;
      }
      if (COMMAND.matcher(text).region(start, text.length()).lookingAt()) {
        return new Unit(Unit.Kind.COMMAND, start, end, source.line(line).strip());
      }
      if (brackets.unseen() >= 0) {
        return new Unit(Unit.Kind.UNSEEN, start, brackets.unseen(), "");
      }
      if (brackets.depth() > DEEPEST || brackets.links() > MOST_LINKS) {
        return new Unit(Unit.Kind.TOO_DEEP, start, end, "");
      }
      if (brackets.wrongCloser() >= 0) {
        return new Unit(Unit.Kind.WRONG_CLOSER, start, brackets.wrongCloser(), "");
      }
      int last = brackets.lastCode();
      boolean wantsMore =
          WANTS_MORE.matcher(text).region(Math.max(start, last - 1), last + 1).matches();
      if (brackets.closed() && !wantsMore && !goesOn(text, end, text.charAt(last))) {
        int tooLong = LongTexts.in(text, start, last + 1);
        if (tooLong >= 0) {
          return new Unit(Unit.Kind.TOO_LONG, start, tooLong, "");
        }
        Unit unit = analysed(text, start, end, last + 1);
        if (unit.kind() != Unit.Kind.INCOMPLETE) {
          return unit;
        }
      }
    }
    int start = brackets.firstCode();
    if (start < 0 && brackets.closed()) {
      return new Unit(Unit.Kind.NOTHING, text.length(), text.length(), "");
    }
    int begin = start < 0 ? brackets.innermostOpen().orElse(from) : start;
    return new Unit(Unit.Kind.INCOMPLETE, begin, text.length(), text.substring(begin));
  }

  private static boolean goesOn(String text, int from, char last) {
    Brackets ahead = new Brackets(text, from);
    // Blank lines end a sentence; comments between its lines do not.
    int at = from;
    while (at < text.length() && ahead.firstCode() < 0) {
      int lineEnd = text.indexOf('\n', at);
      lineEnd = lineEnd < 0 ? text.length() : lineEnd + 1;
      if (text.substring(at, lineEnd).isBlank()) {
        return false;
      }
      ahead.readTo(lineEnd);
      at = lineEnd;
    }
    int code = ahead.firstCode();
    if (code < 0) {
      return false;
    }
    boolean isElse = ELSE.matcher(text).region(code, text.length()).lookingAt();
    return isElse || last != ';' && GOES_ON.matcher(text).region(code, text.length()).lookingAt();
  }

  private Unit analysed(String text, int start, int end, int codeEnd) {
    try {
      return judged(text, start, end, codeEnd);
    } catch (StackOverflowError | InternalError e) {
      // The compiler wraps its own overflow in an internal error.
      return new Unit(Unit.Kind.TOO_DEEP, start, end, "");
    }
  }

  private Unit judged(String text, int start, int end, int codeEnd) {
    // A comment behind the code can hide a missing semicolon, so only the code is judged.
    CompletionInfo info = analysis.analyzeCompletion(text.substring(start, codeEnd));
    Completeness completeness = info.completeness();
    if (ANNOTATION.matcher(text).region(start, codeEnd).matches()) {
      return new Unit(Unit.Kind.INCOMPLETE, start, end, "");
    }
    if (completeness == Completeness.EMPTY) {
      return new Unit(Unit.Kind.COMPLETE, start, end, ";");
    }
    if (completeness == Completeness.UNKNOWN) {
      return new Unit(Unit.Kind.INVALID, start, end, text.substring(start, codeEnd));
    }
    if (!completeness.isComplete()) {
      return new Unit(Unit.Kind.INCOMPLETE, start, end, "");
    }
    int rest = codeEnd - info.remaining().length();
    boolean all = new BlankTest(text, rest, codeEnd).isBlank();
    return new Unit(Unit.Kind.COMPLETE, start, all ? end : rest, info.source());
  }

  /** Whether nothing but blanks and comments lies between two places. */
  private record BlankTest(String text, int from, int to) {
    boolean isBlank() {
      Brackets between = new Brackets(text, from);
      between.readTo(to);
      return between.firstCode() < 0;
    }
  }
}
