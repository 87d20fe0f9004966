package org.leverbook.figure;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.leverbook.study.ClaimAnswer;

/** How many cases lie how far from the border between holding and not: bars of round widths. */
final class ClaimHistogram {

  private static final int BARS = 24;
  private static final int TICKS = 6;

  private final ClaimAnswer answer;
  private final FigureStyle style;
  private final ClaimInk marks;
  private final double step;
  private final double from;
  private final int[] counts;

  ClaimHistogram(ClaimAnswer answer, FigureStyle style) {
    this.answer = answer;
    this.style = style;
    this.marks = new ClaimInk(style);
    double[] margins = answer.margins();
    double least = Math.min(0, Arrays.stream(margins).min().orElse(0));
    double most = Math.max(0, Arrays.stream(margins).max().orElse(0));
    step = round((most - least) / BARS);
    // A bar's edge lies at zero, and a margin of zero does not hold.
    int first = (int) Math.min(-1, Math.ceil(least / step) - 1);
    int last = (int) Math.max(1, Math.ceil(most / step));
    from = first * step;
    counts = new int[last - first];
    for (double margin : margins) {
      int at = (int) Math.ceil(margin / step) - 1 - first;
      counts[Math.max(0, Math.min(counts.length - 1, at))]++;
    }
  }

  /** 1, 2 or 5 times a power of ten, not less than asked. */
  private static double round(double asked) {
    double wanted = Math.max(asked, 1e-9);
    double power = Math.pow(10, Math.floor(Math.log10(wanted)));
    for (double times : new double[] {1, 2, 5}) {
      if (times * power >= wanted * (1 - 1e-9)) {
        return times * power;
      }
    }
    return 10 * power;
  }

  Ink in(Rectangle2D box) {
    List<Ink> ink = new ArrayList<>();
    double wide = box.getWidth() / counts.length;
    int tallest = Arrays.stream(counts).max().orElse(1);
    double bottom = box.getMaxY();
    double room = box.getHeight() - 46;
    int most = 0;
    for (int i = 0; i < counts.length; i++) {
      most = counts[i] > counts[most] ? i : most;
      if (counts[i] > 0) {
        // One case among thousands must still be seen.
        double high = Math.max(1.5, room * counts[i] / tallest);
        String colour = middle(i) > 0 ? marks.holds() : marks.fails();
        ink.add(marks.bar(box.getX() + i * wide + 0.5, bottom - high, wide - 1, bottom, colour));
      }
    }
    ink.add(marks.line(box.getMinX(), bottom, box.getMaxX(), bottom, 1));
    String tallestBar = String.format(Locale.ROOT, "%,d cases", tallest);
    double half = TextWidths.of(tallestBar, style.caption(), false) / 2;
    double middle = aside(box.getX() + (most + 0.5) * wide, half, x(0, box), middle(most) > 0);
    double inside = Math.max(box.getMinX() + half, Math.min(box.getMaxX() - half, middle));
    ink.add(marks.words(tallestBar, inside, bottom - room - 5, 0.5, false, style.ink()));
    zero(box, ink);
    ticks(box, ink);
    String unit = answer.unit().isEmpty() ? "" : " (" + answer.unit() + ")";
    ink.add(marks.title("margin" + unit + ", more than zero where the claim holds", box));
    return new Ink.Group(Map.of("class", "margins"), ink);
  }

  /** Off the zero line, on the side of its bar. */
  private static double aside(double x, double half, double zero, boolean right) {
    return right ? Math.max(x, zero + half + 4) : Math.min(x, zero - half - 4);
  }

  private double middle(int bar) {
    return from + (bar + 0.5) * step;
  }

  private double x(double value, Rectangle2D box) {
    return box.getX() + (value - from) / (step * counts.length) * box.getWidth();
  }

  private void zero(Rectangle2D box, List<Ink> ink) {
    double zero = x(0, box);
    ink.add(marks.line(zero, box.getMinY() + 18, zero, box.getMaxY() + 5, 2));
    String holds = String.format(Locale.ROOT, "holds: %,d", answer.holding());
    String fails = String.format(Locale.ROOT, "does not: %,d", answer.exceptions());
    double needLeft = TextWidths.of(fails, style.label(), true) + 6;
    double needRight = TextWidths.of(holds, style.label(), true) + 6;
    double y = box.getMinY() + 2;
    // Beside the line where there is room, else pushed along so that both stay on the panel.
    double middle = Math.max(box.getMinX() + needLeft, Math.min(box.getMaxX() - needRight, zero));
    ink.add(marks.words(fails, middle - 6, y, 1, true, marks.fails()));
    ink.add(marks.words(holds, middle + 6, y, 0, true, marks.holds()));
  }

  private void ticks(Rectangle2D box, List<Ink> ink) {
    double wide = round(step * counts.length / TICKS);
    int first = (int) Math.ceil(from / wide - 1e-9);
    int last = (int) Math.floor((from + step * counts.length) / wide + 1e-9);
    for (int i = first; i <= last; i++) {
      double x = x(i * wide, box);
      ink.add(marks.line(x, box.getMaxY(), x, box.getMaxY() + 4, 1));
      String text = Plots.tick(Math.round(1e9 * i * wide) / 1e9);
      double half = TextWidths.of(text, style.caption(), false) / 2;
      double inside = Math.max(box.getMinX() + half, Math.min(box.getMaxX() - half, x));
      ink.add(marks.words(text, inside, box.getMaxY() + 18, 0.5, false, style.ink()));
    }
  }
}
