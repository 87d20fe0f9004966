package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import org.leverbook.body.JointId;
import org.leverbook.display.Illustrator;
import org.leverbook.display.MovingPicture;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import tech.tablesaw.api.Table;

/**
 * One quantity varied, or one thing after another tried, one position for each.
 *
 * <p>The values run in parallel; the numbers are the same on any number of processors. Do not sweep
 * in a class's static initialiser: the other threads wait for that class, and it for them. A sweep
 * that the user stops holds the rows that were done, and says so. Its columns stand in {@link
 * ColumnNames}.
 */
public final class Sweep implements Shown {

  /** More do not fit into memory; a file takes them. */
  static final int MOST = 100_000;

  private final Varied varied;
  private final String subject;
  private final List<SweepRow> rows;
  private final int asked;

  private Sweep(Varied varied, String subject, List<SweepRow> rows, int asked) {
    this.varied = varied;
    this.subject = subject;
    this.rows = List.copyOf(rows);
    this.asked = asked;
  }

  /** Computes every row. */
  private static Sweep of(
      Varied varied, String subject, int values, IntFunction<Position> positions) {
    if (values > MOST) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A sweep of %,d values is too large: at most %,d positions fit. Take fewer, or write"
                  + " them straight into a file: toFile(\"sweep.csv\").sweep(...).",
              values,
              MOST));
    }
    List<SweepRow> rows = new ArrayList<>();
    Many.each(
        subject.isEmpty() ? "sweep over " + varied.name() : subject,
        values,
        i -> SweepRow.of(varied.value(i), varied.label(i), values, () -> positions.apply(i)),
        (i, row) -> rows.add(row));
    return new Sweep(varied, subject, rows, values);
  }

  /**
   * Varies a quantity.
   *
   * <p>{@code over("hip height", cm(50), cm(72), 23, h -> pull.hipHeight(h).start())} works; zero
   * steps are refused.
   *
   * @param <Q> what kind of quantity
   * @param name what is varied
   * @param from first value; its unit is the table's
   * @param to last value, may be the smaller one
   * @param values how many values, first and last included; 2 to 100,000
   * @param position from a value to a position
   * @return the sweep, rows in order
   * @throws Refused if the range is no range; a value that cannot be done is a row, not a refusal
   */
  public static <Q extends Quantity<Q>> Sweep over(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      int values,
      Function<Quantity<Q>, Position> position) {
    return over(Span.of(name, from, to, values), position);
  }

  /**
   * Varies a quantity over a span.
   *
   * @param <Q> what kind of quantity
   * @param span its values
   * @param position from a value to a position
   * @return the sweep, rows in order
   * @throws Refused if there are more than 100,000 values
   */
  public static <Q extends Quantity<Q>> Sweep over(
      Span<Q> span, Function<Quantity<Q>, Position> position) {
    Ask.present("span", span, "span(\"hip height\", cm(48), cm(72), 9)");
    Ask.present("lambda", position, "h -> pull.hipHeight(h).start()");
    return of(Varied.of(span), "", span.values(), i -> position.apply(span.quantity(i)));
  }

  /**
   * Tries one thing after another: grips, lifters, lifts, supports.
   *
   * <p>{@code over("lifter", people(FEMALE, 5, 1), l -> backSquat(l).finish())} works; an empty
   * list is refused.
   *
   * @param <T> what kind of thing
   * @param name what they are, as in "grip"
   * @param things one or more; each is called what it calls itself
   * @param position from a thing to a position
   * @return the sweep, a row for each
   * @throws Refused if there is nothing to try
   */
  public static <T> Sweep over(
      String name, List<? extends T> things, Function<? super T, Position> position) {
    Ask.present("lambda", position, "g -> row.grip(g).finish()");
    List<T> tried = Names.checked(name, things);
    return of(Varied.of(name, tried), "", tried.size(), i -> position.apply(tried.get(i)));
  }

  /**
   * Runs through a movement, moving, over time.
   *
   * @param movement which
   * @param values how many instants, both ends included; at least two
   * @return a row for each instant
   * @throws Refused if there are too few or too many values
   */
  public static Sweep over(Movement movement, int values) {
    Ask.present("movement", movement, "movement(\"pull\", smooth(seconds(1.5)), ...)");
    return over("time", Units.seconds(0), movement.duration(), values, movement::at);
  }

  /**
   * Runs through a lift, held still at each share of the way.
   *
   * @param lift which
   * @param values how many, start and finish included; at least two
   * @return a row for each, by the way in per cent
   * @throws Refused if there are too few or too many values
   */
  public static Sweep through(Lift<?> lift, int values) {
    Ask.present("lift", lift, "backSquat(lifter)");
    var way = Span.of("way", Units.percent(0), Units.percent(100), values);
    return of(Varied.of(way), "through the " + lift.name(), values, i -> lift.at(way.quantity(i)));
  }

  /**
   * Runs through a movement, moving, at even shares of its way.
   *
   * @param movement which
   * @param values how many, start and end included; at least two
   * @return a row for each, by the way in per cent
   * @throws Refused if there are too few or too many values
   */
  public static Sweep through(Movement movement, int values) {
    Ask.present("movement", movement, "movement(\"pull\", smooth(seconds(1.5)), ...)");
    var way = Span.of("way", Units.percent(0), Units.percent(100), values);
    return of(
        Varied.of(way),
        "through the " + movement.name(),
        values,
        i -> movement.onTheWay(way.quantity(i)));
  }

  /**
   * The same positions against a joint's angle instead of what was varied: where a lift goes down
   * and up again, each angle has two.
   *
   * @param joint which; of a paired joint, the right side
   * @return the sweep, its rows in the same order; without those that gave no position
   * @throws Refused if the joint does not flex
   */
  public Sweep against(JointId joint) {
    Ask.present("joint", joint, "KNEE");
    List<SweepRow> seen =
        rows.stream().filter(SweepRow::found).map(row -> row.against(joint)).toList();
    int missing = asked - rows.size();
    return new Sweep(
        Varied.of(joint.word() + " flexion", "°"), subject, seen, seen.size() + missing);
  }

  /**
   * The same positions against any quantity of theirs instead of what was varied, as in {@code
   * against("trunk lean", "°", p -> p.fact("trunk lean"))}.
   *
   * @param what as in "trunk lean"
   * @param unit its unit; may be empty
   * @param of from a position to the number
   * @return the sweep, its rows in the same order; without those that gave no position
   * @throws Refused if something is missing, or it is no number somewhere
   */
  public Sweep against(String what, String unit, ToDoubleFunction<Position> of) {
    String name = Ask.present("name", what, "\"trunk lean\"");
    Ask.present("unit of the " + name, unit, "\"°\"; where it has none, \"\"");
    Ask.present("lambda", of, "p -> p.fact(\"trunk lean\")");
    List<SweepRow> seen = new ArrayList<>();
    for (SweepRow row : rows) {
      if (row.found()) {
        double number = of.applyAsDouble(row.position());
        if (!Double.isFinite(number)) {
          throw new Refused("The " + name + " is no number (" + number + ") at " + row + ".");
        }
        seen.add(row.against(number));
      }
    }
    int missing = asked - rows.size();
    return new Sweep(Varied.of(name, unit), subject, seen, seen.size() + missing);
  }

  /**
   * What is varied.
   *
   * @return as in "hip height"
   */
  public String name() {
    return varied.name();
  }

  /**
   * Its unit.
   *
   * @return as in "cm"; empty where things have names instead of values
   */
  public String unit() {
    return varied.unit();
  }

  /**
   * Whether the rows have names instead of values.
   *
   * @return true for a sweep over a list of things
   */
  public boolean named() {
    return varied.named();
  }

  /**
   * What came of each value.
   *
   * @return in order; fewer than asked for where the user stopped it
   */
  public List<SweepRow> rows() {
    return rows;
  }

  /**
   * The position of a row: kept up to 500 rows, computed anew beyond.
   *
   * @param row from 0
   * @return the position
   * @throws Refused if there is no such row, or none of its position; says why
   */
  public Position position(int row) {
    if (row < 0 || row >= rows.size()) {
      throw new Refused(
          "There is no row " + row + ": the rows are 0 to " + (rows.size() - 1) + ".");
    }
    return rows.get(row).position();
  }

  /**
   * What it is about in a few words.
   *
   * @return as in "against hip height" or "through the back squat, against knee flexion"
   */
  public String title() {
    if (subject.isEmpty()) {
      return (named() ? "by " : "against ") + name();
    }
    return name().equals("way") ? subject : subject + ", against " + name();
  }

  /**
   * The sweep in the wide form: a row for each value, a column for the moment and the arm at each
   * joint, the balance, and the reason where nothing could be held.
   *
   * @param joints which joints; hip, knee, ankle, low back, mid back and shoulder when none are
   *     named
   * @return a Tablesaw table, units in the column names; moments are signed, positive where the
   *     resistance flexes
   */
  public Table table(JointId... joints) {
    return Tables.of(sheet(joints));
  }

  /**
   * The wide form as a plain sheet, the same cells as {@link #table}.
   *
   * @param joints which joints, or none for the usual ones
   * @return the sheet
   */
  public Sheet sheet(JointId... joints) {
    return SweepSheets.of(this, Forms.WIDE, Forms.orUsual(joints)).about(this);
  }

  /**
   * The sweep in the tidy form: a row for each value and joint, with side, moment, arm, what the
   * resistance tends to do, what opposes it, and the reason where nothing could be held.
   *
   * @param joints which joints, or none for the usual ones
   * @return a Tablesaw table, units in the column names
   */
  public Table tidyTable(JointId... joints) {
    return Tables.of(tidySheet(joints));
  }

  /**
   * The tidy form as a plain sheet, the same cells as {@link #tidyTable}.
   *
   * @param joints which joints, or none for the usual ones
   * @return the sheet
   */
  public Sheet tidySheet(JointId... joints) {
    return SweepSheets.of(this, Forms.TIDY, Forms.orUsual(joints)).about(this);
  }

  /**
   * Moment against the varied quantity as lines; of named things as bars.
   *
   * @param joints which joints, or none for the usual ones
   * @return the plot
   * @throws Refused if nothing could be held
   */
  public Picture plot(JointId... joints) {
    return Illustrator.pictureOf(this, Forms.orUsual(joints));
  }

  /**
   * The positions one after another as a moving picture, with the plot and the numbers, as in
   * {@code byHip.animation().save("hips.html")}.
   *
   * @param joints to which arms are drawn; the picture's usual ones when none are named
   * @return the moving picture
   * @throws Refused if nothing could be held, or there are more than 400 rows
   */
  public MovingPicture animation(JointId... joints) {
    return Illustrator.movingPictureOf(this, List.of(joints));
  }

  /**
   * Saves the table of the usual joints as CSV, with reasons and caution.
   *
   * @param file a name that ends in {@code .csv}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String file) {
    return sheet().save(file);
  }

  /**
   * How many values could be held.
   *
   * @return between zero and the number of rows
   */
  public long held() {
    return rows.stream().filter(SweepRow::held).count();
  }

  /**
   * What a reader should know of how it came about.
   *
   * @return sentences; none where all that was asked for is there
   */
  public List<String> notes() {
    return Stopped.note(rows.size(), asked);
  }

  Varied varied() {
    return varied;
  }

  String subject() {
    return subject;
  }

  @Override
  public String text() {
    return SweepSheets.text(this);
  }

  @Override
  public String toString() {
    return text();
  }
}
