package org.leverbook.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.leverbook.body.Condition;
import org.leverbook.body.Links;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/**
 * Makes lifters of the rows of a club's list. A row with a faulty cell is kept out, with all its
 * faults; the others stay.
 */
final class ClubRoll {

  /** Lengths as near to the usual ones as the digits of a file can tell. */
  private static final double AS_USUAL = 1e-8;

  /** From here on it is told that a measured trunk was not used, metres. */
  private static final double WORTH_TELLING = 0.005;

  private final ClubFile file;
  private final ClubHeading.Header header;
  private final MassUnit unit;
  private final Map<String, Integer> rowsByLabel = new HashMap<>();

  /** A lifter with the label and the row of the list. */
  record Lifter(String label, int row, Person person) {}

  /** What came of a list. */
  record Roll(
      List<Lifter> lifters, List<ClubCells.Fault> faults, List<String> notes, String question) {}

  /** What a row says, as far as it could be read. */
  private record Entry(
      ClubCells cells,
      Sex sex,
      OptionalDouble mass,
      OptionalDouble stature,
      Condition condition,
      Map<Part, Double> lengths) {

    static Entry broken(ClubCells cells) {
      return new Entry(
          cells, null, OptionalDouble.empty(), OptionalDouble.empty(), Condition.USUAL, Map.of());
    }
  }

  ClubRoll(ClubFile file, MassUnit unit) {
    this.file = file;
    this.unit = unit;
    header = ClubHeading.of(file.name(), file.header());
  }

  Roll roll() {
    ClubHeading mass = header.of(ClubHeading.MASS).orElseThrow();
    ClubHeading stature = header.of(ClubHeading.STATURE).orElseThrow();
    List<Entry> entries = new ArrayList<>();
    for (ClubFile.Line line : file.lines()) {
      ClubCells cells = new ClubCells(file, header, line);
      entries.add(cells.broken() ? Entry.broken(cells) : entry(cells, mass, stature));
    }
    MassCheck check = new MassCheck(unit, mass);
    entries.forEach(e -> check.add(e.sex(), e.mass(), e.stature()));
    List<String> notes = new ArrayList<>(header.notes());
    List<Lifter> lifters = new ArrayList<>();
    List<ClubCells.Fault> faults = new ArrayList<>();
    String question = check.question(file.name());
    for (Entry entry : entries) {
      Person person = question.isEmpty() ? person(entry, check, notes) : null;
      if (entry.cells().faults().isEmpty() && person != null) {
        lifters.add(new Lifter(entry.cells().label(), entry.cells().row(), person));
      }
      faults.addAll(entry.cells().faults());
    }
    return new Roll(lifters, faults, notes, question);
  }

  private Entry entry(ClubCells cells, ClubHeading mass, ClubHeading stature) {
    repeated(cells);
    return new Entry(
        cells,
        cells.sex(),
        times(unit.factor(mass), cells.needed(mass)),
        times(stature.factor(), cells.needed(stature)),
        condition(cells),
        lengths(cells));
  }

  private static OptionalDouble times(double factor, OptionalDouble number) {
    return number.isPresent() ? OptionalDouble.of(factor * number.getAsDouble()) : number;
  }

  private void repeated(ClubCells cells) {
    String label = cells.label();
    Integer first = rowsByLabel.putIfAbsent(label.toLowerCase(Locale.ROOT), cells.row());
    if (first != null) {
      cells.add(
          header.of(ClubHeading.LABEL).map(ClubHeading::text).orElse(""),
          label,
          "Row " + first + " has this label already: give each lifter a label of their own.");
    }
  }

  /** The person of a row; null where a cell is faulty. */
  private Person person(Entry entry, MassCheck check, List<String> notes) {
    if (entry.sex() == null || entry.mass().isEmpty() || entry.stature().isEmpty()) {
      return null;
    }
    ClubCells cells = entry.cells();
    double kilograms = entry.mass().getAsDouble();
    double metres = entry.stature().getAsDouble();
    boolean sized = true;
    try {
      Person.of(entry.sex(), Units.kg(80), Units.cm(100 * metres));
    } catch (Refused e) {
      cells.add(header.of(ClubHeading.STATURE).orElseThrow(), e);
      sized = false;
    }
    try {
      check.alone(entry.sex(), kilograms, metres);
      Person.of(entry.sex(), Units.kg(kilograms), Units.cm(178));
    } catch (Refused e) {
      cells.add(header.of(ClubHeading.MASS).orElseThrow(), e);
      sized = false;
    }
    if (!sized) {
      return null;
    }
    Person person = Person.of(entry.sex(), Units.kg(kilograms), Units.cm(100 * metres));
    person = person.aged(entry.condition().years()).trained(entry.condition().training());
    return measured(person, entry, notes);
  }

  private Condition condition(ClubCells cells) {
    Training training = cells.training();
    ClubHeading heading = header.of(ClubHeading.AGE).orElse(null);
    OptionalDouble years = heading == null ? OptionalDouble.empty() : cells.number(heading);
    try {
      double age = years.orElse(Condition.USUAL.years());
      if (age != Math.rint(age)) {
        throw new Refused(
            "The age is " + age + ", but is told in whole years, as in " + (int) age + ".");
      }
      return new Condition((int) age, training);
    } catch (Refused e) {
      cells.add(heading, e);
      return Condition.USUAL;
    }
  }

  /** The measured lengths, metres. */
  private Map<Part, Double> lengths(ClubCells cells) {
    Map<Part, Double> lengths = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      ClubHeading heading = header.of(Sizes.name(part)).orElse(null);
      if (heading != null) {
        double share = Sizes.width(part) ? 0.5 : 1;
        times(share * heading.factor(), cells.number(heading))
            .ifPresent(length -> lengths.put(part, length));
      }
    }
    return lengths;
  }

  private Person measured(Person usual, Entry entry, List<String> notes) {
    Map<Part, Double> lengths = new EnumMap<>(Part.class);
    lengths.putAll(entry.lengths());
    Links links = Links.of(usual);
    if (lengths.entrySet().stream().allMatch(e -> near(e.getValue(), links.lengthOf(e.getKey())))) {
      return usual;
    }
    boolean settled = lengths.containsKey(Part.SHANK) && lengths.containsKey(Part.THIGH);
    Double trunk = settled ? lengths.remove(Part.TRUNK) : null;
    Person person = usual;
    for (Map.Entry<Part, Double> length : lengths.entrySet()) {
      try {
        person = person.measured(length.getKey(), Units.cm(100 * length.getValue()));
      } catch (Refused e) {
        entry.cells().add(header.of(Sizes.name(length.getKey())).orElseThrow(), e);
      }
    }
    if (trunk != null && entry.cells().faults().isEmpty()) {
      tellTrunk(trunk, Links.of(person).lengthOf(Part.TRUNK), entry.cells(), notes);
    }
    return person;
  }

  private static boolean near(double length, double usual) {
    return Math.abs(length / usual - 1) < AS_USUAL;
  }

  private static void tellTrunk(
      double measured, double follows, ClubCells cells, List<String> notes) {
    if (Math.abs(measured - follows) > WORTH_TELLING) {
      notes.add(
          String.format(
              Locale.ROOT,
              "%s, row %d: with this stature, shank and thigh the trunk has %.1f cm; the measured"
                  + " %.1f cm were not used.",
              cells.label(),
              cells.row(),
              100 * follows,
              100 * measured));
    }
  }
}
