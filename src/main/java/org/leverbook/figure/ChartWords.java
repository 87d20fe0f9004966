package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategorySeries;
import org.knowm.xchart.HeatMapChart;
import org.knowm.xchart.HeatMapSeries;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.internal.chartpart.AxesChart;

/** Charts told in words and numbers, for readers who listen. */
final class ChartWords {

  /** Above this a list of bars is told by its ends. */
  private static final int FEW = 12;

  private ChartWords() {}

  static String of(ChartPicture picture) {
    List<String> sentences = new ArrayList<>();
    for (AxesChart<?, ?> chart : picture.charts()) {
      if (picture.charts().size() > 1 && chart.getTitle() != null && !chart.getTitle().isBlank()) {
        sentences.add(chart.getTitle() + ".");
      }
      sentences.add(chart.getYAxisTitle() + " against " + chart.getXAxisTitle() + ".");
      if (chart instanceof XYChart lines) {
        lines.getSeriesCollection().stream()
            .filter(XYSeries::isShowInLegend)
            .forEach(s -> line(s).ifPresent(sentences::add));
      } else if (chart instanceof CategoryChart bars) {
        bars.getSeriesCollection().forEach(s -> bars(s).ifPresent(sentences::add));
      } else if (chart instanceof HeatMapChart map) {
        map(map).ifPresent(sentences::add);
      }
    }
    sentences.addAll(picture.notes());
    return String.join(" ", sentences);
  }

  /** Where a line begins and ends, and its lowest and highest place. */
  private static Optional<String> line(XYSeries series) {
    double[] x = series.getXData();
    double[] y = series.getYData();
    int first = -1;
    int last = -1;
    int low = -1;
    int high = -1;
    for (int i = 0; i < y.length; i++) {
      if (Double.isFinite(y[i])) {
        first = first < 0 ? i : first;
        last = i;
        low = low < 0 || y[i] < y[low] ? i : low;
        high = high < 0 || y[i] > y[high] ? i : high;
      }
    }
    if (first < 0) {
      return Optional.empty();
    }
    if (first == last) {
      return Optional.of(series.getLabel() + ": " + at(x[first], y[first]) + ".");
    }
    StringBuilder told = new StringBuilder(series.getLabel());
    told.append(": from ").append(at(x[first], y[first]));
    told.append(" to ").append(at(x[last], y[last]));
    if (high != first && high != last) {
      told.append(", highest ").append(at(x[high], y[high]));
    }
    if (low != first && low != last) {
      told.append(", lowest ").append(at(x[low], y[low]));
    }
    return Optional.of(told.append('.').toString());
  }

  private static String at(double x, double y) {
    return number(y) + " at " + number(x);
  }

  private static Optional<String> bars(CategorySeries series) {
    List<String> told = new ArrayList<>();
    List<?> names = List.copyOf(series.getXData());
    double[] values = series.getYData();
    for (int i = 0; i < Math.min(values.length, names.size()); i++) {
      if (Double.isFinite(values[i])) {
        told.add(names.get(i) + " " + number(values[i]));
      }
    }
    if (told.isEmpty()) {
      return Optional.empty();
    }
    String list =
        told.size() <= FEW
            ? String.join(", ", told)
            : told.get(0) + " to " + told.get(told.size() - 1) + ", " + told.size() + " bars";
    return Optional.of(series.getLabel() + ": " + list + ".");
  }

  private static Optional<String> map(HeatMapChart map) {
    HeatMapSeries series = map.getHeatMapSeries();
    Number[] low = null;
    Number[] high = null;
    for (Number[] field : series.getHeatData()) {
      if (field[2] == null || !Double.isFinite(field[2].doubleValue())) {
        continue;
      }
      low = low == null || field[2].doubleValue() < low[2].doubleValue() ? field : low;
      high = high == null || field[2].doubleValue() > high[2].doubleValue() ? field : high;
    }
    if (low == null) {
      return Optional.empty();
    }
    return Optional.of("Lowest " + field(series, low) + ", highest " + field(series, high) + ".");
  }

  private static String field(HeatMapSeries series, Number[] field) {
    return number(field[2].doubleValue())
        + " at "
        + series.getXData().get(field[0].intValue())
        + " and "
        + series.getYData().get(field[1].intValue());
  }

  private static String number(double value) {
    int digits = Math.abs(value) < 1 ? 3 : Math.abs(value) < 100 ? 1 : 0;
    String text = String.format(Locale.ROOT, "%." + digits + "f", value);
    String plain = SvgWriter.number(Double.parseDouble(text));
    return plain.replace('-', '−');
  }
}
