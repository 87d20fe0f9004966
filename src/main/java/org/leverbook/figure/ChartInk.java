package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Charts as a drawing. */
final class ChartInk {

  private ChartInk() {}

  static Drawing drawing(ChartPicture picture) {
    List<String> heard = new ArrayList<>();
    InkGraphics[] page = new InkGraphics[1];
    Fonts.needed(
        () -> {
          page[0] = new InkGraphics(ChartSvg.letters(picture, heard));
          ChartSvg.listening(picture.charts(), heard, () -> picture.paint(page[0]));
        });
    return new Drawing(
        picture.width(),
        picture.height(),
        picture.told(),
        ChartWords.of(picture),
        Map.of(),
        page[0].ink());
  }
}
