package org.leverbook.terminal;

import java.util.Set;
import java.util.function.Supplier;
import org.jline.reader.Highlighter;
import org.jline.reader.LineReader;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;
import org.leverbook.terminal.JavaTokens.Kind;
import org.leverbook.terminal.JavaTokens.Token;
import org.leverbook.terminal.Palette.Role;

/** Colours what is typed, and marks the two brackets that belong together at the cursor. */
final class JavaColours implements Highlighter {

  private final Palette palette;
  private final Supplier<Set<String>> words;

  /**
   * Colours.
   *
   * @param palette which
   * @param words the words of the language, as far as they are known yet
   */
  JavaColours(Palette palette, Supplier<Set<String>> words) {
    this.palette = palette;
    this.words = words;
  }

  @Override
  public AttributedString highlight(LineReader reader, String text) {
    // A line that was handed in has no cursor any more.
    return coloured(text, reader.isReading() ? reader.getBuffer().cursor() : -1);
  }

  /** A text in colours. */
  AttributedString coloured(String text, int cursor) {
    JavaTokens cut = JavaTokens.of(text);
    int at = bracketAt(cut, cursor);
    int mate = at < 0 ? -1 : cut.mate(at).orElse(-1);
    Set<String> known = words.get();
    AttributedStringBuilder built = new AttributedStringBuilder(text.length());
    int done = 0;
    for (Token token : cut.tokens()) {
      built.append(text, done, token.from());
      String piece = text.substring(token.from(), token.to());
      boolean marked = mate >= 0 && (token.from() == at || token.from() == mate);
      boolean afterDot = token.from() > 0 && text.charAt(token.from() - 1) == '.';
      boolean ours = token.kind() == Kind.NAME && !afterDot && known.contains(piece);
      built.append(piece, style(cut, token, marked, ours));
      done = token.to();
    }
    return built.append(text, done, text.length()).toAttributedString();
  }

  private AttributedStyle style(JavaTokens cut, Token token, boolean marked, boolean ours) {
    if (marked) {
      return palette.style(Role.MATE);
    }
    return switch (token.kind()) {
      case KEYWORD -> palette.style(Role.KEYWORD);
      case NUMBER -> palette.style(Role.NUMBER);
      case TEXT -> palette.style(Role.TEXT);
      case COMMENT -> palette.style(Role.COMMENT);
      case NAME -> ours ? palette.style(Role.WORD) : AttributedStyle.DEFAULT;
      case BRACKET -> cut.isLonely(token) ? palette.style(Role.LONELY) : AttributedStyle.DEFAULT;
      case OTHER -> AttributedStyle.DEFAULT;
    };
  }

  /** The bracket before the cursor, or else the one under it; -1 where there is none. */
  private static int bracketAt(JavaTokens cut, int cursor) {
    if (cut.isBracket(cursor - 1)) {
      return cursor - 1;
    }
    return cut.isBracket(cursor) ? cursor : -1;
  }
}
