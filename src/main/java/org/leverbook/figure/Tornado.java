package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.leverbook.display.Picture;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;
import org.leverbook.quantity.Refused;
import org.leverbook.study.DoubtBand;
import org.leverbook.study.Sensitivity;

/**
 * The inputs of an answer as bars from the plain answer, the strongest on top: light for its 5th
 * percentile (upper half of a row), dark for its 95th (lower half), so that both are seen where
 * they go the same way, and in grey print. Behind them the band of all cases.
 */
final class Tornado {

  private static final double WIDTH = 900;
  private static final double MARGIN = 28;
  private static final double LOWEST_ROW = 26;
  private static final double SHARES = 86;
  private static final int MOST = 14;
  private static final double MOST_NAME = 0.4 * WIDTH;

  private final Sensitivity answer;
  private final DoubtBand band;
  private final FigureStyle style;
  private final List<Sensitivity.Row> rows;
  private final List<Ink> ink = new ArrayList<>();
  private final double left;
  private final double rowHigh;
  private final double right = WIDTH - MARGIN - SHARES;
  private double low;
  private double high;
  private double step;

  private Tornado(Sensitivity answer, FigureStyle style) {
    this.answer = answer;
    this.band = answer.band();
    this.style = style;
    List<Sensitivity.Row> all = answer.moving();
    if (all.isEmpty()) {
      throw new Refused("There is nothing to draw: no input moves " + band.what() + ".");
    }
    rows = all.subList(0, Math.min(MOST, all.size()));
    double widest =
        rows.stream()
            .mapToDouble(
                r ->
                    Math.max(
                        TextWidths.of(style.say(r.input()), style.label(), false),
                        TextWidths.of(range(r), 0.8 * style.caption(), false)))
            .max()
            .orElseThrow();
    rowHigh = Math.max(LOWEST_ROW, style.label() + 0.8 * style.caption() + 5);
    left = MARGIN + Math.min(widest, MOST_NAME) + 12;
    scale();
  }

  static Picture picture(Sensitivity answer, FigureStyle style) {
    return new PositionPicture(new Tornado(answer, style).drawing(), style);
  }

  /** The axis holds the band and every bar. */
  private void scale() {
    double[] ends =
        rows.stream()
            .flatMapToDouble(r -> DoubleStream.of(end(r.atFrom()), end(r.atTo())))
            .sorted()
            .toArray();
    double least = Math.min(Math.min(ends[0], band.low()), band.plain());
    double most = Math.max(Math.max(ends[ends.length - 1], band.high()), band.plain());
    double rough = Math.max((most - least) / 9, 1e-9);
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double first = rough / power;
    step = power * (first <= 1 ? 1 : first <= 2 ? 2 : first <= 5 ? 5 : 10);
    double room = 0.04 * Math.max(most - least, 1e-6);
    low = least - room;
    high = most + room;
  }

  private double end(Double value) {
    return value == null ? band.plain() : value;
  }

  private double x(double value) {
    return left + (right - left) * (value - low) / (high - low);
  }

  private Drawing drawing() {
    double top = heading() + 26;
    double bottom = top + rowHigh * rows.size() + 6;
    back(top, bottom);
    for (int i = 0; i < rows.size(); i++) {
      row(rows.get(i), top + rowHigh * i + 3);
    }
    double plain = x(band.plain());
    ink.add(Form.line(new Line2D.Double(plain, top, plain, bottom), Pen.solid(style.ink(), 1.4)));
    double height = below(axis(bottom)) + MARGIN / 2;
    String spoken =
        rows.get(0).input() + " moves it most, " + rows.get(rows.size() - 1).input() + " least.";
    return new Drawing(WIDTH, height, title(), spoken, Map.of("data-kind", "tornado"), ink);
  }

  private String title() {
    return band.what() + " " + band.sentence();
  }

  private double heading() {
    double y = MARGIN + style.title();
    double needed = TextWidths.of(title(), style.title(), true);
    double size = style.title() * Math.min(1, (WIDTH - 2 * MARGIN) / needed);
    text(title(), MARGIN, y, size, true, style.ink());
    y += 1.9 * style.caption();
    double at = MARGIN;
    for (String[] key :
        new String[][] {
          {style.tone(Tint.LOW), "input at its 5 % end"},
          {style.tone(Tint.HIGH), "input at its 95 % end"}
        }) {
      ink.add(Form.filled(new Rectangle2D.Double(at, y - 9, 18, 9), key[0]));
      text(key[1], at + 24, y, style.caption(), false, style.quiet());
      at += 48 + TextWidths.of(key[1], style.caption(), false);
    }
    ink.add(Form.filled(new Rectangle2D.Double(at, y - 9, 18, 9), style.farFlesh()));
    text("5 to 95 % of all cases", at + 24, y, style.caption(), false, style.quiet());
    return y;
  }

