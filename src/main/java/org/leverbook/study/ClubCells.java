package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.quantity.Refused;

/** Reads the cells of one row of a club's list; what cannot be read is kept as a fault. */
final class ClubCells {

  private final ClubFile file;
  private final ClubFile.Line line;
  private final ClubHeading.Header header;
  private final List<Fault> faults = new ArrayList<>();
  private final String label;

  /**
   * What is wrong with a cell.
   *
   * @param row the row, as a spreadsheet counts them
   * @param label whose row
   * @param column the heading of the column; empty where the whole row is wrong
   * @param cell what stands there
   * @param reason what is wrong and what to change
   */
  record Fault(int row, String label, String column, String cell, String reason) {}

  ClubCells(ClubFile file, ClubHeading.Header header, ClubFile.Line line) {
    this.file = file;
    this.header = header;
    this.line = line;
    String written = header.of(ClubHeading.LABEL).map(h -> line.cell(h.column())).orElse("");
    label = written.isEmpty() ? "row " + line.number() : written;
    width();
  }

  /** The label, or the number of the row. */
  String label() {
    return label;
  }

  int row() {
    return line.number();
  }

  List<Fault> faults() {
    return faults;
  }

  /** Whether the row cannot be taken apart: then its cells say nothing. */
  boolean broken() {
    return faults.stream().anyMatch(f -> f.column().isEmpty());
  }

  private void width() {
    if (line.cells().isEmpty()) {
      add("", line.text(), "A quotation mark is opened and not closed.");
      return;
    }
    int width = file.header().size();
    boolean more = line.cells().stream().skip(width).anyMatch(cell -> !cell.isEmpty());
    if (more) {
      add(
          "",
          line.text(),
          String.format(
              Locale.ROOT,
              "The row has %d cells, the header %d.%s",
              line.cells().size(),
              width,
              file.separator() == ','
                  ? " Is a comma in it a decimal comma? Then separate the columns by semicolons, or"
                      + " write decimal points."
                  : ""));
    }
  }

  /** Keeps a fault of this row. */
  void add(String column, String cell, String reason) {
    faults.add(new Fault(line.number(), label, column, cell, reason));
  }

  /** Keeps what a cell was refused for. */
  void add(ClubHeading heading, Refused refused) {
    add(heading.text(), line.cell(heading.column()), refused.getMessage());
  }

  /** A number in its column's unit; empty where the cell is empty or faulty. */
  OptionalDouble number(ClubHeading heading) {
    String cell = line.cell(heading.column());
    if (cell.isEmpty()) {
      return OptionalDouble.empty();
    }
    if (file.separator() == ',' && cell.matches("-?\\d{1,3}(,\\d{3})+(\\.\\d*)?")) {
      add(
          heading.text(),
          cell,
          "Does the comma part thousands, or is it a decimal comma? Write the number without it.");
      return OptionalDouble.empty();
    }
    String plain = cell.matches("[^.,]*,[^.,]*") ? cell.replace(',', '.') : cell;
    if (!plain.matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)")) {
      add(heading.text(), cell, "\"" + cell + "\" is no number.");
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(Double.parseDouble(plain));
  }

  /** A number that must be there. */
  OptionalDouble needed(ClubHeading heading) {
    if (line.cell(heading.column()).isEmpty()) {
      add(heading.text(), "", "The " + heading.kind() + " is missing.");
    }
    return number(heading);
  }

  Sex sex() {
    ClubHeading heading = header.of(ClubHeading.SEX).orElseThrow();
    return word(
        heading,
        cell ->
            switch (cell) {
              case "male", "m", "man" -> Sex.MALE;
              case "female", "f", "w", "woman" -> Sex.FEMALE;
              case "" -> throw new Refused("The sex is missing: write male or female.");
              default -> throw new Refused("\"" + cell + "\" is not known: write male or female.");
            },
        null);
  }

  Training training() {
    return header
        .of(ClubHeading.TRAINING)
        .map(h -> word(h, ClubCells::training, Training.UNTRAINED))
        .orElse(Training.UNTRAINED);
  }

  private static Training training(String cell) {
    if (cell.isEmpty()) {
      return Training.UNTRAINED;
    }
    for (Training training : Training.values()) {
      if (training.word().equals(cell)) {
        return training;
      }
    }
    if (cell.matches("\\d{1,3}")) {
      return Training.level(Integer.parseInt(cell));
    }
    throw new Refused(
        "\"" + cell + "\" is not known: write untrained, trained or competitive, or 1, 2 or 3.");
  }

  private <T> T word(ClubHeading heading, Function<String, T> meaning, T otherwise) {
    try {
      return meaning.apply(line.cell(heading.column()).toLowerCase(Locale.ROOT));
    } catch (Refused e) {
      add(heading, e);
      return otherwise;
    }
  }
}
