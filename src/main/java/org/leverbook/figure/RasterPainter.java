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
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.leverbook.quantity.Refused;

/** Paints a drawing as a PNG file at twice its size. */
final class RasterPainter {

  /** Pixels for one page unit. */
  static final int FINENESS = 2;

  private static final float HALO = 3;

  private final Graphics2D page;
  private final FigureStyle style;

  private RasterPainter(Graphics2D page, FigureStyle style) {
    this.page = page;
    this.style = style;
  }

  static byte[] png(Drawing drawing, FigureStyle style) {
    return png(
        drawing.width(),
        drawing.height(),
        style,
        page -> drawing.content().forEach(new RasterPainter(page, style)::ink));
  }

  /**
   * A PNG of whatever is painted.
   *
   * @param width page units
   * @param height page units
   * @param style for the background
   * @param painter paints in page units
   * @return the file
   * @throws Refused where this Java has no fonts
   */
  static byte[] png(double width, double height, FigureStyle style, Consumer<Graphics2D> painter) {
    return file(image(width, height, style, FINENESS, painter));
  }

  /** A drawing as an image of so many pixels for one page unit. */
  static BufferedImage image(Drawing drawing, FigureStyle style, double fineness) {
    return image(
        drawing.width(),
        drawing.height(),
        style,
        fineness,
        page -> drawing.content().forEach(new RasterPainter(page, style)::ink));
  }

  private static BufferedImage image(
      double width,
      double height,
      FigureStyle style,
      double fineness,
      Consumer<Graphics2D> painter) {
    BufferedImage image =
        new BufferedImage(
            (int) Math.ceil(width * fineness),
            (int) Math.ceil(height * fineness),
            BufferedImage.TYPE_INT_RGB);
    Fonts.needed(
        () -> {
          Graphics2D page = image.createGraphics();
          page.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
          page.setRenderingHint(
              RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
          page.setRenderingHint(
              RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
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
    } else if (ink instanceof Ink.Form form) {
      form(form);
    } else if (ink instanceof Ink.Photograph photo) {
      AffineTransform place = AffineTransform.getTranslateInstance(photo.x(), photo.y());
      place.scale(
          photo.width() / photo.pixels().getWidth(), photo.height() / photo.pixels().getHeight());
      page.drawImage(photo.pixels(), place, null);
    }
  }

  private void words(Ink.Words words) {
    if (words.words().isBlank()) {
      return;
    }
    Font font = new Font(Font.SANS_SERIF, words.bold() ? Font.BOLD : Font.PLAIN, 1);
    font = font.deriveFont((float) words.size());
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

  private static BasicStroke stroke(Ink.Pen pen) {
    float width = (float) pen.width();
    if (pen.dash().isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] dash = new float[pen.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = pen.dash().get(i).floatValue();
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
  }
}
