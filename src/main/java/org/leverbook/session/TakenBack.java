package org.leverbook.session;

import java.util.List;

/**
 * What came of taking a piece back.
 *
 * @param gone the names that are not there any more
 * @param back the names that are as they were before
 * @param lost the names that could not be brought back
 */
public record TakenBack(List<String> gone, List<String> back, List<String> lost) {

  /** Keeps its own copies. */
  public TakenBack {
    gone = List.copyOf(gone);
    back = List.copyOf(back);
    lost = List.copyOf(lost);
  }
}
