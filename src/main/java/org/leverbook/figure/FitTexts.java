package org.leverbook.figure;

import java.awt.Font;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler;

/**
 * Sets titles smaller where they would leave the picture: XChart centres them over the plot and
 * cuts what stands out.
 */
final class FitTexts {

  /** Beside the plot at its left: axis, its numbers and its title, in letters' sizes. */
  private static final double LEFT = 5;

  /** What stays free at the page's edge. */
  private static final double EDGE = 14;

  /** What a legend takes besides its lines and words. */
  private static final double LEGEND = 50;

  /** Above and below the plot, page units and letters' sizes. */
  private static final double ABOVE = 30;

  private static final double BELOW = 5;

  /** No title becomes smaller than this share of its size: what is longer still is shortened. */
  private static final double LEAST = 2.0 / 3;

  private FitTexts() {}

  static void in(AxesChart<?, ?> chart, FigureStyle style) {
    AxesChartStyler styler = chart.getStyler();
    double left = LEFT * style.caption();
    double right = legend(chart, styler);
    double middle = (left + chart.getWidth() - right) / 2;
    double room = 2 * (Math.min(middle, chart.getWidth() - middle) - EDGE);
    Font title = styler.getChartTitleFont();
    styler.setChartTitleFont(smaller(title, chart.getTitle(), room));
    double across = chart.getWidth() - left - right;
    double up = chart.getHeight() - ABOVE - style.title() - BELOW * style.caption();
    Font axis = smaller(styler.getAxisTitleFont(), chart.getXAxisTitle(), across);
    styler.setAxisTitleFont(smaller(axis, chart.getYAxisTitle(), up));
  }

  private static double legend(AxesChart<?, ?> chart, AxesChartStyler styler) {
    if (!styler.isLegendVisible() || styler.getLegendPosition() != Styler.LegendPosition.OutsideE) {
      return 0;
    }
    double size = styler.getLegendFont().getSize2D();
    double widest =
        chart.getSeriesCollection().stream()
            .filter(s -> s.isShowInLegend())
            .mapToDouble(s -> TextWidths.of(s.getLabel(), size, false))
            .max()
            .orElse(0);
    return widest + styler.getLegendSeriesLineLength() + LEGEND;
  }

  private static Font smaller(Font font, String text, double room) {
    if (text == null || text.isBlank()) {
      return font;
    }
    double needed = TextWidths.of(text, font.getSize2D(), font.isBold());
    return needed <= room
        ? font
        : font.deriveFont((float) (font.getSize2D() * Math.max(LEAST, room / needed)));
  }
}
