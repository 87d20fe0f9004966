package org.leverbook.figure;

import java.awt.Color;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.HorizontalBarChart;
import org.knowm.xchart.HorizontalBarChartBuilder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
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
    Blank words = spoken();
    return made(
        () -> {
          XYChart chart =
              new XYChartBuilder()
                  .width(width)
                  .height(height)
                  .title(words.title)
                  .xAxisTitle(words.across)
                  .yAxisTitle(words.up)
                  .build();
          Plots.styled(chart.getStyler(), style);
          chart.getStyler().setMarkerSize(Plots.marks(style));
          filled.accept(chart);
          FitTexts.in(chart, style);
          return chart;
        });
  }

  CategoryChart columns(Consumer<CategoryChart> filled) {
    Blank words = spoken();
    return made(
        () -> {
          CategoryChart chart =
              new CategoryChartBuilder()
                  .width(width)
                  .height(height)
                  .title(words.title)
                  .xAxisTitle(words.across)
                  .yAxisTitle(words.up)
                  .build();
          Plots.styled(chart.getStyler(), style);
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
    Blank words = spoken();
    return made(
        () -> {
          HorizontalBarChart chart =
              new HorizontalBarChartBuilder()
                  .width(width)
                  .height(height)
                  .title(words.title)
                  .xAxisTitle(words.across)
                  .yAxisTitle(words.up)
                  .build();
          Plots.styled(chart.getStyler(), style);
          chart.getStyler().setYAxisTickLabelsFormattingFunction(null);
          chart.getStyler().setAvailableSpaceFill(0.7);
          filled.accept(chart);
          FitTexts.in(chart, style);
          return chart;
        });
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
