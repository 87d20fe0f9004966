package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Refused;
import tech.tablesaw.api.Table;

/**
 * Which inputs move an answer most: each alone from its 5th to its 95th percentile, and its share
 * of the scatter when all are off at once.
 *
 * @param band the answer and how sure it is
 * @param rows one an input, the strongest first
 * @param explained the part of the scatter that a straight line in all inputs explains; empty where
 *     there were too few cases
 * @param other the answer by the other published table of masses, which is a choice and no spread
 */
public record Sensitivity(DoubtBand band, List<Row> rows, Optional<Double> explained, Choice other)
    implements Shown {

  /** An input whose swing is smaller than this part of the answer's band moves nothing. */
  private static final double NOTHING = 1e-3;

  /** So many of those are named. */
  private static final int NAMED = 8;

  /**
   * One input.
   *
   * @param input as in "thigh mass"
   * @param from its 5th percentile, as a difference from the usual value
   * @param to its 95th
   * @param atFrom the answer there, everything else as usual; null where it cannot be held
   * @param atTo the answer at the other end; null where it cannot be held
   * @param swing between the two and the plain answer, largest less smallest
   * @param share of the variance of all cases; null where there were too few
   * @param source who says how far it may be off
   */
  public record Row(
      String input,
      String from,
      String to,
      Double atFrom,
      Double atTo,
      double swing,
      Double share,
      String source) {}

  /**
   * Another choice.
   *
   * @param what is chosen
   * @param answer what comes of it; zero where nothing does
   * @param reason why nothing does; empty where something does
   */
  public record Choice(String what, double answer, String reason) {}

  /** Keeps its own copy of the list. */
  public Sensitivity {
    rows = List.copyOf(rows);
  }

  /**
   * The inputs that move the answer, the strongest first.
   *
   * @return without those that do not
   */
  public List<Row> moving() {
    double least = NOTHING * Math.max(band.high() - band.low(), 1e-12);
    return rows.stream().filter(r -> r.swing() > least || notHeld(r)).toList();
  }

  private static boolean notHeld(Row row) {
    return row.atFrom() == null || row.atTo() == null;
  }

  /**
   * The table, strongest input first.
   *
   * @return one row an input that moves the answer
   */
  public Sheet sheet() {
    int d = Math.min(3, band.decimals() + 1);
    List<List<Object>> cells = new ArrayList<>();
    for (Row row : moving()) {
      List<Object> line = new ArrayList<>();
      line.add(row.input());
      line.add(row.from());
      line.add(row.to());
      line.add(row.atFrom());
      line.add(row.atTo());
      line.add(row.swing());
      line.add(row.share() == null ? null : Math.max(0, 100 * row.share()));
      line.add(row.source());
      cells.add(line);
    }
    return new Sheet(
            band.what() + " " + band.sentence(),
            List.of(
                Column.text("input"),
                Column.text("5 %"),
                Column.text("95 %"),
                new Column("answer at 5 %", band.unit(), d),
                new Column("answer at 95 %", band.unit(), d),
                new Column("swing", band.unit(), d),
                new Column("share of variance", "%", 1),
                Column.text("source")),
            cells,
            notes())
        .about(this);
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    List<Row> moving = moving();
    List<String> still = rows.stream().filter(r -> !moving.contains(r)).map(Row::input).toList();
    if (!still.isEmpty()) {
      notes.add(
          "Moved by less than a thousandth of the band: "
              + String.join("; ", still.subList(0, Math.min(NAMED, still.size())))
              + (still.size() > NAMED ? "; and " + (still.size() - NAMED) + " others." : "."));
    }
    if (moving.stream().anyMatch(Sensitivity::notHeld)) {
      notes.add(
          "Where an answer is missing, the position could not be held with that input alone.");
    }
    explained.ifPresent(
        part ->
            notes.add(
                String.format(
                    Locale.ROOT,
                    "Shares of variance add up to %.0f %%: what a straight line in all inputs"
                        + " explains.",
                    100 * part)));
    notes.add(
        other.reason().isEmpty()
            ? "With " + other.what() + " " + band.number(other.answer()) + " " + band.unit() + "."
            : "With " + other.what() + ": " + other.reason());
    notes.addAll(band.notes());
    return notes;
  }

  /**
   * The same cells as a Tablesaw table.
   *
   * @return one row an input that moves the answer
   */
  public Table table() {
    return Tables.of(sheet());
  }

  /**
   * The inputs as bars, the strongest on top.
   *
   * @return the picture
   */
  public Picture picture() {
    return Illustrator.pictureOf(this, List.of());
  }

  /**
   * Saves the table as CSV.
   *
   * @param file a name that ends in {@code .csv}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String file) {
    return sheet().save(file);
  }

  @Override
  public String text() {
    return sheet().text();
  }

  @Override
  public Optional<String> html() {
    return sheet().html();
  }

  @Override
  public String toString() {
    return text();
  }
}
