package org.leverbook.study;

import java.util.AbstractList;
import java.util.List;
import java.util.Optional;
import java.util.RandomAccess;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import tech.tablesaw.api.Table;

/**
 * People to try a claim on: a list that can be walked, streamed in parallel and shown. It never
 * changes.
 *
 * <p>Two kinds: {@link DrawnPeople} make each person when asked for, so that a hundred thousand
 * cost no memory; a {@link Club} is a list of measured lifters. Both are narrowed by the words of
 * {@link Choosing}.
 */
public abstract sealed class Group extends AbstractList<Person> implements Shown, RandomAccess
    permits DrawnPeople, Club {

  /** So many rows are shown; files hold all. */
  private static final int FIRST = 5;

  /** So many are looked at for the sizes below them: own conditions may be slow. */
  private static final int LOOKED_AT = 500;

  Group() {}

  /**
   * What a person is called in tables and messages.
   *
   * @param number from 0
   * @return as in "man 17", or the label of a club's list
   */
  public abstract String label(int number);

  /**
   * Who they are, in one line.
   *
   * @return as in "100 men, seed 1; thighs over the 90th percentile for stature"
   */
  public abstract String title();

  /**
   * Where they come from and what was left out.
   *
   * @return sentences
   */
  public abstract List<String> notes();

  /**
   * Their sizes: the percentiles 5, 25, 50, 75 and 95 of mass, stature and lengths.
   *
   * @param parts which parts; all when none are named
   * @return the table; of more than 100,000 people, of the first 100,000
   * @throws Refused if the group cannot be used
   */
  public Sheet sizes(Part... parts) {
    return Sizes.of(this, Sizes.MOST, List.of(parts)).sheet().about(this);
  }

  /**
   * The length that so many of the group stay below.
   *
   * @param part which
   * @param percentile 0 to 100 %
   * @return centimetres; of more than 100,000 people, of the first 100,000
   * @throws Refused if the percentile is outside
   */
  public Quantity<Length> percentile(Part part, Quantity<Dimensionless> percentile) {
    double share = Ask.share("percentile", percentile, 0, 1);
    return Sizes.of(this, Sizes.MOST, List.of(Ask.present("part", part, "THIGH")))
        .length(part, share);
  }

  /**
   * The people as a table, a row for each, in the layout that {@link Club#read} takes.
   *
   * @return the sheet
   * @throws Refused for more than 100,000 people
   */
  public Sheet sheet() {
    return PeopleSheets.of(this, size()).about(this);
  }

  /**
   * The people as a Tablesaw table, the same cells as {@link #sheet}.
   *
   * @return the table, units in the column names
   * @throws Refused for more than 100,000 people
   */
  public Table table() {
    return Tables.of(sheet());
  }

  /**
   * Saves the people as CSV, in the layout that {@code lifters(file)} reads.
   *
   * @param file a name that ends in {@code .csv}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String file) {
    return sheet().save(file);
  }

  /** The first few, and the sizes of the first some thousands. */
  List<Sheet> shown() {
    return List.of(
        PeopleSheets.brief(this, Math.min(size(), FIRST), Sizes.USUAL),
        Sizes.of(this, LOOKED_AT, Sizes.USUAL).sheet());
  }

  @Override
  public String text() {
    return String.join("\n\n", shown().stream().map(Sheet::text).toList());
  }

  @Override
  public Optional<String> html() {
    return Optional.of(String.join("", shown().stream().map(s -> s.html().orElseThrow()).toList()));
  }

  @Override
  public String toString() {
    return text();
  }
}
