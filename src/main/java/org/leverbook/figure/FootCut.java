package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import org.leverbook.display.Caution;
import org.leverbook.figure.Ink.Words;

/**
 * A drawing without the lines on its sources and the caution at its foot, for a page that says them
 * once for all its pictures.
 *
 * @param picture what is left
 * @param sentence what was taken away, without the caution; empty where that was all
 */
record FootCut(Drawn picture, String sentence) {

  private static final String SOURCES = "Sources: ";

  private record Left(Drawing drawing, FigureStyle style) implements Drawn {

    @Override
    public String svgDocument() {
      return SvgWriter.write(drawing, style);
    }

    @Override
    public byte[] pngFile() {
      return RasterPainter.png(drawing, style);
    }

    @Override
    public String text() {
      return "picture: " + drawing.title();
    }
  }

  static FootCut of(Drawn whole) {
    Drawing drawing = whole.drawing();
    List<Ink> content = new ArrayList<>(drawing.content());
    int from = content.size();
    // Text at the very end only: whatever comes before something drawn is no foot.
    while (from > 0 && content.get(from - 1) instanceof Words) {
      from--;
    }
    int cut = start(content, from);
    if (cut == content.size()) {
      return new FootCut(whole, "");
    }
    List<Words> foot =
        content.subList(cut, content.size()).stream().map(Words.class::cast).toList();
    List<Ink> rest = List.copyOf(content.subList(0, cut));
    double height = drawing.height() - (lowest(foot) - lowest(rest));
    Drawing left =
        new Drawing(
            drawing.width(),
            Math.min(height, drawing.height()),
            drawing.title(),
            drawing.description(),
            drawing.attributes(),
            rest);
    String text = String.join(" ", foot.stream().map(Words::words).toList());
    return new FootCut(new Left(left, whole.style()), text.replace(Caution.TEXT, "").strip());
  }

  private static int start(List<Ink> content, int from) {
    for (int i = from; i < content.size(); i++) {
      String line = ((Words) content.get(i)).words();
      String after = String.join(" ", linesFrom(content, i));
      if (after.endsWith(Caution.TEXT)
          && (line.startsWith(SOURCES) || after.equals(Caution.TEXT))) {
        return i;
      }
    }
    return content.size();
  }

  private static List<String> linesFrom(List<Ink> content, int from) {
    return content.subList(from, content.size()).stream()
        .map(ink -> ((Words) ink).words())
        .toList();
  }

  private static double lowest(List<? extends Ink> content) {
    return content.stream()
        .filter(Words.class::isInstance)
        .mapToDouble(ink -> ((Words) ink).y())
        .max()
        .orElse(0);
  }
}
