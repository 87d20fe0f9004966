package org.leverbook.muscle;

import java.util.List;
import java.util.Locale;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/**
 * A muscle, or several that go by one name, of one person.
 *
 * @param name what was asked for
 * @param parts the muscles, or parts of one, that act for themselves
 * @param person whose; the reference man of the tables unless told otherwise
 */
public record MuscleGroup(String name, List<MuscleRow> parts, Person person) implements Shown {

  private static final Person REFERENCE = Person.of(Sex.MALE, Units.kg(75), Units.m(1.75));

  /** Keeps its own copy of the list. */
  public MuscleGroup {
    parts = List.copyOf(parts);
  }

  /**
   * The muscles of a name, in the reference man of 75 kg and 1.75 m.
   *
   * <p>{@code named("lats")} works; {@code named("latisimus dorsi")} is refused: "There is no
   * muscle called "latisimus dorsi". Did you mean "latissimus dorsi"? muscles() lists all."
   *
   * @param name the gym's, as in "lats", or the anatomical one, as in "latissimus dorsi"
   * @return the muscles
   * @throws Refused if nothing is called so; offers the nearest names
   */
  public static MuscleGroup named(String name) {
    String wanted = Ask.present("name", name, "\"lats\"");
    return new MuscleGroup(wanted.strip(), MuscleNames.find(wanted), REFERENCE);
  }

  /**
   * Every name that {@link #named} knows: the gym's, the anatomical ones, groups and parts.
   *
   * @return the names in small letters, by the alphabet
   */
  public static List<String> names() {
    return MuscleNames.all();
  }

  /**
   * The same muscles of another person.
   *
   * @param lifter who
   * @return the muscles, scaled
   */
  public MuscleGroup of(Person lifter) {
    return new MuscleGroup(name, parts, Ask.present("lifter", lifter, "lifter"));
  }

  /**
   * What they can do together: at each joint and in each direction the arm, the angle at which they
   * are strongest, the greatest moment of one side; below it what they cannot do, and the sources.
   *
   * @return the table
   */
  public Sheet actions() {
    return MuscleSheets.together(this);
  }

  /**
   * What each of them can do alone.
   *
   * @return the table, like that of {@link #actions()}
   */
  public Sheet byPart() {
    return MuscleSheets.apart(this);
  }

  /**
   * What they cannot do, or hardly, at the spine.
   *
   * @return one sentence each, with its source
   */
  public List<String> limits() {
    return SpineLimits.of(this);
  }

  /**
   * All muscles by trade group, of the reference man.
   *
   * @return the table
   */
  public static Sheet all() {
    return all(REFERENCE);
  }

  /**
   * All muscles by trade group, of a person.
   *
   * @param lifter who
   * @return the table
   */
  public static Sheet all(Person lifter) {
    return MuscleSheets.all(Ask.present("lifter", lifter, "lifter"));
  }

  @Override
  public String text() {
    Scaling scaling = Scaling.of(person);
    String inside = Naming.together(parts.stream().map(MuscleRow::name).toList());
    double force = parts.stream().mapToDouble(scaling::maxForce).sum();
    return String.format(
        Locale.ROOT,
        "%s%s, one side of a %s: at most %.0f N. .actions() tells what it can do, .byPart() each"
            + " part of it, .of(lifter) asks it of another person.",
        name,
        inside.equals(name) ? "" : " (" + inside + ")",
        MuscleSheets.who(person),
        force);
  }

  @Override
  public String toString() {
    return text();
  }
}
