package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.leverbook.data.DataTable;

/** The defaults are the rules' values (check cases D01 to D07). */
class EquipmentTest {

  private static final DataTable RULES = DataTable.read("equipment/bars_and_plates.csv");

  private static double rule(String id) {
    return RULES.only(id, r -> r.is("id", id)).number("value");
  }

  @Test
  void the_default_bar_and_plate_are_those_of_the_rules() {
    assertThat(2 * Barbell.GRIP_RADIUS).isEqualTo(rule("D01e"));
    assertThat(2 * Barbell.STANDARD_PLATE_RADIUS).isEqualTo(rule("D05a"));
    assertThat(Barbell.STANDARD_PLATE_RADIUS).isEqualTo(rule("D05b"));
    assertThat(PivotingBar.USUAL_BAR).isEqualTo(rule("D01a"));
    assertThat(PivotingBar.USUAL_LENGTH).isEqualTo(rule("D01b"));
  }
}
