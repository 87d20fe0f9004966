package org.leverbook.figure;

import java.awt.Color;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.knowm.xchart.HeatMapChart;
import org.knowm.xchart.HeatMapChartBuilder;
import org.knowm.xchart.HeatMapSeries;
import org.knowm.xchart.style.HeatMapStyler;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Picture;
import org.leverbook.load.Load;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.study.Cell;
import org.leverbook.study.Grid;
import org.leverbook.study.Span;
import org.leverbook.support.Support;

/** The moments of a grid at one joint as a map in colours. */
final class HeatMaps {

  private static final int WIDTH = 900;
  private static final int HEIGHT = 560;

  /** Numbers fit into the cells of a map no finer than this. */
  private static final int MOST_NUMBERED_ACROSS = 14;

  private static final int MOST_NUMBERED_UP = 20;
  private static final int MOST_LABELS = 14;

  /** The same where several maps share a page. */
  private static final int MOST_IN_SMALL = 6;

  /** Too small to be written in whole numbers, N·m. */
  private static final double NEARLY_NOTHING = 0.5;

  private static final String WHOLE_NUMBERS = "0;−0";

  private HeatMaps() {}

  static Picture picture(Grid<?, ?> grid, JointId joint, FigureStyle style) {
    HeatMapChart chart = chart(grid, joint, style);
    Cell first = grid.cells().stream().filter(Cell::held).findFirst().orElseThrow();
    List<String> notes = notes(grid.at(first), grid.pair(first), grid.reasons(), joint);
    return new ChartPicture(chart, notes, style);
  }

  static HeatMapChart chart(Grid<?, ?> grid, JointId joint, FigureStyle style) {
    double[] moments =
        grid.cells().stream()
            .filter(Cell::held)
            .mapToDouble(c -> shown(c, joint))
            .sorted()
            .toArray();
    if (moments.length == 0) {
      throw new Refused(
          "There is nothing to plot: none of the "
              + grid.cells().size()
              + " positions could be held."
              + (grid.cells().isEmpty() ? "" : " The first says: " + grid.cells().get(0).reason()));
    }
    boolean numbered =
        grid.second().values() <= MOST_NUMBERED_ACROSS && grid.first().values() <= MOST_NUMBERED_UP;
    Bands bands = Bands.over(moments[0], moments[moments.length - 1], numbered, style);
    String title = "Moment (N·m): " + JointNames.of(joint) + "; positive: the resistance flexes";
    HeatMapChartBuilder page = new HeatMapChartBuilder().width(WIDTH).height(HEIGHT).title(title);
    HeatMapChart[] made = new HeatMapChart[1];
    Fonts.needed(() -> made[0] = map(page, grid, joint, bands, numbered, style));
    return made[0];
  }

  /**
   * One of several maps of one scale.
   *
   * @param page its size and title
   * @param withScale whether the scale of colours stands beside it
   */
  static HeatMapChart small(
      HeatMapChartBuilder page,
      Grid<?, ?> grid,
      JointId joint,
      Bands bands,
      boolean withScale,
      FigureStyle style) {
    boolean numbered =
        grid.second().values() <= MOST_IN_SMALL && grid.first().values() <= MOST_IN_SMALL;
    HeatMapChart[] made = new HeatMapChart[1];
    Fonts.needed(
        () -> {
          made[0] = map(page, grid, joint, bands, numbered, style);
          HeatMapStyler styler = made[0].getStyler();
          styler.setLegendVisible(withScale);
          styler.setXAxisMaxLabelCount(MOST_IN_SMALL);
          styler.setChartTitleFont(Fonts.bold(styler.getAxisTitleFont().getSize2D()));
        });
    return made[0];
  }

  private static HeatMapChart map(
      HeatMapChartBuilder page,
      Grid<?, ?> grid,
      JointId joint,
      Bands bands,
      boolean numbered,
      FigureStyle style) {
    HeatMapChart chart =
        page.xAxisTitle(grid.second().heading()).yAxisTitle(grid.first().heading()).build();
    styled(chart.getStyler(), style, bands, numbered);
    HeatMapSeries series =
        chart.addSeries(
            JointNames.of(joint), labels(grid.second()), labels(grid.first()), cells(grid, joint));
    series.setMin(bands.low()).setMax(bands.high());
    return chart;
  }

