package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.leverbook.body.JointId;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.strength.Demand;
import tech.tablesaw.api.Table;

/**
 * Positions side by side: what each asks of every joint, and how much more or less than the first.
 *
 * <p>Loads are as given unless said otherwise; the last thing said counts, and is always found from
 * the positions as given. Postures stay while loads change, so a much heavier load may end a
 * balance: then its column says so. An effort is met to 0.01 %.
 *
 * <p>{@code Comparison.of(bent, padded).called("free", "on the pad").atEqualEffort(percent(70))}
 * works; one position alone is refused.
 */
public final class Comparison implements Shown {

  private final List<Entrant<Position>> given;
  private final LoadRule rule;
  private final List<Row> rows;

  /** Whether the loads were chosen for whole ways, and each posture found with its load. */
  private final boolean chosenBefore;

  /**
   * One of the positions.
   *
   * @param name what to call it
   * @param position with the load it is compared at; null where there is no such load
   * @param reason why there is none, or why it cannot be held; empty where it is held
   */
  public record Row(String name, Position position, String reason) {

    /**
     * Whether there is a position, and its supports hold it.
     *
     * @return true if so
     */
    public boolean held() {
      return position != null && position.held();
    }

    /**
     * Who lifts.
     *
     * @return as in "man, 85.0 kg, 178.0 cm"; empty where there is no position
     */
    public String lifter() {
      return position == null ? "" : ComparedNames.who(position);
    }

    /**
     * What is lifted.
     *
     * @return as in "barbell 60.0 kg" or "nothing held"; empty where there is no position
     */
    public String load() {
      return position == null ? "" : ComparedNames.loads(position);
    }

    /**
     * The joint nearest to its limit.
     *
     * @return empty where nothing is held, or nothing of known strength is asked
     */
    public Optional<Demand> limiter() {
      return held() ? position.demands().limiter() : Optional.empty();
    }

    /** Its numbers, as far as they are known. */
    Map<Slot, Reading> readings() {
      return position == null ? Map.of() : Reading.all(position);
    }

    private static Row of(Entrant<Position> entrant) {
      Position shown = entrant.shown();
      return new Row(
          entrant.name(), shown, shown == null ? entrant.reason() : shown.holding().sentence());
    }
  }

  private Comparison(List<Entrant<Position>> given, String loads) {
    this(given, new LoadRule(loads, w -> 1), true);
  }

  private Comparison(List<Entrant<Position>> given, LoadRule rule) {
    this(given, rule, false);
  }

  private Comparison(List<Entrant<Position>> given, LoadRule rule, boolean chosenBefore) {
    this.chosenBefore = chosenBefore;
    this.given = given;
    this.rule = rule;
    List<Entrant<Position>> weighed = rule == LoadRule.AS_GIVEN ? given : Entrant.by(rule, given);
    this.rows = weighed.stream().map(Row::of).toList();
  }

  /**
   * Positions side by side.
   *
   * @param first what the others are set against
   * @param others one to eleven more
   * @return the comparison, loads as given
   * @throws Refused if one is missing, or there are too few or too many
   */
  public static Comparison of(Position first, Position... others) {
    List<Position> all = new ArrayList<>();
    all.add(first);
    all.addAll(Arrays.asList(Ask.present("other position", others, "padded")));
    all.forEach(p -> Ask.present("position", p, "pull.start()"));
    Entrant.counted(all.size(), "positions", "compare(bent, bent.on(chestPad(deg(30))))");
    List<String> names = ComparedNames.of(all.stream().map(Position::name).toList(), all);
    return of(names, all);
  }

