package org.leverbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What people type by habit, from paper or other languages, told from the look of a line that the
 * compiler could not read; the patterns stand in {@code habits.txt}.
 */
final class Habits {

  /**
   * One habit.
   *
   * @param pattern how it looks
   * @param words whether it can also look to the compiler like a word that is missing
   * @param sentence what to type instead
   */
  private record Habit(Pattern pattern, boolean words, String sentence) {}

  /** Stands where quoted text and comments are hidden from the patterns. */
  private static final char HIDDEN = '\u0001';

  private static final int LONGEST_LINE = 2_000;

  private static List<Habit> all;

  private Habits() {}

  private static synchronized List<Habit> all() {
    if (all == null) {
      List<Habit> read = new ArrayList<>();
      Pattern pattern = null;
      boolean words = false;
      for (String line : Sentences.lines("habits.txt")) {
        if (line.startsWith("?")) {
          words = line.startsWith("??");
          pattern = Pattern.compile(line.substring(line.indexOf(' ') + 1));
        } else {
          read.add(new Habit(pattern, words, line.substring(2)));
        }
      }
      all = List.copyOf(read);
    }
    return all;
  }

  /**
   * The habit that shows in the line of a place.
   *
   * @param code what was typed
   * @param place a place in it
   * @param missedWord whether the compiler understood the line but for a word
   * @return what to type instead, and where; empty where no habit shows
   */
  static Optional<Told> of(String code, int place, boolean missedWord) {
    int at = Math.max(0, Math.min(place, code.length()));
    int from = code.lastIndexOf('\n', at - 1) + 1;
    int to = code.indexOf('\n', at);
    to = to < 0 ? code.length() : to;
    if (to - from > LONGEST_LINE) {
      return Optional.empty();
    }
    String line = code.substring(from, to).replace("\r", "");
    String bare = hidden(code, from, to).replace("\r", "");
    for (Habit habit : all()) {
      Matcher look = habit.pattern().matcher(bare);
      if ((habit.words() || !missedWord) && look.find()) {
        int seen = from + look.start();
        while (seen < to && Character.isWhitespace(code.charAt(seen))) {
          seen++;
        }
        return Optional.of(
            new Told(Sentences.filled(habit.sentence(), look.toMatchResult(), line), seen));
      }
    }
    return Optional.empty();
  }

  /** A line with what stands in quotes and comments hidden, and as long as before. */
  private static String hidden(String code, int from, int to) {
    Brackets reader = new Brackets(code, 0);
    StringBuilder line = new StringBuilder();
    for (int at = from; at < to; at++) {
      reader.readTo(at);
      char c = code.charAt(at);
      boolean quote = c == '"' || c == '\'';
      line.append(reader.inWords() && !quote ? HIDDEN : c);
    }
    return line.toString();
  }
}
