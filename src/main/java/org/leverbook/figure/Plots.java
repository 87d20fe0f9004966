package org.leverbook.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.HeatMapChart;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.leverbook.body.JointId;
import org.leverbook.display.Picture;
import org.leverbook.quantity.Refused;
import org.leverbook.study.Grid;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

/**
 * The moments of a sweep or a grid as an XChart chart, for those who want to restyle it.
 *
 * <p>{@code var chart = Plots.chart(byHip, HIP, KNEE); chart.setTitle("Lesson 3");
 * Plots.picture(chart).save("lesson-3");}
 */
public final class Plots {

  private static final int WIDTH = 900;
  private static final int HEIGHT = 520;
  private static final List<Marker> MARKERS =
      List.of(
          SeriesMarkers.CIRCLE,
          SeriesMarkers.SQUARE,
          SeriesMarkers.TRIANGLE_UP,
          SeriesMarkers.DIAMOND,
          SeriesMarkers.TRIANGLE_DOWN,
          SeriesMarkers.CROSS);

  private Plots() {}

  /**
   * Moment against the varied quantity, a line for each joint, gaps where nothing could be held.
   *
   * @param sweep what was varied
   * @param joints which joints; those of {@code sweep.plot()} when none are named
   * @return the chart; {@link #picture} makes it a picture
   * @throws Refused if no value of the sweep could be held
   */
  public static XYChart chart(Sweep sweep, JointId... joints) {
    return chart(sweep, joints.length == 0 ? usual() : List.of(joints), FigureStyle.PRINT);
  }

  /**
   * The moments of a grid at one joint in colours: the second quantity across, the first upwards;
   * empty where nothing could be held.
   *
   * @param grid what was varied
   * @param joint which joint
   * @return the chart; {@link #picture} makes it a picture
   * @throws Refused if no pair of the grid could be held
   */
  public static HeatMapChart chart(Grid<?, ?> grid, JointId joint) {
    return HeatMaps.chart(grid, joint, FigureStyle.PRINT);
  }

  /**
   * A chart as a picture.
   *
   * @param chart any XChart chart with two axes
   * @param notes sentences to stand below it
   * @return the picture
   */
  public static Picture picture(AxesChart<?, ?> chart, String... notes) {
    return new ChartPicture(chart, List.of(notes), FigureStyle.PRINT);
  }

  /**
   * The moments of a sweep over named things as bars, a colour for each joint.
   *
   * @param sweep over a list of things
   * @param joints which joints; those of {@code sweep.plot()} when none are named
   * @return the chart; {@link #picture} makes it a picture
   * @throws Refused if nothing could be held
   */
  public static CategoryChart bars(Sweep sweep, JointId... joints) {
    return Bars.chart(sweep, joints.length == 0 ? usual() : List.of(joints), FigureStyle.PRINT);
  }

  static Picture picture(Sweep sweep, List<JointId> joints, FigureStyle style) {
    if (sweep.named()) {
      return Bars.picture(sweep, joints, style);
    }
    return new ChartPicture(chart(sweep, joints, style), SweepNotes.of(sweep, joints), style);
  }

  static List<JointId> usual() {
    return List.of(
        JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.L5_S1, JointId.T7_T8, JointId.SHOULDER);
  }

  private static XYChart chart(Sweep sweep, List<JointId> asked, FigureStyle style) {
    List<JointId> joints = asked.stream().distinct().toList();
    if (sweep.named()) {
      throw new Refused(
          "A sweep over named things is plotted as bars: take Plots.bars(sweep) instead of"
              + " Plots.chart(sweep).");
    }
    plottable(sweep);
    XYChart[] made = new XYChart[1];
    Fonts.needed(
        () -> {
          made[0] =
              new XYChartBuilder()
                  .width(WIDTH)
                  .height(HEIGHT)
                  .title("Moment " + sweep.title())
                  .xAxisTitle(
                      sweep.unit().isEmpty()
                          ? sweep.name()
                          : sweep.name() + " (" + sweep.unit() + ")")
                  .yAxisTitle("moment (N·m), positive: the resistance flexes")
                  .build();
          styled(made[0].getStyler(), style);
          made[0].getStyler().setMarkerSize(7);
          spanned(made[0], sweep, joints);
          zeroLine(made[0], style);
          List<FigureStyle.Accent> accents = style.accents(joints);
          for (int i = 0; i < joints.size(); i++) {
            series(made[0], sweep, joints.get(i), accents.get(i));
          }
        });
    return made[0];
  }

