package org.leverbook.figure;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.leverbook.display.InputFile;
import org.leverbook.display.OutputFolder;
import org.leverbook.quantity.Refused;

/**
 * The labels of pictures in one's own words.
 *
 * <p>A file has a line for each, {@code hip = Hüfte}; lines that begin with # are remarks. In
 * labels, titles, axes and legends every known word is exchanged, the longest first; of sentences
 * below a picture only whole ones, so that no sentence speaks two languages.
 */
public final class LabelWords {

  /** As Leverbook writes them. */
  static final LabelWords ENGLISH = new LabelWords(Map.of());

  private final Map<String, String> own;
  private final Pattern known;

  private LabelWords(Map<String, String> own) {
    this.own = Map.copyOf(own);
    // The longest first, so that "mid back" is not taken for "back".
    String either =
        own.keySet().stream()
            .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(w -> w))
            .map(Pattern::quote)
            .collect(Collectors.joining("|"));
    this.known =
        Pattern.compile(
            "(?<![\\p{L}\\p{N}])(?:" + either + ")(?![\\p{L}\\p{N}])",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /**
   * From pairs of words.
   *
   * @param words the English word, and one's own
   * @return the words
   * @throws Refused if one of them is blank
   */
  public static LabelWords of(Map<String, String> words) {
    Map<String, String> checked = new LinkedHashMap<>();
    words.forEach((english, other) -> put(checked, english, other, "The words"));
    return new LabelWords(checked);
  }

  /**
   * From a file in UTF-8.
   *
   * @param file a line for each word, as in {@code hip = Hüfte}
   * @return the words
   * @throws Refused if there is no such file, or a line is none; says which
   */
  public static LabelWords read(String file) {
    Path saved = OutputFolder.resolve(file);
    Path path = Files.exists(saved) ? saved : InputFile.place(file);
    List<String> lines;
    try {
      lines = Files.readAllLines(path, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new Refused(
          "The words \""
              + file
              + "\" cannot be read: there is no such file, or it is not text in UTF-8.",
          e);
    }
    Map<String, String> words = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).replace("\uFEFF", "").strip();
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      String where = String.format(Locale.ROOT, "%s, line %d", file, i + 1);
      int equals = line.indexOf('=');
      if (equals < 0) {
        throw new Refused(
            where + ": \"" + line + "\" has no =. A line is written as in: hip = Hüfte.");
      }
      // A properties file has a backslash before the blanks of a key.
      String english = line.substring(0, equals).replace("\\ ", " ");
      put(words, english, line.substring(equals + 1), where);
    }
    return new LabelWords(words);
  }

  private static void put(Map<String, String> into, String english, String other, String where) {
    if (english == null || english.isBlank() || other == null || other.isBlank()) {
      throw new Refused(
          where
              + ": a word and its translation are needed, as in hip = Hüfte, not \""
              + (english == null ? "" : english.strip())
              + " = "
              + (other == null ? "" : other.strip())
              + "\".");
    }
    into.put(english.strip().toLowerCase(Locale.ROOT), other.strip());
  }

  /** A label with every known word exchanged; a capital at its beginning stays one. */
  String label(String english) {
    if (own.isEmpty() || english == null) {
      return english;
    }
    Matcher found = known.matcher(english);
    return found.replaceAll(
        match -> {
          String other = own.get(match.group().toLowerCase(Locale.ROOT));
          boolean capital = match.start() == 0 && Character.isUpperCase(match.group().charAt(0));
          return Matcher.quoteReplacement(capital ? Caption.capital(other) : other);
        });
  }

  /**
   * A whole sentence or heading exchanged where it is known.
   *
   * @param english as Leverbook writes it
   * @return one's own words, or the same where there are none
   */
  public String sentence(String english) {
    return own.getOrDefault(english.strip().toLowerCase(Locale.ROOT), english);
  }

  String text() {
    return own.isEmpty() ? "" : ", " + own.size() + " words of one's own";
  }

  @Override
  public String toString() {
    return own.size() + " words for labels";
  }
}
