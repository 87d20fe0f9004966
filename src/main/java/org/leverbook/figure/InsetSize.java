package org.leverbook.figure;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.leverbook.display.Picture;
import org.leverbook.quantity.Refused;
import org.w3c.dom.Element;

/**
 * How large a picture is by itself, page units.
 *
 * @param width page units
 * @param height page units
 */
record InsetSize(double width, double height) {

  private static final Pattern LENGTH = Pattern.compile("\\s*([0-9]*\\.?[0-9]+)\\s*(px)?\\s*");

  /** Letters of a picture whose drawing is not known to us. */
  private static final double USUAL_LETTERS = 12;

  static InsetSize of(Picture picture) {
    if (picture instanceof Drawn drawn) {
      return new InsetSize(drawn.drawing().width(), drawn.drawing().height());
    }
    if (picture instanceof ChartPicture chart) {
      return new InsetSize(chart.width(), chart.height());
    }
    return InsetSvg.root(picture)
        .flatMap(InsetSize::of)
        .orElseGet(
            () -> {
              BufferedImage image = pixels(picture);
              double fine = RasterPainter.FINENESS;
              return new InsetSize(image.getWidth() / fine, image.getHeight() / fine);
            });
  }

  private static Optional<InsetSize> of(Element root) {
    Matcher width = LENGTH.matcher(root.getAttribute("width"));
    Matcher height = LENGTH.matcher(root.getAttribute("height"));
    if (width.matches() && height.matches()) {
      return positive(Double.parseDouble(width.group(1)), Double.parseDouble(height.group(1)));
    }
    String[] box = root.getAttribute("viewBox").strip().split("[\\s,]+");
    try {
      return box.length == 4
          ? positive(Double.parseDouble(box[2]), Double.parseDouble(box[3]))
          : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private static Optional<InsetSize> positive(double width, double height) {
    return width > 0 && height > 0 && Double.isFinite(width * height)
        ? Optional.of(new InsetSize(width, height))
        : Optional.empty();
  }

  /** The smallest letters of a picture, in its own units. */
  static double letters(Picture picture) {
    return picture instanceof Drawn drawn
        ? drawn.drawing().content().stream()
            .mapToDouble(InsetSize::letters)
            .min()
            .orElse(USUAL_LETTERS)
        : USUAL_LETTERS;
  }

  private static double letters(Ink ink) {
    if (ink instanceof Ink.Group group) {
      return group.content().stream()
          .mapToDouble(InsetSize::letters)
          .min()
          .orElse(Double.POSITIVE_INFINITY);
    }
    if (ink instanceof Ink.Words words && !words.words().isBlank()) {
      return words.size();
    }
    return ink instanceof Ink.Inset inset
        ? letters(inset.picture()) * inset.width() / of(inset.picture()).width()
        : Double.POSITIVE_INFINITY;
  }

  /** The pixels of any picture. */
  static BufferedImage pixels(Picture picture) {
    try {
      byte[] file = picture.pngFile();
      BufferedImage image = file == null ? null : ImageIO.read(new ByteArrayInputStream(file));
      if (image != null) {
        return image;
      }
    } catch (IOException e) {
      throw unreadable(picture, e);
    }
    throw unreadable(picture, null);
  }

  private static Refused unreadable(Picture picture, IOException cause) {
    return new Refused(
        "A picture of the page cannot be read, neither as SVG nor as PNG: "
            + picture.text()
            + ". Save it alone to see what is wrong with it.",
        cause);
  }
}
