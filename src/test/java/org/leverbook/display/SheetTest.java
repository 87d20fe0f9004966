package org.leverbook.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.quantity.Refused;

class SheetTest {

  private static Sheet sheet(Object... cells) {
    return new Sheet(
        "Moments",
        List.of(Sheet.Column.text("joint"), new Sheet.Column("moment", "N·m", 1)),
        List.of(new ArrayList<>(Arrays.asList(cells))),
        List.of("A note, with \"quotes\"."));
  }

  @Test
  void columns_line_up_and_carry_their_units() {
    assertThat(sheet("hip", 318.04).text())
        .isEqualTo("Moments\njoint  moment (N·m)\nhip           318.0\nA note, with \"quotes\".");
  }

  @Test
  void a_file_keeps_every_digit_and_the_note_on_the_first_row() {
    assertThat(sheet("hip", 318.0412345678901).csv())
        .isEqualTo(
            "joint,moment (N·m),note\nhip,318.0412345678901,\"A note, with \"\"quotes\"\".\"\n");
  }

  @Test
  void numbers_in_files_are_as_short_as_every_digit_allows() {
    assertThat(FileCells.number(48)).isEqualTo("48");
    assertThat(FileCells.number(0.1 + 0.2)).isEqualTo("0.30000000000000004");
    assertThat(FileCells.number(12_345_678.9)).isEqualTo("12345678.9");
    assertThat(FileCells.number(-1.5e-7)).isEqualTo("-0.00000015");
    assertThat(FileCells.number(-1e-13)).isEqualTo("-1E-13");
    assertThat(FileCells.number(1e300)).isEqualTo("1E300");
  }

  @Test
  void json_has_an_object_for_each_row_and_the_note_on_the_first() {
    assertThat(sheet("hip", 318.0412345678901).json())
        .isEqualTo(
            """
            [
            {"joint":"hip","moment (N·m)":318.0412345678901,"note":"A note, with \\"quotes\\"."}
            ]
            """);
    assertThat(sheet("hip", null).json()).contains("\"moment (N·m)\":null");
  }

  @Test
  void a_table_is_saved_by_its_ending(@TempDir Path folder) throws IOException {
    sheet("hip", 318.5).save(folder.resolve("a.csv").toString());
    sheet("hip", 318.5).save(folder.resolve("a.json").toString());
    assertThat(folder.resolve("a.csv")).content().isEqualTo(sheet("hip", 318.5).csv());
    assertThat(folder.resolve("a.json")).content().isEqualTo(sheet("hip", 318.5).json());
    assertThatThrownBy(() -> sheet("hip", 318.5).save("a.xlsx"))
        .isInstanceOf(Refused.class)
        .hasMessage("A table is saved as .csv or .json, not as \"a.xlsx\".");
  }

  @Test
  void nothing_to_say_is_an_empty_cell() {
    assertThat(sheet("hip", null).csv()).contains("\nhip,,");
  }

  @Test
  void rounding_never_shows_as_minus_zero() {
    assertThat(sheet("hip", -1e-13).text()).contains(" 0.0").doesNotContain("-0");
    assertThat(sheet("hip", -0.0).csv()).contains("hip,0,");
  }

  @Test
  void no_number_that_is_none_gets_into_a_table() {
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> sheet("hip", bad)).isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void html_shows_the_same_cells_escaped() {
    assertThat(sheet("<hip>", 318.04).html().orElseThrow())
        .contains("<td>&lt;hip&gt;</td><td>318.0</td>");
  }

  @Test
  void a_wrong_column_or_row_is_answered_with_those_that_exist() {
    assertThat(sheet("hip", 318.04).cell(0, "moment")).isEqualTo(318.04);
    assertThatThrownBy(() -> sheet("hip", 1.0).cell(0, "moments"))
        .isInstanceOf(Refused.class)
        .hasMessage("There is no column \"moments\"; there are joint, moment.");
    assertThatThrownBy(() -> sheet("hip", 1.0).cell(1, "moment"))
        .isInstanceOf(Refused.class)
        .hasMessage("There is no row 1: the rows are 0 to 0.");
  }
}
