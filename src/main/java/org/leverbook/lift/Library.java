package org.leverbook.lift;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leverbook.body.Person;
import org.leverbook.display.Caution;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Balance;
import org.leverbook.statics.Position;

/**
 * Every lift there is, each with its usual settings for one lifter.
 *
 * @param lifts in the order of the help
 */
public record Library(List<Lift<?>> lifts) implements Shown, Iterable<Lift<?>> {

  /** Keeps its own copy. */
  public Library {
    lifts = List.copyOf(lifts);
  }

  /**
   * The library for a lifter.
   *
   * @param lifter who
   * @return one lift each
   */
  public static Library of(Person lifter) {
    Ask.present("lifter", lifter, "person(MALE, kg(85), cm(178))");
    return new Library(
        Stream.of(LegLifts.all(), PressLifts.all(), PullLifts.all())
            .flatMap(List::stream)
            .<Lift<?>>map(lift -> lift.apply(lifter))
            .toList());
  }

  /**
   * One lift by its name.
   *
   * @param name as in "back squat"
   * @return the lift
   * @throws Refused if there is none; names those there are
   */
  public Lift<?> named(String name) {
    return lifts.stream()
        .filter(l -> l.name().equalsIgnoreCase(name.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "There is no lift \""
                        + name
                        + "\"; there are "
                        + lifts.stream().map(Lift::name).collect(Collectors.joining(", "))
                        + "."));
  }

  /**
   * A row for each lift: its settings, where its posture comes from, whether its supports hold it
   * at start, middle and finish, and how near its balance comes to an edge.
   *
   * @return the table; a lift that this lifter cannot get into has the reason in its row
   */
  public Sheet table() {
    List<Column> columns =
        List.of(
            Column.text("name"),
            Column.text("settings"),
            Column.text("source of posture"),
            Column.text("held"),
            new Column("balance to spare", "cm", 1),
            Column.text("reason"));
    return new Sheet(
            "Lifts, " + (lifts.isEmpty() ? "" : lifts.get(0).body().person().text()),
            columns,
            lifts.stream().map(Library::row).toList(),
            List.of(
                "Balance to spare: the least distance of the floor's push from the edge of support, at"
                    + " start, middle and finish; empty where something else than the floor carries.",
                Caution.TEXT))
        .about(lifts.toArray());
  }

  private static List<Object> row(Lift<?> lift) {
    List<Object> row = new ArrayList<>(List.of(lift.name(), lift.settings(), lift.source()));
    try {
      boolean held = true;
      String reason = "";
      double spare = Double.POSITIVE_INFINITY;
      for (Position position : lift.threePositions()) {
        if (!position.held()) {
          held = false;
          reason = position.holding().sentence();
        }
        spare = Math.min(spare, position.onGround().map(Balance::margin).orElse(spare));
      }
      row.add(held ? "yes" : "no");
      row.add(Double.isInfinite(spare) ? null : 100 * spare);
      row.add(reason);
    } catch (Refused e) {
      row.add("no");
      row.add(null);
      row.add(e.getMessage());
    }
    return row;
  }

  /**
   * Every lift on one sheet: start and finish, to one scale, with the greatest moments. {@code
   * allLifts(lifter).picture().save("lifts.pdf")} works.
   *
   * @return the picture; a lift that this lifter cannot get into has the reason in its place
   * @throws Refused if there is no lift
   */
  public Picture picture() {
    return Illustrator.pictureOf(this, List.of());
  }

  /**
   * Saves worksheet and picture of every lift at start, middle and finish.
   *
   * @return what was written; a lift that this lifter cannot get into is left out
   */
  public Saved save() {
    List<Path> files = new ArrayList<>();
    for (Lift<?> lift : lifts) {
      try {
        files.addAll(lift.save().files());
      } catch (Refused e) {
        // The table tells why.
        continue;
      }
    }
    return new Saved(files);
  }

  @Override
  public Iterator<Lift<?>> iterator() {
    return lifts.iterator();
  }

  @Override
  public String text() {
    return lifts.stream()
        .map(l -> String.format(Locale.ROOT, "%-28s %s", l.name(), l.purpose()))
        .collect(Collectors.joining("\n"));
  }

  @Override
  public String toString() {
    return text();
  }
}
