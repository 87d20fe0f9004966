package org.leverbook.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.leverbook.quantity.Refused;

/** How often values occur, in steps of round width, with the middle and the outer twentieths. */
final class Histograms {

  private static final int FEWEST = 2;
  private static final double LARGEST = 1e12;
  private static final int MOST_STEPS = 40;

  private Histograms() {}

  /**
   * The plot.
   *
   * @param what is counted, as in "thigh length"
   * @param unit of the values, may be empty
   * @param of whom, as in "200 people"
   * @param values any order
   * @param notes sentences below
   */
  static CurvePlot plot(
      String what,
      String unit,
      String of,
      double[] values,
      List<String> notes,
      FigureStyle style,
      Object... subjects) {
    if (values.length < FEWEST) {
      throw new Refused(
          "A histogram of one value or none shows nothing: it needs two values or more.");
    }
    for (double value : values) {
      if (!(Math.abs(value) <= LARGEST)) {
        throw new Refused(
            "A "
                + what
                + " is "
                + value
                + ", which no axis can show: leave it out, or give numbers up to a million"
                + " million.");
      }
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    List<String> below = new ArrayList<>();
    below.add(
        String.format(
            Locale.ROOT,
            "%,d values, mean %s; half of them lie below %s, 5 %% below %s, 5 %% above %s.",
            sorted.length,
            number(Arrays.stream(sorted).average().orElseThrow(), unit),
            number(quantile(sorted, 0.5), unit),
            number(quantile(sorted, 0.05), unit),
            number(quantile(sorted, 0.95), unit)));
    below.addAll(notes);
    return CurvePlot.of(s -> chart(what, unit, of, sorted, s), below, style, subjects);
  }

  private static XYChart chart(
      String what, String unit, String of, double[] sorted, FigureStyle style) {
    double step = step(sorted);
    long from = (long) Math.floor(sorted[0] / step);
    long to = (long) Math.floor(sorted[sorted.length - 1] / step) + 1;
    int[] counts = new int[(int) (to - from)];
    for (double value : sorted) {
      counts[(int) Math.min(counts.length - 1L, (long) Math.floor(value / step) - from)]++;
    }
    double most = Arrays.stream(counts).max().orElseThrow();
    String across = unit.isEmpty() ? what : what + " (" + unit + ")";
    return new Blank(Caption.capital(what) + " of " + of, across, "how many", style)
        .curves(
            chart -> {
              chart.getStyler().setXAxisMin(from * step).setXAxisMax(to * step);
              chart.getStyler().setYAxisMin(0.0).setYAxisMax(1.06 * most);
              Plots.places(chart);
              for (int i = 0; i < counts.length; i++) {
                bar(chart, i, (from + i) * step, step, counts[i], style);
              }
              upright(chart, "5 % below", quantile(sorted, 0.05), 1, unit, style);
              upright(chart, "middle", quantile(sorted, 0.5), 0, unit, style);
              upright(chart, "5 % above", quantile(sorted, 0.95), 2, unit, style);
            });
  }

  private static void bar(
      XYChart chart, int number, double left, double width, int count, FigureStyle style) {
    if (count == 0) {
      return;
    }
    double gap = 0.03 * width;
    XYSeries bar =
        Blank.area(
            chart,
            "step " + (number + 1),
            new double[] {left + gap, left + width - gap},
            new double[2],
            new double[] {count, count},
            Color.decode(style.tone(Tint.LOW)));
    bar.setShowInLegend(false);
  }

  private static void upright(
      XYChart chart, String name, double at, int dash, String unit, FigureStyle style) {
    String label = style.say(name) + ": " + number(at, unit);
    double[] y = {0, chart.getStyler().getYAxisMax()};
    XYSeries line = chart.addSeries(label, new double[] {at, at}, y);
    BasicStroke stroke = Plots.stroke(style.accent(dash), style);
    line.setLineStyle(stroke);
    line.setLineColor(Color.decode(style.ink()));
    line.setMarker(SeriesMarkers.NONE);
  }

  /** Freedman and Diaconis (1981, from memory), widened to 1, 2 or 5 of a power of ten. */
  private static double step(double[] sorted) {
    double range = sorted[sorted.length - 1] - sorted[0];
    double spread = quantile(sorted, 0.75) - quantile(sorted, 0.25);
    double rough = 2 * spread / Math.cbrt(sorted.length);
    rough = Math.max(rough, range / MOST_STEPS);
    rough = rough > 0 ? rough : Math.max(1e-6, Math.abs(sorted[0]) / 10);
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double first = rough / power;
    return power * (first <= 1 ? 1 : first <= 2 ? 2 : first <= 5 ? 5 : 10);
  }

  private static double quantile(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int low = (int) place;
    int high = Math.min(low + 1, sorted.length - 1);
    return sorted[low] + (place - low) * (sorted[high] - sorted[low]);
  }

  private static String number(double value, String unit) {
    int decimals = Math.abs(value) >= 100 ? 0 : Math.abs(value) >= 1 ? 1 : 3;
    String number = String.format(Locale.ROOT, "%." + decimals + "f", value).replace('-', '−');
    return unit.isEmpty() ? number : number + (unit.equals("°") ? "" : " ") + unit;
  }
}
