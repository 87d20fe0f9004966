package org.leverbook.study;

/** Where the cells of a grid lie in their order. */
final class Places {

  private Places() {}

  /**
   * The place of a cell.
   *
   * @param index of the cell, in order
   * @param faster the spans that vary faster than the first, slower ones first
   * @return an index into the first span and into each of the others
   */
  static int[] of(int index, Span<?>... faster) {
    int[] places = new int[faster.length + 1];
    int rest = index;
    for (int i = faster.length; i > 0; i--) {
      int values = faster[i - 1].values();
      places[i] = rest % values;
      rest /= values;
    }
    places[0] = rest;
    return places;
  }
}
