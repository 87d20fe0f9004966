package org.leverbook.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.knowm.xchart.XYChart;
import org.leverbook.body.JointId;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

/** Anything of a sweep as curves against what was varied, gaps where nothing could be held. */
final class SweepCurves {

  private SweepCurves() {}

  /** One measure at several joints. */
  static CurvePlot plot(Sweep sweep, List<JointId> asked, Measure measure, FigureStyle style) {
    List<JointId> joints = asked.stream().distinct().toList();
    checked(sweep);
    Map<JointId, double[]> values = values(sweep, joints, measure);
    List<String> notes = SweepNotes.ofMeasure(sweep, measure.notes());
    missing(values, measure).ifPresent(note -> notes.add(notes.size() - 1, note));
    return CurvePlot.of(
        s -> chart(sweep, values, measure, s), notes, style, measure.subjects(sweep));
  }

  static XYChart chart(Sweep sweep, List<JointId> joints, Measure measure, FigureStyle style) {
    checked(sweep);
    return chart(
        sweep, values(sweep, joints.stream().distinct().toList(), measure), measure, style);
  }

  /** Any one quantity of the position. */
  static CurvePlot plot(
      Sweep sweep, String what, String unit, ToDoubleFunction<Position> of, FigureStyle style) {
    checked(sweep);
    double[] y =
        sweep.rows().stream()
            .mapToDouble(r -> r.held() ? finite(what, r, of) : Double.NaN)
            .toArray();
    String axis = unit.isEmpty() ? what : what + " (" + unit + ")";
    return CurvePlot.of(
        s ->
            new Blank(title(what, sweep), across(sweep), axis, s)
                .curves(
                    chart -> {
                      range(chart, sweep);
                      near(chart, Blank.sorted(y));
                      Plots.places(chart);
                      chart.getStyler().setLegendVisible(false);
                      var series = chart.addSeries(s.say(what), x(sweep), y);
                      Plots.accented(series, s.accent(0), s);
                    }),
        SweepNotes.ofMeasure(sweep, List.of()),
        style,
        sweep);
  }

  private static double finite(String what, SweepRow row, ToDoubleFunction<Position> of) {
    double value = of.applyAsDouble(row.position());
    if (!Double.isFinite(value)) {
      throw new Refused(
          "The " + what + " is no number (" + value + ") at the value " + row.value() + ".");
    }
    return value;
  }

  private static Map<JointId, double[]> values(Sweep sweep, List<JointId> joints, Measure measure) {
    Map<JointId, double[]> values = new LinkedHashMap<>();
    joints.forEach(joint -> values.put(joint, measure.along(sweep.rows(), joint)));
    return values;
  }

  private static XYChart chart(
      Sweep sweep, Map<JointId, double[]> values, Measure measure, FigureStyle style) {
    List<JointId> joints = List.copyOf(values.keySet());
    double[] all = Blank.sorted(values.values().toArray(new double[0][]));
    if (all.length == 0) {
      throw new Refused(
          "There is nothing to plot: the "
              + measure.name()
              + " of these joints is not known anywhere.");
    }
    return new Blank(title(measure.name(), sweep), across(sweep), measure.axis(), style)
        .curves(
            chart -> {
              range(chart, sweep);
              Plots.spanned(chart, all);
              Plots.zeroLine(chart, style);
              List<FigureStyle.Accent> accents = style.accents(joints);
              for (int i = 0; i < joints.size(); i++) {
                double[] y = values.get(joints.get(i));
                if (Arrays.stream(y).anyMatch(Double::isFinite)) {
                  String name = style.say(JointNames.of(joints.get(i)));
                  Plots.accented(chart.addSeries(name, x(sweep), y), accents.get(i), style);
                }
              }
            });
  }

  private static java.util.Optional<String> missing(
      Map<JointId, double[]> values, Measure measure) {
    List<String> without = new ArrayList<>();
    values.forEach(
        (joint, y) -> {
          if (Arrays.stream(y).noneMatch(Double::isFinite)) {
            without.add(joint.word());
          }
        });
    return without.isEmpty()
        ? java.util.Optional.empty()
        : java.util.Optional.of(
            "Not known: the " + measure.name() + " at " + String.join(", ", without) + ".");
  }

  static void checked(Sweep sweep) {
    if (sweep.named()) {
      throw new Refused(
          "A sweep over named things has no values to draw a curve against: .plot(HIP) draws its"
              + " moments as bars.");
    }
    Plots.plottable(sweep);
  }

  static String title(String what, Sweep sweep) {
    return Caption.capital(what) + " " + sweep.title();
  }

  static String across(Sweep sweep) {
    return sweep.unit().isEmpty() ? sweep.name() : sweep.name() + " (" + sweep.unit() + ")";
  }

  static double[] x(Sweep sweep) {
    return sweep.rows().stream().mapToDouble(SweepRow::value).toArray();
  }

  /** The whole range that was asked for, so that gaps at its ends show too. */
  static void range(XYChart chart, Sweep sweep) {
    double[] values = Blank.sorted(x(sweep));
    chart.getStyler().setXAxisMin(values[0]).setXAxisMax(values[values.length - 1]);
  }

  /** A little room below and above; zero only where it is near. */
  static void near(XYChart chart, double[] sorted) {
    double low = sorted[0];
    double high = sorted[sorted.length - 1];
    double room = Math.max(0.08 * (high - low), 1e-3 * Math.max(1, Math.abs(high)));
    boolean fromZero = low >= 0 && low < 0.4 * high;
    chart.getStyler().setYAxisMin(fromZero ? 0 : low - room).setYAxisMax(high + room);
  }
}
