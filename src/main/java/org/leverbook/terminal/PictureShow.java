package org.leverbook.terminal;

import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.impl.TerminalGraphics;
import org.jline.terminal.impl.TerminalGraphics.ImageOptions;
import org.jline.terminal.impl.TerminalGraphicsManager;
import org.leverbook.display.Preferences;
import org.leverbook.display.Shown;

/**
 * Pictures in the terminal: as they are where it can draw, as a sketch in letters where it cannot.
 */
final class PictureShow {

  /** A usual cell, in pixels: what a terminal draws is sized by these. */
  private static final int CELL_WIDTH = 9;

  private static final int CELL_HEIGHT = 18;
  private static final int WIDEST_SKETCH = 100;
  private static final int FEWEST_ROWS = 8;

  private final Terminal terminal;
  private final Map<String, String> environment;
  private final Palette palette;
  private final Supplier<Preferences> looks;

  PictureShow(
      Terminal terminal,
      Map<String, String> environment,
      Palette palette,
      Supplier<Preferences> looks) {
    this.terminal = terminal;
    this.environment = environment;
    this.palette = palette;
    this.looks = looks;
  }

  /**
   * What to write so that a picture is seen.
   *
   * @param shown a value with a PNG file
   * @return the text, with a line end; empty where nothing can be seen here, or nothing is wanted
   */
  Optional<String> of(Shown shown) {
    if (!looks.get().pictures() || palette.isDumb()) {
      return Optional.empty();
    }
    Optional<byte[]> png = shown.png();
    if (png.isEmpty()) {
      return Optional.empty();
    }
    try {
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(png.get()));
      return image == null
          ? Optional.empty()
          : Optional.of(drawn(image, shown)).filter(text -> !text.isBlank());
    } catch (IOException e) {
      // The file beside it is what counts; it was saved, or said why not.
      return Optional.empty();
    }
  }

  private String drawn(BufferedImage image, Shown shown) throws IOException {
    Size size = terminal.getSize();
    int rows = Math.max(FEWEST_ROWS, size.getRows() - 4);
    Optional<TerminalGraphics> graphics = graphics();
    if (graphics.isPresent()) {
      BufferedImage scaled =
          within(image, size.getColumns() * CELL_WIDTH, Math.min(rows, 36) * CELL_HEIGHT);
      return graphics.get().convertImage(scaled, new ImageOptions()) + "\n";
    }
    if (!canBraille()) {
      return "";
    }
    int columns = Math.min(size.getColumns() - 1, WIDEST_SKETCH);
    SvgTexts texts = shown.svg().map(SvgTexts::of).orElse(SvgTexts.NONE);
    return Sketch.of(image, texts, columns, rows, palette.hasManyColours()).stream()
            .map(line -> line.toAnsi(terminal))
            .collect(Collectors.joining("\n"))
        + "\n";
  }

  /** A terminal inside another one swallows what only the outer one could draw. */
  private Optional<TerminalGraphics> graphics() {
    boolean inside = environment.containsKey("TMUX") || environment.containsKey("STY");
    boolean nested =
        terminal.getType().startsWith("screen") || terminal.getType().startsWith("tmux");
    return inside || nested ? Optional.empty() : TerminalGraphicsManager.getBestProtocol(terminal);
  }

  private boolean canBraille() {
    Charset encoding = terminal.encoding();
    return encoding.newEncoder().canEncode('\u28ff');
  }

  private static BufferedImage within(BufferedImage image, int width, int height) {
    double scale =
        Math.min(
            1, Math.min(width / (double) image.getWidth(), height / (double) image.getHeight()));
    int w = Math.max(1, (int) (image.getWidth() * scale));
    int h = Math.max(1, (int) (image.getHeight() * scale));
    BufferedImage scaled = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    var graphics = scaled.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
    graphics.drawImage(halved(image, w, h), 0, 0, w, h, null);
    graphics.dispose();
    return scaled;
  }

  /** Halved as often as fits: one great step would lose thin lines. */
  private static BufferedImage halved(BufferedImage image, int width, int height) {
    BufferedImage now = image;
    while (now.getWidth() >= 2 * width && now.getHeight() >= 2 * height) {
      int w = now.getWidth() / 2;
      int h = now.getHeight() / 2;
      BufferedImage half = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
      var graphics = half.createGraphics();
      graphics.setRenderingHint(
          RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
      graphics.drawImage(now, 0, 0, w, h, null);
      graphics.dispose();
      now = half;
    }
    return now;
  }
}
