package org.leverbook.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leverbook.language.Vocabulary.HIP;
import static org.leverbook.language.Vocabulary.L5_S1;
import static org.leverbook.language.Vocabulary.cm;
import static org.leverbook.language.Vocabulary.grid;
import static org.leverbook.language.Vocabulary.help;
import static org.leverbook.language.Vocabulary.hinge;
import static org.leverbook.language.Vocabulary.kg;
import static org.leverbook.language.Vocabulary.lowest;
import static org.leverbook.language.Vocabulary.noLoad;
import static org.leverbook.language.Vocabulary.person;
import static org.leverbook.language.Vocabulary.sweep;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Sex;
import org.leverbook.lift.Hinge;
import tech.tablesaw.api.Table;

/** The names of columns are a promise to those who read files by them. */
class ColumnsPageTest {

  private static final Hinge PULL = hinge(person(Sex.MALE, kg(85), cm(178))).holding(noLoad());

  @Test
  void the_page_tells_every_column_of_every_kind_of_table() {
    List<Table> tables = new ArrayList<>();
    tables.add(sweep("hip height", cm(60), cm(70), 2, h -> PULL.hipHeight(h).start()).table(HIP));
    var both =
        grid(
            "hip height",
            cm(60),
            cm(70),
            2,
            "stance width",
            cm(30),
            cm(40),
            2,
            (h, w) -> PULL.hipHeight(h).stanceWidth(w).start());
    tables.add(both.table(HIP));
    tables.add(both.crossTable(HIP));
    var best =
        lowest("hip height", cm(60), cm(70), h -> PULL.hipHeight(h).start(), L5_S1).scanned(3);
    tables.add(best.table());
    tables.add(best.andLowest("share", "%", p -> 1.0).table());

    assertThat(tables.stream().map(Table::columnNames))
        .containsExactly(
            List.of(
                "hip height (cm)",
                "hip moment (N·m)",
                "hip arm (cm)",
                "balance (% of foot from heel)",
                "reason"),
            List.of(
                "hip height (cm)",
                "stance width (cm)",
                "hip moment (N·m)",
                "hip arm (cm)",
                "balance (% of foot from heel)",
                "reason"),
            List.of(
                "hip height (cm)",
                "hip moment at stance width 30.0 cm (N·m)",
                "hip moment at stance width 40.0 cm (N·m)",
                "reason"),
            List.of("hip height (cm)", "L5/S1 moment (N·m)", "place", "reason"),
            List.of("hip height (cm)", "L5/S1 moment (N·m)", "share (%)", "place", "reason"));
    assertThat(help("columns").text())
        .contains(
            "<joint> moment (N·m)",
            "<joint> arm (cm)",
            "<joint> moment at <second> <value> (N·m)",
            "balance (% of foot from heel)",
            "\n  place ",
            "\n  reason ",
            "\"note\"");
  }
}
