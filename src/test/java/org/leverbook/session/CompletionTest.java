package org.leverbook.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.SourceCodeAnalysis.Suggestion;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.desk.Desk;
import org.leverbook.language.Imports;

/** Ways to go on. In the notation of these tests a bar marks the cursor. */
class CompletionTest {

  private static final Path TABLE = Path.of("src/test/resources/session/completions.txt");

  /** What the user of these tests has made. */
  static final String MADE =
      """
      var lifter = person(MALE, kg(85), cm(178));
      var pull = hinge(lifter).holding(barbell(kg(140))).hipHeight(cm(58));
      var start = pull.start();
      int reps = 5;
      List<Position> all = List.of(start);
      record Lap(int reps, String name) {}
      var lap = new Lap(1, "first");
      Position low(double centimetres) { return pull.hipHeight(cm(centimetres)).start(); }
      """;

  private static Desk desk;

  @BeforeAll
  static void open() {
    desk = Desk.open();
    assertThat(desk.evaluate(MADE, value -> {}).problem()).isEmpty();
  }

  @AfterAll
  static void close() {
    desk.close();
  }

  static Stream<Arguments> rows() throws IOException {
    return Files.readAllLines(TABLE).stream()
        .filter(line -> line.contains("=>") && !line.startsWith("#"))
        .map(line -> line.split(" =>", 2))
        .map(cells -> Arguments.of(cells[0], cells[1].strip()));
  }

