package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.SequenceWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every exact row of statics in {@code checks/cases.csv} (worked examples of textbooks, pulleys, a
 * force in space), set up as a tree with loads and muscles and answered by Leverbook.
 *
 * <p>The bands are the file's and are never widened here. Each row is also answered with the whole
 * drawing turned in space, gravity with it.
 */
class PublishedCasesTest {

  /** Section C's exact rows are multipliers of a weight-limit equation, not statics. */
  private static final Set<String> SECTIONS = Set.of("A", "D", "E");

  private static final Map<String, String> MISSES = Disagreements.REASONS;

  private static final Map<String, ToDoubleFunction<Rotation>> SET_UPS = setUps();

  /** Sections D and E besides their exact rows. */
  private static final Map<String, DoubleSupplier> FACTS = FactCases.rows();

  private static final Map<String, DoubleSupplier> TRADE = TradeCases.rows();

  private static final List<Rotation> TURNS =
      List.of(
          turn(new Vector3D(0, 1, 0), 90),
          turn(new Vector3D(1, 2, 3), 77),
          turn(new Vector3D(-2, 0.5, 1), 163));

  private static Map<String, ToDoubleFunction<Rotation>> setUps() {
    Map<String, ToDoubleFunction<Rotation>> all = new HashMap<>();
    for (Map<String, ToDoubleFunction<Rotation>> some :
        List.of(ElbowCases.rows(), SpineCases.rows(), LegCases.rows(), GearCases.rows())) {
      some.forEach((id, setUp) -> assertThat(all.put(id, setUp)).as(id).isNull());
    }
    return all;
  }

  private static Rotation turn(Vector3D axis, double degrees) {
    return new Rotation(axis, Math.toRadians(degrees), RotationConvention.VECTOR_OPERATOR);
  }

  private static List<PublishedRow> rows() {
    return PublishedRow.all().stream()
        .filter(row -> row.exact() && SECTIONS.contains(row.section()))
        .toList();
  }

  @TestFactory
  Stream<DynamicTest> leverbook_gives_what_the_source_prints() {
    return rows().stream().map(row -> DynamicTest.dynamicTest(row.toString(), () -> compare(row)));
  }

  private static void compare(PublishedRow row) {
    double value = SET_UPS.get(row.id()).applyAsDouble(Rotation.IDENTITY);
    if (MISSES.containsKey(row.id())) {
      assertThat(row.accepts(value)).as("a row listed as a miss misses").isFalse();
    } else {
      assertThat(value).as(row.unit()).isBetween(row.low(), row.high());
    }
  }

  @TestFactory
  Stream<DynamicTest> turning_the_whole_drawing_changes_no_answer() {
    return rows().stream().map(row -> DynamicTest.dynamicTest(row.toString(), () -> turned(row)));
  }

  private static void turned(PublishedRow row) {
    double upright = SET_UPS.get(row.id()).applyAsDouble(Rotation.IDENTITY);
    for (Rotation turn : TURNS) {
      // Rounding of a few dozen products: 1e-12 of the size; forces and moments here reach 1e4.
      assertThat(SET_UPS.get(row.id()).applyAsDouble(turn))
          .isCloseTo(upright, within(1e-11 * Math.max(100, Math.abs(upright))));
    }
  }

  @Test
  void every_exact_row_is_set_up_and_none_besides() {
    Set<String> wanted = new HashSet<>();
    rows().forEach(row -> wanted.add(row.id()));
    assertThat(SET_UPS.keySet()).isEqualTo(wanted);
    assertThat(rows().stream().filter(row -> row.section().equals("A"))).hasSize(59);
    assertThat(rows()).hasSize(69);
  }

  @Test
  void every_row_measured_on_lifters_is_compared_or_says_what_it_lacks() {
    Set<String> left = new TreeSet<>();
    PublishedRow.all().stream().filter(r -> r.section().equals("B")).forEach(r -> left.add(r.id()));
    assertThat(left).hasSize(99);
    left.removeAll(MeasuredCases.rows().keySet());
    assertThat(MeasuredCases.NEEDS_MUSCLES)
        .doesNotContainAnyElementsOf(MeasuredCases.GIVEN_TO_THE_SET_UP);
    left.removeAll(MeasuredCases.GIVEN_TO_THE_SET_UP);
    assertThat(left).isEqualTo(MeasuredCases.NEEDS_MUSCLES);
  }

  @Test
  void limping_returns_the_printed_answer_with_the_arms_that_it_implies() {
    PublishedRow row = rows().stream().filter(r -> r.id().equals("A15")).findFirst().orElseThrow();
    assertThat(LegCases.limping(0.10, 0.07, Rotation.IDENTITY)).isBetween(row.low(), row.high());
  }

  @Test
  void the_agreement_is_written_as_a_table() throws IOException {
    CsvSchema.Builder columns = CsvSchema.builder();
    List.of("id", "quantity", "value", "unit", "low", "high", "pass", "source", "note")
        .forEach(columns::addColumn);
    Path file = Path.of("target", "published-agreement.csv");
    Files.createDirectories(file.getParent());
    Set<String> missed = new HashSet<>();
    int compared = 0;
    try (SequenceWriter out =
        new CsvMapper()
            .writerFor(Object[].class)
            .with(columns.build().withHeader())
            .writeValues(Files.newBufferedWriter(file))) {
      Map<String, DoubleSupplier> measured = MeasuredCases.rows();
      for (PublishedRow row : PublishedRow.all()) {
        double value;
        if (SET_UPS.containsKey(row.id())) {
          value = SET_UPS.get(row.id()).applyAsDouble(Rotation.IDENTITY);
        } else if (measured.containsKey(row.id())) {
          value = measured.get(row.id()).getAsDouble();
        } else if (FACTS.containsKey(row.id())) {
          value = FACTS.get(row.id()).getAsDouble();
        } else if (TRADE.containsKey(row.id())) {
          value = TRADE.get(row.id()).getAsDouble();
        } else {
          continue;
        }
        boolean pass = row.accepts(value);
        if (!pass) {
          missed.add(row.id());
        }
        compared++;
        out.write(line(row, value, pass));
      }
    }
    assertThat(missed).isEqualTo(MISSES.keySet());
    assertThat(compared)
        .isEqualTo(rows().size() + MeasuredCases.rows().size() + FACTS.size() + TRADE.size());
    assertThat(Files.readAllLines(file)).hasSize(compared + 1);
  }

  private static Object[] line(PublishedRow row, double value, boolean pass) {
    return new Object[] {
      row.id(),
      row.title() + ": " + row.quantity(),
      value,
      row.unit(),
      row.low(),
      row.high(),
      pass,
      row.source() + " (" + row.status() + ")",
      MISSES.getOrDefault(row.id(), Taken.of(row.id()))
    };
  }
}