  /** What is nearly nothing is nothing: rounding alone must not change colours. */
  static double shown(Cell cell, JointId joint) {
    double moment = cell.moment(joint);
    return Math.abs(moment) < NEARLY_NOTHING ? 0 : moment;
  }

  /** The value of every column or row; of many, only so many that they do not run together. */
  private static List<String> labels(Span<?> span) {
    return IntStream.range(0, span.values()).mapToObj(i -> label(span, i)).toList();
  }

  private static String label(Span<?> span, int index) {
    double power = Math.pow(10, span.decimals());
    return Plots.tick(Math.round(power * span.value(index)) / power);
  }

  private static List<Number[]> cells(Grid<?, ?> grid, JointId joint) {
    List<Number[]> cells = new ArrayList<>();
    int width = grid.second().values();
    for (int i = 0; i < grid.cells().size(); i++) {
      Cell cell = grid.cells().get(i);
      if (cell.held()) {
        cells.add(new Number[] {i % width, i / width, shown(cell, joint)});
      }
    }
    return cells;
  }

  private static void styled(
      HeatMapStyler styler, FigureStyle style, Bands bands, boolean numbered) {
    Plots.styled(styler, style);
    styler.setPlotContentSize(1);
    styler.setXAxisMaxLabelCount(MOST_LABELS);
    styler.setXAxisTickLabelsFormattingFunction(null);
    styler.setYAxisTickLabelsFormattingFunction(null);
    styler.setPiecewise(true).setPiecewiseRanged(true).setSplitNumber(bands.colours().size());
    styler.setRangeColors(bands.colours().toArray(new Color[0]));
    styler.setHeatMapDecimalValueFormatter(HeatMaps::bound);
    styler.setHeatMapValueDecimalPattern(WHOLE_NUMBERS);
    // Without borders thin gaps shine between the fields; numbers profit from them.
    styler.setDrawBorder(!numbered);
    styler.setShowValue(numbered);
    styler.setValueFont(Fonts.plain(style.caption() - 1));
    styler.setValueFontColor(Color.decode(style.ink()));
  }

  private static String bound(double value) {
    return Plots.tick(Math.round(1e6 * value) / 1e6);
  }

  /** Every text such a chart can paint besides titles and what its formatters are asked. */
  static Set<String> texts(HeatMapChart map) {
    Set<String> texts = new TreeSet<>();
    HeatMapSeries series = map.getHeatMapSeries();
    series.getXData().forEach(label -> texts.add(String.valueOf(label)));
    series.getYData().forEach(label -> texts.add(String.valueOf(label)));
    int bands = map.getStyler().getSplitNumber();
    double step = (series.getMax() - series.getMin()) / bands;
    for (int i = 0; i < bands; i++) {
      double from = series.getMin() + i * step;
      double to = i == bands - 1 ? series.getMax() : series.getMin() + (i + 1) * step;
      texts.add(bound(from) + " ~ " + bound(to));
    }
    DecimalFormat whole =
        new DecimalFormat(WHOLE_NUMBERS, DecimalFormatSymbols.getInstance(Locale.ROOT));
    for (Number[] cell : series.getHeatData()) {
      texts.add(whole.format(cell[2].doubleValue()));
    }
    return texts;
  }

  /** What stands below: an example of the grid, what is missing, the caution. */
  static List<String> notes(Position position, String at, List<String> reasons, JointId joint) {
    List<String> notes = new ArrayList<>();
    String things =
        Stream.concat(
                position.loads().stream().filter(l -> l.mass() > 0).map(Load::description),
                position.supports().stream().map(Support::source).filter(n -> !n.equals("floor")))
            .collect(Collectors.joining(", "));
    notes.add(
        Caption.capital(position.name())
            + ". At "
            + at
            + ": "
            + position.body().person().text()
            + (things.isEmpty() ? "; nothing held." : "; " + things + "."));
    if (joint.paired()) {
      notes.add("The moment is of one side, the one where it is greater.");
    }
    if (!reasons.isEmpty()) {
      notes.add("Empty fields have no position.");
      notes.addAll(reasons);
    }
    notes.add(Caution.TEXT);
    return notes;
  }
}
