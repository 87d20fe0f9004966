package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;
import static org.leverbook.quantity.Units.seconds;

import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Site;
import org.leverbook.lift.Hinge;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;

/** A bar that is pulled at but not off the floor yet. */
class BarOnFloorTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));

  private static Position start(Barbell bar) {
    return Hinge.of(LIFTER).holding(bar).hipHeight(cm(60)).start();
  }

  private static double fromBar(Position position) {
    return position.moment(JointId.HIP).from("bar");
  }

  @Test
  void the_hands_carry_what_the_floor_does_not() {
    Position all = start(Barbell.of(kg(100)));
    // The same pose: what the hands hold decides how far the shoulders come ahead, so take it over.
    Position part =
        Position.of(
            "part",
            all.body(),
            all.placement().pose(),
            java.util.List.of(Barbell.of(kg(100)).stillOnFloor(percent(40))),
            all.supports(),
            all.facts(),
            all.notes());
    assertThat(fromBar(part)).isCloseTo(0.6 * fromBar(all), within(1e-9));
    assertThat(part.loads().get(0).description())
        .isEqualTo("barbell 100.0 kg, 40.0 kg of it still on the floor");
    String push =
        "The floor pushes up at the bar's plates with 392 N; of the bar's 981 N the hands";
    assertThat(part.notes()).anyMatch(note -> note.startsWith(push));
    assertThat(part.worksheet().text()).contains("\"bar\"", push);
    assertThat(part.picture().svgDocument()).contains("40.0 kg of it still on the floor");
    assertThat(part.without("bar").notes()).noneMatch(note -> note.startsWith(push));
    assertThat(part.balance().held()).isTrue();
  }

  @Test
  void all_of_it_on_the_floor_is_as_empty_hands() {
    Position none = start(Barbell.of(kg(100)).stillOnFloor(percent(100)));
    assertThat(fromBar(none)).isZero();
    assertThat(none.held()).isTrue();
  }

  @Test
  void a_bar_in_the_air_or_on_the_back_is_refused_with_the_amount() {
    Barbell bar = Barbell.of(kg(100)).stillOnFloor(percent(40));
    assertThatThrownBy(() -> Hinge.of(LIFTER).holding(bar).barHeight(cm(30)).start())
        .isInstanceOf(Refused.class)
        .hasMessageContaining("7.5 cm above the floor")
        .hasMessageContaining("bring the bar to 22.5 cm");
    assertThatThrownBy(() -> bar.on(Site.UPPER_BACK_HIGH)).isInstanceOf(Refused.class);
    assertThatThrownBy(() -> Barbell.of(kg(100)).on(Site.HIP_CREASE).stillOnFloor(percent(40)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("does not rest on the floor");
    assertThatThrownBy(() -> Barbell.of(kg(100)).stillOnFloor(percent(140)))
        .isInstanceOf(Refused.class);
  }

  @Test
  void it_may_stay_in_a_movement_of_the_body_but_not_move_itself() {
    Barbell bar = Barbell.of(kg(100)).stillOnFloor(percent(40));
    Hinge pull = Hinge.of(LIFTER).holding(bar).barAhead(cm(4));
    Movement hips =
        Movement.of(
            "hips up",
            Tempo.smooth(seconds(1)),
            share -> pull.hipHeight(cm(62 + 4 * share)).start());
    assertThat(hips.at(seconds(0.3)).held()).isTrue();
    Movement up =
        Movement.of(
            "bar up",
            Tempo.smooth(seconds(1)),
            share -> pull.hipHeight(cm(66)).barHeight(cm(22 + share)).start());
    // Smoothly, and at a steady speed, where nothing is sped up.
    for (Movement way : java.util.List.of(up, up.at(Tempo.steady(seconds(1))))) {
      assertThatThrownBy(() -> way.at(seconds(0.3)))
          .isInstanceOf(Refused.class)
          .hasMessageContaining("does not move");
    }
  }
}
