package org.leverbook.marks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.leverbook.body.Side;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.ReadTrouble;
import org.leverbook.display.InputFile;
import org.leverbook.quantity.Refused;

/**
 * Reads a table of landmarks.
 *
 * <p>The layout: a header line {@code time (s),landmark,x (cm),y (cm)} and, for places in space,
 * {@code z (cm)}; one row for each landmark in each frame, in any order; lines that begin with #
 * are comments. x runs to the picture's right (forward for a lifter who faces right), y up, z
 * towards the viewer; the unit of lengths stands in the headings: mm, cm, m, or pixels, whose y
 * runs down. An empty cell, or NaN, marks a gap, as does a row that is missing.
 */
final class TrackTable {

  /** Frames may be early or late by this share of a step. */
  private static final double JITTER = 0.2;

  private static final Map<String, Double> UNITS = Map.of("mm", 0.001, "cm", 0.01, "m", 1.0);

  private final DataTable table;
  private final Map<String, String> columns;
  private final Map<String, String> names;
  private final Optional<Double> metresPerPixel;
  private final Optional<UpAxis> told;
  private Track.Clock clock;

  private TrackTable(
      DataTable table,
      Map<String, String> columns,
      Map<String, String> names,
      Optional<Double> metresPerPixel,
      Optional<UpAxis> told) {
    this.table = table;
    this.columns = columns;
    this.names = names;
    this.metresPerPixel = metresPerPixel;
    this.told = told;
  }

