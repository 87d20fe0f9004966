package org.leverbook.study;

import java.nio.file.Path;
import java.util.Locale;
import org.leverbook.display.Caution;
import org.leverbook.display.Shown;

/**
 * What was written to a file.
 *
 * @param file where
 * @param rows how many, without the heading
 * @param held how many positions could be held
 * @param positions how many were computed
 * @param asked how many were asked for; more than computed where the user stopped it
 * @param reason the first reason why a position is missing; empty where all could be held
 */
public record Written(Path file, long rows, long held, int positions, int asked, String reason)
    implements Shown {

  @Override
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "saved %s: %,d rows; %,d of %,d positions could be held\n",
            file,
            rows,
            held,
            positions));
    Stopped.note(positions, asked).forEach(note -> text.append(note).append('\n'));
    if (!reason.isEmpty()) {
      text.append("The first that is missing: ").append(reason).append('\n');
    }
    return text.append(Caution.TEXT).toString();
  }

  @Override
  public String toString() {
    return text();
  }
}
