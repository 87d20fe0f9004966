package org.leverbook.figure;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.leverbook.display.Picture;

/**
 * A chart with sentences below it.
 *
 * @param chart what XChart paints
 * @param notes below it
 * @param style for background and notes
 */
record ChartPicture(AxesChart<?, ?> chart, List<String> notes, FigureStyle style)
    implements Picture {

  private static final double MARGIN = 28;

  /** Keeps its own copy of the list. */
  ChartPicture {
    notes = List.copyOf(notes);
  }

  @Override
  public String svgDocument() {
    String[] svg = new String[1];
    Fonts.needed(() -> svg[0] = ChartSvg.write(this));
    return svg[0];
  }

  @Override
  public byte[] pngFile() {
    return RasterPainter.png(width(), height(), style, this::paint);
  }

  int width() {
    return chart.getWidth();
  }

  int height() {
    return (int) Math.ceil(chart.getHeight() + lines().size() * leading() + MARGIN / 2);
  }

  String title() {
    return chart.getTitle() == null ? "" : chart.getTitle();
  }

  /** For readers who listen. */
  String description() {
    return chart.getYAxisTitle()
        + " against "
        + chart.getXAxisTitle()
        + ". "
        + String.join(" ", notes);
  }

  /** Paints chart and notes in page units. */
  void paint(Graphics2D page) {
    Graphics2D upper = (Graphics2D) page.create();
    chart.paint(upper, chart.getWidth(), chart.getHeight());
    upper.dispose();
    page.setColor(Color.decode(style.ink()));
    page.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 1).deriveFont((float) style.caption()));
    double y = chart.getHeight();
    for (String line : lines()) {
      y += leading();
      page.drawString(line, (float) MARGIN, (float) y);
    }
  }

  private double leading() {
    return 1.4 * style.caption();
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    notes.forEach(
        note -> lines.addAll(TextWidths.wrapped(note, style.caption(), width() - 2 * MARGIN)));
    return lines;
  }

  @Override
  public String text() {
    return "plot: " + title() + "; save it with .save(\"plot\")";
  }

  @Override
  public String toString() {
    return text();
  }
}