  /** The band, the grid, the head of the shares. */
  private void back(double top, double bottom) {
    ink.add(
        Form.filled(
            new Rectangle2D.Double(
                x(band.low()), top, x(band.high()) - x(band.low()), bottom - top),
            style.farFlesh()));
    for (double tick = step * Math.ceil(low / step); tick <= high; tick += step) {
      Line2D line = new Line2D.Double(x(tick), top, x(tick), bottom);
      ink.add(Form.line(line, Pen.solid(style.flesh(), 1)));
    }
    if (rows.stream().anyMatch(r -> r.share() != null)) {
      rightAligned("of variance", top - 8);
    }
  }

  private void row(Sensitivity.Row row, double y) {
    List<Ink> bars = new ArrayList<>();
    bar(bars, row.atFrom(), y + 2, style.tone(Tint.LOW));
    bar(bars, row.atTo(), y + 2 + (rowHigh - 8) / 2, style.tone(Tint.HIGH));
    ink.add(new Group(Map.of("data-input", row.input()), bars));
    text(
        cut(style.say(row.input()), style.label()),
        MARGIN,
        y + 0.7 * style.label(),
        style.label(),
        false,
        style.ink());
    text(
        cut(range(row), 0.8 * style.caption()),
        MARGIN,
        y + 0.7 * style.label() + 0.92 * style.caption(),
        0.8 * style.caption(),
        false,
        style.quiet());
    if (row.share() != null) {
      double share = Math.max(0, 100 * row.share());
      rightAligned(
          share < 1 ? "< 1 %" : String.format(Locale.ROOT, "%.0f %%", share), y + rowHigh / 2 + 2);
    }
  }

  /** A name that leaves room for the bars. */
  private static String cut(String name, double size) {
    String shown = name;
    while (TextWidths.of(shown, size, false) > MOST_NAME) {
      String kept = shown.endsWith("…") ? shown.substring(0, shown.length() - 1) : shown;
      shown = kept.substring(0, kept.offsetByCodePoints(kept.length(), -1)).stripTrailing() + "…";
    }
    return shown;
  }

  private void bar(List<Ink> into, Double value, double y, String colour) {
    if (value != null) {
      double from = Math.min(x(value), x(band.plain()));
      double wide = Math.abs(x(value) - x(band.plain()));
      into.add(Form.filled(new Rectangle2D.Double(from, y, wide, (rowHigh - 8) / 2), colour));
    }
  }

  private static String range(Sensitivity.Row row) {
    String range = row.from() + " to " + row.to();
    if (row.atFrom() != null && row.atTo() != null) {
      return range;
    }
    return range
        + "; cannot be held at "
        + (row.atTo() != null ? "5 %" : row.atFrom() != null ? "95 %" : "either end");
  }

  private double axis(double bottom) {
    double y = bottom + 1.3 * style.caption();
    for (double tick = step * Math.ceil(low / step); tick <= high; tick += step) {
      String words = Plots.tick(tick);
      double wide = TextWidths.of(words, style.caption(), false);
      text(words, x(tick) - wide / 2, y, style.caption(), false, style.ink());
    }
    y += 1.5 * style.caption();
    String unit = band.unit().isEmpty() ? "answer" : "answer (" + band.unit() + ")";
    double wide = TextWidths.of(unit, style.label(), false);
    text(unit, (left + right - wide) / 2, y, style.label(), false, style.ink());
    return y;
  }

  private double below(double y) {
    List<String> notes = new ArrayList<>();
    int more = answer.moving().size() - rows.size();
    if (more > 0) {
      String next = band.number(answer.moving().get(rows.size()).swing());
      notes.add(
          String.format(
              Locale.ROOT,
              "%d more inputs move it by %s %s or less from end to end.",
              more,
              next,
              band.unit()));
    }
    notes.addAll(band.notes());
    double at = y + 0.6 * style.caption();
    for (String note : notes) {
      for (String line : TextWidths.wrapped(note, style.caption(), WIDTH - 2 * MARGIN)) {
        at += 1.4 * style.caption();
        text(line, MARGIN, at, style.caption(), false, style.quiet());
      }
    }
    return at;
  }

  private void rightAligned(String words, double y) {
    double wide = TextWidths.of(words, style.caption(), false);
    text(words, WIDTH - MARGIN - wide, y, style.caption(), false, style.quiet());
  }

  private void text(String words, double x, double y, double size, boolean bold, String colour) {
    ink.add(new Words(style.say(words), x, y, size, bold, colour, false));
  }
}
