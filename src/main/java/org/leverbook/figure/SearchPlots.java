package org.leverbook.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.leverbook.body.JointId;
import org.leverbook.display.Picture;
import org.leverbook.display.Sheet;
import org.leverbook.study.Optimum;
import org.leverbook.study.TradeOff;

/**
 * The scan of a search with the best marked: a curve for one setting, fields in colours for two;
 * and the front of a trade-off.
 */
final class SearchPlots {

  private static final int WIDTH = 900;
  private static final int HEIGHT = 520;

  /** Columns of an optimum's sheet after its settings: quantity, place, reason. */
  private static final int AFTER_SETTINGS = 3;

  private static final int MARK = 13;
  private static final int LARGEST_FIELD = 22;

  /** About so many page units the fields of a map share. */
  private static final int FIELDS = 340;

  private SearchPlots() {}

  static Picture picture(Optimum<?> optimum, FigureStyle style) {
    Sheet sheet = optimum.sheet();
    boolean two = sheet.columns().size() == AFTER_SETTINGS + 2;
    XYChart[] made = new XYChart[1];
    Fonts.needed(() -> made[0] = two ? map(sheet, style) : curve(sheet, style));
    return new ChartPicture(made[0], sheet.notes(), style);
  }

  private static XYChart curve(Sheet sheet, FigureStyle style) {
    XYChart chart = chart(sheet.title(), sheet, 0, 1, style);
    chart.getStyler().setMarkerSize(MARK);
    double[] x = numbers(sheet, 0);
    double[] y = new double[x.length];
    for (int i = 0; i < y.length; i++) {
      Object value = sheet.rows().get(i).get(1);
      // XChart breaks its line where a value is NaN; no other value of ours is ever NaN.
      y[i] = value == null ? Double.NaN : (Double) value;
    }
    span(chart, x, DoubleStream.of(y).filter(Double::isFinite).toArray());
    roundTicks(chart, x, y);
    line(chart.addSeries("all settings", x, y), style);
    mark(chart, sheet, 0, 1, 2, "next best", SeriesMarkers.CIRCLE, style.quiet());
    mark(chart, sheet, 0, 1, 2, "best", SeriesMarkers.DIAMOND, style.ink());
    return chart;
  }

  private static XYChart map(Sheet sheet, FigureStyle style) {
    XYChart chart = chart(sheet.title(), sheet, 1, 0, style);
    int across = (int) DoubleStream.of(numbers(sheet, 1)).distinct().count();
    chart.getStyler().setMarkerSize(Math.max(4, Math.min(LARGEST_FIELD, FIELDS / across)));
    chart.getStyler().setDefaultSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
    List<List<Object>> known = sheet.rows().stream().filter(r -> r.get(2) != null).toList();
    double[] values = known.stream().mapToDouble(r -> (Double) r.get(2)).sorted().toArray();
    Bands bands = Bands.over(values[0], values[values.length - 1], true, style);
    room(chart, numbers(sheet, 1), numbers(sheet, 0));
    for (int band = 0; band < bands.colours().size(); band++) {
      double low = bands.low() + band * bands.step();
      double high = low + bands.step();
      boolean last = band == bands.colours().size() - 1;
      List<List<Object>> inside =
          known.stream()
              .filter(r -> r.get(3).equals(""))
              .filter(r -> (Double) r.get(2) >= low && (last || (Double) r.get(2) < high))
              .toList();
      if (!inside.isEmpty()) {
        String name = Plots.tick(low) + " to " + Plots.tick(high);
        XYSeries fields = chart.addSeries(name, column(inside, 1), column(inside, 0));
        fields.setMarker(SeriesMarkers.SQUARE);
        fields.setMarkerColor(bands.colours().get(band));
      }
    }
    mark(chart, sheet, 1, 0, 3, "next best", SeriesMarkers.CIRCLE, style.quiet());
    mark(chart, sheet, 1, 0, 3, "best", SeriesMarkers.DIAMOND, style.ink());
    return chart;
  }

  static Picture picture(TradeOff<?> trade, FigureStyle style) {
    Sheet all = trade.scanSheet();
    int first = all.columns().size() - AFTER_SETTINGS - 1;
    XYChart[] made = new XYChart[1];
    Fonts.needed(() -> made[0] = front(all, trade.sheet(), first, style));
    List<String> notes = new ArrayList<>(all.notes());
    return new ChartPicture(made[0], notes, style);
  }

