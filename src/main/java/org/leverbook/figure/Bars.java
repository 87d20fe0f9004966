package org.leverbook.figure;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.CategorySeries;
import org.leverbook.body.JointId;
import org.leverbook.display.Picture;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

/** The moments of a sweep over named things as bars. */
final class Bars {

  private static final int WIDTH = 900;
  private static final int HEIGHT = 520;

  /** Letters that fit below the bars side by side; longer names are numbered and told below. */
  private static final int MOST_LETTERS = 80;

  private Bars() {}

  /** The plot. */
  static Picture picture(Sweep sweep, List<JointId> joints, FigureStyle style) {
    List<String> notes = new ArrayList<>();
    CategoryChart chart = chart(sweep, joints, style);
    if (isNumbered(sweep)) {
      notes.add(
          IntStream.range(0, sweep.rows().size())
                  .mapToObj(i -> (i + 1) + ": " + sweep.rows().get(i).name())
                  .collect(Collectors.joining("; "))
              + ".");
    }
    notes.addAll(SweepNotes.of(sweep, joints));
    return new ChartPicture(chart, notes, style);
  }

  static CategoryChart chart(Sweep sweep, List<JointId> asked, FigureStyle style) {
    List<JointId> joints = asked.stream().distinct().toList();
    Plots.plottable(sweep);
    CategoryChart[] made = new CategoryChart[1];
    Fonts.needed(
        () -> {
          made[0] =
              new CategoryChartBuilder()
                  .width(WIDTH)
                  .height(HEIGHT)
                  .title("Moment " + sweep.title())
                  .xAxisTitle(sweep.name())
                  .yAxisTitle("moment (N·m), positive: the resistance flexes")
                  .build();
          Plots.styled(made[0].getStyler(), style);
          made[0].getStyler().setXAxisTickLabelsFormattingFunction(null);
          made[0].getStyler().setAvailableSpaceFill(0.8);
          spanned(made[0], sweep, joints);
          List<FigureStyle.Accent> accents = style.accents(joints);
          for (int i = 0; i < joints.size(); i++) {
            JointId joint = joints.get(i);
            CategorySeries series =
                made[0].addSeries(JointNames.of(joint), labels(sweep), moments(sweep, joint));
            series.setFillColor(Color.decode(accents.get(i).fill()));
          }
        });
    return made[0];
  }

  private static void spanned(CategoryChart chart, Sweep sweep, List<JointId> joints) {
    double[] moments =
        sweep.rows().stream()
            .filter(SweepRow::held)
            .flatMapToDouble(row -> joints.stream().mapToDouble(row::moment))
            .sorted()
            .toArray();
    double low = Math.min(0, moments[0]);
    double high = Math.max(0, moments[moments.length - 1]);
    double room = Math.max(1, 0.05 * (high - low));
    chart.getStyler().setYAxisMin(low < 0 ? low - room : 0.0);
    chart.getStyler().setYAxisMax(high > 0 ? high + room : 0.0);
  }

  /** Where nothing could be held there is no bar. */
  private static List<Double> moments(Sweep sweep, JointId joint) {
    List<Double> moments = new ArrayList<>();
    sweep.rows().forEach(row -> moments.add(row.held() ? row.moment(joint) : null));
    return moments;
  }

  /** Whether the bars bear numbers, because their names are too long to stand side by side. */
  static boolean isNumbered(Sweep sweep) {
    int longest = sweep.rows().stream().mapToInt(row -> row.name().length()).max().orElse(0);
    return longest * sweep.rows().size() > MOST_LETTERS;
  }

  private static List<String> labels(Sweep sweep) {
    boolean numbered = isNumbered(sweep);
    return sweep.rows().stream()
        .map(row -> numbered ? String.format(Locale.ROOT, "%.0f", row.value()) : row.name())
        .toList();
  }

  /** What stands below the bars, which XChart tells to nobody. */
  static Set<String> texts(CategoryChart chart) {
    Set<String> texts = new TreeSet<>();
    chart
        .getSeriesCollection()
        .forEach(series -> series.getXData().forEach(label -> texts.add(String.valueOf(label))));
    return texts;
  }
}
