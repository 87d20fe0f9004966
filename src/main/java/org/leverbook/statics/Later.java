package org.leverbook.statics;

import java.util.function.Supplier;

/**
 * A value that is computed when it is first asked for, once, whichever thread asks.
 *
 * @param <T> what it is
 */
final class Later<T> {

  private final Supplier<T> how;
  private volatile T found;

  Later(Supplier<T> how) {
    this.how = how;
  }

  T value() {
    T value = found;
    if (value == null) {
      synchronized (this) {
        value = found;
        if (value == null) {
          value = how.get();
          found = value;
        }
      }
    }
    return value;
  }
}
