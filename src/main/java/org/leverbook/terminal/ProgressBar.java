package org.leverbook.terminal;

import java.util.Locale;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.InfoCmp.Capability;
import org.leverbook.display.Progress;

/** Draws the progress of long work on the line of the cursor, and wipes it off when it is over. */
final class ProgressBar implements Progress.Listener {

  private static final int CELLS = 24;
  private static final int FEWEST_COLUMNS = 20;

  private final Terminal terminal;

  /**
   * A bar.
   *
   * @param terminal where it is drawn
   */
  ProgressBar(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public void at(Progress progress) {
    draw(text(progress));
  }

  @Override
  public void over() {
    draw("");
  }

  private void draw(String text) {
    try {
      // The last column stays free: a full line would go on in the next.
      int columns = Math.max(FEWEST_COLUMNS, terminal.getSize().getColumns()) - 1;
      terminal.puts(Capability.carriage_return);
      terminal.writer().print(new AttributedString(text).columnSubSequence(0, columns));
      terminal.puts(Capability.clr_eol);
      terminal.puts(Capability.carriage_return);
      terminal.writer().flush();
    } catch (IllegalStateException e) {
      // The window was closed meanwhile: nobody is left to tell, and the work must not fail of it.
      return;
    }
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
