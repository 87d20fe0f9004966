package org.leverbook.display;

import java.util.List;

/**
 * A table that can be written row by row, however long it is: the smallest that a file needs to
 * know.
 */
public interface Rows {

  /**
   * The columns' names with their units.
   *
   * @return as in {@code moment (N·m)}
   */
  List<String> headings();

  /**
   * How many rows there are.
   *
   * @return zero or more
   */
  int count();

  /**
   * A cell.
   *
   * @param row from 0
   * @param column from 0
   * @return a finite number, a text, or null where there is nothing to say
   */
  Object cell(int row, int column);

  /**
   * Sentences that belong to the table, among them the caution.
   *
   * @return in order
   */
  List<String> notes();
}
