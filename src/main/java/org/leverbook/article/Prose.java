package org.leverbook.article;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leverbook.quantity.Refused;

/**
 * A piece of text, its values put in, its references to figures and tables still open.
 *
 * <p>In braces: {@code {}} takes the next value, {@code {.1}} the same with one decimal, {@code
 * {spine}} becomes the number of what is called so; two braces are one. What a value says is taken
 * letter by letter, the rest is Markdown.
 *
 * @param pieces in order
 */
record Prose(List<Piece> pieces) {

  private static final Pattern BRACES =
      Pattern.compile("\\{\\{|\\}\\}|\\{(?:\\.(\\d))?\\}|\\{([^{}\n]*)\\}");

  private static final Pattern MARKS =
      Pattern.compile("[\\\\`*\\[\\]<>#|!~&]|(?<![\\p{L}\\p{N}])_|_(?![\\p{L}\\p{N}])");

  /**
   * Words, or a name to be exchanged for a number.
   *
   * @param text Markdown, or the name
   * @param name whether it is a name
   */
  record Piece(String text, boolean name) {}

  Prose {
    pieces = List.copyOf(pieces);
  }

  /**
   * Puts values into a text.
   *
   * @param text Markdown with braces
   * @param values one for each place, in order
   * @throws Refused if there are more or fewer values than places, or one cannot be read
   */
  static Prose of(String text, Object... values) {
    List<Piece> pieces = new ArrayList<>();
    StringBuilder words = new StringBuilder();
    Matcher braces = BRACES.matcher(text);
    int from = 0;
    int used = 0;
    while (braces.find()) {
      words.append(text, from, braces.start());
      from = braces.end();
      if (braces.group().length() == 2 && !braces.group().equals("{}")) {
        words.append(braces.group().charAt(0));
      } else if (braces.group(2) != null && !braces.group(2).isBlank()) {
        pieces.add(new Piece(words.toString(), false));
        words.setLength(0);
        pieces.add(new Piece(braces.group(2).strip(), true));
      } else {
        if (used < values.length) {
          OptionalInt decimals =
              braces.group(1) == null
                  ? OptionalInt.empty()
                  : OptionalInt.of(Integer.parseInt(braces.group(1)));
          words.append(literal(ValueText.of(values[used], decimals, used + 1)));
        }
        used++;
      }
    }
    if (used != values.length) {
      throw new Refused(counted(text, used, values.length));
    }
    pieces.add(new Piece(words.append(text.substring(from)).toString(), false));
    return new Prose(pieces);
  }

  private static String counted(String text, int places, int values) {
    String begin = text.length() <= 40 ? text : text.substring(0, 40).strip() + "…";
    return String.format(
        "The text \"%s\" has %s {} for %s: give one value for each place, in order; {{ and }} stand"
            + " for braces.",
        begin,
        places == 1 ? "1 place" : places + " places",
        values == 1 ? "1 value" : values + " values");
  }

  /** Text whose signs mean nothing to a reader of Markdown. */
  static String literal(String text) {
    return MARKS.matcher(text).replaceAll(mark -> Matcher.quoteReplacement("\\" + mark.group()));
  }

  /** The names it refers to. */
  List<String> names() {
    return pieces.stream().filter(Piece::name).map(Piece::text).toList();
  }

  /** As Markdown, each name exchanged. */
  String markdown(UnaryOperator<String> exchange) {
    StringBuilder markdown = new StringBuilder();
    pieces.forEach(p -> markdown.append(p.name() ? exchange.apply(p.text()) : p.text()));
    return markdown.toString();
  }
}
