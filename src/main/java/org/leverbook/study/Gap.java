package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;

/**
 * Neighbours that gave no position for the same reason, but for its numbers.
 *
 * @param first index of the first of them
 * @param last index of the last of them
 * @param reason that of the first
 */
public record Gap(int first, int last, String reason) {

  /**
   * The gaps in a row of outcomes.
   *
   * @param reasons one for each; empty where there is no gap
   * @return in order
   */
  public static List<Gap> in(List<String> reasons) {
    List<Gap> gaps = new ArrayList<>();
    int i = 0;
    while (i < reasons.size()) {
      int from = i++;
      String reason = reasons.get(from);
      if (reason.isEmpty()) {
        continue;
      }
      while (i < reasons.size() && wording(reasons.get(i)).equals(wording(reason))) {
        i++;
      }
      gaps.add(new Gap(from, i - 1, reason));
    }
    return gaps;
  }

  /** How many they are. */
  public int size() {
    return last - first + 1;
  }

  /** A reason without its numbers. */
  static String wording(String reason) {
    return reason.replaceAll("[0-9.,-]+", "#");
  }
}
