package org.leverbook.display;

/**
 * The place of a value that was shown on the way.
 *
 * @param scene its number in this process
 */
public record OnStage(long scene) implements Shown {

  /**
   * Shows another value in its place; where nothing can be replaced, as in a terminal, below it.
   *
   * @param value any value, or null
   * @return this place
   */
  public OnStage update(Object value) {
    Stage.change(scene, value);
    return this;
  }

  @Override
  public String text() {
    return "shown; .update(…) shows another value in its place";
  }
}
