package org.leverbook.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences kept in resource files, with gaps that a match fills. */
final class Sentences {

  private static final Pattern GAP = Pattern.compile("\\{(A |a |big )?(\\d)(\\.)?\\}|\\{word\\}");

  private Sentences() {}

  /** The lines of a file beside this class, without remarks and blank lines. */
  static List<String> lines(String file) {
    try (InputStream in = Sentences.class.getResourceAsStream(file)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A sentence with its gaps filled.
   *
   * @param sentence with gaps such as {@code {1}}
   * @param found the match whose groups fill them
   * @param text where the match was found, or a text of the same length to quote instead
   */
  static String filled(String sentence, MatchResult found, String text) {
    Matcher gap = GAP.matcher(sentence);
    StringBuilder filled = new StringBuilder();
    while (gap.find()) {
      gap.appendReplacement(filled, Matcher.quoteReplacement(value(gap, found, text)));
    }
    gap.appendTail(filled);
    return filled.toString();
  }

  private static String value(Matcher gap, MatchResult found, String text) {
    if (gap.group(2) == null) {
      return text.substring(found.start(), found.end()).split("\\s", 2)[0];
    }
    int group = Integer.parseInt(gap.group(2));
    if (group > found.groupCount() || found.start(group) < 0) {
      return "...";
    }
    String value = text.substring(found.start(group), found.end(group)).strip();
    String how = gap.group(1) == null ? "" : gap.group(1).strip();
    return switch (how) {
      case "a" -> Kinds.a(value);
      case "A" -> Words.capital(Kinds.a(value));
      case "big" -> big(value);
      default -> gap.group(3) != null ? value.replace(',', '.') : Words.cleaned(value);
    };
  }

  private static String big(String primitive) {
    return switch (primitive) {
      case "int" -> "Integer";
      case "char" -> "Character";
      default -> Words.capital(primitive);
    };
  }
}
