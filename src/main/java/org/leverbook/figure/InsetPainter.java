package org.leverbook.figure;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** Paints a whole picture into its place on a page. */
final class InsetPainter {

  private InsetPainter() {}

  static void paint(Graphics2D page, Ink.Inset inset) {
    Graphics2D part = (Graphics2D) page.create();
    Rectangle2D place = new Rectangle2D.Double(inset.x(), inset.y(), inset.width(), inset.height());
    part.clip(place);
    if (inset.picture() instanceof Drawn drawn) {
      Drawing drawing = drawn.drawing();
      part.setColor(Color.decode(drawn.style().paper()));
      part.fill(place);
      into(part, inset, drawing.width(), drawing.height());
      RasterPainter.paint(part, drawing, drawn.style());
    } else if (inset.picture() instanceof FittedChart chart) {
      into(part, inset, chart.width(), chart.height());
      chart.paint(part);
    } else {
      BufferedImage image = InsetSize.pixels(inset.picture());
      AffineTransform at = AffineTransform.getTranslateInstance(inset.x(), inset.y());
      at.scale(inset.width() / image.getWidth(), inset.height() / image.getHeight());
      part.drawImage(image, at, null);
    }
    part.dispose();
  }

  private static void into(Graphics2D part, Ink.Inset inset, double width, double height) {
    part.translate(inset.x(), inset.y());
    part.scale(inset.width() / width, inset.height() / height);
  }
}
