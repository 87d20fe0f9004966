package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.knowm.xchart.HeatMapChart;
import org.knowm.xchart.HeatMapChartBuilder;
import org.knowm.xchart.internal.chartpart.AxesChart;
import org.leverbook.body.JointId;
import org.leverbook.display.Picture;
import org.leverbook.quantity.Refused;
import org.leverbook.study.Cell;
import org.leverbook.study.GridOfThree;

/** A grid of three quantities as small maps side by side, all in one scale of colours. */
final class MapRows {

  private static final int MOST_MAPS = 9;
  private static final int ACROSS = 3;
  private static final int WIDTH = 300;
  private static final int HEIGHT = 270;

  /** What the scale of colours takes beside the last map. */
  private static final int LEGEND = 150;

  private MapRows() {}

  static Picture picture(GridOfThree<?, ?, ?> grid, JointId joint, FigureStyle style) {
    double[] moments =
        grid.cells().stream()
            .filter(Cell::held)
            .mapToDouble(cell -> HeatMaps.shown(cell, joint))
            .sorted()
            .toArray();
    if (moments.length == 0) {
      throw new Refused(
          "There is nothing to plot: none of the "
              + grid.cells().size()
              + " positions could be held."
              + (grid.cells().isEmpty() ? "" : " The first says: " + grid.cells().get(0).reason()));
    }
    Bands bands = Bands.over(moments[0], moments[moments.length - 1], true, style);
    List<Integer> shown = shown(held(grid));
    List<AxesChart<?, ?>> maps = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      maps.add(map(grid, shown.get(i), joint, bands, i == shown.size() - 1, style));
    }
    String title =
        String.format(
            Locale.ROOT, "Moment (N·m): %s; positive: the resistance flexes", JointNames.of(joint));
    return new ChartPicture(title, maps, Math.min(ACROSS, maps.size()), notes(grid, joint), style);
  }

  /** Values of the first quantity at which something could be held. */
  private static List<Integer> held(GridOfThree<?, ?, ?> grid) {
    return IntStream.range(0, grid.first().values())
        .filter(i -> grid.slice(i).held() > 0)
        .boxed()
        .toList();
  }

  /** All of those, or so many evenly chosen. */
  private static List<Integer> shown(List<Integer> held) {
    int maps = Math.min(held.size(), MOST_MAPS);
    return IntStream.range(0, maps)
        .mapToObj(i -> held.get(maps == 1 ? 0 : Math.round(i * (held.size() - 1f) / (maps - 1))))
        .toList();
  }

  private static HeatMapChart map(
      GridOfThree<?, ?, ?> grid,
      int index,
      JointId joint,
      Bands bands,
      boolean last,
      FigureStyle style) {
    HeatMapChartBuilder page =
        new HeatMapChartBuilder()
            .width(last ? WIDTH + LEGEND : WIDTH)
            .height(HEIGHT)
            .title(grid.first().name() + " " + grid.first().text(grid.first().value(index)));
    return HeatMaps.small(page, grid.slice(index), joint, bands, last, style);
  }

  private static List<String> notes(GridOfThree<?, ?, ?> grid, JointId joint) {
    List<String> notes = new ArrayList<>();
    List<Integer> held = held(grid);
    if (held.size() > MOST_MAPS) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%d of %d values of %s are drawn.",
              MOST_MAPS,
              held.size(),
              grid.first().name()));
    }
    if (held.size() < grid.first().values()) {
      notes.add(
          IntStream.range(0, grid.first().values())
              .filter(i -> !held.contains(i))
              .mapToObj(i -> grid.first().text(grid.first().value(i)))
              .collect(
                  Collectors.joining(
                      ", ",
                      "No map where nothing could be held: " + grid.first().name() + " ",
                      ".")));
    }
    Cell first = grid.cells().stream().filter(Cell::held).findFirst().orElseThrow();
    notes.addAll(HeatMaps.notes(grid.at(first), grid.words(first), grid.reasons(), joint));
    return notes;
  }
}
