package org.leverbook.figure;

import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.HorizontalBarChart;
import org.knowm.xchart.HorizontalBarChartBuilder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.style.AxesChartStyler;
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

  /** What XChart leaves free beside a title. */
  private static final int BESIDE = 60;

  /** Of the usual size. */
  Blank(String title, String across, String up, FigureStyle style) {
    this(title, across, up, WIDTH, HEIGHT, style);
  }

  /** The same with its words in the style's language. */
  private Blank spoken() {
    return new Blank(style.say(title), style.say(across), style.say(up), width, height, style);
  }

  XYChart curves(UnaryOperator<XYChart> filled) {
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
          dressed(chart, chart.getStyler());
          chart.getStyler().setMarkerSize(Plots.marks(style));
          return filled.apply(chart);
        });
  }

  CategoryChart columns(UnaryOperator<CategoryChart> filled) {
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
          dressed(chart, chart.getStyler());
          chart.getStyler().setXAxisTickLabelsFormattingFunction(null);
          chart.getStyler().setAvailableSpaceFill(0.7);
          return filled.apply(chart);
        });
  }

  HorizontalBarChart rows(UnaryOperator<HorizontalBarChart> filled) {
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
          dressed(chart, chart.getStyler());
          chart.getStyler().setYAxisTickLabelsFormattingFunction(null);
          chart.getStyler().setAvailableSpaceFill(0.7);
          return filled.apply(chart);
        });
  }

  private void dressed(AxesChart<?, ?> chart, AxesChartStyler styler) {
    Plots.styled(styler, style);
    double needed = TextWidths.of(chart.getTitle(), style.title(), true);
    double share = Math.min(1, (width - BESIDE) / Math.max(1, needed));
    Font font = styler.getChartTitleFont();
    styler.setChartTitleFont(font.deriveFont((float) (share * font.getSize2D())));
    for (String axis : List.of(chart.getXAxisTitle(), chart.getYAxisTitle())) {
      double room = axis.equals(chart.getYAxisTitle()) ? height : width;
      double long0 = TextWidths.of(axis, style.label(), true);
      if (long0 > room - 2 * BESIDE) {
        Font smaller = styler.getAxisTitleFont();
        double fit = (room - 2 * BESIDE) / long0 * style.label();
        styler.setAxisTitleFont(smaller.deriveFont((float) Math.min(smaller.getSize2D(), fit)));
      }
    }
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
