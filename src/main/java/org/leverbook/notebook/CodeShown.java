package org.leverbook.notebook;

/** How a page shows the code of its cells. */
public enum CodeShown {
  /** Closed; a click opens it. */
  FOLDED,
  /** Open. */
  SHOWN,
  /** Not at all. */
  NONE
}
