package org.leverbook.desk;

import org.leverbook.display.Shown;

/**
 * An answer of the desk itself.
 *
 * @param text what it says
 */
public record Said(String text) implements Shown {

  @Override
  public String toString() {
    return text;
  }
}
