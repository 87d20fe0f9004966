package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.knowm.xchart.internal.series.Series;
import org.knowm.xchart.style.AxesChartStyler;

/**
 * Keeps long names inside the picture: while a chart is painted, titles and names that would run
 * out of it are shortened, and given back after. The description tells them whole.
 */
final class ChartNames {

  /** The title stands above the middle of the plot, which a legend pushes to the left. */
  private static final double TITLE = 0.78;

  private static final double UPRIGHT = 0.72;

  private static final double LEGEND = 0.3;

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
      double size = styler.getChartTitleFont().getSize2D();
      chart.setTitle(TextWidths.shortened(title, size, true, TITLE * width));
      back.add(() -> chart.setTitle(title));
    }
    double size = styler.getAxisTitleFont().getSize2D();
    String across = chart.getXAxisTitle();
    if (across != null) {
      chart.setXAxisTitle(TextWidths.shortened(across, size, false, TITLE * width));
      back.add(() -> chart.setXAxisTitle(across));
    }
    String upright = chart.getYAxisTitle();
    if (upright != null) {
      double room = UPRIGHT * chart.getHeight();
      chart.setYAxisTitle(TextWidths.shortened(upright, size, false, room));
      back.add(() -> chart.setYAxisTitle(upright));
    }
    double legend = styler.getLegendFont().getSize2D();
    for (Series series : chart.getSeriesCollection()) {
      String label = series.getLabel();
      if (label != null) {
        series.setLabel(TextWidths.shortened(label, legend, false, LEGEND * width));
        back.add(() -> series.setLabel(label));
      }
    }
  }
}
