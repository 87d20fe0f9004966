package org.leverbook.language;

import org.leverbook.display.Shown;

/**
 * The guided first lesson, at one of its steps. It shows what to try; whatever is typed is looked
 * at, and when it does what the step asks for, the next step is shown.
 */
public interface Lesson extends Shown {

  /**
   * A line that would do for this step.
   *
   * @return the hint
   */
  Shown hint();

  /**
   * Goes on without having done this step.
   *
   * @return the lesson at the next step
   */
  Lesson skip();

  /**
   * Goes back to the first step.
   *
   * @return the lesson at its first step
   */
  Lesson restart();

  /**
   * Ends the lesson; what was made in it stays.
   *
   * @return how far it came
   */
  Shown leave();
}
