package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.Styler;
import org.leverbook.body.JointId;
import org.leverbook.display.Picture;
import org.leverbook.quantity.Refused;
import org.leverbook.study.Track;
import org.leverbook.study.WayComparison;

/** The moment at one joint through several ways: a curve for each. */
final class WayPlots {

  private static final int WIDTH = 900;

  /** Without the names below. */
  private static final int HEIGHT = 430;

  private static final int NAME = 30;

  private WayPlots() {}

  static Picture picture(WayComparison comparison, JointId joint, FigureStyle style) {
    List<String> notes = new ArrayList<>();
    if (joint.paired()) {
      notes.add("Of the " + joint.word() + " the side that has more.");
    }
    notes.addAll(comparison.notes());
    return new ChartPicture(chart(comparison, joint, style), notes, style);
  }

  private static XYChart chart(WayComparison comparison, JointId joint, FigureStyle style) {
    List<Track> tracks = comparison.tracks();
    double[] all =
        tracks.stream()
            .flatMap(t -> t.points().stream())
            .flatMapToDouble(p -> p.moment(joint).stream())
            .sorted()
            .toArray();
    if (all.length == 0) {
      throw new Refused(
          "There is nothing to plot: the moment at the "
              + joint.word()
              + " is not known anywhere. "
              + String.join(" ", comparison.notes()));
    }
    XYChart[] made = new XYChart[1];
    Fonts.needed(
        () -> {
          made[0] =
              new XYChartBuilder()
                  .width(WIDTH)
                  .height(HEIGHT + NAME * tracks.size())
                  .title(
                      Caption.capital(JointNames.of(joint))
                          + " over the way, "
                          + comparison.loads())
                  .xAxisTitle("share of the way (%)")
                  .yAxisTitle("moment (N·m), positive: the resistance flexes")
                  .build();
          Plots.styled(made[0].getStyler(), style);
          made[0].getStyler().setMarkerSize(Plots.marks(style));
          made[0].getStyler().setXAxisMin(0.0).setXAxisMax(100.0);
          made[0].getStyler().setLegendPosition(Styler.LegendPosition.OutsideS);
          Plots.spanned(made[0], all);
          Plots.zeroLine(made[0], style);
          for (int i = 0; i < tracks.size(); i++) {
            if (!tracks.get(i).points().isEmpty()) {
              series(made[0], tracks.get(i), joint, style.accent(i), style);
            }
          }
        });
    return made[0];
  }

  private static void series(
      XYChart chart, Track track, JointId joint, FigureStyle.Accent accent, FigureStyle style) {
    double[] x = track.points().stream().mapToDouble(p -> 100 * p.share()).toArray();
    // XChart breaks its line where a value is NaN; no other value of ours is ever NaN.
    double[] y =
        track.points().stream().mapToDouble(p -> p.moment(joint).orElse(Double.NaN)).toArray();
    XYSeries series = chart.addSeries(track.name(), x, y);
    Plots.accented(series, accent, style);
  }
}
