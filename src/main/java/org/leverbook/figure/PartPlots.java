package org.leverbook.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Position;
import org.leverbook.study.Sweep;

/**
 * Where moments come from: loads, body weight and supports, stacked. What flexes stands above zero,
 * what extends below; the sum of both is the moment.
 */
final class PartPlots {

  /** A source that gives less than this anywhere is not shown, N·m. */
  private static final double NOTHING = 0.5;

  private static final String AXIS = "parts of the moment (N·m), positive: flexes";

  private static final String SUM =
      "What stands above zero less what stands below is the moment; of paired joints one side's.";

  private PartPlots() {}

  /** Of one position, joint by joint. */
  static ColumnPlot plot(Position position, List<JointId> asked, FigureStyle style) {
    List<JointId> joints = asked.stream().distinct().filter(j -> knows(position, j)).toList();
    if (joints.isEmpty()) {
      throw new Refused(
          "There is nothing to plot: none of these moments is known. "
              + position.holding().sentence());
    }
    List<JointMoment> moments = joints.stream().map(position::moment).toList();
    Map<String, double[]> parts = parts(moments);
    List<String> notes = new ArrayList<>();
    notes.add(Caption.capital(position.body().person().text()) + ".");
    notes.add(SUM);
    if (!position.held()) {
      notes.add(position.holding().sentence());
    }
    notes.add(Caution.TEXT);
    return ColumnPlot.of(s -> stacked(position, joints, parts, s), notes, style, position);
  }

  private static boolean knows(Position position, JointId joint) {
    return position.knows(joint, joint.paired() ? Side.RIGHT : Side.MIDLINE);
  }

  private static CategoryChart stacked(
      Position position, List<JointId> joints, Map<String, double[]> parts, FigureStyle style) {
    List<String> names = joints.stream().map(j -> style.say(j.word())).toList();
    return new Blank("Where the moments come from: " + position.name(), "joint", AXIS, style)
        .columns(
            chart -> {
              chart.getStyler().setStacked(true);
              spanned(chart, parts, joints.size());
              int[] next = {0};
              parts.forEach(
                  (source, values) -> {
                    CategorySeries series =
                        chart.addSeries(
                            style.say(source), names, Arrays.stream(values).boxed().toList());
                    series.setFillColor(Color.decode(style.accent(next[0]++).fill()));
                  });
            });
  }

  private static void spanned(CategoryChart chart, Map<String, double[]> parts, int count) {
    double low = 0;
    double high = 0;
    for (int i = 0; i < count; i++) {
      int at = i;
      high = Math.max(high, parts.values().stream().mapToDouble(v -> Math.max(0, v[at])).sum());
      low = Math.min(low, parts.values().stream().mapToDouble(v -> Math.min(0, v[at])).sum());
    }
    double room = Math.max(1, 0.05 * (high - low));
    chart.getStyler().setYAxisMin(low < 0 ? low - room : 0.0);
    chart.getStyler().setYAxisMax(high > 0 ? high + room : 0.0);
  }

  /** Along a sweep, at one joint. */
  static CurvePlot plot(Sweep sweep, JointId joint, FigureStyle style) {
    SweepCurves.checked(sweep);
    List<JointMoment> moments =
        sweep.rows().stream().map(r -> r.held() ? r.position().moment(joint) : null).toList();
    Map<String, double[]> parts = parts(moments);
    List<String> notes = SweepNotes.ofMeasure(sweep, List.of(SUM));
    return CurvePlot.of(s -> along(sweep, joint, parts, moments, s), notes, style, sweep);
  }

  /** Each source's part, signed, positive where it flexes; NaN where nothing is held. */
  private static Map<String, double[]> parts(List<JointMoment> moments) {
    Set<String> sources = new LinkedHashSet<>();
    moments.stream().filter(m -> m != null).forEach(m -> sources.addAll(m.parts().keySet()));
    Map<String, double[]> parts = new LinkedHashMap<>();
    for (String source : sources) {
      double[] values = moments.stream().mapToDouble(m -> signed(m, source)).toArray();
      if (Arrays.stream(values).anyMatch(v -> Math.abs(v) >= NOTHING)) {
        parts.put(source, values);
      }
    }
    if (parts.isEmpty()) {
      throw new Refused(
          "There is nothing to plot: no part of these moments reaches 0.5 N·m. Take another joint or a heavier load.");
    }
    return parts;
  }

  private static double signed(JointMoment moment, String source) {
    if (moment == null) {
      return Double.NaN;
    }
    double towards = moment.from(source);
    return moment.signed() < 0 ? -towards : towards;
  }

  private static XYChart along(
      Sweep sweep,
      JointId joint,
      Map<String, double[]> parts,
      List<JointMoment> moments,
      FigureStyle style) {
    double[] x = SweepCurves.x(sweep);
    double[] whole =
        moments.stream().mapToDouble(m -> m == null ? Double.NaN : m.signed()).toArray();
    String title = "Where the moment at the " + joint.word() + " comes from, " + sweep.title();
    return new Blank(title, SweepCurves.across(sweep), AXIS, style)
        .curves(
            chart -> {
              SweepCurves.range(chart, sweep);
              List<double[]> ends = new ArrayList<>(List.of(whole));
              double[] above = new double[x.length];
              double[] below = new double[x.length];
              int next = 0;
              for (Map.Entry<String, double[]> part : parts.entrySet()) {
                Color colour = Color.decode(style.accent(next++).fill());
                String name = style.say(part.getKey());
                layer(chart, name, x, part.getValue(), above, true, colour);
                layer(chart, name, x, part.getValue(), below, false, colour);
              }
              ends.add(above);
              ends.add(below);
              Plots.spanned(chart, Blank.sorted(ends.toArray(new double[0][])));
              Plots.zeroLine(chart, style);
              Plots.mixedLegend(chart);
              underlaid(chart, x, whole, style);
              XYSeries sum = chart.addSeries(style.say("the whole moment"), x, whole);
              Plots.accented(sum, new FigureStyle.Accent(style.ink(), List.of(), 0), style);
            });
  }

  /** A wider line in paper's colour, so that the one upon it is seen on every area. */
  private static void underlaid(XYChart chart, double[] x, double[] whole, FigureStyle style) {
    XYSeries under = chart.addSeries("under the whole moment", x, whole);
    under.setShowInLegend(false);
    under.setMarker(SeriesMarkers.NONE);
    under.setLineColor(Color.decode(style.paper()));
    float width = (float) (5 * style.line());
    under.setLineStyle(new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
  }

  /** One source's layer on one side of zero, upon those before, which it raises. */
  private static void layer(
      XYChart chart,
      String name,
      double[] x,
      double[] part,
      double[] upon,
      boolean up,
      Color colour) {
    double[] from = upon.clone();
    for (int i = 0; i < x.length; i++) {
      double own = up ? Math.max(0, part[i]) : Math.min(0, part[i]);
      upon[i] += Double.isNaN(part[i]) ? 0 : own;
    }
    for (int[] run : Runs.of(part)) {
      double[] low = Arrays.copyOfRange(from, run[0], run[1]);
      double[] high = Arrays.copyOfRange(upon, run[0], run[1]);
      if (Arrays.equals(low, high)) {
        continue;
      }
      boolean known = chart.getSeriesCollection().stream().anyMatch(s -> s.getName().equals(name));
      String key = known ? name + " " + chart.getSeriesCollection().size() : name;
      Blank.area(chart, key, Arrays.copyOfRange(x, run[0], run[1]), low, high, colour)
          .setShowInLegend(!known);
    }
  }
}
