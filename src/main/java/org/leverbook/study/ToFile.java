package org.leverbook.study;

import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.leverbook.body.JointId;
import org.leverbook.display.Shown;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/**
 * A CSV file to which sweeps and grids of any size are written straight away: rows go to the disk
 * as they are computed, and little stays in memory.
 *
 * <p>{@code ToFile.named("bars.csv").joints(HIP, KNEE).sweep("bar mass", kg(20), kg(200),
 * 1_000_000, m -> start.without("bar").with(barbell(m)))} writes a million rows. The columns are
 * those of {@link ColumnNames}; a last one holds notes, the caution on the first row.
 */
public final class ToFile implements Shown {

  /** Positions in one file; spreadsheets gave up long before. */
  static final int MOST = 100_000_000;

  private final String name;
  private final Forms form;
  private final List<JointId> joints;

  private ToFile(String name, Forms form, List<JointId> joints) {
    this.name = name;
    this.form = form;
    this.joints = joints;
  }

  /**
   * A file.
   *
   * @param name a name that ends in {@code .csv}
   * @return the file; nothing is written yet
   * @throws Refused if the name has another ending
   */
  public static ToFile named(String name) {
    Ask.present("file name", name, "\"sweep.csv\"");
    if (!name.endsWith(".csv")) {
      throw new Refused("A table is saved as .csv, not as \"" + name + "\".");
    }
    return new ToFile(name, Forms.WIDE, Tables.USUAL);
  }

  /**
   * With other joints than the usual ones.
   *
   * @param chosen which, at least one
   * @return the file
   */
  public ToFile joints(JointId... chosen) {
    return new ToFile(name, form, Forms.orUsual(chosen));
  }

  /**
   * In the tidy form: one row for each position and joint.
   *
   * @return the file
   */
  public ToFile tidy() {
    return new ToFile(name, Forms.TIDY, joints);
  }

  /**
   * Varies a quantity, as the word {@code sweep} does.
   *
   * @param <Q> what kind of quantity
   * @param varied what is varied
   * @param from first value; its unit is the table's
   * @param to last value
   * @param values how many, both ends included; 2 to 1,000,000
   * @param position from a value to a position
   * @return what was written
   * @throws Refused if the range is no range, or the disk says no
   */
  public <Q extends Quantity<Q>> Written sweep(
      String varied,
      Quantity<Q> from,
      Quantity<Q> to,
      int values,
      Function<Quantity<Q>, Position> position) {
    return sweep(Span.of(varied, from, to, values), position);
  }

  /**
   * Varies a quantity over a span.
   *
   * @param <Q> what kind of quantity
   * @param span its values
   * @param position from a value to a position
   * @return what was written
   * @throws Refused if the disk says no
   */
  public <Q extends Quantity<Q>> Written sweep(
      Span<Q> span, Function<Quantity<Q>, Position> position) {
    Ask.present("span", span, "span(\"hip height\", cm(48), cm(72), 9)");
    Ask.present("lambda", position, "h -> pull.hipHeight(h).start()");
    return written(
        List.of(span), span.values(), places -> position.apply(span.quantity(places[0])));
  }

  /**
   * Varies two quantities against each other.
   *
   * @param <A> what kind of quantity the first is
   * @param <B> what kind of quantity the second is
   * @param first varies slowest
   * @param second varies fastest
   * @param position from two values to a position
   * @return what was written
   * @throws Refused if there are more than 100,000,000 pairs, or the disk says no
   */
  public <A extends Quantity<A>, B extends Quantity<B>> Written grid(
      Span<A> first, Span<B> second, BiFunction<Quantity<A>, Quantity<B>, Position> position) {
    Ask.present("first span", first, "span(\"hip height\", cm(48), cm(72), 9)");
    Ask.present("second span", second, "span(\"bar mass\", kg(40), kg(200), 9)");
    Ask.present("lambda", position, "(h, m) -> pull.holding(barbell(m)).hipHeight(h).start()");
    GridSize.namesDiffer(first, second);
    return written(
        List.of(first, second),
        GridSize.inFile(first, second),
        places -> position.apply(first.quantity(places[0]), second.quantity(places[1])));
  }

  /**
   * Varies three quantities against each other.
   *
   * @param <A> what kind of quantity the first is
   * @param <B> what kind of quantity the second is
   * @param <C> what kind of quantity the third is
   * @param first varies slowest
   * @param second in between
   * @param third varies fastest
   * @param position from three values to a position
   * @return what was written
   * @throws Refused if there are more than 100,000,000 cells, or the disk says no
   */
  public <A extends Quantity<A>, B extends Quantity<B>, C extends Quantity<C>> Written grid(
      Span<A> first, Span<B> second, Span<C> third, ThreeWay<A, B, C> position) {
    Ask.present("first span", first, "span(\"hip height\", cm(48), cm(72), 9)");
    Ask.present("second span", second, "span(\"bar mass\", kg(40), kg(200), 9)");
    Ask.present("third span", third, "span(\"grip width\", cm(45), cm(75), 3)");
    Ask.present(
        "lambda",
        position,
        "(h, m, g) -> pull.holding(barbell(m)).hipHeight(h).gripWidth(g).start()");
    GridSize.namesDiffer(first, second, third);
    return written(
        List.of(first, second, third),
        GridSize.inFile(first, second, third),
        at -> position.at(first.quantity(at[0]), second.quantity(at[1]), third.quantity(at[2])));
  }

  /**
   * Runs through a lift, held still at each share of the way.
   *
   * @param lift which
   * @param values how many, start and finish included
   * @return what was written
   * @throws Refused if there are too few or too many values, or the disk says no
   */
  public Written through(Lift<?> lift, int values) {
    Ask.present("lift", lift, "backSquat(lifter)");
    return sweep("way", Units.percent(0), Units.percent(100), values, lift::at);
  }

  private Written written(List<Span<?>> spans, int count, Function<int[], Position> positions) {
    return new FileRows(form, spans, joints).write(name, count, positions);
  }

  @Override
  public String text() {
    return name
        + ": nothing is written yet. "
        + (form == Forms.TIDY ? "A row for each position and joint: " : "A row for each position: ")
        + joints.stream().map(JointId::word).collect(Collectors.joining(", "))
        + ". Add .sweep(…), .grid(…) or .through(…).";
  }

  @Override
  public String toString() {
    return text();
  }
}
