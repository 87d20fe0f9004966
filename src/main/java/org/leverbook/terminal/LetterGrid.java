package org.leverbook.terminal;

/** Cells in which texts are written so that none covers another. */
final class LetterGrid {

  private final char[][] cells;
  private final int columns;

  LetterGrid(int columns, int rows) {
    this.columns = columns;
    this.cells = new char[rows][columns];
  }

  /**
   * Writes a text where it is free, at its line or up to some lines below; else it is left out. One
   * that would leave the grid at the right begins earlier.
   */
  void write(String text, int column, int row, int farthest) {
    int begin = Math.max(0, Math.min(column, columns - text.length()));
    if (text.isEmpty() || text.length() > columns || row < 0) {
      return;
    }
    for (int at = row; at <= row + farthest && at < cells.length; at++) {
      if (isFree(at, begin - 1, begin + text.length() + 1)) {
        text.getChars(0, text.length(), cells[at], begin);
        return;
      }
    }
  }

  private boolean isFree(int row, int from, int to) {
    for (int column = Math.max(0, from); column < Math.min(columns, to); column++) {
      if (cells[row][column] != 0) {
        return false;
      }
    }
    return true;
  }

  boolean isTaken(int column, int row) {
    return column < columns && cells[row][column] != 0;
  }

  /** The letter of a taken cell. */
  String at(int column, int row) {
    return String.valueOf(cells[row][column]);
  }

  /** Behind the last letter of a row. */
  int end(int row) {
    int end = columns;
    while (end > 0 && cells[row][end - 1] == 0) {
      end--;
    }
    return end;
  }
}
