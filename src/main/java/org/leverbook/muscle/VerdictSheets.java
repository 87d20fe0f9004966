package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;

/** Lays out verdicts as tables. */
final class VerdictSheets {

  private static final String SCALE =
      "The words are a scale of our own. Limiter: the first to reach its full pull as all"
          + " that is asked grows alike, or within a tenth of it, from 30 % on. Worked: 30 % or more while it changes length, by as much as a joint"
          + " turning 15° or more. Helps: 10 to 30 % while it changes length. Holds: 10 % or more"
          + " without. Idle: below 10 %.";

  private static final String STILL =
      "One position tells no change of length: a group that pulls is said to hold, or to limit."
          + " .verdict() of the lift tells the rest.";

  private static final String STRESS =
      "Stress: the least that holds still, a share of what the group can give, mean weighted by"
          + " cross-section, the side that pulls harder. A mechanical estimate, not a measurement"
          + " and no promise of growth. Areas and most arms come from memory; the lifter's"
          + " age and training do not enter: .limiter() of a position goes by joint strengths that"
          + " know them.";

  private static final String BAND =
      "Band: 5 to 95 % of "
          + Doubt.DRAWS
          + " draws with arms 10 to 30 % and greatest pulls 25 % off ours (between people the pull"
          + " for each area alone is spread by 17 to 20 %: Erskine et al. 2009, abstract; O'Brien et al."
          + " 2010, from memory); sure: the share of them that gives the same word. Fingers have no muscle in the data: what limits the grip is"
          + " told by .strength().";

  private VerdictSheets() {}

