package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import org.leverbook.figure.Ink.Words;

/** Lines of text one below the other, broken to a width. */
final class TextBlock {

  private static final double LEADING = 1.35;

  private record Line(String words, double size, boolean bold, String colour, double gap) {}

  private final double width;
  private final List<Line> lines = new ArrayList<>();

  TextBlock(double width) {
    this.width = width;
  }

  /** Adds a text; nothing where it is blank. */
  TextBlock add(String text, double size, boolean bold, String colour) {
    if (text.isBlank()) {
      return this;
    }
    double room = bold ? width / TextWidths.of("n", 1, true) * TextWidths.of("n", 1, false) : width;
    double gap = lines.isEmpty() ? 0 : 0.3 * size;
    for (String line : TextWidths.wrapped(text, size, room)) {
      lines.add(new Line(line, size, bold, colour, gap));
      gap = 0;
    }
    return this;
  }

  double height() {
    return lines.stream().mapToDouble(line -> line.gap() + LEADING * line.size()).sum();
  }

  List<Ink> at(double left, double top) {
    List<Ink> ink = new ArrayList<>();
    double y = top;
    for (Line line : lines) {
      y += line.gap() + LEADING * line.size();
      double base = y - 0.3 * line.size();
      ink.add(new Words(line.words(), left, base, line.size(), line.bold(), line.colour(), false));
    }
    return ink;
  }
}
