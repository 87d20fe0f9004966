package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leverbook.body.Body;
import org.leverbook.data.Nearest;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * What a position or a lift asks of each trade group, and one word for it ({@link VerdictWord}).
 *
 * <p>The recipe: at each point of the way the least effort that holds still there ({@link Effort});
 * of each group the mean stress weighted by cross-section, of the side that pulls harder; over the
 * way its most and its least; how far its muscles change length ({@link LengthChange}); the word
 * from these. How sure: all of it again with other arms and greatest pulls, 40 draws with one seed
 * ({@link Doubt}); the band leaves out a twentieth of the draws at each end, and is widened to the
 * plain value where that lies outside.
 *
 * <p>It tells mechanical stress, of a person who holds still at each point. It promises no growth:
 * what a muscle adapts to also depends on sets, effort, rest and much else.
 */
public final class Verdict implements Shown {

  private final String what;
  private final boolean moving;
  private final List<GroupVerdict> groups;
  private final List<Held> uncovered;

  private Verdict(String what, boolean moving, List<GroupVerdict> groups, List<Held> uncovered) {
    this.what = what;
    this.moving = moving;
    this.groups = List.copyOf(groups);
    this.uncovered = List.copyOf(uncovered);
  }

  /**
   * The verdict on a way, or on one position.
   *
   * @param what to call it, as in "hinge"
   * @param body whose
   * @param way the efforts at evenly spaced points, from start to finish; at least one
   * @return the verdict
   */
  public static Verdict of(String what, Body body, List<Effort> way) {
    Ask.present("name of what is judged", what, "\"hinge\"");
    if (way.isEmpty()) {
      throw new Refused("A verdict needs one position at least, and the way given has none.");
    }
    List<GroupVerdict> groups = new Stresses(body, way).verdicts();
    return new Verdict(what, way.size() > 1, groups, worst(way));
  }

  /** Of each axis that stays uncovered anywhere, the most. */
  private static List<Held> worst(List<Effort> way) {
    List<Held> worst = new ArrayList<>();
    for (Effort effort : way) {
      for (Held held : effort.uncovered()) {
        if (held.notKnown().isEmpty()) {
          Optional<Held> known = worst.stream().filter(h -> h.axis() == held.axis()).findFirst();
          if (known.isEmpty()) {
            worst.add(held);
          } else if (Math.abs(known.get().uncovered()) < Math.abs(held.uncovered())) {
            worst.set(worst.indexOf(known.get()), held);
          }
        }
      }
    }
    return worst;
  }

  /**
   * All groups.
   *
   * @return hardest first
   */
  public List<GroupVerdict> groups() {
    return groups;
  }

  /**
   * One group, as in {@code verdict.group("glutes")}; {@code group("bum")} is refused and names the
   * groups there are.
   *
   * @param name as the table calls it
   * @return what is asked of it
   * @throws Refused if there is no such group
   */
  public GroupVerdict group(String name) {
    String wanted = Ask.present("group", name, "\"glutes\"").strip();
    List<String> names = groups.stream().map(GroupVerdict::group).toList();
    return groups.stream()
        .filter(g -> g.group().equalsIgnoreCase(wanted))
        .findFirst()
        .orElseThrow(() -> new Refused(unknown(wanted, names)));
  }

  private static String unknown(String wanted, List<String> names) {
    List<String> near = wanted.isEmpty() ? List.of() : Nearest.of(wanted, names);
    return "The verdict has no group \""
        + wanted
        + "\". "
        + (near.isEmpty()
            ? "It has " + String.join(", ", names) + "."
            : "Did you mean \"" + String.join("\" or \"", near) + "\"?");
  }

  /**
   * As a table.
   *
   * @return a row for each group, hardest first
   */
  public Sheet table() {
    return VerdictSheets.one(this).about(this);
  }

  /**
   * Two side by side, as in {@code hinge.verdict().beside(squat.verdict())}.
   *
   * @param other another lift or position, of this person or another
   * @return a row for each group that either works
   * @throws Refused if it is missing
   */
  public Sheet beside(Verdict other) {
    Verdict second = Ask.present("other verdict", other, "squat.verdict()");
    return VerdictSheets.two(this, second).about(this, second);
  }

  /**
   * Any number of verdicts side by side.
   *
   * @param names what to call each
   * @param verdicts as many as names; at least one
   * @return a row for each group that any of them works; differences are to the first
   */
  public static Sheet sideBySide(List<String> names, List<Verdict> verdicts) {
    if (verdicts.isEmpty() || names.size() != verdicts.size()) {
      throw new Refused(
          "Verdicts side by side need a name each, and there must be one at least: here are "
              + verdicts.size()
              + " verdicts and "
              + names.size()
              + " names.");
    }
    names.forEach(name -> Ask.present("name of a verdict", name, "\"narrow grip\""));
    return VerdictSheets.many(names, verdicts).about(verdicts.toArray());
  }

  /**
   * Saves the table as CSV.
   *
   * @param name a file name that ends in {@code .csv}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String name) {
    return table().save(name);
  }

  /** What it is of, as in "hinge". */
  public String what() {
    return what;
  }

  /** Whether it is of a way, not of one position alone. */
  public boolean moving() {
    return moving;
  }

  /**
   * What muscles and tissue cannot hold anywhere on the way.
   *
   * @return of each axis the most; what the data do not know is left out
   */
  public List<Held> uncovered() {
    return uncovered;
  }

  @Override
  public String text() {
    return table().text();
  }

  @Override
  public Optional<String> html() {
    return table().html();
  }

  @Override
  public String toString() {
    return text();
  }
}
