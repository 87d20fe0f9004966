package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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

  private static final List<Rotation> TURNS =
      List.of(
          turn(new Vector3D(0, 1, 0), 90),
          turn(new Vector3D(1, 2, 3), 77),
          turn(new Vector3D(-2, 0.5, 1), 163));

  /** Every exact row of statics: its answer with the whole drawing turned. */
  static Map<String, ToDoubleFunction<Rotation>> setUps() {
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
  void limping_returns_the_printed_answer_with_the_arms_that_it_implies() {
    PublishedRow row = rows().stream().filter(r -> r.id().equals("A15")).findFirst().orElseThrow();
    assertThat(LegCases.limping(0.10, 0.07, Rotation.IDENTITY)).isBetween(row.low(), row.high());
  }
}
