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
public final class Plot<C extends AxesChart<?, ?>> implements Picture {

  private final String title;
  private final List<C> charts;
  private final List<String> notes;
  private final FigureStyle style;
  private final Function<FigureStyle, Plot<C>> again;

  private Plot(
      String title,
      List<C> charts,
      List<String> notes,
      FigureStyle style,
      Function<FigureStyle, Plot<C>> again) {
    this.title = title;
    this.charts = List.copyOf(charts);
    this.notes = List.copyOf(notes);
    this.style = style;
    this.again = again;
  }

  /** One chart with sentences below. */
  static <C extends AxesChart<?, ?>> Plot<C> of(
      Function<FigureStyle, C> chart, List<String> notes, FigureStyle style) {
    return of("", s -> List.of(chart.apply(s)), notes, style);
  }

  /** Charts side by side with a title and sentences below. */
  static <C extends AxesChart<?, ?>> Plot<C> of(
      String title, Function<FigureStyle, List<C>> charts, List<String> notes, FigureStyle style) {
    return new Plot<>(
        title, charts.apply(style), notes, style, other -> of(title, charts, notes, other));
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
    return notes;
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
    return new ChartPicture(title, all, all.size(), notes, style);
  }

  /**
   * The plot made anew in another style; what was changed in its chart is not taken along.
   *
   * @param look a style
   * @return the plot
   * @throws Refused if it is no style
   */
  @Override
  public Plot<C> styled(Look look) {
    if (look instanceof FigureStyle other) {
      return again.apply(other);
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
  public String text() {
    return page().text();
  }

  @Override
  public String toString() {
    return text();
  }
}
