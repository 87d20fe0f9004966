package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/** What cannot be done is said in whole sentences, with the amount and the way out. */
class HingeRefusalsTest {

  private static final Hinge PULL =
      Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178))).holding(Barbell.of(Units.kg(140)));

  private static void refused(ThrowingCallable asked, String... parts) {
    assertThatThrownBy(asked)
        .isInstanceOf(Refused.class)
        .satisfies(e -> assertThat(e.getMessage()).contains(parts).matches("(?s).*[.?]"));
  }

  @Test
  void a_hip_height_below_the_knees() {
    refused(
        () -> PULL.hipHeight(Units.cm(20)),
        "A hip height of 20.0 cm would put the hips below the knees: between ",
        " cm (knee height) and ",
        " cm (standing) can be asked of this lifter.");
  }

  @Test
  void a_hip_height_above_standing() {
    refused(() -> PULL.hipHeight(Units.cm(130)), "would put the hips above standing");
  }

  @Test
  void a_hip_height_in_the_wrong_unit() {
    refused(
        () -> PULL.hipHeight(Units.m(58)), "Were centimetres read as metres? Then write cm(58)");
    refused(
        () -> PULL.hipHeight(Units.cm(0.58)),
        "Were metres read as centimetres? Then write m(0.58)");
    refused(
        () -> PULL.hipHeight(Units.cm(24)), "Were inches read as centimetres? Then write inch(24)");
  }

  @Test
  void hands_that_do_not_reach_the_bar_say_by_how_much_and_what_would_work() {
    refused(
        () -> PULL.barHeight(Units.cm(5)).hipHeight(Units.cm(91)).start(),
        "Hinge at 0 % of the way: ",
        "At the end of their range: ",
        "With this bar this lifter can be set up with the hips from about ");
    refused(
        () -> PULL.barHeight(Units.cm(110)).hipHeight(Units.cm(50)).start(),
        "the hands stop",
        "cm below the bar");
  }

  @Test
  void a_bar_too_far_ahead_tips_the_lifter_and_the_position_says_by_how_much() {
    Position tips =
        PULL.holding(Barbell.of(Units.kg(300)))
            .barAhead(Units.cm(30))
            .hipHeight(Units.cm(70))
            .start();
    assertThat(tips.held()).isFalse();
    assertThat(tips.text())
        .contains("Tips forward: the weight of lifter and bar together falls ")
        .contains(" cm ahead of the toes. Bring the load or the hips back.");
  }

  @Test
  void a_grip_wider_than_the_arms_take() {
    refused(
        () ->
            Hinge.of(Person.of(Sex.FEMALE, Units.kg(45), Units.cm(125)))
                .holding(Barbell.of(Units.kg(20)))
                .gripWidth(Units.cm(131))
                .start(),
        "A grip of 131 cm is wider than these arms",
        "Grip narrower.");
  }

  @ParameterizedTest
  @CsvSource({"-5, A mass cannot be negative", "1200, Is it in pounds? Then write lb(1200)"})
  void a_bar_of_no_sensible_mass(double kilograms, String cause) {
    refused(
        () -> Barbell.of(Units.kg(kilograms)),
        "The barbell's mass is ",
        "but must lie between 0 and 600 kg.",
        cause.equals("A mass cannot be negative") ? cause + ": is the minus a slip?" : cause);
  }

  @Test
  void a_bar_of_nan() {
    refused(() -> Barbell.of(Units.kg(Double.NaN)), "kg(NaN) is no amount: give a finite number.");
  }

  @Test
  void what_is_missing_is_asked_for_with_an_example() {
    refused(
        () -> PULL.hipHeight(null), "The hip height is missing (null): give one, such as cm(58).");
    refused(
        () -> PULL.holding((Barbell) null),
        "The load is missing (null): give one, such as barbell(kg(140)).");
    refused(() -> Hinge.of(null), "The lifter is missing (null)");
  }

  @Test
  void angles_outside_their_sense() {
    refused(
        () -> PULL.kneeBend(Units.deg(200)),
        "The knee bend is 200°, but must lie between 0 and 140°.");
    refused(
        () -> PULL.trunkLean(Units.deg(-10)),
        "The trunk lean is -10°, but must lie between 0 and 110°.");
  }
}
