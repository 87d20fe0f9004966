package org.leverbook.figure;

import java.util.List;
import java.util.function.Function;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.leverbook.display.Look;
import org.leverbook.display.Picture;
import org.leverbook.quantity.Refused;

/**
 * A plot: a picture, and the XChart chart that it is painted from.
 *
 * <p>{@code var arms = plotArms(byHip, HIP); arms.chart().setTitle("Lesson 3"); arms.save("arms")}
 * shows the changed chart.
 *
 * @param <C> the kind of chart
 */
public abstract sealed class Plot<C extends AxesChart<?, ?>> implements Picture
    permits CurvePlot, ColumnPlot, RowPlot {

  private final Content<C> content;
  private final List<C> charts;
  private final FigureStyle style;

  /**
   * What a plot is made of, in any style.
   *
   * @param title above several charts; empty where one has its own
   * @param charts from a style to the charts, from left to right
   * @param notes sentences below
   * @param subjects what it shows
   */
  record Content<C>(
      String title,
      Function<FigureStyle, List<C>> charts,
      List<String> notes,
      List<Object> subjects) {

    Content {
      notes = List.copyOf(notes);
      subjects = List.copyOf(subjects);
    }

    /** One chart with sentences below. */
    static <C> Content<C> of(
        Function<FigureStyle, C> chart, List<String> notes, Object... subjects) {
      return new Content<>("", style -> List.of(chart.apply(style)), notes, List.of(subjects));
    }
  }

  Plot(Content<C> content, FigureStyle style) {
    this.content = content;
    this.charts = List.copyOf(content.charts().apply(style));
    this.style = style;
  }

  /**
   * The chart, to be styled further.
   *
   * @return XChart's own object, the first where there are several; what is changed in it shows in
   *     the picture
   */
  public C chart() {
    return charts.get(0);
  }

  /**
   * Every chart of the plot.
   *
   * @return from left to right
   */
  public List<C> charts() {
    return charts;
  }

  /**
   * The sentences below.
   *
   * @return what was lifted, what is missing, the caution
   */
  public List<String> notes() {
    return content.notes();
  }

  /**
   * The plot as a picture, as the chart is now.
   *
   * @return the picture
   */
  public Picture picture() {
    return page();
  }

  private ChartPicture page() {
    List<AxesChart<?, ?>> all = List.copyOf(charts);
    return new ChartPicture(content.title(), all, all.size(), content.notes(), style);
  }

  /**
   * The plot made anew in another style; what was changed in its chart is not taken along.
   *
   * @param look a style
   * @return the plot
   * @throws Refused if it is no style
   */
  @Override
  public abstract Plot<C> styled(Look look);

  @Override
  public List<Object> subjects() {
    return content.subjects();
  }

  Content<C> content() {
    return content;
  }

  static FigureStyle asked(Look look) {
    if (look instanceof FigureStyle other) {
      return other;
    }
    throw new Refused("A plot's look is a style such as slide(), article().withLetters(1.2).");
  }

  @Override
  public String svgDocument() {
    return page().svgDocument();
  }

  @Override
  public byte[] pngFile() {
    return page().pngFile();
  }

  @Override
  public byte[] pngFile(int pixels) {
    return page().pngFile(pixels);
  }

  @Override
  public byte[] pdfFile() {
    return page().pdfFile();
  }

  @Override
  public Picture lettersInside() {
    return page().lettersInside();
  }

  @Override
  public String description() {
    return page().description();
  }

  @Override
  public String text() {
    return page().text();
  }

  @Override
  public String toString() {
    return text();
  }
}