  private static XYChart front(Sheet all, Sheet front, int first, FigureStyle style) {
    XYChart chart = chart(all.title(), all, first, first + 1, style);
    chart.getStyler().setMarkerSize(9);
    List<List<Object>> known = all.rows().stream().filter(r -> r.get(first) != null).toList();
    room(chart, column(known, first), column(known, first + 1));
    XYSeries curve =
        chart.addSeries("front", column(front.rows(), first), column(front.rows(), first + 1));
    line(curve, style);
    curve.setMarker(SeriesMarkers.CIRCLE);
    List<List<Object>> beaten = known.stream().filter(r -> r.get(first + 2).equals("")).toList();
    if (!beaten.isEmpty()) {
      XYSeries others =
          chart.addSeries("beaten by another", column(beaten, first), column(beaten, first + 1));
      alone(others, SeriesMarkers.CROSS, style.quiet());
    }
    mark(chart, all, first, first + 1, first + 2, "middle", SeriesMarkers.DIAMOND, style.ink());
    return chart;
  }

  private static XYChart chart(String title, Sheet sheet, int x, int y, FigureStyle style) {
    XYChart chart =
        new XYChartBuilder()
            .width(WIDTH)
            .height(HEIGHT)
            .title(title)
            .xAxisTitle(sheet.columns().get(x).heading())
            .yAxisTitle(sheet.columns().get(y).heading())
            .build();
    Plots.styled(chart.getStyler(), style);
    return chart;
  }

  /**
   * A hidden series of uneven places: XChart takes its tick marks from the first series where that
   * is evenly spaced, odd decimals and all, and round numbers otherwise.
   */
  private static void roundTicks(XYChart chart, double[] x, double[] y) {
    double[] uneven = {x[0], x[0] + 0.3 * (x[x.length - 1] - x[0]), x[x.length - 1]};
    double level = DoubleStream.of(y).filter(Double::isFinite).min().orElseThrow();
    XYSeries hidden = chart.addSeries("places", uneven, new double[] {level, level, level});
    hidden.setShowInLegend(false);
    hidden.setMarker(SeriesMarkers.NONE);
    hidden.setLineStyle(SeriesLines.NONE);
  }

  private static void line(XYSeries series, FigureStyle style) {
    Color colour = Color.decode(style.accent(JointId.HIP).colour());
    series.setLineColor(colour);
    series.setMarkerColor(colour);
    series.setLineStyle(
        new BasicStroke((float) (2 * style.line()), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    series.setMarker(SeriesMarkers.NONE);
  }

  private static void mark(
      XYChart chart,
      Sheet sheet,
      int x,
      int y,
      int place,
      String name,
      Marker marker,
      String colour) {
    List<List<Object>> marked =
        sheet.rows().stream().filter(r -> r.get(place).equals(name)).toList();
    if (!marked.isEmpty()) {
      alone(chart.addSeries(name, column(marked, x), column(marked, y)), marker, colour);
    }
  }

  private static void alone(XYSeries series, Marker marker, String colour) {
    series.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
    series.setMarker(marker);
    series.setMarkerColor(Color.decode(colour));
  }

  /** The whole range of the settings; above and below the values a little room. */
  private static void span(XYChart chart, double[] x, double[] y) {
    double[] values = DoubleStream.of(y).sorted().toArray();
    double room = 0.08 * (values[values.length - 1] - values[0]);
    double least = 1e-6 * Math.max(1, Math.abs(values[0]));
    double most = Math.max(room, least);
    chart.getStyler().setYAxisMin(values[0] - most);
    chart.getStyler().setYAxisMax(values[values.length - 1] + most);
    double[] places = DoubleStream.of(x).sorted().toArray();
    chart.getStyler().setXAxisMin(places[0]).setXAxisMax(places[places.length - 1]);
  }

  /** Room for the marks at all four sides. */
  private static void room(XYChart chart, double[] x, double[] y) {
    span(chart, x, y);
    double[] places = DoubleStream.of(x).sorted().toArray();
    double room =
        Math.max(0.05 * (places[places.length - 1] - places[0]), 1e-6 * Math.abs(places[0]));
    chart.getStyler().setXAxisMin(places[0] - room);
    chart.getStyler().setXAxisMax(places[places.length - 1] + room);
  }

  private static double[] numbers(Sheet sheet, int column) {
    return column(sheet.rows(), column);
  }

  private static double[] column(List<List<Object>> rows, int column) {
    return rows.stream().mapToDouble(r -> (Double) r.get(column)).toArray();
  }
}
