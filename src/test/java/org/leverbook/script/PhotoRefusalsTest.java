package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.language.Imports;
import org.leverbook.language.Vocabulary;
import org.leverbook.session.Preamble;
import org.leverbook.session.Session;

/** What a coach reads who types something about photos or landmarks that cannot be. */
class PhotoRefusalsTest {

  private static final String PHOTO =
      "photo(\"notebooks/pictures/still.png\").scale(800, 774, 800, 426, m(1))";
  private static final String LIFTER = "person(MALE, kg(85), cm(178))";

  @TempDir static Path folder;
  private static Session session;

  @BeforeAll
  static void open() {
    session = Session.open(new Preamble(Imports.SOURCE, List.of(Vocabulary.class)));
  }

  @AfterAll
  static void close() {
    session.close();
  }

  private static String read(String typed) {
    return session.evaluate(typed, value -> {}).problem().map(p -> p.message()).orElse("");
  }

  private static String spoilt(String name, UnaryOperator<String> line) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(
        file,
        Files.readAllLines(Path.of("notebooks", "pictures", "squat-landmarks.csv")).stream()
            .map(line)
            .filter(l -> !l.isEmpty())
            .collect(Collectors.joining("\n")));
    return read(
        String.format(
            Locale.ROOT, "landmarks(\"%s\").fit(%s)", file.toString().replace('\\', '/'), LIFTER));
  }

  @Test
  void marks_missing_for_a_limb_are_named_with_the_words_to_add() {
    assertThat(read(PHOTO + ".seenFrom(RIGHT).mark(\"hip\", 800, 620).fit(" + LIFTER + ")"))
        .contains("these marks are missing: knee, ankle, shoulder, elbow, wrist or hand")
        .contains("add for example .mark(\"knee\", x, y)");
  }

  @Test
  void a_photo_that_is_not_there_a_place_outside_it_and_an_unknown_landmark_are_told() {
    assertThat(read("photo(\"gone.png\")")).contains("There is no photo \"gone.png\" in ");
    assertThat(read(PHOTO + ".mark(\"hip\", 4000, 20)"))
        .contains("is not in the photo, which is 1600 pixels wide and 1200 high");
    assertThat(read(PHOTO + ".mark(\"nose\", 40, 20)")).contains("There is no landmark \"nose\"");
  }

  @Test
  void numbers_out_of_range_are_told_with_the_range() {
    assertThat(read(PHOTO + ".scale(5, 5, 6, 5, cm(40))")).contains("1.0 pixels apart");
    assertThat(read(PHOTO + ".turnOut(deg(400))")).contains("400", "60");
    assertThat(read(PHOTO + ".gripWidth(cm(900))")).contains("900", "200");
    assertThat(read(PHOTO + ".lookingDown(deg(80))")).contains("80", "45");
    assertThat(read("landmarks(\"notebooks/pictures/squat-landmarks.csv\").smoothed(400)"))
        .contains("400", "0.5", "50");
    assertThat(read("landmarks(\"notebooks/pictures/squat-landmarks.csv\").up(\"w\")"))
        .contains("The axis that points up can be \"y\", \"-y\", \"z\", \"-z\", not \"w\"");
  }

  @Test
  void a_landmark_that_jumps_two_metres_is_told_with_line_and_column() throws IOException {
    assertThat(spoilt("jump.csv", l -> l.startsWith("0.40,knee,") ? "0.40,knee,210,45" : l))
        .contains("jump.csv, line ", ", columns x and y: the knee jumps ", " m in 0.020 s");
  }

  @Test
  void a_limb_without_rows_a_wrong_name_and_a_wrong_number_are_told_where_they_are()
      throws IOException {
    assertThat(spoilt("limb.csv", l -> l.contains(",elbow,") ? "" : l))
        .contains("limb.csv, column landmark: there are no rows for right elbow");
    assertThat(spoilt("name.csv", l -> l.startsWith("0.40,knee,") ? "0.40,patella,1,2" : l))
        .contains("name.csv, line ", ", column landmark: there is no landmark \"patella\"");
    assertThat(spoilt("cell.csv", l -> l.startsWith("0.40,knee,") ? "0.40,knee,4o,2" : l))
        .contains("cell.csv, line ", ", column x (cm): \"4o\" is no number");
  }
}
