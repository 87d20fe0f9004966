package org.leverbook.figure;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javax.measure.Quantity;
import org.knowm.xchart.XYChart;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.study.Doubt;
import org.leverbook.study.DoubtBand;
import org.leverbook.study.Span;

/** How sure a curve is: at each value the band of all cases, and the plain answer. */
final class DoubtPlots {

  private DoubtPlots() {}

  static <Q extends Quantity<Q>> CurvePlot plot(
      Span<Q> span, Function<Quantity<Q>, Doubt> doubt, JointId joint, FigureStyle style) {
    List<DoubtBand> bands = new ArrayList<>();
    List<String> reasons = new ArrayList<>();
    for (int i = 0; i < span.values(); i++) {
      try {
        Doubt one = Ask.present("lambda's doubt", doubt.apply(span.quantity(i)), "doubt(lift)");
        bands.add(one.band(joint));
      } catch (Refused e) {
        bands.add(null);
        reasons.add(
            String.format(
                Locale.ROOT, "No answer at %s: %s", Plots.tick(span.value(i)), e.getMessage()));
      }
    }
    if (bands.stream().allMatch(b -> b == null)) {
      throw new Refused("There is nothing to plot. " + reasons.get(0));
    }
    return CurvePlot.of(
        s -> chart(span, bands, joint, s),
        notes(bands, reasons),
        style,
        bands.stream().filter(b -> b != null).toArray());
  }

  private static List<String> notes(List<DoubtBand> bands, List<String> reasons) {
    DoubtBand first = bands.stream().filter(b -> b != null).findFirst().orElseThrow();
    List<String> notes = new ArrayList<>();
    notes.add(Caption.capital(first.what()) + ".");
    notes.add(
        String.format(
            Locale.ROOT,
            "The band holds 90 of 100 cases, 5 %% lie below and 5 %% above it; %,d cases at each"
                + " value. The line is the plain answer.",
            first.draws()));
    notes.addAll(reasons.subList(0, Math.min(1, reasons.size())));
    if (reasons.size() > 1) {
      notes.add(reasons.size() - 1 + " more values have no answer.");
    }
    notes.add(Caution.TEXT);
    return notes;
  }

  private static XYChart chart(
      Span<?> span, List<DoubtBand> bands, JointId joint, FigureStyle style) {
    double[] x = new double[bands.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = span.value(i);
    }
    double[] low = each(bands, DoubtBand::low);
    double[] high = each(bands, DoubtBand::high);
    double[] plain = each(bands, DoubtBand::plain);
    DoubtBand first = bands.stream().filter(b -> b != null).findFirst().orElseThrow();
    String moment = "moment at the " + joint.word();
    String title = "How sure the " + moment + " is, against " + span.name();
    String up = moment + " (" + first.unit() + ")";
    return new Blank(title, span.heading(), up, style)
        .curves(
            chart -> {
              double[] places = Blank.sorted(x);
              chart.getStyler().setXAxisMin(places[0]).setXAxisMax(places[places.length - 1]);
              SweepCurves.near(chart, Blank.sorted(low, high, plain));
              Plots.places(chart);
              Plots.mixedLegend(chart);
              band(chart, x, low, high, style);
              String name = style.say("plain answer");
              Plots.accented(chart.addSeries(name, x, plain), style.accent(joint), style);
            });
  }

  private static void band(
      XYChart chart, double[] x, double[] low, double[] high, FigureStyle style) {
    boolean named = false;
    for (int[] run : Runs.of(low)) {
      String name = style.say("5 to 95 % of cases");
      Blank.area(
              chart,
              named ? name + " from " + run[0] : name,
              Arrays.copyOfRange(x, run[0], run[1]),
              Arrays.copyOfRange(low, run[0], run[1]),
              Arrays.copyOfRange(high, run[0], run[1]),
              Color.decode(style.flesh()))
          .setShowInLegend(!named);
      named = true;
    }
  }

  private static double[] each(
      List<DoubtBand> bands, java.util.function.ToDoubleFunction<DoubtBand> of) {
    return bands.stream().mapToDouble(b -> b == null ? Double.NaN : of.applyAsDouble(b)).toArray();
  }
}
