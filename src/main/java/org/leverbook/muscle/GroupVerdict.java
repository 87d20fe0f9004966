package org.leverbook.muscle;

import java.util.Locale;

/**
 * What a lift or position asks of one trade group, on the side that pulls harder.
 *
 * @param group as in "hamstrings"
 * @param side "right", "left", or "both" where they pull alike
 * @param word of the scale
 * @param most mean stress weighted by cross-section, 0 to 1, at the hardest point of the way
 * @param least the same at the easiest point
 * @param at where it is hardest, a share of the way, 0 to 1
 * @param low the most stress in all but a twentieth of the draws is higher than this ({@link
 *     Verdict})
 * @param high the most stress in all but a twentieth of the draws is lower than this
 * @param strand the muscle of the group with the highest stress on the way
 * @param strandStress its stress, 0 to 1
 * @param change of length on the way, metres, of the muscle that changes most; 0 in one position
 * @param turn the same as a turn on that muscle's longest arm, radians
 * @param sure share of the draws that give the same word, 0 to 1
 */
public record GroupVerdict(
    String group,
    String side,
    VerdictWord word,
    double most,
    double least,
    double at,
    double low,
    double high,
    String strand,
    double strandStress,
    double change,
    double turn,
    double sure) {

  /**
   * In one line.
   *
   * @return as in "hamstrings: worked, 12 to 48 %", or one number where it stays the same
   */
  @Override
  public String toString() {
    String from = String.format(Locale.ROOT, "%.0f", 100 * least);
    String to = String.format(Locale.ROOT, "%.0f", 100 * most);
    String stress = from.equals(to) ? to : from + " to " + to;
    return group + ": " + word.word() + ", " + stress + " %";
  }
}
