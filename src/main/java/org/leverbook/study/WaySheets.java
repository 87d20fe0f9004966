package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.muscle.Verdict;
import org.leverbook.quantity.Refused;
import org.leverbook.study.Track.Point;

/** Lays whole ways side by side. */
final class WaySheets {

  private static final Column SHARE = new Column("share of the way", "%", 1);

  private WaySheets() {}

  static Sheet summary(WayComparison comparison) {
    List<Column> columns =
        List.of(
            Column.text("what"),
            Column.text("load"),
            new Column("limiter's greatest effort", "%", 1),
            new Column("at", "% of the way", 0),
            Column.text("limiter"),
            Column.text("held"));
    List<List<Object>> rows = new ArrayList<>();
    for (Track track : comparison.tracks()) {
      Optional<Point> hardest = track.hardest();
      List<Object> line = new ArrayList<>();
      line.add(track.name());
      line.add(track.load().isEmpty() ? ComparisonSheets.UNKNOWN : track.load());
      line.add(
          hardest.isPresent()
              ? (Object) (100 * hardest.get().effort().getAsDouble())
              : ComparisonSheets.UNKNOWN);
      line.add(hardest.map(p -> 100 * p.share()).orElse(null));
      line.add(hardest.map(Point::limiter).orElse(ComparisonSheets.UNKNOWN));
      line.add(track.missing().isEmpty() ? "all the way" : track.missing());
      rows.add(line);
    }
    return new Sheet(
        "Side by side over the way, " + comparison.loads(), columns, rows, differences(comparison));
  }

  /** What differs besides what is compared. */
  private static List<String> differences(WayComparison comparison) {
    List<Track> there = comparison.tracks().stream().filter(t -> !t.load().isEmpty()).toList();
    List<String> notes = new ArrayList<>();
    if (there.stream().map(Track::sizes).distinct().count() > 1) {
      notes.add(
          there.stream()
              .map(t -> t.name() + ": " + t.load())
              .collect(Collectors.joining("; ", "The loads differ. ", ".")));
    }
    List<String> lifters = there.stream().map(Track::lifter).distinct().toList();
    if (lifters.size() > 1) {
      notes.add(ComparisonSheets.liftersDiffer(lifters));
    }
    notes.add(Caution.TEXT);
    return notes;
  }

  /** All readings of all ways, the first way's first, for what rows and axes a table needs. */
  private static List<Map<Slot, Reading>> readings(WayComparison comparison) {
    return comparison.tracks().stream()
        .flatMap(t -> t.points().stream())
        .map(Point::readings)
        .toList();
  }

  static Sheet peaks(WayComparison comparison, List<JointId> joints) {
    List<Track> tracks = comparison.tracks();
    List<SideBySide> slots = SideBySide.of(joints, readings(comparison));
    List<Column> columns = new ArrayList<>(List.of(Column.text("joint"), Column.text("side")));
    for (Track track : tracks) {
      columns.add(new Column(track.name() + ", largest moment", "N·m", 1));
      columns.add(new Column(track.name() + ", at", "% of the way", 0));
      columns.add(new Column(track.name() + ", arm there", "cm", 1));
    }
    for (Track track : tracks.subList(1, tracks.size())) {
      columns.add(new Column(track.name() + ", difference", "N·m", 1));
      columns.add(new Column(track.name() + ", ratio", "", 2));
    }
    List<List<Object>> rows = new ArrayList<>();
    for (SideBySide one : slots) {
      List<Object> line = new ArrayList<>();
      line.add(one.slot().joint().word());
      line.add(one.side());
      List<Optional<Point>> peaks =
          tracks.stream().map(t -> t.peak(one.slot(), one.axis())).toList();
      for (Optional<Point> peak : peaks) {
        Reading reading = peak.map(p -> p.readings().get(one.slot())).orElse(null);
        line.add(reading == null ? ComparisonSheets.UNKNOWN : (Object) reading.moment(one.axis()));
        line.add(reading == null ? null : 100 * peak.get().share());
        line.add(reading == null ? null : ComparisonSheets.arm(reading, one.axis()));
      }
      for (Optional<Point> peak : peaks.subList(1, peaks.size())) {
        if (peak.isEmpty() || peaks.get(0).isEmpty()) {
          line.addAll(List.of(ComparisonSheets.UNKNOWN, ComparisonSheets.UNKNOWN));
        } else {
          ComparisonSheets.against(
              line,
              peak.get().readings().get(one.slot()).moment(one.axis()),
              peaks.get(0).get().readings().get(one.slot()).moment(one.axis()));
        }
      }
      rows.add(line);
    }
    return new Sheet(
        "Largest moments side by side, " + comparison.loads(), columns, rows, allNotes(comparison));
  }

  /** Why something is missing, and what differs besides. */
  static List<String> notes(WayComparison comparison) {
    List<String> notes = new ArrayList<>(missing(comparison));
    notes.addAll(differences(comparison));
    return notes;
  }

