package org.leverbook.figure;

import java.util.List;
import java.util.Map;

/**
 * Stands where a picture could not be, and says why.
 *
 * @param reason a sentence
 * @param style colours and sizes
 */
record NoPicture(String reason, FigureStyle style) implements Drawn {

  private static final double WIDTH = 300;
  private static final double MARGIN = 14;

  @Override
  public Drawing drawing() {
    TextBlock words =
        new TextBlock(WIDTH - 2 * MARGIN).add(reason, style.caption(), false, style.ink());
    return new Drawing(
        WIDTH,
        words.height() + 2 * MARGIN,
        "No picture",
        reason,
        Map.of(),
        List.copyOf(words.at(MARGIN, MARGIN)));
  }

  @Override
  public String svgDocument() {
    return SvgWriter.write(drawing(), style);
  }

  @Override
  public byte[] pngFile() {
    return RasterPainter.png(drawing(), style);
  }

  @Override
  public String text() {
    return "no picture: " + reason;
  }

  @Override
  public String toString() {
    return text();
  }
}