  private static List<Completion> at(String marked) {
    // A test table cannot hold a line end.
    String text = marked.replace("\\n", "\n");
    int cursor = text.lastIndexOf('|');
    String bare = text.substring(0, cursor) + text.substring(cursor + 1);
    return desk.session().completions(bare, cursor);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void what_is_offered_at_a_place(String marked, String expected) {
    List<String> offered = at(marked).stream().map(Completion::text).map(String::strip).toList();

    List<String> wanted = words(expected, offered);
    List<String> unwanted = wanted.stream().filter(w -> w.startsWith("!")).toList();
    List<String> first = wanted.stream().takeWhile(w -> !w.equals("…")).toList();
    List<String> later = wanted.stream().skip(first.size() + 1L).toList();
    first = first.stream().filter(w -> !w.startsWith("!")).toList();
    assertThat(offered).doesNotHaveDuplicates();
    for (String each : unwanted) {
      assertThat(offered).doesNotContain(each.substring(1));
    }
    if (wanted.contains("…")) {
      assertThat(offered).startsWith(first.toArray(String[]::new)).hasSizeGreaterThan(first.size());
      assertThat(offered).containsAll(later.stream().filter(w -> !w.startsWith("!")).toList());
    } else if (unwanted.isEmpty()) {
      assertThat(offered).isEqualTo(first);
    }
  }

  /** The expected words; one that has blanks in it is known from the list. */
  private static List<String> words(String expected, List<String> offered) {
    String joined = expected;
    for (String each : offered) {
      if (each.contains(" ")) {
        joined = joined.replace(each, each.replace(' ', '_'));
      }
    }
    return joined.isEmpty()
        ? List.of()
        : Arrays.stream(joined.split(" "))
            .map(w -> offered.contains(w.replace('_', ' ')) ? w.replace('_', ' ') : w)
            .toList();
  }

  @Test
  void the_table_is_read_whole() throws IOException {
    assertThat(rows().count()).isGreaterThan(100);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void every_offer_has_one_line_of_explanation_at_most(String marked, String expected) {
    assertThat(at(marked))
        .allSatisfy(
            each -> {
              assertThat(each.signature() + each.about()).doesNotContain("\n", "Quantity<", "null");
              assertThat(each.text()).isNotBlank();
            });
  }

  @Test
  void the_place_to_replace_begins_where_the_word_begins() {
    assertThat(at("1 + 1;\nhinge(lifter).hol|").get(0).from()).isEqualTo(21);
    assertThat(at("\"𝄞\" + lifter.statureF|").get(0).from()).isEqualTo(14);
    assertThat(at("allLifts(lifter).named(\"back s|").get(0).from()).isEqualTo(24);
    assertThat(at("start.moment(|").get(0).from()).isEqualTo(13);
  }

  @Test
  void an_offer_tells_what_it_takes_in_the_coachs_words_and_what_it_is() {
    assertThat(at("hinge(lifter).hol|").get(0))
        .isEqualTo(
            new Completion(
                14,
                "holding(",
                "holding(load: barbell): hinge (and 1 more)",
                "With this bar in the hands."));
    assertThat(at("pers|").get(0))
        .isEqualTo(
            new Completion(
                0,
                "person(",
                "person(sex: MALE or FEMALE, mass, stature: length): person",
                "A lifter of usual proportions, as in person(MALE, kg(85), cm(178))."));
    assertThat(at("start.moment(HI|").get(0).signature()).isEqualTo("joint");
    assertThat(at("star|").get(0).signature()).isEqualTo("position");
    assertThat(at("allLifts(lifter).named(\"back s|").get(0).about())
        .isEqualTo("Sit down and stand up with a bar on the back: knees, hips and trunk at once.");
  }

  @Test
  void the_steps_of_a_value_are_those_that_the_compiler_knows() {
    // Types are read by reflection; wherever the compiler speaks too, both must agree.
    Set<String> ofEveryObject =
        Set.of(
            "equals(",
            "getClass()",
            "hashCode()",
            "notify()",
            "notifyAll()",
            "toString()",
            "wait(");
    try (JShell compiler = JShell.builder().executionEngine("local").build()) {
      compiler.addToClasspath(System.getProperty("java.class.path"));
      Imports.SOURCE.lines().forEach(compiler::eval);
      MADE.lines().forEach(compiler::eval);
      for (String each :
          List.of(
              "lifter.",
              "pull.",
              "start.",
              "all.",
              "lap.",
              "kg(85).",
              "Site.",
              "Math.",
              "\"a\".",
              "start.moments().",
              "backSquat(lifter).",
              "people(5, 1).",
              "Map.of(1, 2).",
              "all.stream().map(p -> p.body()).",
              "claim(\"x\").that(p -> p.",
              "Person.",
              "low(3).",
              "sweep(\"h\", cm(1), cm(2), 5, h -> pull.hipHeight(h).start()).against(KNEE).",
              "doubt(pull).draws(100).",
              "sweep(\"h\", cm(1), cm(2), 5, h -> h.")) {
        List<String> compilers =
            compiler
                .sourceCodeAnalysis()
                .completionSuggestions(each, each.length(), new int[1])
                .stream()
                .map(Suggestion::continuation)
                .filter(word -> !ofEveryObject.contains(word) && !word.equals("class"))
                // An inner class of every enum, and what newer compilers say of records: of no use.
                .filter(word -> !Set.of("EnumDesc", "clone()", "finalize()").contains(word))
                .distinct()
                .toList();
        assertThat(compilers).as(each).isNotEmpty();
        assertThat(at(each + "|"))
            .as(each)
            .extracting(Completion::text)
            .containsExactlyInAnyOrderElementsOf(compilers);
      }
    }
  }

  @Test
  void file_names_are_offered_in_quotes_those_first_that_can_be_read() {
    List<Completion> offered = at("photo(\"|");
    assertThat(offered)
        .extracting(Completion::text)
        .contains("src/", "notebooks/", "pom.xml")
        .doesNotContain(".git/");
    List<String> club = at("lifters(\"notebooks/|").stream().map(Completion::text).toList();
    assertThat(club.get(0)).isEqualTo("notebooks/club.csv");
    assertThat(at("photo(\"no/such/folder/|")).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"-1", "999", "0"})
  void a_cursor_outside_the_text_does_no_harm(int cursor) {
    assertThat(desk.session().completions("hin", cursor)).isNotNull();
    assertThat(desk.session().documentation("hin", cursor, false)).isNotNull();
    assertThat(desk.session().callAt("hin(", cursor)).isNotNull();
  }

  @Test
  void any_beginning_of_a_long_text_can_be_asked_about() {
    String text =
        """
        var free = row(lifter); // a comment
        var byHip = sweep("hip height", cm(48), cm(72), 25, h -> { return pull.hipHeight(h).start(); });
        for (int i = 0, j = 1; i < 3; i++) { int[] a = {1, 2}; a[i] += i > 1 ? -1 : +2; }
        Map<String, List<Position>> map = new HashMap<>(); char c = 'x'; String s = \"""
          block \"quoted\" \""";
        switch (reps) { case 1 -> start.moments(); default -> {} }
        """;
    for (int cursor = 0; cursor <= text.length(); cursor++) {
      assertThat(desk.session().completions(text, cursor)).isNotNull();
      assertThat(desk.session().callAt(text, cursor)).isNotNull();
    }
  }
}
