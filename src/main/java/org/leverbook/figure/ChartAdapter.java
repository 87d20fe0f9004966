package org.leverbook.figure;

import java.util.Optional;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.leverbook.display.Shown;
import org.leverbook.display.ShownAdapter;

/** Shows a restyled chart as a picture. */
public final class ChartAdapter implements ShownAdapter {

  @Override
  public Optional<Shown> show(Object value) {
    return value instanceof AxesChart<?, ?> chart
        ? Optional.of(Plots.picture(chart))
        : Optional.empty();
  }
}
