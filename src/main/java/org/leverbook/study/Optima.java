package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;

/** The table and the sentences of an {@link Optimum}. */
final class Optima {

  private Optima() {}

  /** A setting to a thousandth of its range, as in "56.13 cm". */
  static String text(Span<?> span, double value) {
    int decimals = decimals(span);
    String gap = span.symbol().isEmpty() || span.symbol().equals("°") ? "" : " ";
    String number = String.format(Locale.ROOT, "%." + decimals + "f", value);
    // What rounds to zero has no sign.
    return (number.matches("-0\\.0*") ? number.substring(1) : number) + gap + span.symbol();
  }

  static int decimals(Span<?> span) {
    return Span.decimals(Math.abs(span.to() - span.from()) / 1000);
  }

  /** The settings of a trial, as in "hip height 56.13 cm, stance 34.20 cm". */
  static String place(Quest<?> quest, Trial trial) {
    Span<?> first = quest.spans().get(0);
    String place = first.name() + " " + text(first, trial.x());
    if (!quest.two()) {
      return place;
    }
    Span<?> second = quest.spans().get(1);
    return place + ", " + second.name() + " " + text(second, trial.y());
  }

  static String ends(Quest<?> quest) {
    List<String> ends = new ArrayList<>();
    quest
        .spans()
        .forEach(s -> ends.add(s.name() + " (" + s.text(s.from()) + " to " + s.text(s.to()) + ")"));
    return String.join(" and ", ends);
  }

  static List<String> notes(Quest<?> quest, Sought found, Surroundings around) {
    List<String> notes = new ArrayList<>(around.against());
    notes.addAll(around.near());
    if (found.valleys().size() > 1) {
      Trial next = found.valleys().get(1);
      notes.add(
          "The next best of its own kind lies at "
              + place(quest, next)
              + ": "
              + quest.quantity().text(quest.value(next))
              + ".");
    }
    notes.addAll(missing(quest, found.scan()));
    return notes;
  }

  /** Why settings of the scan gave nothing; reasons that differ in numbers only are told once. */
  static List<String> missing(Quest<?> quest, List<Trial> scan) {
    Map<String, List<Trial>> alike = new LinkedHashMap<>();
    for (Trial trial : scan) {
      if (!trial.free()) {
        alike.computeIfAbsent(Gap.wording(trial.reason()), w -> new ArrayList<>()).add(trial);
      }
    }
    return alike.values().stream()
        .map(
            trials ->
                String.format(
                    Locale.ROOT,
                    "Left out: %,d of %,d, as at %s: %s",
                    trials.size(),
                    scan.size(),
                    place(quest, trials.get(0)),
                    trials.get(0).reason()))
        .toList();
  }

  static String headline(Quest<?> quest, Sought found) {
    return (quest.sign() > 0 ? "lowest " : "highest ")
        + quest.quantity().name()
        + " over "
        + ends(quest)
        + ": "
        + quest.quantity().text(quest.value(found.best()))
        + " at "
        + place(quest, found.best());
  }

  static String text(Quest<?> quest, Sought found, Surroundings around) {
    StringBuilder text = new StringBuilder(headline(quest, found)).append('\n');
    quest.limits().forEach(limit -> text.append("Limit: ").append(limit.sentence()).append(".\n"));
    notes(quest, found, around).forEach(note -> text.append(note).append('\n'));
    text.append(
        "best() is what is there, ready to draw; plot() shows the scan, sheet() its numbers\n");
    return text.append(Caution.TEXT).toString();
  }

  /** The scan and the valleys in order of their settings. */
  static Sheet sheet(Quest<?> quest, Sought found, Surroundings around) {
    List<Column> columns = new ArrayList<>(settings(quest));
    columns.add(new Column(quest.quantity().name(), quest.quantity().unit(), 1));
    columns.add(Column.text("place"));
    columns.add(Column.text("reason"));
    Map<Trial, String> places = new LinkedHashMap<>();
    found.scan().forEach(t -> places.put(t, ""));
    found.valleys().forEach(t -> places.put(t, "next best"));
    places.put(found.best(), "best");
    List<Trial> trials = new ArrayList<>(places.keySet());
    Comparator<Trial> order = Comparator.comparingDouble(t -> along(quest, 0, t.x()));
    trials.sort(order.thenComparingDouble(t -> quest.two() ? along(quest, 1, t.y()) : 0));
    List<List<Object>> rows = new ArrayList<>();
    for (Trial trial : trials) {
      List<Object> row = new ArrayList<>();
      row.add(trial.x());
      if (quest.two()) {
        row.add(trial.y());
      }
      row.add(trial.free() ? quest.value(trial) : null);
      row.add(places.get(trial));
      row.add(trial.reason());
      rows.add(row);
    }
    List<String> notes = new ArrayList<>();
    String headline = headline(quest, found);
    notes.add(Character.toUpperCase(headline.charAt(0)) + headline.substring(1) + ".");
    notes.addAll(notes(quest, found, around));
    notes.add(Caution.TEXT);
    String title = (quest.sign() > 0 ? "Lowest " : "Highest ") + quest.quantity().name();
    return new Sheet(title, columns, rows, notes);
  }

  /** From its first end to its last, whichever is greater. */
  private static double along(Quest<?> quest, int which, double value) {
    Span<?> span = quest.spans().get(which);
    return (value - span.from()) / (span.to() - span.from());
  }

  static List<Column> settings(Quest<?> quest) {
    List<Column> columns = new ArrayList<>();
    quest.spans().forEach(s -> columns.add(new Column(s.name(), s.symbol(), decimals(s))));
    return columns;
  }
}
