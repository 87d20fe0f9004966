package org.leverbook.session;

import org.leverbook.display.Display;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Refused;

/**
 * The value of an expression.
 *
 * @param object the object itself; may be null
 * @param line the line on which the expression begins in its text, from 1
 */
public record Value(Object object, int line) {

  /**
   * How the value shows itself. Showing runs the user's code where the class is the user's, so it
   * can take long.
   *
   * @return never null
   */
  public Shown shown() {
    return Display.of(object);
  }

  /**
   * The value as text.
   *
   * @return never null, never throws, but for a stop
   */
  public String text() {
    try {
      return shown().text();
    } catch (Refused e) {
      // What is worked out only when it is asked may turn out to be impossible.
      return e.getMessage();
    } catch (RuntimeException | StackOverflowError e) {
      return "a " + object.getClass().getSimpleName() + " that cannot show itself (" + e + ")";
    }
  }
}
