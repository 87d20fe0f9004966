package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.leverbook.body.Person;
import org.leverbook.data.Nearest;
import org.leverbook.display.FailureWording;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * Lifters from a list of measurements, kept as CSV by a spreadsheet.
 *
 * <p>The layout, one of our own: a header line, then a row for each lifter; columns in any order,
 * separated by commas, semicolons or tabs; lines that begin with # are comments.
 *
 * <ul>
 *   <li>{@code sex} (male or female, also m, f, w), {@code mass (kg)} or {@code (lb)}, {@code
 *       stature (cm)}, {@code (m)} or {@code (in)}, also called height: needed.
 *   <li>{@code label}: what the lifter is called; {@code age} in whole years; {@code training}
 *       (untrained, trained, competitive, or 1, 2, 3): may be missing or empty.
 *   <li>{@code foot, shank, thigh, trunk, neck, upper arm, forearm, hand}: lengths from joint
 *       centre to joint centre; {@code shoulder width, hip width}: between the two joint centres;
 *       each with its unit. An empty cell is a usual length.
 * </ul>
 *
 * <p>The unit stands in the heading. A decimal comma is understood. A row with a faulty cell is
 * kept out and told by {@link #rejected}; the others stay. Masses that look like pounds in a column
 * of kilograms are asked about: until {@link #inPounds} or {@link #inKilograms} answers, the list
 * shows the question and gives no lifters. Stature stays as measured: where shank, thigh and trunk
 * are all given, the trunk follows from the others.
 */
public final class Club extends Group implements Choosing<Club> {

  /** The columns, for messages. */
  static final String LAYOUT =
      "label, sex, mass (kg), stature (cm), and perhaps age, training, thigh (cm)";

  /** Rows named in a message. */
  private static final int NAMED = 3;

  private final ClubFile file;
  private final ClubRoll.Roll roll;
  private final List<ClubRoll.Lifter> lifters;
  private final List<String> wishes;

  private Club(
      ClubFile file, ClubRoll.Roll roll, List<ClubRoll.Lifter> lifters, List<String> wishes) {
    this.file = file;
    this.roll = roll;
    this.lifters = List.copyOf(lifters);
    this.wishes = List.copyOf(wishes);
  }

  /**
   * Reads a list.
   *
   * @param file the name of a CSV file, from the working folder
   * @return the lifters
   * @throws Refused if there is no such file, its header is not understood, or no row can be used
   */
  public static Club read(String file) {
    return of(ClubFile.read(Ask.present("file", file, "\"club.csv\"")), MassUnit.AS_WRITTEN);
  }

  /** From a file that was read. */
  static Club of(ClubFile file, MassUnit unit) {
    ClubRoll.Roll roll = new ClubRoll(file, unit).roll();
    if (file.lines().isEmpty()) {
      throw new Refused(
          file.name() + " has a header but no rows below it: there is nobody to try anything on.");
    }
    if (roll.lifters().isEmpty() && roll.question().isEmpty()) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "None of the %d rows of %s can be used. %s",
              file.lines().size(),
              file.name(),
              roll.faults().stream()
                  .limit(NAMED)
                  .map(Club::sentence)
                  .collect(Collectors.joining(" "))));
    }
    return new Club(file, roll, roll.lifters(), List.of());
  }

  /**
   * The same list with its masses read as pounds, whatever the heading says. Chosen lifters are
   * chosen anew from the whole list.
   *
   * @return the changed club
   * @throws Refused if no row can be used so
   */
  public Club inPounds() {
    return of(file, MassUnit.POUNDS);
  }

  /**
   * The same list with its masses read as kilograms, whatever the heading says and however heavy
   * the lifters are. Chosen lifters are chosen anew from the whole list.
   *
   * @return the changed club
   * @throws Refused if no row can be used so
   */
  public Club inKilograms() {
    return of(file, MassUnit.KILOGRAMS);
  }

  /**
   * What must be answered before the list can be used.
   *
   * @return a question, or empty
   */
  public Optional<String> question() {
    return roll.question().isEmpty() ? Optional.empty() : Optional.of(roll.question());
  }

  /**
   * The cells for which rows were kept out.
   *
   * @return a row for each faulty cell: row of the file, label, column, what stands there, why
   */
  public Sheet rejected() {
    return new Sheet(
        "Kept out of " + file.name(),
        List.of(
            Column.text("row"),
            Column.text("label"),
            Column.text("column"),
            Column.text("cell"),
            Column.text("reason")),
        roll.faults().stream()
            .map(
                f ->
                    List.<Object>of(
                        String.valueOf(f.row()), f.label(), f.column(), f.cell(), f.reason()))
            .toList(),
        List.of(counts()));
  }

  /**
   * One lifter by label.
   *
   * @param label as in the list, or how it begins, as in "lifter A" for "lifter A, long thighs";
   *     capitals do not matter
   * @return the lifter
   * @throws Refused if there is none or more than one; names those that are near
   */
  public Person named(String label) {
    answered();
    Ask.present("label", label, "\"lifter A\"");
    String wanted = label.strip().toLowerCase(Locale.ROOT);
    List<ClubRoll.Lifter> found = called(l -> l.equals(wanted));
    if (found.isEmpty() && !wanted.isEmpty()) {
      found = called(l -> l.startsWith(wanted));
    }
    if (found.size() != 1) {
      throw nobody(label, found);
    }
    return found.get(0).person();
  }

  private List<ClubRoll.Lifter> called(Predicate<String> label) {
    return lifters.stream().filter(l -> label.test(l.label().toLowerCase(Locale.ROOT))).toList();
  }

  private Refused nobody(String label, List<ClubRoll.Lifter> several) {
    List<String> labels = lifters.stream().map(ClubRoll.Lifter::label).toList();
    List<String> near =
        !several.isEmpty()
            ? several.stream().map(ClubRoll.Lifter::label).toList()
            : label.isBlank() ? List.of() : Nearest.of(label.strip(), labels);
    List<String> told = (near.isEmpty() ? labels : near).stream().limit(2 * NAMED).toList();
    return new Refused(
        String.format(
            "%s has %s lifter \"%s\" that can be used; %s %s%s",
            file.name(),
            several.isEmpty() ? "no" : "more than one",
            label,
            near.isEmpty() ? "there are" : "did you mean",
            String.join(" or ", told),
            near.isEmpty() ? (told.size() < labels.size() ? " and others." : ".") : "?"));
  }

  @Override
  public Club where(String what, Predicate<Person> fits) {
    answered();
    Ask.present("condition in words", what, "\"long thighs\"");
    Ask.present("condition", fits, "p -> p.metres() > 1.8");
    List<ClubRoll.Lifter> fitting = new ArrayList<>();
    String reason = "";
    for (ClubRoll.Lifter lifter : lifters) {
      try {
        if (fits.test(lifter.person())) {
          fitting.add(lifter);
        }
      } catch (Refused e) {
        reason =
            reason.isEmpty()
                ? " " + lifter.label() + " could not be asked: " + e.getMessage()
                : reason;
      } catch (RuntimeException e) {
        throw new Refused(
            "The condition \""
                + what
                + "\" failed for "
                + lifter.label()
                + ": "
                + FailureWording.of(e),
            e);
      }
    }
    List<String> all = new ArrayList<>(wishes);
    all.add(what);
    if (fitting.isEmpty()) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "None of %d lifters of %s fits: %s.%s",
              lifters.size(),
              file.name(),
              String.join(", ", all),
              reason));
    }
    return new Club(file, roll, fitting, all);
  }

  @Override
  public Person get(int number) {
    answered();
    if (number < 0 || number >= lifters.size()) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "There is no lifter %d: the club's numbers are 0 to %d.",
              number,
              lifters.size() - 1));
    }
    return lifters.get(number).person();
  }

  @Override
  public int size() {
    answered();
    return lifters.size();
  }

  @Override
  public String label(int number) {
    answered();
    return lifters.get(number).label();
  }

  @Override
  public String title() {
    return file.name()
        + (lifters.size() == 1 ? ", 1 lifter" : ", " + lifters.size() + " lifters")
        + wishes.stream().map(w -> ", " + w).collect(Collectors.joining());
  }

  @Override
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    if (!roll.faults().isEmpty()) {
      notes.add(counts());
      roll.faults().stream().limit(NAMED).map(Club::sentence).forEach(notes::add);
      if (roll.faults().size() > NAMED) {
        notes.add((roll.faults().size() - NAMED) + " more faults: .rejected() lists all.");
      }
    }
    notes.addAll(roll.notes());
    return notes;
  }

  @Override
  public String text() {
    return question().orElseGet(super::text);
  }

  @Override
  public Optional<String> html() {
    return question().isEmpty() ? super.html() : Optional.empty();
  }

  private String counts() {
    long out = roll.faults().stream().mapToInt(ClubCells.Fault::row).distinct().count();
    return String.format(Locale.ROOT, "Of %d rows %d were kept out.", file.lines().size(), out);
  }

  private static String sentence(ClubCells.Fault fault) {
    return String.format(
        Locale.ROOT,
        "Row %d%s: %s",
        fault.row(),
        fault.column().isEmpty() ? "" : ", column " + fault.column(),
        fault.reason());
  }

  private void answered() {
    if (!roll.question().isEmpty()) {
      throw new Refused(roll.question());
    }
  }
}
