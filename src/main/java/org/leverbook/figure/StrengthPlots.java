package org.leverbook.figure;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.knowm.xchart.XYChart;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.lift.LargestLoad;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.strength.Demand;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

/** What can be given against what is asked, with the region where a lift would stick. */
final class StrengthPlots {

  /** Within this share of the smallest reserve: our convention, as in the largest load. */
  private static final double REGION = 0.05;

  private static final String VARY =
      "Held still. The sticking region is within 5 % of the smallest (our convention). Strengths are"
          + " published means of single joints; between people they vary by 20 to 30 % (from"
          + " memory).";

  private StrengthPlots() {}

  /** The largest load along a lift's way, and the load that is held. */
  static CurvePlot plot(Lift<?> lift, FigureStyle style) {
    LargestLoad largest = lift.largest();
    List<LargestLoad.Point> points = largest.points();
    double[] x = points.stream().mapToDouble(p -> 100 * p.share()).toArray();
    double[] most = points.stream().mapToDouble(p -> p.kilograms().orElse(Double.NaN)).toArray();
    double held = lift.mainLoad().mass();
    double[] asked = new double[x.length];
    Arrays.fill(asked, held);
    LargestLoad.Point least =
        largest
            .sticking()
            .orElseThrow(
                () ->
                    new Refused(
                        "There is no curve of the largest load, since none was found ("
                            + points.get(0).reason().replaceAll("\\.$", "")
                            + "): hold another load, or take another lift."));
    List<String> notes = new ArrayList<>();
    notes.add("For " + largest.lifter() + ".");
    notes.add(
        String.format(
            Locale.ROOT,
            "At %.0f %% of the way the least can be held, %.0f kg, limited by: %s.",
            100 * least.share(),
            largest.kilograms(),
            least.reason()));
    notes.add(VARY);
    notes.add(Caution.TEXT);
    String title = "What can be held through the " + largest.name();
    Curves2 curves =
        new Curves2(x, most, asked, "largest load", "load held (" + Plots.tick(held) + " kg)");
    return CurvePlot.of(
        s -> curves.chart(new Blank(title, "share of the way (%)", "load (kg)", s), s),
        notes,
        style,
        lift,
        largest);
  }

  /** What one joint can give and what is asked of it, along a sweep. */
  static CurvePlot plot(Sweep sweep, JointId joint, FigureStyle style) {
    SweepCurves.checked(sweep);
    String action = action(sweep, joint);
    List<Optional<Demand>> demands =
        sweep.rows().stream().map(r -> demand(r, joint, action)).toList();
    double[] can =
        demands.stream().mapToDouble(d -> d.map(StrengthPlots::can).orElse(Double.NaN)).toArray();
    double[] asked =
        demands.stream().mapToDouble(d -> d.map(Demand::needed).orElse(Double.NaN)).toArray();
    List<String> more = new ArrayList<>();
    if (joint.paired()) {
      more.add("Of one side, the one nearer to its limit.");
    }
    demands.stream()
        .flatMap(Optional::stream)
        .findFirst()
        .ifPresent(
            d ->
                more.add(
                    "Strength: " + d.evidence().source() + ", " + d.evidence().status() + "."));
    more.add(VARY);
    String title =
        Caption.capital(joint.word()) + ", " + action + ": asked and possible, " + sweep.title();
    Curves2 curves = new Curves2(SweepCurves.x(sweep), can, asked, "can give", "asked");
    return CurvePlot.of(
        s -> curves.chart(new Blank(title, SweepCurves.across(sweep), "moment (N·m)", s), s),
        SweepNotes.ofMeasure(sweep, more),
        style,
        Measure.EFFORT.subjects(sweep));
  }

  private static double can(Demand demand) {
    return demand.canGive().orElse(Double.NaN);
  }

  /** The direction in which the joint is nearest to its limit anywhere. */
  private static String action(Sweep sweep, JointId joint) {
    return sweep.rows().stream()
        .filter(SweepRow::held)
        .flatMap(r -> r.position().demands().all().stream())
        .filter(d -> d.joint() == joint && d.canGive().isPresent())
        .max(Comparator.comparingDouble(d -> d.effort().orElse(0)))
        .map(Demand::action)
        .orElseThrow(
            () ->
                new Refused(
                    "There is no curve to draw: nothing of known strength is asked of the "
                        + joint.word()
                        + " in this sweep."));
  }

  private static Optional<Demand> demand(SweepRow row, JointId joint, String action) {
    if (!row.held()) {
      return Optional.empty();
    }
    return row.position().demands().all().stream()
        .filter(d -> d.joint() == joint && d.action().equals(action) && d.canGive().isPresent())
        .max(Comparator.comparingDouble(d -> d.effort().orElse(0)));
  }

  /** Two curves over one axis, and where the upper has least to spare. */
  private record Curves2(
      double[] x, double[] can, double[] asked, String canName, String askedName) {

    XYChart chart(Blank blank, FigureStyle style) {
      return blank.curves(
          chart -> {
            double[] sorted = Blank.sorted(x);
            chart.getStyler().setXAxisMin(sorted[0]).setXAxisMax(sorted[sorted.length - 1]);
            Plots.spanned(chart, Blank.sorted(can, asked));
            region(chart, style);
            Plots.places(chart);
            Plots.mixedLegend(chart);
            Plots.accented(chart.addSeries(style.say(canName), x, can), style.accent(0), style);
            Plots.accented(chart.addSeries(style.say(askedName), x, asked), style.accent(1), style);
          });
    }

    /** Where what can be given over what is asked is within 5 % of its least. */
    private void region(XYChart chart, FigureStyle style) {
      double[] reserve = new double[x.length];
      for (int i = 0; i < x.length; i++) {
        reserve[i] = can[i] / Math.max(1e-9, asked[i]);
      }
      double[] known = Blank.sorted(reserve);
      if (known.length == 0) {
        return;
      }
      double limit = (1 + REGION) * known[0];
      boolean named = false;
      for (int i = 0; i < x.length; i++) {
        if (!(reserve[i] <= limit)) {
          continue;
        }
        int from = i;
        while (i + 1 < x.length && reserve[i + 1] <= limit) {
          i++;
        }
        shade(chart, style, from, i, named);
        named = true;
      }
    }

    /** Half a step further than its values, so that a single one is seen too. */
    private void shade(XYChart chart, FigureStyle style, int from, int to, boolean named) {
      double before = from == 0 ? x[from] : (x[from - 1] + x[from]) / 2;
      double after = to == x.length - 1 ? x[to] : (x[to] + x[to + 1]) / 2;
      double low = chart.getStyler().getYAxisMin();
      double high = chart.getStyler().getYAxisMax();
      String name = style.say("sticking region");
      String key = named ? name + " from " + from : name;
      Blank.area(
              chart,
              key,
              new double[] {before, after},
              new double[] {low, low},
              new double[] {high, high},
              Color.decode(style.flesh()))
          .setShowInLegend(!named);
    }
  }
}