  static DataTable read(String file) {
    try {
      Path path = InputFile.find("table", file);
      return DataTable.parse(file, Files.readString(path, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new Refused(
          "The table \"" + file + "\" could not be read: " + ReadTrouble.of(e) + ".", e);
    }
  }

  /**
   * A table with its mappings.
   *
   * @param columns from time, landmark, x, y, z to the file's headings, where they differ
   * @param names from the file's names of landmarks to ours, where they differ
   * @param metresPerPixel for a table in pixels
   * @param told which axis points up; of pixels -y unless told, of lengths y
   */
  static TrackTable of(
      DataTable table,
      Map<String, String> columns,
      Map<String, String> names,
      Optional<Double> metresPerPixel,
      Optional<UpAxis> told) {
    return new TrackTable(table, columns, names, metresPerPixel, told);
  }

  /** The heading of one of our columns: as mapped, or by its name with or without a unit. */
  private Optional<String> heading(String column) {
    if (columns.containsKey(column)) {
      return Optional.of(columns.get(column));
    }
    return table.columns().stream()
        .filter(h -> h.equals(column) || h.startsWith(column + " ("))
        .findFirst();
  }

  private String needed(String column) {
    return heading(column)
        .orElseThrow(
            () ->
                new Refused(
                    table.name()
                        + " has no column \""
                        + column
                        + "\"; it has "
                        + String.join(", ", table.columns())
                        + ". Say which one it is, as in landmarks(file, Map.of(\""
                        + column
                        + "\", \""
                        + table.columns().get(0)
                        + "\"))."));
  }

  private boolean pixels() {
    return unit().startsWith("pixel");
  }

  private String unit() {
    String heading = needed("x");
    int open = heading.lastIndexOf('(');
    String unit =
        open < 0
            ? ""
            : heading.substring(open + 1).replace(")", "").strip().toLowerCase(Locale.ROOT);
    if (!UNITS.containsKey(unit) && !unit.startsWith("pixel")) {
      throw new Refused(
          table.name()
              + ", column "
              + heading
              + ": the unit must stand in the heading, as in x (mm), x (cm), x (m) or x (pixels).");
    }
    return unit;
  }

  private double factor() {
    if (!pixels()) {
      return UNITS.get(unit());
    }
    return metresPerPixel.orElseThrow(
        () ->
            new Refused(
                table.name()
                    + " is in pixels and needs a scale: how many pixels are how long, as in"
                    + " .scale(180, cm(45))."));
  }

  /** When its frames are; known after {@link #tracks}. */
  Track.Clock clock() {
    return clock;
  }

  /** All landmarks of the table, gaps as they are. */
  List<Track> tracks() {
    String time = needed("time");
    needed("landmark");
    double[] times =
        table.rows().stream().mapToDouble(r -> r.number(time)).distinct().sorted().toArray();
    if (times.length < 4) {
      throw new Refused(
          table.name()
              + " holds "
              + times.length
              + " instants; a lift over time needs at least 4.");
    }
    clock = new Track.Clock(times[0], step(times));
    int frames = frame(times[times.length - 1]) + 1;
    Map<String, Track> tracks = new LinkedHashMap<>();
    int dimensions = axes().size();
    double factor = factor();
    for (DataRow row : table.rows()) {
      String name = row.text(needed("landmark"));
      String ours = names.getOrDefault(name, name).toLowerCase(Locale.ROOT);
      Track track =
          tracks.computeIfAbsent(
              ours,
              n ->
                  new Track(
                      landmark(n, row),
                      Mark.sideOf(n),
                      new double[dimensions][frames],
                      new int[frames]));
      take(row, track, factor, time);
    }
    return new ArrayList<>(tracks.values());
  }

  private Landmark landmark(String name, DataRow row) {
    return Landmark.named(name)
        .orElseThrow(
            () ->
                new Refused(
                    String.format(
                        Locale.ROOT,
                        "%s, line %d, column %s: there is no landmark \"%s\"; there are %s, with"
                            + " left or right in front. Say which one it is, as in"
                            + " .called(\"%s\", \"left knee\").",
                        table.name(),
                        row.line(),
                        needed("landmark"),
                        name,
                        Landmark.all(),
                        name)));
  }

  private static double step(double[] times) {
    double[] steps = new double[times.length - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = times[i + 1] - times[i];
    }
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  private int frame(double time) {
    return (int) Math.round((time - clock.start()) / clock.step());
  }

  private void take(DataRow row, Track track, double factor, String time) {
    double when = row.number(time);
    int frame = frame(when);
    if (Math.abs(when - clock.at(frame)) > JITTER * clock.step()) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "%s, line %d, column %s: %.4f s is between two frames, which follow every %.4f s."
                  + " Frames must follow evenly; leave a frame out where nothing was seen.",
              table.name(),
              row.line(),
              time,
              when,
              clock.step()));
    }
    if (track.seen(frame)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "%s, line %d: the %s at %.3f s stands in line %d already.",
              table.name(),
              row.line(),
              track.name(),
              when,
              track.lines()[frame]));
    }
    List<String> axes = axes();
    if (axes.stream().anyMatch(a -> empty(row.text(needed(a))))) {
      return;
    }
    double[] place =
        up().turned(axes.stream().mapToDouble(a -> factor * row.number(needed(a))).toArray());
    for (int k = 0; k < place.length; k++) {
      track.places()[k][frame] = place[k];
    }
    track.lines()[frame] = row.line();
  }

  /** Which axis points up, as told or as is usual. */
  UpAxis up() {
    return told.orElseGet(() -> pixels() ? UpAxis.MINUS_Y : UpAxis.Y);
  }

  /** The columns of a place: x and what points up, or all three. */
  private List<String> axes() {
    if (heading("z").isEmpty() && !up().third()) {
      return List.of("x", "y");
    }
    return up().third() && heading("y").isEmpty() ? List.of("x", "z") : List.of("x", "y", "z");
  }

  private static boolean empty(String cell) {
    return cell.isEmpty() || cell.equalsIgnoreCase("nan");
  }

  /** The side that marks without a side belong to. */
  static Track sided(Track track, Side shown) {
    return track.landmark().paired() && track.side() == Side.MIDLINE
        ? new Track(track.landmark(), shown, track.places(), track.lines())
        : track;
  }
}
