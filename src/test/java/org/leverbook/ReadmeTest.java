package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.desk.Desk;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Picture;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Preamble;
import org.leverbook.session.Session;
import org.leverbook.statics.Position;
import org.leverbook.study.Doubt;
import org.leverbook.study.Sweep;

/** What the README shows is what a newcomer gets. */
class ReadmeTest {

  /** A text of the SVG that holds a letter. */
  private static final Pattern WORDS = Pattern.compile("<text[^>]*>([^<]*[A-Za-z][^<]*)</text>");

  private static final Pattern LESSON =
      Pattern.compile("```java\n([^`]*)```\n\n```text\n(.*?)```", Pattern.DOTALL);

  /** A step of the guided lesson: number, title, line of code, and what to look at. */
  private static final Pattern STEP =
      Pattern.compile(
          "\\*\\*(\\d+)\\. ([^*]+)\\*\\* [^\n]+\n\n```java\n([^`\n]+)\n```\n\n((?:Look|Type) [^\n]+)");

  private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

  private static final Path PICTURES = Path.of("notebooks", "pictures");

  private static String readme() throws IOException {
    return Files.readString(Path.of("README.md"), StandardCharsets.UTF_8);
  }

  @Test
  void every_lesson_prints_what_the_page_says() throws IOException {
    Matcher lesson = LESSON.matcher(readme());
    int lessons = 0;
    try (Session session = Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)))) {
      while (lesson.find()) {
        lessons++;
        List<String> printed = new ArrayList<>();
        Evaluation evaluation =
            session.evaluate(lesson.group(1), value -> printed.add(value.text()));
        evaluation.problem().ifPresent(problem -> printed.add(problem.message()));
        String output = String.join("\n", printed);
        for (String line : lesson.group(2).split("\n")) {
          assertThat(output).as("what this prints:\n" + lesson.group(1)).contains(line.strip());
        }
      }
    }
    assertThat(lessons).isEqualTo(22);
    assertThat(Pattern.compile("(?m)^```java$").matcher(readme()).results().count())
        .as("every line of code is run: here, or as one of the ten steps")
        .isEqualTo(lessons + 10);
  }

  @Test
  void its_ten_steps_are_those_of_the_guided_lesson_and_show_what_it_says(@TempDir Path folder)
      throws IOException {
    OutputFolder.choose(folder);
    int number = 0;
    try (Desk desk = Desk.open()) {
      String told = printed(desk, "lesson()");
      Matcher step = STEP.matcher(readme());
      while (step.find()) {
        number++;
        String title = step.group(2).replaceAll("\\.$", "").toLowerCase(Locale.ROOT);
        assertThat(step.group(1)).isEqualTo(String.valueOf(number));
        assertThat(told).contains("Step " + number + " of 10: " + title + "\n");
        String line = step.group(3);
        assertThat(printed(desk, "lesson().hint()")).isEqualTo("For example:\n  " + line);
        told = printed(desk, line);
        assertThat(told).contains("Done: step " + number + " of 10.");
        look(desk, told, step.group(4));
      }
    } finally {
      OutputFolder.choose(Path.of(""));
    }
    assertThat(number).isEqualTo(10);
  }

  /** What is quoted stands in what was printed, or in what the quoted name then shows. */
  private static void look(Desk desk, String printed, String advice) {
    List<String> quoted = QUOTED.matcher(advice).results().map(found -> found.group(1)).toList();
    boolean typed = advice.startsWith("Type ");
    String seen = typed ? printed(desk, quoted.get(0)) : printed;
    assertThat(quoted).as(advice).isNotEmpty();
    assertThat(seen).contains(quoted.subList(typed ? 1 : 0, quoted.size()));
  }

  private static String printed(Desk desk, String line) {
    List<String> printed = new ArrayList<>();
    Evaluation evaluation = desk.evaluate(line, value -> printed.add(value.text()));
    assertThat(evaluation.problem()).as(line).isEmpty();
    printed.addAll(evaluation.notes());
    return String.join("\n", printed);
  }

  @Test
  void its_two_commands_are_those_the_integration_machine_knows() throws IOException {
    assertThat(readme())
        .contains(
            "    mvn -q -DskipTests package && java -jar target/leverbook.jar run notebooks/hinge.jsh --out"
                + " target/hinge\n")
        .contains("    mvn verify\n");
    assertThat(Path.of(".ci", "run")).content().endsWith("\nmvn verify\n");
  }

  @Test
  void its_pictures_are_those_the_lessons_draw() throws IOException {
    Hinge pull =
        Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)))
            .holding(Barbell.of(Units.kg(140)))
            .hipHeight(Units.cm(58));
    same("start", pull.start().picture());
    Position bent =
        Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)))
            .holding(Barbell.of(Units.kg(60)))
            .hipHeight(Units.cm(72))
            .start();
    Position padded = bent.on(Vocabulary.chestPad(Units.deg(30)));
    same(
        "side-by-side",
        Vocabulary.compare(bent, padded).called("free", "chest on the pad").picture());
    Picture plot =
        Sweep.over("hip height", Units.cm(48), Units.cm(72), 25, h -> pull.hipHeight(h).start())
            .plot(JointId.HIP, JointId.KNEE, JointId.L5_S1, JointId.SHOULDER);
    Path kept = written("hip-height", plot);
    assertThat(words(Files.readString(kept))).isEqualTo(words(plot.svgDocument())).isNotEmpty();
    same("sensitivity", Doubt.of(pull, Hinge::start).sensitivity(JointId.L5_S1).picture());
  }

  @Test
  void its_claim_is_drawn_as_its_lesson_tests_it() throws IOException {
    same("claim", drawnBy(" claim(", "answer.picture()\n"));
  }

  @Test
  void its_four_builds_are_those_of_its_lesson() throws IOException {
    same("four-builds", drawnBy("builds.called(", ""));
  }

  /** The first picture that a lesson shows, after more has been asked of it. */
  private static Picture drawnBy(String lessonWith, String more) throws IOException {
    try (Session session = Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)))) {
      Matcher lesson = LESSON.matcher(readme());
      List<Picture> drawn = new ArrayList<>();
      String first = "";
      while (lesson.find()) {
        first = first.isEmpty() ? lesson.group(1) : first;
        if (lesson.group(1).contains(lessonWith)) {
          // The lifter is that of the first lesson.
          session.evaluate(first, value -> {});
          session.evaluate(
              lesson.group(1) + more,
              value -> {
                if (value.object() instanceof Picture picture) {
                  drawn.add(picture);
                }
              });
        }
      }
      assertThat(drawn).isNotEmpty();
      return drawn.get(0);
    }
  }

  @Test
  void its_photo_is_the_one_its_lesson_draws_over() throws IOException {
    try (Session session = Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)))) {
      Matcher lesson = LESSON.matcher(readme());
      while (lesson.find()) {
        if (lesson.group(1).contains("photo(")) {
          List<Picture> drawn = new ArrayList<>();
          session.evaluate(
              lesson.group(1) + "fit.picture()\n",
              value -> {
                if (value.object() instanceof Picture picture) {
                  drawn.add(picture);
                }
              });
          assertThat(drawn).hasSize(1);
          // The photo inside is packed by the machine's own library.
          Path kept = written("photo-fit", drawn.get(0));
          assertThat(words(Files.readString(kept)))
              .isEqualTo(words(drawn.get(0).svgDocument()))
              .isNotEmpty();
        }
      }
    }
  }

  /** The SVG of a position is the same on every machine; a PNG would follow the machine's fonts. */
  private static void same(String name, Picture picture) throws IOException {
    assertThat(written(name, picture)).hasContent(picture.svgDocument());
  }

  private static Path written(String name, Picture picture) throws IOException {
    Path svg = PICTURES.resolve(name + ".svg");
    if ("write".equals(System.getProperty("leverbook.pictures"))) {
      Files.createDirectories(PICTURES);
      Files.writeString(svg, picture.svgDocument());
    }
    return svg;
  }

  /**
   * What is written in a plot, tick marks left out: XChart spaces a plot, and with it the tick
   * marks, by the machine's fonts.
   */
  private static List<String> words(String svg) {
    return WORDS.matcher(svg).results().map(found -> found.group(1)).toList();
  }
}
