package org.leverbook.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leverbook.language.Vocabulary.HIP;
import static org.leverbook.language.Vocabulary.L5_S1;
import static org.leverbook.language.Vocabulary.backSquat;
import static org.leverbook.language.Vocabulary.barbell;
import static org.leverbook.language.Vocabulary.claim;
import static org.leverbook.language.Vocabulary.claims;
import static org.leverbook.language.Vocabulary.cm;
import static org.leverbook.language.Vocabulary.compare;
import static org.leverbook.language.Vocabulary.deg;
import static org.leverbook.language.Vocabulary.doubt;
import static org.leverbook.language.Vocabulary.frontSquat;
import static org.leverbook.language.Vocabulary.grid;
import static org.leverbook.language.Vocabulary.help;
import static org.leverbook.language.Vocabulary.hinge;
import static org.leverbook.language.Vocabulary.kg;
import static org.leverbook.language.Vocabulary.liftOf;
import static org.leverbook.language.Vocabulary.lowest;
import static org.leverbook.language.Vocabulary.noLoad;
import static org.leverbook.language.Vocabulary.people;
import static org.leverbook.language.Vocabulary.person;
import static org.leverbook.language.Vocabulary.settings;
import static org.leverbook.language.Vocabulary.sweep;
import static org.leverbook.language.Vocabulary.through;

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

  @Test
  void it_names_every_column_of_people_comparisons_doubts_and_claims() {
    String page = help("columns").text();
    var lifter = person(Sex.MALE, kg(85), cm(178));
    var two = List.of(PULL.hipHeight(cm(60)).start(), PULL.hipHeight(cm(70)).start());
    var squats =
        claim("the hip carries over 60 N·m")
            .margin("N·m", p -> p.moment(HIP).size() - 60)
            .over(
                people(4, 1),
                List.of(liftOf("squat", who -> backSquat(who).holding(barbell(kg(20))))),
                settings("depth", deg(0), deg(10), 2, (l, d) -> l.depth(d).finish()));
    List<Table> tables =
        List.of(
            sweep("hip height", cm(60), cm(70), 2, h -> PULL.hipHeight(h).start()).tidyTable(HIP),
            through(backSquat(lifter), 2).table(HIP),
            people(2, 1).table(),
            compare(two.get(0), two.get(1)).table(),
            compare(two.get(0), two.get(1)).wideTable(HIP),
            compare(backSquat(lifter), frontSquat(lifter)).table(),
            doubt(PULL.hipHeight(cm(60))).draws(100).sensitivity(HIP).table(),
            squats.table());
    for (Table table : tables) {
      for (String name : table.columnNames()) {
        assertThat(page).as(table.name()).contains(general(name));
      }
    }
    claims(squats).columns().forEach(c -> assertThat(page).contains(c.heading()));
  }

  /** The name as the page tells it: any joint, any part, any unit of an answer. */
  private static String general(String name) {
    return name.replaceAll("^hip (moment|arm) ", "<joint> $1 ")
        .replaceAll("^[a-z ]+ \\(% of stature\\)$", "<part> (% of stature)")
        .replaceAll("^(answer at .*|margin|swing) \\(N·m\\)$", "$1 (<unit>)")
        .replaceAll(
            "^(foot|shank|thigh|trunk|neck|upper arm|forearm|hand|.* width) \\(cm\\)$", "$1");
  }
}
