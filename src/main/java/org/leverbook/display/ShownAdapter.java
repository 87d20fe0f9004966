package org.leverbook.display;

import java.util.Optional;

/** A service that shows values of a foreign class. Registered in {@code META-INF/services}. */
public interface ShownAdapter {

  /**
   * Shows a value, if this adapter knows its class.
   *
   * @param value any value, not null
   * @return how it shows itself, or empty where the class is not known here
   */
  Optional<Shown> show(Object value);
}
