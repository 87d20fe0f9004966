package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.leverbook.display.Caution;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * Three quantities varied against each other: a {@link Grid} of the second and third for each value
 * of the first.
 *
 * @param <A> what kind of quantity the first is
 * @param <B> what kind of quantity the second is
 * @param <C> what kind of quantity the third is
 */
public final class GridOfThree<A extends Quantity<A>, B extends Quantity<B>, C extends Quantity<C>>
    extends Cells {

  private final Span<A> first;
  private final Span<B> second;
  private final Span<C> third;
  private final ThreeWay<A, B, C> positions;

  private GridOfThree(
      Span<A> first, Span<B> second, Span<C> third, ThreeWay<A, B, C> positions, List<Cell> cells) {
    super(cells);
    this.first = first;
    this.second = second;
    this.third = third;
    this.positions = positions;
  }

  /**
   * Varies three quantities, in parallel.
   *
   * @param <A> what kind of quantity the first is
   * @param <B> what kind of quantity the second is
   * @param <C> what kind of quantity the third is
   * @param first varies slowest; the plot has a map for each of its values
   * @param second the rows of each map
   * @param third varies fastest; the columns of each map
   * @param positions from three values to a position
   * @return the grid, cells in order, the same on any number of processors
   * @throws Refused if it is too large, or two quantities have one name; a cell that cannot be done
   *     is a cell with its reason, not a refusal
   */
  public static <A extends Quantity<A>, B extends Quantity<B>, C extends Quantity<C>>
      GridOfThree<A, B, C> over(
          Span<A> first, Span<B> second, Span<C> third, ThreeWay<A, B, C> positions) {
    Ask.present("first span", first, "span(\"hip height\", cm(48), cm(72), 9)");
    Ask.present("second span", second, "span(\"bar mass\", kg(40), kg(200), 9)");
    Ask.present("third span", third, "span(\"grip width\", cm(45), cm(75), 3)");
    Ask.present(
        "lambda",
        positions,
        "(h, m, g) -> pull.holding(barbell(m)).hipHeight(h).gripWidth(g).start()");
    GridSize.namesDiffer(first, second, third);
    int all = GridSize.of(first, second, third);
    List<Cell> cells = new ArrayList<>();
    Many.each(
        String.format("grid over %s, %s and %s", first.name(), second.name(), third.name()),
        all,
        i -> {
          int[] at = Places.of(i, second, third);
          return Cell.of(
              Attempt.at(
                  () ->
                      positions.at(
                          first.quantity(at[0]), second.quantity(at[1]), third.quantity(at[2]))),
              first.value(at[0]),
              second.value(at[1]),
              third.value(at[2]));
        },
        (i, cell) -> cells.add(cell));
    return new GridOfThree<>(first, second, third, positions, cells);
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
   * The quantity in between.
   *
   * @return its name, unit and values
   */
  public Span<B> second() {
    return second;
  }

  /**
   * The quantity that varies fastest.
   *
   * @return its name, unit and values
   */
  public Span<C> third() {
    return third;
  }

  /**
   * The second and third quantity at one value of the first.
   *
   * @param index which value of the first, from 0
   * @return a grid of two, nothing computed anew
   * @throws Refused if there is no such value
   */
  public Grid<B, C> slice(int index) {
    if (index < 0 || index >= first.values()) {
      throw new Refused(
          "There is no slice " + index + ": they are 0 to " + (first.values() - 1) + ".");
    }
    int size = second.values() * third.values();
    int from = Math.min(cells.size(), index * size);
    int to = Math.min(cells.size(), from + size);
    Quantity<A> value = first.quantity(index);
    return new Grid<>(
        second,
        third,
        (b, c) -> positions.at(value, b, c),
        cells.subList(from, to).stream().map(Cell::inSlice).toList());
  }

  /**
   * The position of three values, whether in the grid or not.
   *
   * @param firstValue of the first quantity
   * @param secondValue of the second quantity
   * @param thirdValue of the third quantity
   * @return the position, computed anew
   * @throws Refused if there is none; says why
   */
  public Position at(Quantity<A> firstValue, Quantity<B> secondValue, Quantity<C> thirdValue) {
    Ask.present(first.name(), firstValue, first.text(first.from()));
    Ask.present(second.name(), secondValue, second.text(second.from()));
    Ask.present(third.name(), thirdValue, third.text(third.from()));
    return Ask.present(
        "lambda's position", positions.at(firstValue, secondValue, thirdValue), "pull.start()");
  }

  /** The position of a cell, computed anew. */
  public Position at(Cell cell) {
    int index = cells.indexOf(cell);
    if (index < 0) {
      throw new Refused("This cell belongs to another grid: take one of this grid's own cells().");
    }
    int[] places = Places.of(index, second, third);
    return at(first.quantity(places[0]), second.quantity(places[1]), third.quantity(places[2]));
  }

  /**
   * Three values in words.
   *
   * @param cell which
   * @return as in "hip height 48.0 cm, bar mass 40.0 kg, grip width 45.0 cm"
   */
  public String words(Cell cell) {
    return GridSheets.words(spans(), cell);
  }

  /**
   * Why cells are missing, each reason once; first of all where the user stopped the grid.
   *
   * @return sentences; none where every cell could be held
   */
  public List<String> reasons() {
    return GridSheets.reasons(spans(), cells, "cells");
  }

  @Override
  List<Span<?>> spans() {
    return List.of(first, second, third);
  }

  @Override
  public String text() {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            java.util.Locale.ROOT,
            "grid over %s, %s and %s: %,d of %,d positions could be held\n",
            GridSheets.ends(first),
            GridSheets.ends(second),
            GridSheets.ends(third),
            held(),
            cells.size()));
    reasons().forEach(reason -> text.append(reason).append('\n'));
    text.append(
        "table() has a row for each cell, tidyTable() one for each cell and joint; plot(HIP) draws"
            + " a map for each "
            + first.name()
            + ", slice(0) is the grid of the first of them; at(…) gives a position\n");
    return text.append(Caution.TEXT).toString();
  }
}
