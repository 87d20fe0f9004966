package org.leverbook.figure;

import java.util.List;
import java.util.function.Function;
import org.knowm.xchart.HorizontalBarChart;
import org.leverbook.display.Look;

/** A plot of level bars, one above the other. */
public final class RowPlot extends Plot<HorizontalBarChart> {

  RowPlot(Content<HorizontalBarChart> content, FigureStyle style) {
    super(content, style);
  }

  static RowPlot of(
      Function<FigureStyle, HorizontalBarChart> chart,
      List<String> notes,
      FigureStyle style,
      Object... subjects) {
    return new RowPlot(Content.of(chart, notes, subjects), style);
  }

  @Override
  public RowPlot styled(Look look) {
    return new RowPlot(content(), asked(look));
  }
}
