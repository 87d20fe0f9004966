package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import javax.measure.Quantity;
import org.leverbook.body.JointId;
import org.leverbook.display.Sheet;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import tech.tablesaw.api.Table;

/**
 * Two quantities varied against each other, one position with its loads and supports for each pair.
 *
 * <p>A pair that cannot be reached or held stays with its reason. For millions of given poses
 * without supports there is {@link PoseGrid}.
 *
 * @param <A> what kind of quantity the first is
 * @param <B> what kind of quantity the second is
 */
public final class Grid<A extends Quantity<A>, B extends Quantity<B>> extends Cells {

  private final Span<A> first;
  private final Span<B> second;
  private final BiFunction<Quantity<A>, Quantity<B>, Position> positions;

  /** A grid of cells that are there; in order, fewer than pairs where the user stopped it. */
  Grid(
      Span<A> first,
      Span<B> second,
      BiFunction<Quantity<A>, Quantity<B>, Position> positions,
      List<Cell> cells) {
    super(cells);
    this.first = first;
    this.second = second;
    this.positions = positions;
  }

  /**
   * Varies two quantities.
   *
   * <p>{@code over(Span.of("hip height", cm(48), cm(72), 9), Span.of("bar mass", kg(40), kg(200),
   * 9), (h, m) -> hinge(lifter).holding(barbell(m)).hipHeight(h).start())} works; two spans of one
   * name are refused, because a table needs two names.
   *
   * <p>The pairs run in parallel. Do not compute a grid in a class's static initialiser: the other
   * threads wait for that class, and it for them.
   *
   * @param <A> what kind of quantity the first is
   * @param <B> what kind of quantity the second is
   * @param first varies slowest; the rows of the wide table
   * @param second varies fastest; the columns of the wide table
   * @param positions from a pair of values to a position
   * @return the grid, pairs in order, the same on any number of processors
   * @throws Refused if it is too large; a pair that cannot be done is a cell, not a refusal
   */
  public static <A extends Quantity<A>, B extends Quantity<B>> Grid<A, B> over(
      Span<A> first, Span<B> second, BiFunction<Quantity<A>, Quantity<B>, Position> positions) {
    Ask.present("first quantity", first, "Span.of(\"hip height\", cm(48), cm(72), 9)");
    Ask.present("second quantity", second, "Span.of(\"bar mass\", kg(40), kg(200), 9)");
    Ask.present(
        "lambda", positions, "(h, m) -> hinge(lifter).holding(barbell(m)).hipHeight(h).start()");
    GridSize.namesDiffer(first, second);
    int pairs = GridSize.of(first, second);
    List<Cell> cells = new ArrayList<>();
    Many.each(
        "grid over " + first.name() + " and " + second.name(),
        pairs,
        i -> {
          int slow = i / second.values();
          int fast = i % second.values();
          return Cell.of(
              Attempt.at(() -> positions.apply(first.quantity(slow), second.quantity(fast))),
              first.value(slow),
              second.value(fast));
        },
        (i, cell) -> cells.add(cell));
    return new Grid<>(first, second, positions, cells);
  }

  /**
   * The quantity that varies slowest.
   *
   * @return its name, unit and values
   */
  public Span<A> first() {
    return first;
  }

  /**
   * The quantity that varies fastest.
   *
   * @return its name, unit and values
   */
  public Span<B> second() {
    return second;
  }

  /**
   * The position of a pair, whether in the grid or not, as in {@code byBoth.at(cm(60),
   * kg(100)).picture()}.
   *
   * @param firstValue of the first quantity
   * @param secondValue of the second quantity
   * @return the position, computed anew
   * @throws Refused if there is none; says why
   */
  public Position at(Quantity<A> firstValue, Quantity<B> secondValue) {
    Ask.present(first.name(), firstValue, first.text(first.from()));
    Ask.present(second.name(), secondValue, second.text(second.from()));
    return Ask.present(
        "lambda's position", positions.apply(firstValue, secondValue), "pull.start()");
  }

  /** The position of a cell, computed anew. */
  public Position at(Cell cell) {
    int index = cells.indexOf(cell);
    if (index < 0) {
      throw new Refused("This cell belongs to another grid: take one of this grid's own cells().");
    }
    return at(first.quantity(index / second.values()), second.quantity(index % second.values()));
  }

  /**
   * The moments at one joint, crossed: a row for each value of the first quantity, a column for
   * each of the second, and the reasons where nothing could be held.
   *
   * @param joint which
   * @return a Tablesaw table, units in the column names
   */
  public Table crossTable(JointId joint) {
    return Tables.of(crossSheet(joint));
  }

  /**
   * The crossed table as a plain sheet, the same cells as {@link #crossTable}.
   *
   * @param joint which
   * @return the sheet
   */
  public Sheet crossSheet(JointId joint) {
    return GridSheets.cross(this, Ask.present("joint", joint, "HIP")).about(this);
  }

  /**
   * A pair in words.
   *
   * @param cell which
   * @return as in "hip height 48.0 cm, bar mass 40.0 kg"
   */
  public String pair(Cell cell) {
    return GridSheets.words(spans(), cell);
  }

  /**
   * Why pairs are missing, each reason once; first of all where the user stopped the grid.
   *
   * @return sentences; none where every pair could be held
   */
  public List<String> reasons() {
    return GridSheets.reasons(spans(), cells, "pairs");
  }

  @Override
  List<Span<?>> spans() {
    return List.of(first, second);
  }

  @Override
  public String text() {
    return GridSheets.text(this);
  }
}
