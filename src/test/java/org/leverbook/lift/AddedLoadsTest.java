package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.newton;
import static org.leverbook.quantity.Units.percent;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.load.DirectedForce;
import org.leverbook.load.Direction;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.HandWeights;
import org.leverbook.load.Load;
import org.leverbook.load.NoLoad;
import org.leverbook.load.SteadyForce;
import org.leverbook.load.Worn;
import org.leverbook.statics.Position;

/**
 * Whatever is added to a lift is carried by the lifter: person and all of it together stand over
 * the middle of the foot, as they did without it. The middle of the foot is at X = 0.
 */
class AddedLoadsTest {

  private static final Person LIFTER = Person.of(Sex.MALE, kg(85), cm(178));
  private static final BackSquat SQUAT = BackSquat.of(LIFTER).holding(Barbell.of(kg(60)));

  /** The solver stops at a tenth of a micrometre; a coach sees a centimetre. */
  private static final double OVER = 1e-6;

  /** The same pose found in other steps, N·m: a tenth of what the last printed digit shows. */
  private static final double SAME = 0.01;

  /** Where body and everything it carries have their common centre of mass, metres forward. */
  private static double centre(Position position) {
    double body = position.body().tree().mass();
    double moment = body * position.placement().centreOfMass().getX();
    double mass = body;
    for (Load load : position.loads()) {
      for (Force f : load.forces(position.placement())) {
        double kilograms = -f.force().getY() / Gravity.STANDARD;
        moment += kilograms * f.point().getX();
        mass += kilograms;
      }
    }
    return moment / mass;
  }

  @Test
  void with_dumbbells_beside_the_bar_squatter_and_weights_stand_over_the_middle_of_the_foot() {
    for (Load added :
        List.of(
            HandWeights.pair("dumbbell", kg(20)),
            HandWeights.one("kettlebell", kg(24), Side.RIGHT),
            Worn.vest(kg(30)),
            Worn.belt(kg(30)),
            Barbell.of(kg(20)).on(Site.HAND))) {
      for (Position position : SQUAT.with(added).threePositions()) {
        assertThat(centre(position)).as("%s", added).isCloseTo(0, within(OVER));
        assertThat(position.text()).contains("balance at 50 % of the foot");
      }
    }
  }

  @Test
  void dumbbells_hanging_ahead_of_the_feet_send_the_body_back() {
    Position without = SQUAT.finish();
    Position with = SQUAT.with(HandWeights.pair("dumbbell", kg(20))).finish();
    assertThat(with.placement().centreOfMass().getX())
        .isLessThan(without.placement().centreOfMass().getX() - 0.01);
  }

  @Test
  void a_bar_added_to_empty_shoulders_is_the_bar_held_there() {
    BackSquat empty = BackSquat.of(LIFTER).holding(new NoLoad());
    Position added = empty.with(Barbell.of(kg(60)).on(Site.UPPER_BACK_HIGH)).finish();
    assertThat(added.moment(JointId.KNEE).size())
        .isCloseTo(SQUAT.finish().moment(JointId.KNEE).size(), within(SAME));
  }

  @Test
  void the_same_dumbbells_held_and_added_count_twice() {
    HandWeights pair = HandWeights.pair("dumbbell", kg(10));
    Position both = SplitSquat.of(LIFTER).holding(pair).with(pair).finish();
    Position heavy = SplitSquat.of(LIFTER).holding(HandWeights.pair("dumbbell", kg(20))).finish();
    assertThat(both.moment(JointId.HIP).signed())
        .isCloseTo(heavy.moment(JointId.HIP).signed(), within(SAME));
  }

  @Test
  void a_partner_who_pulls_back_is_leaned_against_wherever_the_pull_is_aimed() {
    Position level = SQUAT.with(partner()).finish();
    assertThat(level.text()).contains("balance at 50 % of the foot");
    // The same pull aimed at a place a kilometre behind, at the height of the hands.
    double high = level.placement().at(level.body().place(Site.HAND, Side.RIGHT)).getY();
    Position aimed =
        SQUAT.with(SteadyForce.of("partner", newton(100), new Vector3D(-1000, high, 0))).finish();
    assertThat(aimed.moment(JointId.KNEE).signed())
        .isCloseTo(level.moment(JointId.KNEE).signed(), within(0.1));
  }

  private static Load partner() {
    return DirectedForce.of("partner", newton(100), Direction.BACKWARD);
  }

  @Test
  void a_hinge_with_a_belt_weight_brings_the_balance_back_from_the_heels() {
    Hinge plain = Hinge.of(LIFTER).holding(Barbell.of(kg(100))).hipHeight(cm(60));
    Hinge belted = plain.with(Worn.belt(kg(40)));
    // In the posture of the plain hinge the belt's weight would hang far behind the feet.
    double unheeded = centre(plain.start().with(Worn.belt(kg(40))));
    assertThat(centre(belted.start())).isBetween(unheeded + 0.03, 0.0);
    assertThat(centre(belted.finish())).isCloseTo(0, within(0.005));
    assertThat(belted.at(percent(50)).text()).containsPattern("balance at 4\\d % of the foot");
  }

  @Test
  void a_hinge_tells_of_its_own_bar_only_where_another_lies_on_the_back() {
    Position start =
        Hinge.of(LIFTER)
            .trunkLean(deg(45))
            .with(Barbell.of(kg(40)).on(Site.UPPER_BACK_HIGH))
            .start();
    assertThat(start.worksheet().text()).contains("the empty hands");
  }
}