  static Sheet one(Verdict verdict) {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("group"));
    columns.add(Column.text("verdict"));
    columns.add(new Column("stress", "%", 0));
    columns.add(Column.text("band (%)"));
    columns.add(new Column("sure", "% of draws", 0));
    if (verdict.moving()) {
      columns.add(new Column("least", "%", 0));
      columns.add(new Column("hardest at", "% of the way", 0));
      columns.add(new Column("length change", "cm", 1));
      columns.add(new Column("like a turn of", "°", 0));
    }
    columns.add(Column.text("side"));
    columns.add(Column.text("hardest part"));
    columns.add(new Column("its stress", "%", 0));
    List<List<Object>> rows = verdict.groups().stream().map(g -> row(g, verdict.moving())).toList();
    List<String> notes = new ArrayList<>(shortfalls(verdict, ""));
    notes.addAll(List.of(SCALE, STRESS, BAND));
    if (!verdict.moving()) {
      notes.add(1 + shortfalls(verdict, "").size(), STILL);
    }
    notes.add(Caution.TEXT);
    return new Sheet("Verdict, " + verdict.what(), columns, rows, notes);
  }

  private static List<Object> row(GroupVerdict group, boolean moving) {
    List<Object> row = new ArrayList<>();
    row.add(group.group());
    row.add(group.word().word());
    row.add(100 * group.most());
    row.add(band(group));
    row.add(100 * group.sure());
    if (moving) {
      row.add(100 * group.least());
      row.add(100 * group.at());
      row.add(100 * group.change());
      row.add(Math.toDegrees(group.turn()));
    }
    row.add(group.side());
    row.add(group.strandStress() < VerdictWord.LITTLE / 2 ? "" : group.strand());
    row.add(100 * group.strandStress());
    return row;
  }

  private static String band(GroupVerdict group) {
    return String.format(Locale.ROOT, "%.0f to %.0f", 100 * group.low(), 100 * group.high());
  }

  /** Two side by side; groups idle in both are named below. */
  static Sheet two(Verdict one, Verdict other) {
    String first = one.what();
    String second = other.what().equals(first) ? first + " (2)" : other.what();
    List<Column> columns =
        List.of(
            Column.text("group"),
            Column.text(first),
            new Column(first + ", stress", "%", 0),
            Column.text(first + ", band (%)"),
            Column.text(second),
            new Column(second + ", stress", "%", 0),
            Column.text(second + ", band (%)"),
            new Column("more in the second", "%", 0),
            Column.text("bands apart"));
    List<List<Object>> rows = new ArrayList<>();
    List<String> idle = new ArrayList<>();
    for (GroupVerdict a : one.groups()) {
      GroupVerdict b = other.group(a.group());
      if (a.word() == VerdictWord.IDLE && b.word() == VerdictWord.IDLE) {
        idle.add(a.group());
      } else {
        rows.add(
            List.of(
                a.group(),
                a.word().word(),
                100 * a.most(),
                band(a),
                b.word().word(),
                100 * b.most(),
                band(b),
                100 * (b.most() - a.most()),
                apart(a, b) ? "yes" : "no"));
      }
    }
    List<String> notes = new ArrayList<>(shortfalls(one, first + ": "));
    notes.addAll(shortfalls(other, second + ": "));
    notes.add("Idle in both: " + (idle.isEmpty() ? "none" : String.join(", ", idle)) + ".");
    notes.add("Where bands are not apart, the difference may be one of our numbers only.");
    notes.addAll(List.of(SCALE, STRESS, BAND));
    if (!one.moving() || !other.moving()) {
      notes.add(STILL);
    }
    notes.add(Caution.TEXT);
    return new Sheet("Verdict, " + first + " beside " + second, columns, rows, notes);
  }

  /** Any number side by side; groups idle in all are named below. */
  static Sheet many(List<String> names, List<Verdict> verdicts) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("group")));
    for (String name : names) {
      columns.add(Column.text(name));
      columns.add(new Column(name + ", stress", "%", 0));
      columns.add(Column.text(name + ", band (%)"));
    }
    for (String name : names.subList(1, names.size())) {
      columns.add(new Column(name + ", difference", "%", 0));
      columns.add(Column.text(name + ", bands apart"));
    }
    List<List<Object>> rows = new ArrayList<>();
    List<String> idle = new ArrayList<>();
    for (GroupVerdict first : verdicts.get(0).groups()) {
      List<GroupVerdict> each = verdicts.stream().map(v -> v.group(first.group())).toList();
      if (each.stream().allMatch(g -> g.word() == VerdictWord.IDLE)) {
        idle.add(first.group());
      } else {
        rows.add(line(each));
      }
    }
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      notes.addAll(shortfalls(verdicts.get(i), names.get(i) + ": "));
    }
    notes.add("Idle in all: " + (idle.isEmpty() ? "none" : String.join(", ", idle)) + ".");
    notes.add(
        "Differences are to the first. Where bands are not apart, one may be of our numbers only.");
    notes.addAll(List.of(SCALE, STRESS, BAND));
    if (verdicts.stream().anyMatch(v -> !v.moving())) {
      notes.add(STILL);
    }
    notes.add(Caution.TEXT);
    return new Sheet("Verdicts side by side", columns, rows, notes);
  }

  private static List<Object> line(List<GroupVerdict> each) {
    List<Object> row = new ArrayList<>(List.of(each.get(0).group()));
    for (GroupVerdict group : each) {
      row.add(group.word().word());
      row.add(100 * group.most());
      row.add(band(group));
    }
    for (GroupVerdict group : each.subList(1, each.size())) {
      row.add(100 * (group.most() - each.get(0).most()));
      row.add(apart(each.get(0), group) ? "yes" : "no");
    }
    return row;
  }

  private static boolean apart(GroupVerdict a, GroupVerdict b) {
    return a.low() > b.high() || b.low() > a.high();
  }

  private static List<String> shortfalls(Verdict verdict, String before) {
    if (verdict.uncovered().isEmpty()) {
      return List.of();
    }
    return List.of(
        verdict.uncovered().stream()
            .map(Held::sentence)
            .collect(Collectors.joining("; ", before + "Too much for these muscles: ", ".")));
  }
}
