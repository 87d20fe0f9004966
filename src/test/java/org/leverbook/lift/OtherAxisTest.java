package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.load.Barbell;
import org.leverbook.load.HandWeights;
import org.leverbook.quantity.Units;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Position;

/** Where flexion is not what a lift asks, the axis that matters is told beside it. */
class OtherAxisTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static List<String> told(Position position) {
    return position.moments().notes().stream()
        .filter(note -> note.startsWith("More is asked about another axis"))
        .toList();
  }

  @Test
  void a_raise_to_the_side_tells_the_shoulders_abduction() {
    Position raised =
        LateralRaise.of(LIFTER).holding(HandWeights.pair("dumbbell", Units.kg(8))).finish();
    assertThat(raised.moment(JointId.SHOULDER).text())
        .isEqualTo(
            "right shoulder: 10 N·m, tends to extend it, opposed by the shoulder flexors; more about"
                + " abduction: 59 N·m, tends to adduct it, opposed by the shoulder abductors");
    assertThat(raised.text()).contains("; more about abduction: 59 N·m, tends to adduct it");
    assertThat(told(raised))
        .containsExactly(
            "More is asked about another axis than the one told first: right shoulder, abduction 58.7"
                + " N·m, tends to adduct it, opposed by the shoulder abductors; left shoulder,"
                + " abduction 58.7 N·m, tends to adduct it, opposed by the shoulder abductors.");
  }

  @Test
  void the_other_axis_has_its_own_arm_and_parts() {
    JointMoment raised =
        LateralRaise.of(LIFTER)
            .holding(HandWeights.pair("dumbbell", Units.kg(8)))
            .finish()
            .moment(JointId.SHOULDER)
            .elsewhere()
            .orElseThrow();
    assertThat(raised.arm()).isBetween(0.55, raised.arm3d());
    assertThat(raised.signed()).isEqualTo(raised.about("abduction"));
    assertThat(raised.elsewhere()).isEmpty();
  }

  @Test
  void lifts_of_flexion_say_no_more_than_before() {
    Position pull =
        Hinge.of(LIFTER).holding(Barbell.of(Units.kg(140))).hipHeight(Units.cm(58)).start();
    assertThat(told(pull)).isEmpty();
    assertThat(pull.moment(JointId.SHOULDER).text())
        .isEqualTo("right shoulder: 25 N·m, tends to flex it, opposed by the shoulder extensors");
    Position squat = BackSquat.of(LIFTER).holding(Barbell.of(Units.kg(100))).finish();
    assertThat(squat.moment(JointId.HIP).elsewhere()).isEmpty();
    assertThat(squat.moment(JointId.KNEE).elsewhere()).isEmpty();
  }
}