  static Comparison of(List<String> names, List<Position> positions) {
    List<Entrant<Position>> entrants = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      entrants.add(Entrant.of(names.get(i), new Weighed.OfPosition(positions.get(i))));
    }
    return new Comparison(entrants, LoadRule.AS_GIVEN);
  }

  /** Whether loads were changed here, and the postures not. */
  boolean posturesKept() {
    return rule != LoadRule.AS_GIVEN && !chosenBefore;
  }

  /** Positions of ways whose loads were chosen already. */
  static Comparison at(List<Entrant<Position>> there, String loads) {
    return new Comparison(there, loads);
  }

  /**
   * The same under names of your own.
   *
   * @param names one for each, in their order
   * @return the changed comparison
   * @throws Refused if there are too few or too many names, or two are alike
   */
  public Comparison called(String... names) {
    return new Comparison(Entrant.called(given, names), rule, chosenBefore);
  }

  /**
   * All with the load of the first, in kilograms; of several loads the one that pulls hardest.
   *
   * @return the changed comparison
   * @throws Refused if the first has no load that is counted in kilograms
   */
  public Comparison atEqualLoad() {
    return new Comparison(given, Entrant.equalLoad(given));
  }

  /**
   * All with one load, as in {@code atEqualLoad(kg(60))}.
   *
   * @param mass 0.1 to 1000 kg; what is worn besides stays
   * @return the changed comparison
   * @throws Refused if it is missing or outside
   */
  public Comparison atEqualLoad(Quantity<Mass> mass) {
    return new Comparison(given, Entrant.equalLoad(mass));
  }

  /**
   * Each with the load at which its limiter gives the same share of its strength as that of the
   * first gives as it is.
   *
   * @return the changed comparison
   * @throws Refused if the effort of the first is not known
   */
  public Comparison atEqualEffort() {
    return new Comparison(given, Entrant.equalEffort(given));
  }

  /**
   * Each with the load at which its limiter gives this share of its strength.
   *
   * @param share 1 to 150 %, as in {@code percent(70)}
   * @return the changed comparison
   * @throws Refused if it is missing or outside
   */
  public Comparison atEqualEffort(Quantity<Dimensionless> share) {
    return new Comparison(given, Entrant.equalEffort(share));
  }

  /**
   * Each with this share of the largest load that it could hold.
   *
   * @param share 1 to 150 %, as in {@code percent(70)}
   * @return the changed comparison
   * @throws Refused if it is missing or outside
   */
  public Comparison atEqualShareOfLargest(Quantity<Dimensionless> share) {
    return new Comparison(given, Entrant.shareOfLargest(share));
  }

  /**
   * What is compared.
   *
   * @return in the order given; with the loads they are compared at
   */
  public List<Row> rows() {
    return rows;
  }

  /**
   * How the loads were chosen.
   *
   * @return as in "loads as given"
   */
  public String loads() {
    return rule.words();
  }

  /**
   * Each position's load, its limiter with its effort, and why one is not held.
   *
   * @return a row for each position
   */
  public Sheet summary() {
    return ComparisonSheets.summary(this).about(this);
  }

  /**
   * Moment and arm at each joint side by side, with difference and ratio to the first.
   *
   * @param joints which joints; hip, knee, ankle, low back, mid back, shoulder and elbow when none
   *     are named
   * @return a row for each joint
   */
  public Sheet moments(JointId... joints) {
    List<JointId> asked = joints.length == 0 ? ComparisonSheets.USUAL : List.of(joints);
    return ComparisonSheets.moments(this, asked).about(this);
  }

  /**
   * The same at every level of the spine.
   *
   * @return L5/S1 to C7/T1, from below
   */
  public Sheet spine() {
    return ComparisonSheets.moments(this, JointId.spine()).about(this);
  }

  /**
   * What the discs of the low back are pressed with, muscles included.
   *
   * @return a row for each disc, with difference and ratio to the first
   */
  public Sheet compression() {
    return InsideComparison.discs(this).about(withMuscles());
  }

  /**
   * What each trade group must give, in one word each.
   *
   * @return a row for each group that is not idle everywhere
   */
  public Sheet verdicts() {
    return InsideComparison.verdicts(this).about(withMuscles());
  }

  /**
   * What floor, pads and seats give.
   *
   * @return a row for each support and part of the body, with the difference to the first
   */
  public Sheet reactions() {
    return InsideComparison.reactions(this).about(this);
  }

  /**
   * Everything of every joint as a tidy table: a row for each position, joint and side.
   *
   * @return a Tablesaw table, units in the column names
   */
  public Table table() {
    return Tables.of(ComparisonTables.tidy(this));
  }

  /**
   * The same in wide form: a row for each position, columns for moment and arm at each joint.
   *
   * @param joints which joints, or none for those of {@link #moments}
   * @return a Tablesaw table, units in the column names
   */
  public Table wideTable(JointId... joints) {
    return Tables.of(
        ComparisonTables.wide(this, joints.length == 0 ? ComparisonSheets.USUAL : List.of(joints)));
  }

  /**
   * The positions beside each other to one scale, with their lines of force and arms, and below
   * them the moments as bars.
   *
   * @param joints which joints, or none for the usual ones
   * @return the picture
   */
  public Picture picture(JointId... joints) {
    return Illustrator.pictureOf(this, List.of(joints));
  }

  /**
   * Saves the tidy table as CSV, or the picture.
   *
   * @param file a name that ends in {@code .csv}, {@code .svg} or {@code .png}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String file) {
    return ComparisonTables.save(file, ComparisonTables.tidy(this), () -> picture());
  }

  /**
   * What a reader must know of it.
   *
   * @return sentences
   */
  public List<String> notes() {
    return ComparisonSheets.notes(this);
  }

  /** What a table of it is made of where muscles were asked. */
  private Object[] withMuscles() {
    Stream<Object> efforts =
        rows.stream()
            .map(Row::position)
            .filter(p -> p != null && p.held())
            .limit(1)
            .map(Position::effort);
    return Stream.concat(Stream.of(this), efforts).toArray();
  }

  @Override
  public String text() {
    return summary().text()
        + "\n\n"
        + moments().text()
        + "\nAlso: .spine(), .compression(), .verdicts(), .reactions(), .table(), .picture()";
  }

  @Override
  public Optional<String> html() {
    return Optional.of(summary().html().orElseThrow() + moments().html().orElseThrow());
  }

  @Override
  public String toString() {
    return text();
  }
}
