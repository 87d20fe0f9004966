package org.leverbook.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.TextLayout;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.leverbook.quantity.Refused;

/** Paints a drawing as a PNG file, at twice its size unless asked otherwise. */
final class RasterPainter {

  /** Pixels for one page unit. */
  static final int FINENESS = 2;

  /** What an ordinary heap holds beside all else: 240 MB. */
  private static final int MOST_PIXELS = 60_000_000;

  private static final float HALO = 3;

  private final Graphics2D page;
  private final FigureStyle style;

  private RasterPainter(Graphics2D page, FigureStyle style) {
    this.page = page;
    this.style = style;
  }

  static byte[] png(Drawing drawing, FigureStyle style) {
    return png(drawing, style, FINENESS);
  }

  static byte[] png(Drawing drawing, FigureStyle style, double fineness) {
    BufferedImage image = image(drawing, style, fineness);
    return PngFile.of(image, drawing.title(), drawing.description(), fineness);
  }

  private static void needSize(double across, double down) {
    if (!(across >= 1 && down >= 1 && across * down <= MOST_PIXELS)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A picture of %.0f x %.0f pixels cannot be made: it takes at least one each way and at"
                  + " most %,d in all. For more use .svg or .pdf, which have no pixels.",
              across,
              down,
              MOST_PIXELS));
    }
  }

  /** Paints a drawing without its background, in page units. */
  static void paint(Graphics2D page, Drawing drawing, FigureStyle style) {
    drawing.content().forEach(new RasterPainter(page, style)::ink);
  }

  /** A drawing as an image of so many pixels for one page unit. */
  static BufferedImage image(Drawing drawing, FigureStyle style, double fineness) {
    return image(
        drawing.width(), drawing.height(), style, fineness, page -> paint(page, drawing, style));
  }

  /**
   * An image of whatever is painted.
   *
   * @param width page units
   * @param height page units
   * @param style for the background
   * @param fineness pixels for one page unit
   * @param painter paints in page units
   * @return the pixels
   * @throws Refused where this Java cannot draw letters
   */
  static BufferedImage image(
      double width,
      double height,
      FigureStyle style,
      double fineness,
      Consumer<Graphics2D> painter) {
    needSize(width * fineness, height * fineness);
    // Not a hair more than whole: 900 units on 1000 pixels are 1000, whatever the last bit says.
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(width * fineness - 1e-6),
            (int) Math.ceil(height * fineness - 1e-6),
            BufferedImage.TYPE_INT_RGB);
    Fonts.needed(
        () -> {
          Graphics2D page = image.createGraphics();
          page.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
          page.setRenderingHint(
              RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
          page.setRenderingHint(
              RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
          // Whole pixels for each letter would make lines longer than they were measured to be.
          page.setRenderingHint(
              RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
          page.setColor(Color.decode(style.paper()));
          page.fillRect(0, 0, image.getWidth(), image.getHeight());
          page.scale(fineness, fineness);
          painter.accept(page);
          page.dispose();
        });
    return image;
  }

  /** An image as a PNG file. */
  static byte[] file(BufferedImage image) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try {
      ImageIO.write(image, "png", file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file.toByteArray();
  }

  private void ink(Ink ink) {
    if (ink instanceof Ink.Group group) {
      group.content().forEach(this::ink);
    } else if (ink instanceof Ink.Words words) {
      words(words);
    } else if (ink instanceof Ink.Upward upward) {
      AffineTransform before = page.getTransform();
      page.rotate(-Math.PI / 2, upward.words().x(), upward.words().y());
      words(upward.words());
      page.setTransform(before);
    } else if (ink instanceof Ink.Form form) {
      form(form);
    } else if (ink instanceof Ink.Photograph photo) {
      AffineTransform place = AffineTransform.getTranslateInstance(photo.x(), photo.y());
      place.scale(
          photo.width() / photo.pixels().getWidth(), photo.height() / photo.pixels().getHeight());
      page.drawImage(photo.pixels(), place, null);
    } else if (ink instanceof Ink.Inset inset) {
      InsetPainter.paint(page, inset);
    }
  }

  private void words(Ink.Words words) {
    if (words.words().isBlank()) {
      return;
    }
    Font font = Fonts.of(words.words(), words.size(), words.bold());
    TextLayout layout = new TextLayout(words.words(), font, page.getFontRenderContext());
    if (words.halo()) {
      page.setColor(Color.decode(style.paper()));
      page.setStroke(new BasicStroke(HALO, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      page.draw(layout.getOutline(AffineTransform.getTranslateInstance(words.x(), words.y())));
    }
    page.setColor(Color.decode(words.colour()));
    layout.draw(page, (float) words.x(), (float) words.y());
  }

  private void form(Ink.Form form) {
    if (!form.fill().isEmpty()) {
      Color fill = Color.decode(form.fill());
      int alpha = (int) Math.round(255 * form.opacity());
      page.setColor(new Color(fill.getRed(), fill.getGreen(), fill.getBlue(), alpha));
      page.fill(form.shape());
    }
    if (form.pen() != null) {
      page.setColor(Color.decode(form.pen().colour()));
      page.setStroke(stroke(form.pen()));
      page.draw(form.shape());
    }
  }

  private BasicStroke stroke(Ink.Pen pen) {
    float width = (float) (style.line() * pen.width());
    if (pen.dash().isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] dash = new float[pen.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = (float) (style.line() * pen.dash().get(i));
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
  }
}
