package org.leverbook.data;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Which of the names there are a misspelt name may stand for. */
public final class Nearest {

  private static final int MOST = 3;
  private static final int MOST_HOLDING = 6;
  private static final int SHORTEST_PART = 3;
  private static final Pattern PARTS = Pattern.compile("(?<=[a-z0-9])(?=[A-Z])|[ _-]");

  private Nearest() {}

  /**
   * The nearest names.
   *
   * @param word what was written
   * @param known the names there are
   * @return at most three, nearest first; only names that could be meant
   */
  public static List<String> of(String word, Collection<String> known) {
    String wanted = word.toLowerCase(Locale.ROOT);
    return known.stream()
        .distinct()
        .filter(name -> distance(wanted, name.toLowerCase(Locale.ROOT)) <= allowed(word))
        .sorted(
            Comparator.<String>comparingInt(name -> distance(wanted, name.toLowerCase(Locale.ROOT)))
                .thenComparing(name -> !name.startsWith(word.substring(0, 1)))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST)
        .toList();
  }

  /**
   * Names of which the word is a part, or the beginning of a part: who writes "squat" may mean
   * backSquat.
   *
   * @param word what was written; from three letters on
   * @param known the names there are, their parts told apart by capitals, blanks, _ or hyphens
   * @return at most six; those that begin with it first
   */
  public static List<String> holding(String word, Collection<String> known) {
    String wanted = word.toLowerCase(Locale.ROOT);
    if (wanted.length() < SHORTEST_PART) {
      return List.of();
    }
    return known.stream()
        .distinct()
        .filter(name -> Arrays.stream(PARTS.split(name)).anyMatch(p -> begins(p, wanted)))
        .sorted(
            Comparator.<String, Boolean>comparing(name -> !begins(name, wanted))
                .thenComparing(Comparator.naturalOrder()))
        .limit(MOST_HOLDING)
        .toList();
  }

  private static boolean begins(String part, String wanted) {
    return part.toLowerCase(Locale.ROOT).startsWith(wanted);
  }

  /**
   * How many letters may be wrong in a word.
   *
   * @param word what was written
   * @return about a third of its letters, at least one
   */
  public static int allowed(String word) {
    return word.length() <= 2 ? 1 : Math.max(1, (word.length() + 1) / 3);
  }

  /**
   * Letters added, dropped, changed or swapped with their neighbour (Damerau, optimal alignment).
   *
   * @param a one word
   * @param b the other
   * @return how many such steps lead from one to the other
   */
  public static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int changed = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + changed, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
