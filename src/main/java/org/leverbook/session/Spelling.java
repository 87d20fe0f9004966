package org.leverbook.session;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import org.leverbook.data.Nearest;

/** Which of the known words a misspelt word may stand for. */
final class Spelling {

  private static final int MOST = 3;

  private Spelling() {}

  /**
   * The nearest words.
   *
   * @param word what was written
   * @param known the words there are; a method's ends with its opening bracket
   * @return at most three, nearest first
   */
  static List<String> nearest(String word, Collection<String> known) {
    String wanted = word.toLowerCase(Locale.ROOT);
    int allowed = Nearest.allowed(word);
    return known.stream()
        .distinct()
        .map(candidate -> new Scored(candidate, distance(wanted, candidate)))
        .filter(scored -> scored.distance() <= allowed)
        .sorted(
            Comparator.comparingInt(Scored::distance)
                .thenComparing(scored -> !scored.word().startsWith(word.substring(0, 1)))
                .thenComparing(Scored::word))
        .map(Scored::word)
        .filter(firstOfItsLetters())
        .limit(MOST)
        .toList();
  }

  /**
   * Words of which the one that was written is a part.
   *
   * @param word what was written
   * @param known the words there are; a method's ends with its opening bracket
   * @return empty where no word holds it, or one that is a single letter off is meant: kinds of
   *     values are not
   */
  static List<String> holding(String word, Collection<String> known) {
    String wanted = word.toLowerCase(Locale.ROOT);
    if (known.stream().anyMatch(near -> distance(wanted, near) <= 1)) {
      return List.of();
    }
    return Nearest.holding(word, known.stream().filter(Spelling::isCalledOrFixed).toList());
  }

  private static boolean isCalledOrFixed(String candidate) {
    return candidate.contains("(") || candidate.equals(candidate.toUpperCase(Locale.ROOT));
  }

  /** A method and a class that differ only in capitals are one suggestion. */
  private static Predicate<String> firstOfItsLetters() {
    Set<String> seen = new HashSet<>();
    return candidate -> seen.add(bare(candidate).toLowerCase(Locale.ROOT));
  }

  /** A word without the brackets of a call. */
  static String bare(String candidate) {
    int bracket = candidate.indexOf('(');
    return bracket < 0 ? candidate : candidate.substring(0, bracket);
  }

  private record Scored(String word, int distance) {}

  private static int distance(String wanted, String candidate) {
    return Nearest.distance(wanted, bare(candidate).toLowerCase(Locale.ROOT));
  }
}
