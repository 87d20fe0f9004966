package org.leverbook.solve;

import java.util.Arrays;

/** Sets of columns, as marks or in order; -1 stands for what is held and has none. */
final class Columns {

  private Columns() {}

  /** Marks a column, if it is one. */
  static void mark(boolean[] marks, int column) {
    if (column >= 0) {
      marks[column] = true;
    }
  }

  /** Marks several columns. */
  static void mark(boolean[] marks, int[] columns) {
    for (int column : columns) {
      mark(marks, column);
    }
  }

  /** The columns that are marked, in order. */
  static int[] marked(boolean[] marks) {
    int[] found = new int[marks.length];
    int count = 0;
    for (int i = 0; i < marks.length; i++) {
      if (marks[i]) {
        found[count++] = i;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** Where some columns stand among all; -1 where they do not. */
  static int[] within(int[] all, int[] some) {
    int[] places = new int[some.length];
    for (int i = 0; i < some.length; i++) {
      places[i] = Math.max(-1, Arrays.binarySearch(all, some[i]));
    }
    return places;
  }
}
