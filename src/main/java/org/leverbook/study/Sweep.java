package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javax.measure.Quantity;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import tech.tablesaw.api.Table;

/**
 * One quantity varied, one position for each value.
 *
 * @param name what is varied, as in "hip height"
 * @param unit its unit, as in "cm"
 * @param rows one for each value, in order
 */
public record Sweep(String name, String unit, List<Row> rows) implements Shown {

  /**
   * One value.
   *
   * @param value in the sweep's unit
   * @param position what came of it; null where nothing did
   * @param reason why nothing did, or why it cannot be held; empty where it is held
   */
  public record Row(double value, Position position, String reason) {

    /**
     * Whether there is a position, and its supports hold it.
     *
     * @return true if so
     */
    public boolean held() {
      return position != null && position.held();
    }
  }

  /** Keeps its own copy of the list. */
  public Sweep {
    rows = List.copyOf(rows);
  }

  /**
   * Varies a quantity.
   *
   * <p>{@code over("hip height", cm(50), cm(72), 23, h -> pull.hipHeight(h).start())} works; zero
   * steps are refused.
   *
   * <p>The values run in parallel. Do not sweep in a class's static initialiser: the other threads
   * wait for that class, and it for them.
   *
   * @param <Q> what kind of quantity
   * @param name what is varied
   * @param from first value; its unit is the table's
   * @param to last value
   * @param values how many values, first and last included; at least two
   * @param position from a value to a position
   * @return the sweep, rows in order, the same on any number of processors
   * @throws Refused if the range is no range; a value that cannot be done is a row, not a refusal
   */
  public static <Q extends Quantity<Q>> Sweep over(
      String name,
      Quantity<Q> from,
      Quantity<Q> to,
      int values,
      Function<Quantity<Q>, Position> position) {
    Span<Q> span = Span.of(name, from, to, values);
    Ask.present("lambda", position, "h -> pull.hipHeight(h).start()");
    List<Row> rows = new ArrayList<>();
    Many.each(
        "sweep over " + name,
        values,
        i -> {
          Attempt tried = Attempt.at(() -> position.apply(span.quantity(i)));
          return new Row(span.value(i), tried.position(), tried.reason());
        },
        (i, row) -> rows.add(row));
    return new Sweep(name, span.symbol(), rows);
  }

  /**
   * Runs through a movement, moving.
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
   * The same positions against a joint's angle instead of what was varied: where a lift goes down
   * and up again, each angle has two.
   *
   * @param joint which; of a paired joint, the right side
   * @return the sweep, its rows in the same order; without those that gave no position
   */
  public Sweep against(JointId joint) {
    Ask.present("joint", joint, "KNEE");
    List<Row> seen =
        rows.stream()
            .filter(r -> r.position() != null)
            .map(r -> new Row(flexion(r.position(), joint), r.position(), r.reason()))
            .toList();
    return new Sweep(joint.word() + " flexion", "°", seen);
  }

  private static double flexion(Position position, JointId joint) {
    return Math.toDegrees(position.placement().pose().angle(joint, Side.RIGHT, "flexion"));
  }

  /**
   * The sweep as a table: a row for each value, a column for the moment and the arm at each joint,
   * the balance, and the reason where nothing could be held.
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
   * The sweep as a plain sheet, the same cells as {@link #table}.
   *
   * @param joints which joints, or none for the usual ones
   * @return the sheet
   */
  public Sheet sheet(JointId... joints) {
    List<JointId> shown = joints.length == 0 ? Tables.USUAL : List.of(joints);
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(name, unit, decimals()));
    shown.forEach(j -> columns.add(new Column(j.word() + " moment", "N·m", 1)));
    shown.forEach(j -> columns.add(new Column(j.word() + " arm", "cm", 1)));
    columns.add(new Column("balance", "% of foot from heel", 1));
    columns.add(Column.text("reason"));
    List<List<Object>> cells = new ArrayList<>();
    for (Row row : rows) {
      List<Object> line = new ArrayList<>();
      line.add(row.value());
      shown.forEach(j -> line.add(row.held() ? row.position().moment(j).signed() : null));
      shown.forEach(j -> line.add(row.held() ? 100 * row.position().moment(j).signedArm() : null));
      line.add(row.held() ? Tables.balance(row.position()) : null);
      line.add(row.reason());
      cells.add(line);
    }
    return new Sheet(
        "Sweep over " + name,
        columns,
        cells,
        List.of(
            "Moments and arms: positive where they tend to flex the joint; of paired joints, one side.",
            Caution.TEXT));
  }

  /** So many decimals that neighbouring values can be told apart. */
  private int decimals() {
    double step = rows.size() < 2 ? 1 : Math.abs(rows.get(1).value() - rows.get(0).value());
    return Span.decimals(step);
  }

  /**
   * Moment against the varied quantity.
   *
   * @param joints which joints, or none for the usual ones
   * @return the plot
   */
  public Picture plot(JointId... joints) {
    return Illustrator.pictureOf(this, joints.length == 0 ? Tables.USUAL : List.of(joints));
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
    return rows.stream().filter(Row::held).count();
  }

  @Override
  public String text() {
    return sheet().text() + "\n" + held() + " of " + rows.size() + " could be held.";
  }

  @Override
  public String toString() {
    return text();
  }
}