  /** Refuses to plot where nothing could be held. */
  static void plottable(Sweep sweep) {
    if (sweep.held() == 0) {
      throw new Refused(
          "There is nothing to plot: none of the "
              + sweep.rows().size()
              + " positions could be held."
              + (sweep.rows().isEmpty() ? "" : " The first says: " + sweep.rows().get(0).reason()));
    }
  }

  /** The whole range that was asked for, so that gaps at its ends show too; zero always seen. */
  private static void spanned(XYChart chart, Sweep sweep, List<JointId> joints) {
    double[] values = sweep.rows().stream().mapToDouble(SweepRow::value).sorted().toArray();
    chart.getStyler().setXAxisMin(values[0]).setXAxisMax(values[values.length - 1]);
    double[] moments =
        sweep.rows().stream()
            .filter(SweepRow::held)
            .flatMapToDouble(row -> joints.stream().mapToDouble(j -> row.moment(j)))
            .sorted()
            .toArray();
    spanned(chart, moments);
  }

  /** So that all moments, in their order, and zero are seen. */
  static void spanned(XYChart chart, double[] moments) {
    double low = Math.min(0, moments[0]);
    double high = Math.max(0, moments[moments.length - 1]);
    double room = Math.max(1, 0.05 * (high - low));
    chart.getStyler().setYAxisMin(low < 0 ? low - room : 0.0);
    chart.getStyler().setYAxisMax(high + room);
  }

  /**
   * Where the resistance changes over from flexing to extending. Of uneven places on purpose:
   * XChart takes its tick marks from the first series where that is evenly spaced, odd decimals and
   * all, and round numbers otherwise.
   */
  static void zeroLine(XYChart chart, FigureStyle style) {
    double low = chart.getStyler().getXAxisMin();
    double high = chart.getStyler().getXAxisMax();
    double[] x = {low, low + 0.3 * (high - low), high};
    XYSeries zero = chart.addSeries("zero", x, new double[3]);
    zero.setShowInLegend(false);
    zero.setMarker(SeriesMarkers.NONE);
    zero.setLineColor(Color.decode(style.quiet()));
    zero.setLineStyle(new BasicStroke(1));
  }

  private static void series(XYChart chart, Sweep sweep, JointId joint, FigureStyle.Accent accent) {
    double[] x = sweep.rows().stream().mapToDouble(SweepRow::value).toArray();
    // XChart breaks its line where a value is NaN; no other value of ours is ever NaN.
    double[] y =
        sweep.rows().stream().mapToDouble(r -> r.held() ? r.moment(joint) : Double.NaN).toArray();
    accented(chart.addSeries(JointNames.of(joint), x, y), accent);
  }

  static void accented(XYSeries series, FigureStyle.Accent accent) {
    Color colour = Color.decode(accent.colour());
    series.setLineColor(colour);
    series.setMarkerColor(colour);
    series.setMarker(MARKERS.get(accent.marker()));
    series.setLineStyle(stroke(accent));
  }

  private static BasicStroke stroke(FigureStyle.Accent accent) {
    if (accent.dash().isEmpty()) {
      return new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] dash = new float[accent.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = accent.dash().get(i).floatValue();
    }
    return new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
  }

  static void styled(AxesChartStyler styler, FigureStyle style) {
    Color paper = Color.decode(style.paper());
    Color ink = Color.decode(style.ink());
    Font plain = Fonts.plain(style.caption());
    styler.setLocale(Locale.ROOT);
    styler.setChartBackgroundColor(paper).setChartFontColor(ink);
    styler.setChartTitleBoxVisible(false);
    styler.setChartTitlePadding(12);
    styler.setChartTitleFont(Fonts.bold(style.title()));
    styler.setLegendFont(plain.deriveFont((float) style.label()));
    styler.setLegendPosition(Styler.LegendPosition.OutsideE);
    styler.setLegendBorderColor(paper).setLegendBackgroundColor(paper);
    styler.setLegendSeriesLineLength(42);
    styler.setPlotBackgroundColor(paper).setPlotBorderColor(Color.decode(style.quiet()));
    styler.setPlotGridLinesColor(Color.decode(style.flesh()));
    styler.setPlotGridLinesStroke(new BasicStroke(1));
    styler.setXAxisTickMarkSpacingHint(70);
    styler.setAxisTitleFont(plain.deriveFont((float) style.label()));
    styler.setAxisTickLabelsFont(plain);
    styler.setXAxisTickLabelsFormattingFunction(Plots::tick);
    styler.setYAxisTickLabelsFormattingFunction(Plots::tick);
  }

  /** A tick's value without a tail of rounding. */
  static String tick(double value) {
    return SvgWriter.number(value).replace('-', '−');
  }
}
