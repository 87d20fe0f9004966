package org.leverbook.figure;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.leverbook.quantity.Refused;

/**
 * The letters of pictures: DejaVu Sans, plain and bold, which travels in the jar, so that a PNG, a
 * PDF and the spacing of a plot are the same on every machine, also on one without any font.
 *
 * <p>Licence of the letters: Bitstream Vera Fonts Copyright, its DejaVu changes in the public
 * domain; it lies beside them. Signs they lack are taken from the machine's fonts where it has any.
 */
final class Fonts {

  private static final String FOLDER = "letters/";

  /** Where the JDK looks for a table of the machine's fonts before it asks the machine. */
  private static final String TABLE = "sun.awt.fontconfig";

  private static Font plain;
  private static Font bold;
  private static boolean machineHasFonts;

  private Fonts() {}

  /**
   * Runs something that draws letters.
   *
   * @param drawing what draws
   * @throws Refused where this Java cannot draw letters at all
   */
  static void needed(Runnable drawing) {
    load();
    drawing.run();
  }

  /**
   * The plain letters.
   *
   * @param size page units
   * @return the font
   */
  static Font plain(double size) {
    load();
    return plain.deriveFont((float) size);
  }

  /**
   * The bold letters.
   *
   * @param size page units
   * @return the font
   */
  static Font bold(double size) {
    load();
    return bold.deriveFont((float) size);
  }

  /**
   * Letters for a text: ours, or the machine's where ours lack a sign.
   *
   * @param text what is to be written
   * @param size page units
   * @param heavy whether bold
   * @return the font
   */
  static Font of(String text, double size, boolean heavy) {
    Font ours = heavy ? bold(size) : plain(size);
    if (!machineHasFonts || ours.canDisplayUpTo(text) < 0) {
      return ours;
    }
    return new Font(Font.SANS_SERIF, heavy ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) size);
  }

  /**
   * The file of a face.
   *
   * @param heavy whether bold
   * @return a TrueType font
   */
  static byte[] file(boolean heavy) {
    String name = FOLDER + (heavy ? "DejaVuSans-Bold.ttf" : "DejaVuSans.ttf");
    try (InputStream file = Fonts.class.getResourceAsStream(name)) {
      if (file == null) {
        throw new IllegalStateException("The letters are missing in this build: " + name);
      }
      return file.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static synchronized void load() {
    if (plain != null) {
      return;
    }
    machineHasFonts = works(() -> write(new Font(Font.SANS_SERIF, Font.PLAIN, 12))) == null;
    Throwable failed = works(Fonts::make);
    if (failed != null) {
      // Without a font the JDK finds no default and gives up, ours or not; a table naming no font
      // lets it go on.
      failed = works(Fonts::withEmptyTable);
    }
    if (failed != null) {
      throw new Refused(
          "This Java cannot draw letters, so a PNG, a PDF or a plot cannot be drawn here; the picture of a position"
              + " can be saved as .svg. To have all, install its font library (on Debian or Ubuntu: apt-get install"
              + " libfreetype6 fontconfig).",
          failed);
    }
  }

  private static void withEmptyTable() {
    String before = System.getProperty(TABLE);
    try {
      Path table = Files.createTempFile("letters", ".properties");
      Files.writeString(table, "version=1\nsequence.allfonts=default\n");
      System.setProperty(TABLE, table.toString());
      try {
        make();
      } finally {
        Files.deleteIfExists(table);
        if (before == null) {
          System.clearProperty(TABLE);
        } else {
          System.setProperty(TABLE, before);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void make() {
    try {
      // The face is bold already; called so, its texts are marked bold in an SVG.
      Font heavy =
          Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(file(true)))
              .deriveFont(Font.BOLD);
      Font light = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(file(false)));
      write(heavy);
      write(light);
      bold = heavy;
      plain = light;
    } catch (FontFormatException | IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void write(Font font) {
    new TextLayout("m", font.deriveFont(12f), new FontRenderContext(null, true, true));
  }

  /**
   * What went wrong; null where nothing did. The JDK fails here in several ways, bare errors too.
   */
  private static Throwable works(Runnable trial) {
    try {
      trial.run();
      return null;
    } catch (OutOfMemoryError | StackOverflowError e) {
      throw e;
    } catch (RuntimeException | Error e) {
      return e;
    }
  }
}
