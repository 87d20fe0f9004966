package org.leverbook.figure;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;
import java.util.Locale;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.HeatMapChart;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.leverbook.body.JointId;
import org.leverbook.display.Picture;
import org.leverbook.quantity.Refused;
import org.leverbook.study.Grid;
import org.leverbook.study.Sweep;

/**
 * The moments of a sweep or a grid as an XChart chart, for those who want to restyle it.
 *
 * <p>{@code var chart = Plots.chart(byHip, HIP, KNEE); chart.setTitle("Lesson 3");
 * Plots.picture(chart).save("lesson-3");}
 */
public final class Plots {

  /** The side of an area's box in a legend. */
  private static final int BOX = 20;

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
    return chart(sweep, joints.length == 0 ? usual() : List.of(joints), FigureStyle.current());
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
    return HeatMaps.chart(grid, joint, FigureStyle.current());
  }

  /**
   * A chart as a picture.
   *
   * @param chart any XChart chart with two axes
   * @param notes sentences to stand below it
   * @return the picture
   */
  public static Picture picture(AxesChart<?, ?> chart, String... notes) {
    return new ChartPicture(chart, List.of(notes), FigureStyle.current());
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
    return Bars.chart(sweep, joints.length == 0 ? usual() : List.of(joints), FigureStyle.current());
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
          "A sweep over named things has no curve: .plot(HIP) draws its moments as bars.");
    }
    return SweepCurves.chart(sweep, joints, Measure.MOMENT, style);
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
    zero.setLineStyle(new BasicStroke((float) style.line()));
  }

  /** About so large marks are on the page of an article. */
  static int marks(FigureStyle style) {
    return (int) Math.round(7 * style.line());
  }

  /**
   * Lines as long as boxes in a legend of areas and lines: XChart reckons its width with the areas'
   * boxes alone, and cuts what is longer.
   */
  static void mixedLegend(XYChart chart) {
    AxesChartStyler styler = chart.getStyler();
    styler.setLegendSeriesLineLength(BOX);
  }

  /** Hidden, of uneven places, so that XChart chooses round tick marks. */
  static void places(XYChart chart) {
    double low = chart.getStyler().getXAxisMin();
    double high = chart.getStyler().getXAxisMax();
    double level = chart.getStyler().getYAxisMin();
    double[] x = {low, low + 0.3 * (high - low), high};
    XYSeries places = chart.addSeries("places", x, new double[] {level, level, level});
    places.setShowInLegend(false);
    places.setMarker(SeriesMarkers.NONE);
    places.setLineStyle(SeriesLines.NONE);
  }

  static void accented(XYSeries series, FigureStyle.Accent accent, FigureStyle style) {
    Color colour = Color.decode(accent.colour());
    series.setLineColor(colour);
    series.setMarkerColor(colour);
    series.setMarker(MARKERS.get(accent.marker()));
    series.setLineStyle(stroke(accent, style));
  }

  static BasicStroke stroke(FigureStyle.Accent accent, FigureStyle style) {
    float width = (float) (2 * style.line());
    if (accent.dash().isEmpty()) {
      return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }
    float[] dash = new float[accent.dash().size()];
    for (int i = 0; i < dash.length; i++) {
      dash[i] = (float) (style.line() * accent.dash().get(i));
    }
    return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0);
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
    styler.setLegendSeriesLineLength((int) (42 * style.line()));
    styler.setPlotBackgroundColor(paper).setPlotBorderColor(Color.decode(style.quiet()));
    styler.setPlotGridLinesColor(Color.decode(style.flesh()));
    styler.setPlotGridLinesStroke(new BasicStroke(1));
    styler.setXAxisTickMarkSpacingHint((int) (70 * style.caption() / 12));
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
