package org.leverbook.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.quantity.Refused;

class DataTableTest {

  private static final String GOOD =
      """
      # Source: somebody, 2001, Table 2
      joint,limit_deg,note
      hip,120,"flexed, knee bent"

      knee,,none given
      """;

  @Test
  void a_table_keeps_its_sources_beside_its_numbers() {
    DataTable table = DataTable.parse("ranges.csv", GOOD);
    assertThat(table.sources()).containsExactly("Source: somebody, 2001, Table 2");
    assertThat(table.rows()).hasSize(2);
    assertThat(table.rows().get(0).number("limit_deg")).isEqualTo(120);
    assertThat(table.rows().get(0).text("note")).isEqualTo("flexed, knee bent");
    assertThat(table.rows().get(1).optionalNumber("limit_deg")).isEmpty();
  }

  @Test
  void a_missing_number_is_told_with_file_line_and_column() {
    DataRow knee = DataTable.parse("ranges.csv", GOOD).rows().get(1);
    assertThatThrownBy(() -> knee.number("limit_deg"))
        .isInstanceOf(Refused.class)
        .hasMessage("ranges.csv, line 5, column limit_deg: a number is missing.");
  }

  @Test
  void a_cell_that_is_no_number_is_told_with_its_text() {
    for (String bad : List.of("NaN", "12o", "1e999", "Infinity")) {
      DataRow row = DataTable.parse("ranges.csv", "joint,limit\nhip," + bad).rows().get(0);
      assertThatThrownBy(() -> row.number("limit"))
          .isInstanceOf(Refused.class)
          .hasMessageContaining("ranges.csv, line 2, column limit")
          .hasMessageContaining(bad);
    }
  }

  @Test
  void an_unknown_column_is_answered_with_those_that_exist() {
    DataRow hip = DataTable.parse("ranges.csv", GOOD).rows().get(0);
    assertThatThrownBy(() -> hip.text("limits"))
        .isInstanceOf(Refused.class)
        .hasMessage("ranges.csv has no column \"limits\"; it has joint, limit_deg, note.");
  }

  @Test
  void a_row_of_the_wrong_width_is_told_with_its_line() {
    assertThatThrownBy(() -> DataTable.parse("ranges.csv", "a,b\n1,2\n3"))
        .isInstanceOf(Refused.class)
        .hasMessage("ranges.csv, line 3: 1 cells, but the header has 2.");
  }

  @Test
  void a_table_without_header_is_refused() {
    assertThatThrownBy(() -> DataTable.parse("empty.csv", "# only a remark\n"))
        .isInstanceOf(Refused.class)
        .hasMessage("empty.csv has no header line.");
  }

  static Stream<Path> shipped() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("datasets"))) {
      return files.filter(f -> f.toString().endsWith(".csv")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("shipped")
  void every_table_that_travels_names_its_source_and_reads_whole(Path file) {
    String name = Path.of("datasets").relativize(file).toString().replace('\\', '/');
    DataTable table = DataTable.read(name);
    assertThat(table.sources()).as("source lines of " + name).isNotEmpty();
    assertThat(table.rows()).as("rows of " + name).isNotEmpty();
  }
}
