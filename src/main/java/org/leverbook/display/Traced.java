package org.leverbook.display;

import java.util.List;

/** A result that remembers what it shows, so that who writes about it can tell how it was made. */
public interface Traced {

  /**
   * The values it was made of.
   *
   * @return positions, sweeps, people and their like; empty where nobody noted them
   */
  default List<Object> subjects() {
    return List.of();
  }
}
