package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.leverbook.body.JointId;
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
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.numbers.NumberColumnFormatter;

/**
 * One quantity varied, one position for each value.
 *
 * @param name what is varied, as in "hip height"
 * @param unit its unit, as in "cm"
 * @param rows one for each value, in order
 */
public record Sweep(String name, String unit, List<Row> rows) implements Shown {

  /** The joints a table holds when none are named. */
  private static final List<JointId> USUAL =
      List.of(
          JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.L5_S1, JointId.T7_T8, JointId.SHOULDER);

  private static final int MOST_STEPS = 1_000_000;

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
    Unit<Q> unit = Ask.present("first value", from, "cm(48)").getUnit();
    double first = from.getValue().doubleValue();
    double last = Ask.present("last value", to, "cm(72)").to(unit).getValue().doubleValue();
    Ask.present("lambda", position, "h -> pull.hipHeight(h).start()");
    if (values < 2 || values > MOST_STEPS) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A sweep from %s to %s takes 2 to %,d values, not %d.",
              Units.text(from),
              Units.text(to),
              MOST_STEPS,
              values));
    }
    if (first == last) {
      throw new Refused("A sweep needs two different ends, but both are " + Units.text(from) + ".");
    }
    List<Row> rows =
        IntStream.range(0, values)
            .parallel()
            .mapToObj(
                i -> {
                  // Weighted ends, so that the last value is exactly the one asked for.
                  double share = i / (values - 1.0);
                  return row(first * (1 - share) + last * share, unit, position);
                })
            .toList();
    return new Sweep(name, Units.symbol(unit), rows);
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

  private static <Q extends Quantity<Q>> Row row(
      double value, Unit<Q> unit, Function<Quantity<Q>, Position> position) {
    if (Thread.currentThread().isInterrupted()) {
      throw new Refused("The sweep was stopped.");
    }
    try {
      Position found = position.apply(Units.of(value, unit));
      return found != null
          ? new Row(value, found, found.holding().sentence())
          : new Row(value, null, "The lambda gave no position (null).");
    } catch (Refused e) {
      return new Row(value, null, e.getMessage());
    }
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
    Sheet sheet = sheet(joints);
    Table table = Table.create(sheet.title());
    for (int c = 0; c < sheet.columns().size(); c++) {
      int column = c;
      String heading = sheet.columns().get(c).heading();
      if (sheet.columns().get(c).decimals() > 0) {
        DoubleColumn numbers = DoubleColumn.create(heading);
        // For reading only: files keep every digit.
        numbers.setPrintFormatter(NumberColumnFormatter.fixedWithGrouping(1));
        sheet.rows().forEach(row -> append(numbers, (Double) row.get(column)));
        table.addColumns(numbers);
      } else {
        StringColumn texts = StringColumn.create(heading);
        sheet.rows().forEach(row -> texts.append((String) row.get(column)));
        table.addColumns(texts);
      }
    }
    return table;
  }

  private static void append(DoubleColumn column, Double value) {
    if (value == null) {
      column.appendMissing();
    } else {
      column.append(value);
    }
  }

  /**
   * The sweep as a plain sheet, the same cells as {@link #table}.
   *
   * @param joints which joints, or none for the usual ones
   * @return the sheet
   */
  public Sheet sheet(JointId... joints) {
    List<JointId> shown = joints.length == 0 ? USUAL : List.of(joints);
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
      line.add(balance(row));
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

  private static Double balance(Row row) {
    if (!row.held()) {
      return null;
    }
    return row.position().onGround().map(b -> 100 * b.shareOfFoot()).orElse(null);
  }

  /** So many decimals that neighbouring values can be told apart: one to four. */
  private int decimals() {
    double step = rows.size() < 2 ? 1 : Math.abs(rows.get(1).value() - rows.get(0).value());
    return (int) Math.max(1, Math.min(4, Math.ceil(-Math.log10(step) - 1e-9)));
  }

  /**
   * Moment against the varied quantity.
   *
   * @param joints which joints, or none for the usual ones
   * @return the plot
   */
  public Picture plot(JointId... joints) {
    return Illustrator.pictureOf(this, joints.length == 0 ? USUAL : List.of(joints));
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
