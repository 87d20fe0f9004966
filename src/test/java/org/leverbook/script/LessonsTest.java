package org.leverbook.script;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.display.Caution;
import org.leverbook.display.InputFile;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Progress;
import org.leverbook.figure.FigureStyle;
import org.leverbook.notebook.Cell;
import org.leverbook.notebook.MimeBundle;
import org.leverbook.notebook.Notebook;
import org.leverbook.notebook.Output;
import org.leverbook.notebook.Schema;

/**
 * The lessons in {@code notebooks}: what stands in them is what their code gives today.
 *
 * <p>A number may differ by one in its last digit shown, since a value on the edge of rounding may
 * fall to either side, and by a millionth of itself, which is more than a search that ends at 1e-7
 * leaves open and less than any claim of a lesson needs. Everything else must be equal; runs of
 * blanks count as one, as the width of a column follows its longest number, and how long the
 * machine took is left out.
 */
class LessonsTest {

  private static final Path FOLDER = Path.of("notebooks");

  /** Files are read over slow lines too; pictures are kept as SVG alone. */
  private static final long LARGEST = 300_000;

  /** A number that is no part of a name such as L5/S1. */
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\p{L}\\d.])-?\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?(?![\\p{L}\\d])");

  @TempDir private Path saved;

  private Progress.Listener listened;

  @BeforeEach
  void quietly() {
    OutputFolder.choose(saved);
    listened = Progress.listen(null);
  }

  @AfterEach
  void putBack() {
    Progress.listen(listened);
    OutputFolder.choose(Path.of(""));
    FigureStyle.choose(FigureStyle.ARTICLE);
  }

  static List<Path> lessons() throws IOException {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files
          .filter(f -> f.getFileName().toString().matches("lesson-\\d\\d-.+\\.ipynb"))
          .sorted()
          .toList();
    }
  }

  @Test
  void there_are_lessons_and_no_number_is_given_twice() throws IOException {
    List<String> numbers =
        lessons().stream().map(f -> f.getFileName().toString().substring(7, 9)).toList();
    assertThat(numbers).hasSizeGreaterThanOrEqualTo(7).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void a_lesson_gives_today_what_stands_in_it(Path file) {
    Notebook stored = Notebook.read(file);

    Path before = InputFile.runs(file);
    Finished today = new CellRunner(stored, MimeBundle::light).run();
    InputFile.lookIn(before);

    assertThat(today.trouble().map(t -> t.text(file.toString()))).isEmpty();
    List<String> differences = new ArrayList<>();
    for (int i = 0; i < stored.cells().size(); i++) {
      Cell cell = stored.cells().get(i);
      if (cell.kind() == Cell.Kind.CODE) {
        String where = file.getFileName() + ", cell " + cell.id();
        List<Output> now = today.notebook().cells().get(i).outputs();
        differences.addAll(differences(where, lines(cell.outputs()), lines(now)));
      }
    }
    assertThat(differences)
        .as("run it anew (run --in-place --light) and read what its text says of these")
        .isEmpty();
  }

  @ParameterizedTest
  @MethodSource("lessons")
  void a_lesson_is_a_small_valid_file_with_a_question_and_the_caution(Path file)
      throws IOException {
    String text = Files.readString(file);
    assertThat(Schema.complaints(text)).isEmpty();
    assertThat(Files.size(file)).as("bytes; run --light keeps it small").isLessThan(LARGEST);
    List<Cell> cells = Notebook.read(file).cells();
    List<String> prose =
        cells.stream().filter(c -> c.kind() == Cell.Kind.MARKDOWN).map(Cell::source).toList();
    assertThat(prose.get(0)).startsWith("# Lesson " + number(file)).contains("?", "invented");
    assertThat(prose.get(prose.size() - 1)).contains(Caution.TEXT);
    assertThat(cells.stream().filter(c -> c.kind() == Cell.Kind.CODE))
        .allSatisfy(
            c -> {
              assertThat(c.count()).as("run: " + c.id()).isPresent();
              assertThat(c.outputs()).noneMatch(Output.Failed.class::isInstance);
            });
  }

  private static int number(Path file) {
    return Integer.parseInt(file.getFileName().toString().substring(7, 9));
  }

  @Test
  void a_number_that_changed_is_told_with_cell_and_line() {
    assertThat(
            differences(
                "lesson-01, cell sum", List.of("hip", "  12.3 N·m"), List.of("hip", " 12.5 N·m")))
        .containsExactly(
            "lesson-01, cell sum, line 2: 12.3 became 12.5 in \"12.5 N·m\" (was \"12.3 N·m\")");
    assertThat(differences("c", List.of("1.2 of L5/S1, 0.0"), List.of(" 1.3 of L5/S1, -0.0")))
        .as("one in the last digit is rounding")
        .isEmpty();
    assertThat(differences("c", List.of("7"), List.of("9"))).hasSize(1);
    assertThat(differences("c", List.of("1 of L5/S1"), List.of("1 of L4/S1")))
        .containsExactly("c, line 1: \"1 of L5/S1\" became \"1 of L4/S1\"");
    assertThat(differences("c", List.of("a", "b"), List.of("a")))
        .containsExactly("c, line 2: \"b\" became nothing");
    assertThat(differences("c", List.of("12345678.123"), List.of("12345670.123")))
        .as("less than a millionth")
        .isEmpty();
  }

  /** Every output's text line by line, and last the forms they come in; PNG copies may be left. */
  private static List<String> lines(List<Output> outputs) {
    StringBuilder text = new StringBuilder();
    List<String> forms = new ArrayList<>();
    for (Output output : outputs) {
      if (output instanceof Output.Printed printed) {
        text.append(printed.text());
      } else if (output instanceof Output.Given given) {
        text.append(given.bundle().text()).append('\n');
        Set<String> kept = new TreeSet<>(given.bundle().data().keySet());
        kept.remove(MimeBundle.PNG);
        forms.add(String.join(", ", kept));
      }
    }
    List<String> lines = new ArrayList<>(text.toString().lines().toList());
    lines.add("forms: " + String.join("; ", forms));
    return lines;
  }

  private static List<String> differences(String where, List<String> was, List<String> now) {
    List<String> found = new ArrayList<>();
    for (int i = 0; i < Math.max(was.size(), now.size()); i++) {
      String place = where + ", line " + (i + 1) + ": ";
      if (i >= was.size() || i >= now.size()) {
        found.add(place + told(was, i) + " became " + told(now, i));
      } else {
        String before = blanks(was.get(i));
        String after = blanks(now.get(i));
        difference(before, after).ifPresent(d -> found.add(place + d));
      }
    }
    return found;
  }

  private static String told(List<String> lines, int at) {
    return at < lines.size() ? "\"" + blanks(lines.get(at)) + "\"" : "nothing";
  }

  private static String blanks(String line) {
    return line.strip().replaceAll("\\s+", " ");
  }

  private static Optional<String> difference(String before, String after) {
    if (!NUMBER.matcher(before).replaceAll("#").equals(NUMBER.matcher(after).replaceAll("#"))) {
      return Optional.of("\"" + before + "\" became \"" + after + "\"");
    }
    List<String> old = numbers(before);
    List<String> young = numbers(after);
    for (int i = 0; i < old.size(); i++) {
      if (!same(old.get(i), young.get(i))) {
        return Optional.of(
            old.get(i)
                + " became "
                + young.get(i)
                + " in \""
                + after
                + "\" (was \""
                + before
                + "\")");
      }
    }
    return Optional.empty();
  }

  private static List<String> numbers(String line) {
    return NUMBER.matcher(line).results().map(MatchResult::group).toList();
  }

  private static boolean same(String before, String after) {
    double was = Double.parseDouble(before);
    double now = Double.parseDouble(after);
    double lastDigit = new BigDecimal(before).ulp().doubleValue();
    // A billionth more, as 1.3 - 1.2 is a little more than a tenth.
    return Math.abs(was - now) <= lastDigit * (1 + 1e-9) + 1e-6 * Math.abs(was);
  }
}
