package org.leverbook.figure;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Supplier;
import org.knowm.xchart.HeatMapChart;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.style.Styler;
import org.leverbook.display.Picture;

/**
 * One chart laid out anew for the room it has on a page, its letters as large as before; without
 * title and notes, which the page sets itself.
 *
 * <p>The chart may be the user's own: it is set to the new size for as long as it is painted, and
 * set back after.
 *
 * @param chart which
 * @param width page units
 * @param height page units
 * @param style for the background
 */
record FittedChart(AxesChart<?, ?> chart, int width, int height, FigureStyle style)
    implements Picture {

  /** Of less width a legend beside the plot leaves too little of it. */
  private static final int WIDE_ENOUGH = 640;

  /** Of less height a plot is hard to read. */
  private static final double LOWEST = 220;

  /** What the ticks and the title of the level axis take. */
  private static final double BELOW_PLOT = 62;

  private static final double LEGEND_GAP = 10;

  /** What a picture of one chart leaves free below it. */
  private static final int FOOT = 14;

  @Override
  public String svgDocument() {
    return fitted(() -> bare().svgDocument());
  }

  @Override
  public byte[] pngFile() {
    return fitted(() -> bare().pngFile());
  }

  @Override
  public byte[] pngFile(int pixels) {
    return fitted(() -> bare().pngFile(pixels));
  }

  @Override
  public byte[] pdfFile() {
    return fitted(() -> bare().pdfFile());
  }

  /** The chart as ink. */
  Drawing drawing() {
    return fitted(() -> ChartInk.drawing(bare()));
  }

  /** Paints the chart in page units. */
  void paint(Graphics2D page) {
    fitted(
        () -> {
          bare().paint(page);
          return null;
        });
  }

  private ChartPicture bare() {
    return new ChartPicture("", List.of(chart), 1, List.of(), style);
  }

  private static boolean legendBelow(AxesChart<?, ?> chart, double width) {
    return width < WIDE_ENOUGH
        && chart.getStyler().isLegendVisible()
        && chart.getStyler().getLegendPosition() == Styler.LegendPosition.OutsideE
        && !(chart instanceof HeatMapChart);
  }

  /**
   * The least height at which neither the title of the upright axis is cut nor a legend below takes
   * the room of the plot.
   */
  static double lowest(AxesChart<?, ?> chart, double width) {
    String upright = chart.getYAxisTitle() == null ? "" : chart.getYAxisTitle();
    double title = TextWidths.of(upright, chart.getStyler().getAxisTitleFont().getSize2D(), false);
    double legend = 0;
    if (legendBelow(chart, width)) {
      double line = chart.getStyler().getLegendFont().getSize2D() + LEGEND_GAP;
      long lines =
          chart.getSeriesCollection().stream().filter(series -> series.isShowInLegend()).count();
      legend = line * lines + LEGEND_GAP;
    }
    return Math.max(LOWEST, title) + BELOW_PLOT + legend + FOOT;
  }

  private <T> T fitted(Supplier<T> work) {
    synchronized (chart) {
      Styler styler = chart.getStyler();
      int wide = chart.getWidth();
      int high = chart.getHeight();
      String title = chart.getTitle();
      Font font = styler.getChartTitleFont();
      int padding = styler.getChartTitlePadding();
      Styler.LegendPosition place = styler.getLegendPosition();
      Styler.LegendLayout layout = styler.getLegendLayout();
      try {
        // Once a title was seen XChart leaves room for it even where it is hidden; so it is made
        // next to nothing instead.
        chart.setTitle(" ");
        styler.setChartTitleFont(font.deriveFont(1f));
        styler.setChartTitlePadding(0);
        if (legendBelow(chart, width)) {
          styler.setLegendPosition(Styler.LegendPosition.OutsideS);
          styler.setLegendLayout(Styler.LegendLayout.Vertical);
        }
        sized(width, height - FOOT);
        // The first time parts are placed by what the others measured before.
        sized(width, height - FOOT);
        return work.get();
      } finally {
        chart.setTitle(title);
        styler.setChartTitleFont(font);
        styler.setChartTitlePadding(padding);
        styler.setLegendPosition(place);
        styler.setLegendLayout(layout);
        sized(wide, high);
        sized(wide, high);
      }
    }
  }

  /** XChart takes a new size only while it paints. */
  private void sized(int wide, int high) {
    Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
    Fonts.needed(() -> chart.paint(nowhere, wide, high));
    nowhere.dispose();
  }

  @Override
  public String text() {
    return "plot: " + chart.getTitle();
  }
}
