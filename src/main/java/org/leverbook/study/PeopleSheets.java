package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.leverbook.body.Condition;
import org.leverbook.body.Links;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.quantity.Refused;

/** Groups as tables, a row for each person; the columns are those of a club's list. */
final class PeopleSheets {

  private static final int MOST_ROWS = 100_000;

  private PeopleSheets() {}

  /** The first so many people of a group. */
  static Sheet of(Group group, int count) {
    if (count > MOST_ROWS) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A table holds up to %,d people, but the group has %,d. Take some, as in"
                  + " people(MALE, %d, 1).",
              MOST_ROWS,
              count,
              MOST_ROWS));
    }
    List<List<Object>> rows = new ArrayList<>(count);
    int done =
        Many.each(
            "table of people",
            count,
            i -> row(group.label(i), group.get(i)),
            (i, row) -> rows.add(row));
    List<String> notes = new ArrayList<>(group.notes());
    if (done < count) {
      notes.add(0, String.format(Locale.ROOT, "Stopped after %,d of %,d people.", done, count));
    }
    return new Sheet(group.title(), columns(), rows, notes);
  }

  /** The first few people in columns that fit a screen. */
  static Sheet brief(Group group, int count, List<Part> parts) {
    Sheet whole = of(group, count);
    boolean usual =
        group.stream().limit(count).allMatch(p -> p.condition().equals(Condition.USUAL));
    List<String> left = new ArrayList<>(List.of("label", "sex", "mass", "stature"));
    left.addAll(usual ? List.of() : List.of("age", "training"));
    parts.forEach(part -> left.add(Sizes.name(part)));
    List<Integer> kept =
        IntStream.range(0, whole.columns().size())
            .filter(c -> left.contains(whole.columns().get(c).name()))
            .boxed()
            .toList();
    return new Sheet(
        group.title(),
        kept.stream().map(whole.columns()::get).toList(),
        whole.rows().stream().map(row -> kept.stream().<Object>map(row::get).toList()).toList(),
        count < group.size()
            ? List.of(String.format(Locale.ROOT, "%,d more", group.size() - count))
            : List.of());
  }

  private static List<Column> columns() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("label"));
    columns.add(Column.text("sex"));
    columns.add(new Column("mass", "kg", 1));
    columns.add(new Column("stature", "cm", 1));
    columns.add(new Column("age", "years", 0));
    columns.add(Column.text("training"));
    for (Part part : Part.values()) {
      columns.add(new Column(Sizes.name(part), "cm", 1));
    }
    return columns;
  }

  private static List<Object> row(String label, Person person) {
    List<Object> row = new ArrayList<>();
    row.add(label);
    row.add(person.sex().word());
    row.add(Sizes.kilograms(person));
    row.add(100 * Sizes.metres(person));
    row.add((double) person.condition().years());
    row.add(person.condition().training().word());
    Links links = Links.of(person);
    for (Part part : Part.values()) {
      row.add(100 * Sizes.measured(links, part));
    }
    return row;
  }
}
