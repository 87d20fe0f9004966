package org.leverbook.figure;

import java.util.List;
import java.util.function.Function;
import org.knowm.xchart.CategoryChart;
import org.leverbook.display.Look;

/** A plot of upright bars, one for each name. */
public final class ColumnPlot extends Plot<CategoryChart> {

  ColumnPlot(Content<CategoryChart> content, FigureStyle style) {
    super(content, style);
  }

  static ColumnPlot of(
      Function<FigureStyle, CategoryChart> chart,
      List<String> notes,
      FigureStyle style,
      Object... subjects) {
    return new ColumnPlot(Content.of(chart, notes, subjects), style);
  }

  @Override
  public ColumnPlot styled(Look look) {
    return new ColumnPlot(content(), asked(look));
  }
}
