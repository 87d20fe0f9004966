package org.leverbook.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.language.Vocabulary;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.support.Pad;

/** The best setting of real lifts. */
class BestSettingTest {

  private static final Hinge PULL =
      Hinge.of(Person.of(Sex.MALE, kg(85), cm(178))).holding(Barbell.of(kg(140)));

  private static double knee(Position position) {
    return position.moment(JointId.KNEE).size();
  }

  @Test
  void the_hip_height_with_the_least_knee_moment_is_no_worse_than_a_fine_sweep() {
    Optimum<Position> best =
        Vocabulary.lowest(
            "hip height", cm(55), cm(75), h -> PULL.hipHeight(h).start(), JointId.KNEE);
    double finest =
        Sweep.over("hip height", cm(60), cm(70), 101, h -> PULL.hipHeight(h).start())
            .rows()
            .stream()
            .mapToDouble(r -> knee(r.position()))
            .min()
            .orElseThrow();
    assertThat(best.value()).isLessThanOrEqualTo(finest);
    assertThat(best.best().moment(JointId.KNEE).size())
        .as("the position at the best is that of the value")
        .isEqualTo(best.value());
    assertThat(best.text())
        .startsWith("lowest knee moment over hip height (55.0 cm to 75.0 cm): ")
        .endsWith(Caution.TEXT);
  }

  @Test
  void the_least_low_back_moment_lies_on_the_edge_of_what_can_be_reached() {
    Optimum<Position> best =
        Vocabulary.lowest(
            "hip height", cm(48), cm(72), h -> PULL.hipHeight(h).start(), JointId.L5_S1);
    assertThat(best.notes().get(0))
        .startsWith(
            "On the edge of what can be done; with the hip height a little lower: A hip height of")
        .contains("below the knees");
    assertThat(best.best().held()).isTrue();
    assertThat(best.sheet().rows()).hasSize(50);
    assertThat(best.table().columnNames())
        .containsExactly("hip height (cm)", "L5/S1 moment (N·m)", "place", "reason");
  }

  @Test
  void a_limit_on_the_knee_moves_the_best_to_where_the_limit_is_just_kept() {
    Optimum<Position> free =
        Vocabulary.lowest(
            "hip height", cm(50), cm(72), h -> PULL.hipHeight(h).start(), JointId.HIP);
    Optimum<Position> limited = free.atMost("knee moment", "N·m", 40, BestSettingTest::knee);
    assertThat(knee(free.best())).isGreaterThan(40);
    // The solver's own tolerance, 1e-7, is less than this.
    assertThat(knee(limited.best())).isCloseTo(40, within(1e-3)).isLessThanOrEqualTo(40);
    assertThat(limited.value()).isGreaterThan(free.value());
    assertThat(limited.notes().get(0))
        .isEqualTo(
            "On the edge of what was asked for; with the hip height a little lower: The knee moment is a trace"
                + " above 40 N·m; at most 40 N·m was asked.");
  }

  @Test
  void pad_angle_with_least_spinal_effort_and_the_price_at_the_feet() {
    Position leaning =
        Hinge.of(Person.of(Sex.MALE, kg(85), cm(178)))
            .holding(Barbell.of(kg(60)))
            .trunkLean(deg(60))
            .start();
    TradeOff<Position> trade =
        Vocabulary.lowest(
                "pad angle", deg(20), deg(80), a -> leaning.on(Pad.chest(a)), JointId.L5_S1)
            .scanned(13)
            .andLowest("ankle moment", "N·m", p -> p.moment(JointId.ANKLE).size());
    Sheet front = trade.sheet();
    assertThat(front.rows()).isNotEmpty();
    Comparator<List<Object>> first = Comparator.comparingDouble(r -> (Double) r.get(1));
    assertThat(front.rows()).isSortedAccordingTo(first);
    assertThat(front.rows())
        .isSortedAccordingTo(
            Comparator.comparingDouble((List<Object> r) -> (Double) r.get(2)).reversed());
    for (List<Object> seen : trade.scanSheet().rows()) {
      if (seen.get(1) != null) {
        assertThat(front.rows())
            .as("%s is on the front or beaten by one that is", seen)
            .anyMatch(
                r ->
                    (Double) r.get(1) <= (Double) seen.get(1)
                        && (Double) r.get(2) <= (Double) seen.get(2));
      }
    }
    assertThat(trade.text())
        .startsWith("Low L5/S1 moment against low ankle moment\nOf 13 settings over pad angle")
        .endsWith(Caution.TEXT);
  }

  @Test
  void a_known_front_is_found_whole_and_its_middle_is_in_the_middle() {
    // Both costs fall towards their own ends 2 and 8; between them lies the front.
    TradeOff<Double> trade =
        Vocabulary.lowest(
                "height", cm(0), cm(10), h -> h.getValue().doubleValue(), h -> (h - 2) * (h - 2))
            .scanned(11)
            .andLowest("other", "", h -> (h - 8) * (h - 8));
    assertThat(trade.sheet().rows())
        .extracting(r -> r.get(0))
        .containsExactly(2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0);
    assertThat(trade.inTheMiddle()).isEqualTo(5);
    assertThat(trade.sheet().rows())
        .extracting(r -> r.get(3))
        .containsExactly("front", "front", "front", "middle", "front", "front", "front");
    TradeOff<Double> high =
        Vocabulary.highest("height", cm(0), cm(10), h -> h.getValue().doubleValue(), h -> h)
            .called("height above", "cm")
            .andHighest("other", "", h -> 10 + h);
    assertThat(high.text())
        .contains("The two do not pull against each other: one setting is best in both.");
    assertThatThrownBy(() -> high.sheet().cell(0, "height above (cm)")).isInstanceOf(Refused.class);
    assertThat(high.sheet().cell(0, "height above")).isEqualTo(10.0);
  }

  @Test
  void what_makes_no_sense_is_refused_in_a_sentence() {
    assertThatThrownBy(() -> Vocabulary.lowest("hip height", cm(60), cm(60), h -> h, h -> 1.0))
        .isInstanceOf(Refused.class)
        .hasMessage("The hip height needs two different ends, but both are 60 cm.");
    assertThatThrownBy(
            () -> Vocabulary.lowest("a", cm(1), cm(2), "a", cm(1), cm(2), (a, b) -> a, q -> 1.0))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "Both settings are called \"a\": give them two names, so that they can be told apart.");
    assertThatThrownBy(
            () ->
                Vocabulary.lowest("a", cm(1), cm(2), a -> a, a -> 1.0)
                    .atMost("b", "N", Double.NaN, a -> 1))
        .isInstanceOf(Refused.class)
        .hasMessage("The limit of the b is NaN: give a finite number.");
    assertThatThrownBy(
            () ->
                Vocabulary.lowest("a", cm(1), cm(2), a -> a, a -> 1.0)
                    .andLowest("quantity", "", a -> 1))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "Both quantities are called \"quantity\": name the first by .called(\"L5/S1 moment\","
                + " \"N·m\").");
  }
}
