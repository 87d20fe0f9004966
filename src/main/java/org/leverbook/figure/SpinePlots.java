package org.leverbook.figure;

import java.awt.Color;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.knowm.xchart.HorizontalBarChart;
import org.knowm.xchart.HorizontalBarSeries;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.muscle.Discs;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * The spine, level upon level: the moment at each, and what presses in the discs of the low back.
 */
final class SpinePlots {

  private static final int HEIGHT = 560;

  private SpinePlots() {}

  static RowPlot plot(Position position, FigureStyle style) {
    List<JointId> levels =
        JointId.spine().stream().filter(j -> position.knows(j, Side.MIDLINE)).toList();
    if (levels.isEmpty()) {
      throw new Refused(
          "There is nothing to plot: no moment of the spine is known. "
              + position.holding().sentence());
    }
    boolean pressed = position.held();
    List<String> notes = new ArrayList<>();
    notes.add(Caption.capital(position.body().person().text()) + ".");
    notes.add(
        pressed
            ? "What presses in a disc is told for the low back alone; muscles are counted."
            : position.holding().sentence());
    notes.add(Caution.TEXT);
    return new RowPlot(
        new Plot.Content<>(
            "Spine, " + position.name(),
            s -> {
              List<HorizontalBarChart> charts = new ArrayList<>();
              charts.add(moments(position, levels, pressed, s));
              if (pressed) {
                charts.add(discs(position, s));
              }
              return charts;
            },
            notes,
            pressed
                ? List.of(position, position.effort(), Discs.of(position.effort(), position.body()))
                : List.of(position)),
        style);
  }

  private static HorizontalBarChart moments(
      Position position, List<JointId> levels, boolean half, FigureStyle style) {
    String across = "moment (N·m), positive: flexes";
    Blank blank = new Blank("", across, "level", half ? 460 : 900, HEIGHT, style);
    return bars(blank, levels, level -> position.moment(level).signed(), "moment", 0, style);
  }

  private static HorizontalBarChart discs(Position position, FigureStyle style) {
    Discs discs = Discs.of(position.effort(), position.body());
    Blank blank = new Blank("", "pressed together with (N)", "level", 440, HEIGHT, style);
    List<JointId> levels = Discs.levels();
    return bars(blank, levels, level -> discs.at(level).compression(), "compression", 1, style);
  }

  private static HorizontalBarChart bars(
      Blank blank,
      List<JointId> levels,
      ToDoubleFunction<JointId> value,
      String name,
      int accent,
      FigureStyle style) {
    // The first row stands on top: the neck, as in a person who stands.
    List<JointId> upright = new ArrayList<>(levels);
    Collections.reverse(upright);
    List<Double> values = upright.stream().map(value::applyAsDouble).toList();
    return blank.rows(
        chart -> {
          chart.getStyler().setLegendVisible(false);
          // Every level has its name.
          chart.getStyler().setXAxisMaxLabelCount(levels.size());
          double low = Math.min(0, values.stream().min(Double::compare).orElseThrow());
          double high = Math.max(0, values.stream().max(Double::compare).orElseThrow());
          double room = Math.max(1, 0.05 * (high - low));
          chart.getStyler().setXAxisMin(low < 0 ? low - room : 0.0).setXAxisMax(high + room);
          HorizontalBarSeries series =
              chart.addSeries(
                  style.say(name), values, upright.stream().map(JointId::word).toList());
          series.setFillColor(Color.decode(style.accent(accent).fill()));
        });
  }
}
