package org.leverbook.article;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Picture;
import org.leverbook.display.Sheet;
import org.leverbook.figure.LabelWords;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.study.Sweep;
import org.w3c.dom.Element;

/** What a coach finds in an article: numbers that are the values', captions, references, files. */
class ArticleTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static final Hinge PULL =
      Hinge.of(LIFTER).holding(Barbell.of(Units.kg(140))).hipHeight(Units.cm(58));

  private static final Position START = PULL.start();

  private static Sweep byHip() {
    return Sweep.over("hip height", Units.cm(54), Units.cm(66), 3, h -> PULL.hipHeight(h).start());
  }

  @TempDir private Path folder;

  @BeforeEach
  void saveHere() {
    OutputFolder.choose(folder);
  }

  @AfterEach
  void saveWhereItWas() {
    OutputFolder.choose(Path.of(""));
  }

  private static Article lesson() {
    return Article.of("What a hinge asks & <why>")
        .by("club coach, invented")
        .text("The low back bears {}, see {arms} and {heights}.", START.moment(JointId.L5_S1))
        .heading("At the start")
        .figure("arms", START, "Arms of {}", Units.kg(140))
        .table("moments", START.moments(), "Moments at the start")
        .text("{moments} tells *all* of it.")
        .figure("heights", byHip().plot(JointId.HIP), "Against hip height, beside {moments}")
        .table(byHip(), "The same as numbers")
        .quote("My back is _strong_.", "lifter A")
        .note("Lift what you can hold.");
  }

  private String page(Article article) throws IOException {
    article.save("lesson.html");
    return Files.readString(folder.resolve("lesson.html"));
  }

  @Test
  void a_number_in_the_text_is_that_of_the_position() throws Exception {
    String size = String.format(Locale.ROOT, "%.0f", START.moment(JointId.L5_S1).size());
    WellFormed page = WellFormed.of(page(lesson()));
    assertThat(page.texts("p"))
        .contains("The low back bears " + size + " N·m, see Figure 1 and Figure 2.");
  }

  @Test
  void the_cells_of_a_table_are_those_of_the_sheet() throws Exception {
    Sheet sheet = START.moments();
    Element table = WellFormed.of(page(lesson())).all("table").get(0);
    List<String> cells = new java.util.ArrayList<>();
    var found = table.getElementsByTagName("td");
    for (int i = 0; i < found.getLength(); i++) {
      cells.add(found.item(i).getTextContent());
    }
    List<String> expected = new java.util.ArrayList<>();
    for (int r = 0; r < sheet.rows().size(); r++) {
      expected.addAll(sheet.shownRow(r));
    }
    assertThat(cells).isEqualTo(expected).hasSizeGreaterThan(100);
  }

  @Test
  void a_table_of_the_table_library_shows_the_same_cells_as_the_sheet() {
    Sheet sheet = byHip().sheet(JointId.HIP);
    Sheet table = Tables.of(byHip().table(JointId.HIP), 10);
    String arm = String.valueOf(sheet.shownRow(0).get(1));
    assertThat(table.shownRow(0)).contains(arm);
    assertThat(arm).contains(".");
  }

  @Test
  void captions_are_numbered_in_order_and_references_lead_to_them() throws Exception {
    WellFormed page = WellFormed.of(page(lesson()));
    assertThat(page.texts("figcaption"))
        .containsExactly(
            "Figure 1. Arms of 140 kg",
            "Table 1. Moments at the start",
            "Figure 2. Against hip height, beside Table 1",
            "Table 2. The same as numbers");
    List<String> places = page.attributes("id");
    assertThat(page.attributes("href"))
        .contains("#figure-1", "#figure-2", "#table-1")
        .allSatisfy(link -> assertThat(places).contains(link.substring(1)));
  }

  @Test
  void the_page_needs_nothing_else_and_tells_each_picture_to_those_who_listen() throws Exception {
    WellFormed page = WellFormed.of(page(lesson()));
    assertThat(page.fetched()).isEmpty();
    assertThat(page.all("svg")).hasSize(2);
    for (Element picture : page.all("svg")) {
      assertThat(picture.getAttribute("role")).isEqualTo("img");
      for (String name : picture.getAttribute("aria-labelledby").split(" ")) {
        assertThat(page.attributes("id")).containsOnlyOnce(name);
      }
    }
    assertThat(page.texts("desc").get(0)).contains("Arm to the hip");
    assertThat(page.texts("h1")).containsExactly("What a hinge asks & <why>");
  }

  @Test
  void the_caution_is_always_there_and_stands_once_beside_the_text() throws Exception {
    WellFormed bare = WellFormed.of(page(Article.of("Nothing yet")));
    assertThat(bare.ofClass("caution")).hasSize(1);
    assertThat(bare.ofClass("caution").get(0).getTextContent()).contains(Caution.TEXT);
    WellFormed full = WellFormed.of(page(lesson()));
    assertThat(full.ofClass("notes"))
        .isNotEmpty()
        .allSatisfy(n -> assertThat(n.getTextContent()).doesNotContain(Caution.TEXT));
  }

  @Test
  void what_is_put_in_is_never_taken_for_marks() throws Exception {
    Article wild =
        Article.of("x")
            .text("{} <script>alert(1)</script> {{braces}} [bad](javascript:alert(2))", "*a* <b> |")
            .text(
                "# A heading\n\n![photo](http://elsewhere/p.png)\n\n| a | b |\n|---|---|\n| 1 | 2 |");
    WellFormed page = WellFormed.of(page(wild));
    assertThat(page.texts("p").get(0))
        .isEqualTo("*a* <b> | <script>alert(1)</script> {braces} bad");
    assertThat(page.attributes("href"))
        .contains("http://elsewhere/p.png")
        .doesNotContain("javascript:alert(2)");
    assertThat(page.all("h1")).hasSize(1);
    assertThat(page.texts("h2")).contains("A heading");
    assertThat(page.texts("td")).containsExactly("1", "2");
    assertThat(page.fetched()).isEmpty();
  }

  @Test
  void numbers_have_the_digits_a_reader_can_use() {
    assertThat(
            Prose.of(
                    "{} {} {} {} {.2} {} {} {.1}",
                    538.72,
                    5.8123,
                    12345.6,
                    0.00123456,
                    2.0,
                    1234,
                    97.5f,
                    Units.cm(178.456))
                .markdown(n -> n))
        .isEqualTo("539 5.81 12,346 0.00123 2.00 1,234 97.5 178.5 cm");
    assertThat(
            Prose.of("{} {} {}", Units.kg(97.5), Units.deg(35), Units.percent(70)).markdown(n -> n))
        .isEqualTo("97.5 kg 35° 70 %");
  }

  @Test
  void markdown_has_its_pictures_beside_it() throws IOException {
    var saved = lesson().save("part one/lesson.md");
    assertThat(saved.files().stream().map(f -> folder.relativize(f).toString()))
        .containsExactly(
            "part one/lesson.md", "part one/lesson-figure-1.svg", "part one/lesson-figure-2.svg");
    String text = Files.readString(folder.resolve("part one/lesson.md"));
    assertThat(text)
        .startsWith(
            "# What a hinge asks & <why>"
                .replace("&", "\\&")
                .replace("<", "\\<")
                .replace(">", "\\>"))
        .contains("](<lesson-figure-1.svg>)", "**Figure 1.** Arms of 140 kg")
        .contains("Table 1 tells *all* of it.", "| joint |", "| ---: |", "> — lifter A")
        .contains("> **Caution.** " + Caution.TEXT, "## Method", "## To reproduce");
    assertThat(folder.resolve("part one/lesson-figure-1.svg")).content().contains("<svg");
  }

  @Test
  void a_name_without_ending_saves_both() {
    assertThat(Article.of("x").save("both").files())
        .containsExactly(folder.resolve("both.html"), folder.resolve("both.md"));
  }

  @Test
  void the_same_script_gives_the_same_bytes() throws IOException {
    String first = page(lesson());
    Position again = PULL.start();
    String second =
        page(
            Article.of("What a hinge asks & <why>")
                .by("club coach, invented")
                .text(
                    "The low back bears {}, see {arms} and {heights}.", again.moment(JointId.L5_S1))
                .heading("At the start")
                .figure("arms", again, "Arms of {}", Units.kg(140))
                .table("moments", again.moments(), "Moments at the start")
                .text("{moments} tells *all* of it.")
                .figure(
                    "heights", byHip().plot(JointId.HIP), "Against hip height, beside {moments}")
                .table(byHip(), "The same as numbers")
                .quote("My back is _strong_.", "lifter A")
                .note("Lift what you can hold."));
    assertThat(second).isEqualTo(first);
  }

  @Test
  void the_code_that_made_it_stands_at_its_end_where_a_door_keeps_it() throws Exception {
    var before = Reproduction.toldBy(() -> Optional.of("var a = 1 < 2;\n// \"x\"\n"));
    try {
      WellFormed page = WellFormed.of(page(lesson()));
      assertThat(page.texts("code")).containsExactly("var a = 1 < 2;\n// \"x\"");
      lesson().save("lesson.md");
      assertThat(Files.readString(folder.resolve("lesson.md")))
          .contains("```java\nvar a = 1 < 2;\n// \"x\"\n```");
    } finally {
      Reproduction.toldBy(before);
    }
    assertThat(page(lesson())).contains("keep the script beside the article");
  }

  @Test
  void its_own_words_can_be_said_in_another_language() throws Exception {
    LabelWords german =
        LabelWords.read(Path.of("notebooks", "german.txt").toAbsolutePath().toString());
    WellFormed page = WellFormed.of(page(lesson().inWords("de", german)));
    assertThat(page.document().getDocumentElement().getAttribute("lang")).isEqualTo("de");
    assertThat(page.texts("figcaption")).contains("Abbildung 1. Arms of 140 kg");
    assertThat(page.texts("h2")).contains("Methode", "Zum Nachrechnen");
    assertThat(page.ofClass("caution").get(0).getTextContent())
        .isEqualTo(
            "Vorsicht. Ein Lehrmodell, keine ärztliche oder sportliche Freigabe: Es gelten die Regeln"
                + " vor Ort und das Urteil zugelassener Fachleute.");
  }

  @Test
  void an_article_shows_itself_as_its_outline_and_as_a_page_in_a_cell() {
    assertThat(lesson().text())
        .isEqualTo(
            """
            What a hinge asks & <why>, by club coach, invented
            2 texts, 2 tables, 2 figures; method, caution and reproduction come by themselves
              At the start
                Figure 1 {arms}: Arms of 140 kg
                Table 1 {moments}: Moments at the start
                Figure 2 {heights}: Against hip height, beside Table 1
                Table 2: The same as numbers
            save("article") writes article.html and article.md
            A teaching model, not medical or coaching clearance: local rules and licensed practitioners come first.""");
    assertThat(lesson().html().orElseThrow()).startsWith("<article>").contains("<svg");
    assertThat(lesson().svg()).isEmpty();
  }

  @Test
  void each_word_gives_another_article_and_leaves_this_one() {
    Article first = Article.of("x");
    Article second = first.text("More.");
    assertThat(first.text()).contains("0 texts");
    assertThat(second.text()).contains("1 text,");
  }

  @Test
  void a_name_that_nothing_has_is_refused_when_saved_and_told_before() {
    Article open = lesson().text("As {momens} shows.");
    String sentence =
        "The text speaks of {momens}, but no figure or table of this article is called so; did you"
            + " mean \"moments\"?";
    assertThat(open.text()).contains(sentence);
    assertThat(open.html().orElseThrow()).contains("{momens}");
    refused(() -> open.save("x"), sentence);
    refused(
        () -> Article.of("x").text("{arms}").save("x"),
        "The text speaks of {arms}, but no figure or table of this article is called so; none has a"
            + " name yet. Give one, as in figure(\"arms\", picture, \"caption\").");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void what_cannot_be_set_is_refused_in_a_sentence() {
    Article article = lesson();
    refused(
        () -> Article.of(" "),
        "The title is empty: write one, as in \"What a hinge asks of the low back\".");
    refused(
        () -> Article.of(null),
        "The title is missing (null): give one, such as \"What a hinge asks of the low back\".");
    refused(
        () -> article.figure((Picture) null, "x"),
        "The picture is missing (null): give one, such as start.picture().");
    refused(
        () -> article.table((Sheet) null, "x"),
        "The table is missing (null): give one, such as start.moments().");
    refused(
        () ->
            article.table(
                new Sheet("Lifts", List.of(Sheet.Column.text("a")), List.of(), List.of()), "x"),
        "The table \"Lifts\" has no rows: there is nothing to show in it.");
    refused(
        () -> article.figure("moments", START, "x"),
        "Table 1 is called \"moments\" already: give another name.");
    refused(
        () -> article.figure("a{b", START, "x"),
        "\"a{b\" cannot be the name of a figure: take letters, digits and blanks, as in \"arms\".");
    refused(
        () -> article.table("twelve", "x"),
        "There is no table of a text: give a table, as in start.moments(), or a sweep,"
            + " comparison, verdict, people or their like.");
    refused(
        () -> article.save("lesson.docx"),
        "An article is saved as .html or .md, not as \"lesson.docx\"; a name without an ending saves"
            + " both.");
    refused(
        () -> article.save(".html"),
        "An article needs a file name, such as save(\"hinge-article\").");
    refused(
        () -> article.using("pull"),
        "A method can tell nothing of a text: name people, lifts, positions, movements, sweeps,"
            + " comparisons, claims, doubts or searches.");
    refused(
        () -> article.inWords("?", LabelWords.of(java.util.Map.of("table", "Tabelle"))),
        "\"?\" is no tag of a language: write \"de\", \"fr\", \"pt-BR\" or the like.");
  }

  @Test
  void values_and_places_of_a_text_must_match() {
    Article article = Article.of("x");
    refused(
        () -> article.text("It bears {}."),
        "The text \"It bears {}.\" has 1 place {} for 0 values: give one value for each place, in"
            + " order; {{ and }} stand for braces.");
    refused(
        () -> article.text("It bears {}.", 1, 2),
        "The text \"It bears {}.\" has 1 place {} for 2 values: give one value for each place, in"
            + " order; {{ and }} stand for braces.");
    refused(
        () -> article.text("It bears {}.", 0.0 / 0),
        "Value 1 of the text is no number (NaN), which nobody could read: look at what it is computed from.");
    refused(
        () -> article.text("It bears {}.", (Object) null),
        "Value 1 of the text is missing (null): give one, or leave its place {} out.");
    refused(
        () -> article.text("It bears {}.", START),
        "Value 1 of the text is a position, which takes several lines: put in one of its numbers, or"
            + " add it by .table(…) or .figure(…).");
  }

  @Test
  void a_folder_in_the_way_is_told_and_nothing_is_left_behind() throws IOException {
    Files.createDirectories(folder.resolve("lesson.html"));
    assertThatThrownBy(() -> lesson().save("lesson.html"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("there is a folder of this name; choose another name.");
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(1);
    }
  }

  private static void refused(Runnable step, String sentence) {
    assertThatThrownBy(step::run).isInstanceOf(Refused.class).hasMessage(sentence);
  }
}
