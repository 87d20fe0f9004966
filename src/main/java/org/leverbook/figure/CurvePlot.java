package org.leverbook.figure;

import java.util.List;
import java.util.function.Function;
import org.knowm.xchart.XYChart;
import org.leverbook.display.Look;

/** A plot of curves and areas over numbers. */
public final class CurvePlot extends Plot<XYChart> {

  CurvePlot(Content<XYChart> content, FigureStyle style) {
    super(content, style);
  }

  static CurvePlot of(
      Function<FigureStyle, XYChart> chart,
      List<String> notes,
      FigureStyle style,
      Object... subjects) {
    return new CurvePlot(Content.of(chart, notes, subjects), style);
  }

  @Override
  public CurvePlot styled(Look look) {
    return new CurvePlot(content(), asked(look));
  }
}
