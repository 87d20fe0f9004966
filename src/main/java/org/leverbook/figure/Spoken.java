package org.leverbook.figure;

import org.knowm.xchart.internal.chartpart.AxesChart;

/** Puts what a chart says into the words of its style. */
final class Spoken {

  private Spoken() {}

  static void in(AxesChart<?, ?> chart, FigureStyle style) {
    chart.setTitle(style.say(chart.getTitle()));
    chart.setXAxisTitle(style.say(chart.getXAxisTitle()));
    chart.setYAxisTitle(style.say(chart.getYAxisTitle()));
    chart.getSeriesCollection().forEach(s -> s.setLabel(style.say(s.getLabel())));
  }
}
