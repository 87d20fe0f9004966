package org.leverbook.terminal;

import java.util.Locale;
import org.leverbook.display.Progress;

/** Draws the progress of long work on the line of the cursor, and wipes it off when it is over. */
final class ProgressBar implements Progress.Listener {

  private static final int CELLS = 24;

  private final Paper paper;

  /**
   * A bar.
   *
   * @param paper where it is drawn
   */
  ProgressBar(Paper paper) {
    this.paper = paper;
  }

  @Override
  public void at(Progress progress) {
    paper.bar(text(progress));
  }

  @Override
  public void over() {
    paper.bar("");
  }

  private static String text(Progress progress) {
    int full = CELLS * progress.percent() / 100;
    return String.format(
        Locale.ROOT,
        "[%s%s] %d %%  %s",
        "=".repeat(full),
        " ".repeat(CELLS - full),
        progress.percent(),
        progress.text());
  }
}
