package org.leverbook.checks;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;

/** One row of {@code checks/cases.csv}: what a source prints, and the band that counts as equal. */
record PublishedRow(
    String id,
    String section,
    String kind,
    String title,
    String quantity,
    String unit,
    double low,
    double high,
    String source,
    String status) {

  static List<PublishedRow> all() {
    CsvMapper mapper = new CsvMapper();
    mapper.enable(CsvParser.Feature.TRIM_SPACES);
    CsvSchema schema = CsvSchema.emptySchema().withHeader().withComments();
    try (InputStream in = PublishedRow.class.getResourceAsStream("/checks/cases.csv")) {
      return mapper
          .readerFor(Map.class)
          .with(schema)
          .<Map<String, String>>readValues(in)
          .readAll()
          .stream()
          .map(PublishedRow::of)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PublishedRow of(Map<String, String> row) {
    return new PublishedRow(
        row.get("id"),
        row.get("section"),
        row.get("kind"),
        row.get("setup").split("\\. (?=[A-Z])")[0],
        row.get("quantity"),
        row.get("unit"),
        Double.parseDouble(row.get("accept_low")),
        Double.parseDouble(row.get("accept_high")),
        row.get("source"),
        row.get("status"));
  }

  boolean exact() {
    return kind.equals("exact");
  }

  boolean accepts(double value) {
    return low <= value && value <= high;
  }

  @Override
  public String toString() {
    return id + " " + title + ": " + quantity + " (" + source.split(",")[0] + ", " + status + ")";
  }
}
