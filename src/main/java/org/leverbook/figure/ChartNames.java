package org.leverbook.figure;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.internal.series.Series;
import org.knowm.xchart.style.AxesChartStyler;

/**
 * Keeps long names inside the picture: while a chart is painted, titles and names that would run
 * out of it are shortened, and given back after. The description tells them whole.
 */
final class ChartNames {

  /** The title stands above the middle of the plot, which a legend pushes to the left. */
  private static final double TITLE = 0.775;

  private static final double UPRIGHT = 0.72;

  private static final double LEGEND = 0.3;

  private static final Pattern UNIT = Pattern.compile(" \\([^()]{1,12}\\)$");

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  private ChartNames() {}

  static void during(AxesChart<?, ?> chart, Runnable painting) {
    List<Runnable> back = new ArrayList<>();
    try {
      shorten(chart, back);
      painting.run();
    } finally {
      back.forEach(Runnable::run);
    }
  }

  private static void shorten(AxesChart<?, ?> chart, List<Runnable> back) {
    AxesChartStyler styler = chart.getStyler();
    double width = chart.getWidth();
    String title = chart.getTitle();
    if (title != null) {
      chart.setTitle(shortened(title, styler.getChartTitleFont(), TITLE * width));
      back.add(() -> chart.setTitle(title));
    }
    String across = chart.getXAxisTitle();
    if (across != null) {
      chart.setXAxisTitle(shortened(across, styler.getAxisTitleFont(), TITLE * width));
      back.add(() -> chart.setXAxisTitle(across));
    }
    String upright = chart.getYAxisTitle();
    if (upright != null) {
      double room = UPRIGHT * chart.getHeight();
      chart.setYAxisTitle(shortened(upright, styler.getAxisTitleFont(), room));
      back.add(() -> chart.setYAxisTitle(upright));
    }
    for (Series series : chart.getSeriesCollection()) {
      String label = series.getLabel();
      if (label != null) {
        series.setLabel(shortened(label, styler.getLegendFont(), LEGEND * width));
        back.add(() -> series.setLabel(label));
      }
    }
  }

  /** A text that fits, measured in its font; a unit at its end stays. */
  static String shortened(String text, Font font, double room) {
    if (width(text, font) <= room) {
      return text;
    }
    Matcher unit = UNIT.matcher(text);
    String end = "…" + (unit.find() ? unit.group() : "");
    int low = 0;
    int high = text.length() - end.length() + 1;
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (width(text.substring(0, middle) + end, font) <= room) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    boolean split = low > 0 && Character.isHighSurrogate(text.charAt(low - 1));
    return text.substring(0, split ? low - 1 : low).stripTrailing() + end;
  }

  private static double width(String text, Font font) {
    return text.isBlank() ? 0 : new TextLayout(text, font, EXACT).getAdvance();
  }
}
