package org.leverbook.study;

import java.util.List;
import org.leverbook.display.Sheet.Column;

/**
 * What a sweep varies.
 *
 * @param name as in "hip height"
 * @param unit as in "cm"
 * @param span its values, or null where there are none to tell beforehand
 * @param names of the things tried; empty where a quantity is varied
 */
record Varied(String name, String unit, Span<?> span, List<String> names) {

  static Varied of(Span<?> span) {
    return new Varied(span.name(), span.symbol(), span, List.of());
  }

  static Varied of(String name, List<?> things) {
    return new Varied(name, "", null, Names.of(things));
  }

  static Varied of(String name, String unit) {
    return new Varied(name, unit, null, List.of());
  }

  boolean named() {
    return !names.isEmpty();
  }

  /** A value; of a thing its number, from 1. */
  double value(int index) {
    return named() ? index + 1 : span.value(index);
  }

  String label(int index) {
    return named() ? names.get(index) : "";
  }

  /** The column of a table. */
  Column column(int decimals) {
    return named() ? Column.text(name) : new Column(name, unit, decimals);
  }
}