  /** The same with how to read the numbers. */
  private static List<String> allNotes(WayComparison comparison) {
    List<String> notes = new ArrayList<>(missing(comparison));
    notes.add(
        "Looked at every twentieth of the way; the largest moments of two joints may be at different"
            + " places.");
    notes.add(ComparisonSheets.signs(comparison.tracks().get(0).name()));
    notes.addAll(differences(comparison));
    return notes;
  }

  private static List<String> missing(WayComparison comparison) {
    return comparison.tracks().stream()
        .filter(track -> !track.missing().isEmpty())
        .map(track -> track.name() + ": " + track.missing())
        .toList();
  }

  static Sheet verdicts(WayComparison comparison, List<Entrant<Passage>> ways) {
    List<String> names = new ArrayList<>();
    List<Verdict> verdicts = new ArrayList<>();
    List<String> reasons = new ArrayList<>();
    for (Entrant<Passage> way : ways) {
      try {
        if (way.shown() == null) {
          throw new Refused(way.reason());
        }
        verdicts.add(way.shown().verdict().get());
        names.add(way.name());
      } catch (Refused e) {
        reasons.add(way.name() + ": " + e.getMessage());
      }
    }
    return InsideComparison.verdicts(names, verdicts, reasons, comparison.loads());
  }

  static Sheet tidy(WayComparison comparison) {
    List<Column> columns =
        List.of(
            Column.text("what"),
            Column.text("load"),
            SHARE,
            Column.text("joint"),
            Column.text("side"),
            Column.text("about"),
            new Column("moment", "N·m", 1),
            new Column("arm", "cm", 1),
            new Column("difference", "N·m", 1),
            new Column("ratio", "", 2),
            new Column("limiter's effort", "%", 1),
            Column.text("reason"));
    List<SideBySide> slots =
        SideBySide.split(SideBySide.of(List.of(JointId.values()), readings(comparison)));
    List<Point> firsts = comparison.tracks().get(0).points();
    List<List<Object>> rows = new ArrayList<>();
    for (Track track : comparison.tracks()) {
      if (track.points().isEmpty()) {
        rows.add(
            Arrays.asList(
                track.name(), "", null, "", "", "", null, null, null, null, null, track.reason()));
      }
      for (int i = 0; i < track.points().size(); i++) {
        Point point = track.points().get(i);
        boolean against = !firsts.isEmpty() && track != comparison.tracks().get(0);
        for (SideBySide one : slots) {
          List<Object> line = new ArrayList<>(List.of(track.name(), track.load()));
          line.add(100 * point.share());
          line.addAll(List.of(one.slot().joint().word(), one.side(), one.axis()));
          Reading first = against ? firsts.get(i).readings().get(one.slot()) : null;
          numbers(line, one, point.readings().get(one.slot()), first);
          line.add(effort(point));
          line.add(point.reason());
          rows.add(line);
        }
      }
    }
    return new Sheet(
        "Side by side over the way, " + comparison.loads(), columns, rows, allNotes(comparison));
  }

  /** Moment, arm, and what they are against the first at the same share. */
  private static void numbers(List<Object> line, SideBySide one, Reading reading, Reading first) {
    line.add(reading == null ? null : reading.moment(one.axis()));
    line.add(reading == null ? null : reading.armInCm(one.axis()).orElse(null));
    boolean both = reading != null && first != null;
    double here = both ? reading.moment(one.axis()) : 0;
    double there = both ? first.moment(one.axis()) : 0;
    line.add(both ? here - there : null);
    line.add(SideBySide.ratio(here, there).orElse(null));
  }

  private static Double effort(Point point) {
    return point.effort().isPresent() ? 100 * point.effort().getAsDouble() : null;
  }

  static Sheet wide(WayComparison comparison, List<JointId> joints) {
    List<SideBySide> slots = SideBySide.of(joints, readings(comparison));
    List<Column> columns = new ArrayList<>(List.of(Column.text("what"), Column.text("load")));
    columns.add(SHARE);
    columns.add(new Column("limiter's effort", "%", 1));
    columns.add(Column.text("limiter"));
    slots.forEach(s -> columns.add(new Column(ComparisonTables.name(s) + " moment", "N·m", 1)));
    slots.forEach(s -> columns.add(new Column(ComparisonTables.name(s) + " arm", "cm", 1)));
    columns.add(Column.text("reason"));
    List<List<Object>> rows = new ArrayList<>();
    for (Track track : comparison.tracks()) {
      List<Point> points =
          track.points().isEmpty() ? List.of(Point.nowhere(track.reason())) : track.points();
      for (Point point : points) {
        List<Object> line = new ArrayList<>(List.of(track.name(), track.load()));
        line.add(track.points().isEmpty() ? null : 100 * point.share());
        line.add(effort(point));
        line.add(point.limiter());
        for (SideBySide s : slots) {
          Reading reading = point.readings().get(s.slot());
          line.add(reading == null ? null : reading.moment(s.axis()));
        }
        for (SideBySide s : slots) {
          Reading reading = point.readings().get(s.slot());
          line.add(reading == null ? null : reading.armInCm(s.axis()).orElse(null));
        }
        line.add(point.reason());
        rows.add(line);
      }
    }
    return new Sheet(
        "Side by side over the way, " + comparison.loads(), columns, rows, allNotes(comparison));
  }
}
