package org.leverbook.display;

/** How pictures look, apart from what they show: colours, lines, letters, the labels' language. */
public interface Look {

  /**
   * The look in one line.
   *
   * @return as in "letters 13, lines 1 time, 6 colours"
   */
  String text();
}
