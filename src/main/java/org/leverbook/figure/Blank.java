package org.leverbook.figure;

import java.awt.Color;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.HorizontalBarChart;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Charts with titles and axes but without data yet, in a style.
 *
 * @param title above
 * @param across what runs to the right, with its unit
 * @param up what runs upwards, with its unit
 * @param width page units
 * @param height page units
 * @param style colours and letters
 */
record Blank(String title, String across, String up, int width, int height, FigureStyle style) {

  private static final int WIDTH = 900;
  private static final int HEIGHT = 520;

  /** So near to each other names may stand. */
  private static final int NAME = 20;

  /** Of the usual size. */
  Blank(String title, String across, String up, FigureStyle style) {
    this(title, across, up, WIDTH, HEIGHT, style);
  }

  /** The same with its words in the style's language. */
  private Blank spoken() {
    return new Blank(style.say(title), style.say(across), style.say(up), width, height, style);
  }

  XYChart curves(Consumer<XYChart> filled) {
    return made(
        () -> {
          XYChart chart = begun(new XYChart(width, height));
          chart.getStyler().setMarkerSize(Plots.marks(style));
          filled.accept(chart);
          FitTexts.in(chart, style);
          return chart;
        });
  }

  CategoryChart columns(Consumer<CategoryChart> filled) {
    return made(
        () -> {
          CategoryChart chart = begun(new CategoryChart(width, height));
          chart.getStyler().setXAxisTickLabelsFormattingFunction(null);
          // Every column has its name.
          chart.getStyler().setXAxisTickMarkSpacingHint(NAME);
          chart.getStyler().setAvailableSpaceFill(0.7);
          filled.accept(chart);
          FitTexts.in(chart, style);
          return chart;
        });
  }

  HorizontalBarChart rows(Consumer<HorizontalBarChart> filled) {
    return made(
        () -> {
          HorizontalBarChart chart = begun(new HorizontalBarChart(width, height));
          chart.getStyler().setYAxisTickLabelsFormattingFunction(null);
          chart.getStyler().setAvailableSpaceFill(0.7);
          filled.accept(chart);
          FitTexts.in(chart, style);
          return chart;
        });
  }

  /** Titles and look, before anything is in it. */
  private <C extends AxesChart<?, ?>> C begun(C chart) {
    Blank words = spoken();
    chart.setTitle(words.title);
    chart.setXAxisTitle(words.across);
    chart.setYAxisTitle(words.up);
    Plots.styled(chart.getStyler(), style);
    return chart;
  }

  private static <C> C made(java.util.function.Supplier<C> making) {
    Object[] made = new Object[1];
    Fonts.needed(() -> made[0] = making.get());
    @SuppressWarnings("unchecked")
    C chart = (C) made[0];
    return chart;
  }

  /**
   * An area between two lines.
   *
   * @param chart where
   * @param name in the legend
   * @param x to the right
   * @param low lower line
   * @param high upper line
   * @param colour of the ground
   */
  static XYSeries area(
      XYChart chart, String name, double[] x, double[] low, double[] high, Color colour) {
    int n = x.length;
    double[] around = new double[2 * n];
    double[] ends = new double[2 * n];
    for (int i = 0; i < n; i++) {
      around[i] = x[i];
      ends[i] = high[i];
      around[2 * n - 1 - i] = x[i];
      ends[2 * n - 1 - i] = low[i];
    }
    XYSeries series = chart.addSeries(name, around, ends);
    series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.PolygonArea);
    series.setFillColor(colour);
    series.setLineColor(colour);
    series.setMarker(SeriesMarkers.NONE);
    return series;
  }

  /** Values of all lists, sorted; those that are known. */
  static double[] sorted(double[]... lists) {
    return Stream.of(lists)
        .flatMapToDouble(java.util.Arrays::stream)
        .filter(Double::isFinite)
        .sorted()
        .toArray();
  }
}
