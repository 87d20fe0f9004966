package org.leverbook.terminal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jline.reader.Candidate;
import org.jline.utils.AttributedString;

/** Cuts a list of ways to go on to the window. */
final class CandidateList {

  /** Between two columns of a list. */
  private static final int GAP = 3;

  private CandidateList() {}

  /** Whether this is no way to go on, but the line that counts the rest. */
  static boolean isCount(Candidate candidate) {
    return candidate.sort() == Integer.MAX_VALUE;
  }

  /**
   * As many as fit, with a line that counts the rest.
   *
   * @param possible all, the best first
   * @param columns the window's width
   * @param rows how many lines there may be
   * @return a new list; all of them where all fit
   */
  static List<Candidate> fitting(List<Candidate> possible, int columns, int rows) {
    List<Candidate> sorted = new ArrayList<>(possible);
    sorted.sort(Comparator.comparingInt(Candidate::sort));
    int widest =
        sorted.stream()
            .mapToInt(c -> new AttributedString(c.displ()).columnLength())
            .max()
            .orElse(1);
    boolean explained = sorted.stream().anyMatch(c -> c.descr() != null);
    int across = explained ? 1 : Math.max(1, columns / (widest + GAP));
    int room = Math.max(1, rows - 1) * across;
    if (sorted.size() <= room) {
      return sorted;
    }
    List<Candidate> cut = new ArrayList<>(sorted.subList(0, room - 1));
    String rest = "… " + (sorted.size() - room + 1) + " more: Tab";
    cut.add(new Candidate(rest, rest, null, null, null, null, false, Integer.MAX_VALUE));
    return cut;
  }
}
