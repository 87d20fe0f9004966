package org.leverbook.language;

import org.leverbook.display.OnStage;
import org.leverbook.display.Stage;

/** The words about the session itself; {@link Vocabulary} hands them on. */
public abstract sealed class DeskWords extends ArticleWords permits Vocabulary {

  DeskWords() {}

  /**
   * Shows a value at once, also in the middle of a loop, as in {@code display(start.picture())}.
   *
   * @param value any value
   * @return its place; {@code .update(other)} shows another value there
   */
  public static OnStage display(Object value) {
    return Stage.show(value);
  }
}
