package org.leverbook.article;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leverbook.data.DataTable;

/**
 * A data file as a method names it.
 *
 * @param topic what must have been asked for it to be used, as in "muscles"
 * @param file below {@code datasets/}
 * @param use what it is used for
 * @param whose authors and years
 */
record DataSource(String topic, String file, String use, String whose) {

  private static final String MEMORY = "from memory";
  private static final String ASSUMED = "assumption";

  /** All of them, in the order in which a method names them. */
  static List<DataSource> all() {
    List<DataSource> all = new ArrayList<>();
    for (String line : text().lines().toList()) {
      if (!line.isBlank() && !line.startsWith("#")) {
        String[] cells = line.split(" \\| ");
        all.add(new DataSource(cells[0], cells[1], cells[2], cells[3]));
      }
    }
    return all;
  }

  /** What the file itself says of how sure its numbers are; empty where all were read. */
  String doubt() {
    DataTable table = DataTable.read(file);
    boolean memory = says(table, MEMORY);
    boolean assumed = says(table, ASSUMED) || says(table, "estimate");
    return memory && assumed
        ? "partly from memory, partly assumed"
        : memory ? "partly from memory" : assumed ? "partly assumed" : "";
  }

  private static boolean says(DataTable table, String word) {
    List<String> columns = table.columns().stream().filter(c -> c.contains("status")).toList();
    return table.sources().stream().anyMatch(line -> lower(line).contains(word))
        || table.rows().stream()
            .anyMatch(row -> columns.stream().anyMatch(c -> lower(row.text(c)).contains(word)));
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  private static String text() {
    try (InputStream in = DataSource.class.getResourceAsStream("sources.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
