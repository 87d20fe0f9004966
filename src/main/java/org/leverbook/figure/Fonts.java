package org.leverbook.figure;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import org.leverbook.quantity.Refused;

/** Tells in plain words when this Java cannot draw letters, as on a machine without any font. */
final class Fonts {

  private Fonts() {}

  /**
   * Runs something that draws letters.
   *
   * @param drawing what draws
   * @throws Refused where this Java has no fonts
   */
  static void needed(Runnable drawing) {
    try {
      new TextLayout(
          "m", new Font(Font.SANS_SERIF, Font.PLAIN, 12), new FontRenderContext(null, true, true));
    } catch (OutOfMemoryError | StackOverflowError e) {
      throw e;
    } catch (RuntimeException | Error e) {
      // The JDK fails in several ways here, a bare Error among them: no fontconfig, no font file,
      // no font library.
      throw new Refused(
          "This Java finds no fonts, so a PNG or a plot cannot be drawn here; the picture of a position can be saved as"
              + " .svg. To have both, install fonts (on Debian or Ubuntu: apt-get install fontconfig fonts-dejavu-core).",
          e);
    }
    drawing.run();
  }
}
