package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.load.HandWeights;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** What a coach sets about lifts for legs and hips, and what changes with it. */
class LegSettingsTest {

  private static final Person MAN = Person.of(Sex.MALE, kg(85), cm(178));

  /** What a solver leaves of a condition that counts as met, metres, with room for rounding. */
  private static final double EXACT = 1e-6;

  /** The same in degrees. */
  private static final double EXACT_DEGREES = 1e-4;

  @Test
  void hips_go_where_the_coach_says() {
    Deadlift pull = Deadlift.of(MAN);
    for (double height : new double[] {56, 62, 70}) {
      assertThat(centre(pull.hipHeight(cm(height)).start(), "right hip").getY())
          .isCloseTo(height / 100, within(EXACT));
    }
    assertThat(fact(pull.hipHeight(cm(70)).start(), "trunk lean"))
        .isGreaterThan(fact(pull.hipHeight(cm(56)).start(), "trunk lean"));
  }

  @Test
  void feet_and_hands_stand_as_wide_as_the_coach_says() {
    SumoDeadlift pull = SumoDeadlift.of(MAN).stanceWidth(cm(80)).turnOut(deg(35)).gripWidth(cm(50));
    Position start = pull.start();
    assertThat(centre(start, "right ankle").getZ() - centre(start, "left ankle").getZ())
        .isCloseTo(0.8, within(EXACT));
    assertThat(hand(start, Side.RIGHT).getZ()).isCloseTo(0.25, within(EXACT));
    assertThat(fact(start, "turn-out")).isCloseTo(35, within(EXACT_DEGREES));
  }

  @Test
  void a_wide_stance_makes_the_trunk_more_upright() {
    assertThat(fact(SumoDeadlift.of(MAN).start(), "trunk lean"))
        .isLessThan(fact(Deadlift.of(MAN).start(), "trunk lean") - 5);
  }

  @Test
  void higher_pins_leave_less_of_the_pull() {
    RackPull pull = RackPull.of(MAN);
    Position low = pull.barHeight(cm(42)).start();
    Position high = pull.barHeight(cm(60)).start();
    assertThat(hand(low, Side.LEFT).getY()).isCloseTo(0.42, within(EXACT));
    assertThat(hand(high, Side.LEFT).getY()).isCloseTo(0.60, within(EXACT));
    assertThat(fact(high, "trunk lean")).isLessThan(fact(low, "trunk lean"));
  }

  @Test
  void the_bar_stands_ahead_of_the_foot_as_said() {
    assertThat(hand(Deadlift.of(MAN).barAhead(cm(5)).start(), Side.RIGHT).getX())
        .isCloseTo(0.05, within(EXACT));
    assertThat(hand(TrapBarDeadlift.of(MAN).barAhead(cm(-2)).start(), Side.RIGHT).getX())
        .isCloseTo(-0.02, within(EXACT));
  }

  @Test
  void knees_trunk_and_spine_bend_as_said_in_hinges() {
    Position hinge = RomanianDeadlift.of(MAN).kneeBend(deg(30)).finish();
    assertThat(fact(hinge, "knee bend")).isCloseTo(30, within(EXACT_DEGREES));
    // The lowest joint of the neck, which looks ahead, counts as spine too: half a degree.
    Position rounded = StiffLegDeadlift.of(MAN).spineRounding(deg(35)).start();
    assertThat(fact(rounded, "spine flexion")).isCloseTo(35, within(0.5));
    GoodMorning morning = GoodMorning.of(MAN);
    assertThat(moment(morning.trunkLean(deg(70)).finish()))
        .isGreaterThan(moment(morning.trunkLean(deg(40)).finish()));
    assertThat(fact(SwingBottom.of(MAN).trunkLean(deg(50)).finish(), "trunk lean"))
        .isCloseTo(50, within(EXACT_DEGREES));
  }

  @Test
  void deeper_squats_have_lower_hips() {
    double above = centre(BackSquat.of(MAN).depth(deg(-30)).finish(), "right hip").getY();
    double usual = centre(BackSquat.of(MAN).finish(), "right hip").getY();
    assertThat(above).isGreaterThan(usual + 0.1);
    double goblet = centre(GobletSquat.of(MAN).depth(deg(-20)).finish(), "right hip").getY();
    assertThat(goblet).isGreaterThan(centre(GobletSquat.of(MAN).finish(), "right hip").getY());
  }

  @Test
  void a_low_bar_leans_the_trunk_and_a_bar_in_front_rights_it() {
    double high = fact(BackSquat.of(MAN).depth(deg(-15)).finish(), "trunk lean");
    double low =
        fact(BackSquat.of(MAN).bar(Site.UPPER_BACK_LOW).depth(deg(-15)).finish(), "trunk lean");
    double front = fact(FrontSquat.of(MAN).depth(deg(-15)).finish(), "trunk lean");
    assertThat(low).isGreaterThan(high);
    assertThat(front).isLessThan(high);
  }

  @Test
  void plates_under_the_heels_save_the_ankles() {
    FrontSquat squat = FrontSquat.of(MAN);
    Position raised = squat.heelHeight(cm(3)).finish();
    assertThat(raised.held()).isTrue();
    assertThat(fact(raised, "ankle flexion")).isLessThan(fact(squat.finish(), "ankle flexion") - 3);
  }

  @Test
  void the_front_foot_of_a_split_squat_stands_a_step_ahead() {
    SplitSquat squat = SplitSquat.of(MAN).stepLength(cm(75));
    Position start = squat.start();
    double front = centre(start, JointId.BALL.on(Side.RIGHT)).getX();
    double rear = centre(start, JointId.BALL.on(Side.LEFT)).getX();
    // The front foot turns out by 5 degrees, which takes its ball back by less than a millimetre.
    assertThat(front - rear).isCloseTo(0.75, within(0.001));
    // What is only wished is found less finely than what must hold.
    Position mirrored = squat.working(Side.LEFT).start();
    assertThat(centre(mirrored, "left knee").getX())
        .isCloseTo(centre(start, "right knee").getX(), within(5e-4));
  }

  @Test
  void a_higher_box_bends_the_leg_more() {
    StepUp step = StepUp.of(MAN);
    assertThat(fact(step.stepHeight(cm(45)).start(), "knee bend"))
        .isGreaterThan(fact(step.stepHeight(cm(25)).start(), "knee bend") + 10);
    Position left = step.working(Side.LEFT).start();
    assertThat(centre(left, "left ankle").getY())
        .isGreaterThan(centre(left, "right ankle").getY() + 0.2);
  }

  @Test
  void a_split_squat_is_held_with_one_dumbbell_or_two() {
    SplitSquat squat = SplitSquat.of(MAN);
    HandWeights one = HandWeights.one("dumbbell", kg(10), Side.LEFT);
    assertThat(squat.holding(one).finish().held()).isTrue();
    assertThat(squat.holding(HandWeights.pair("dumbbell", kg(20))).finish().held()).isTrue();
  }

  @Test
  void machines_bend_the_knees_as_far_as_said() {
    assertThat(fact(LegPress.of(MAN).kneeBend(deg(65)).finish(), "knee bend"))
        .isCloseTo(65, within(EXACT_DEGREES));
    assertThat(fact(LegCurl.of(MAN).kneeBend(deg(80)).finish(), "knee bend"))
        .isCloseTo(80, within(EXACT_DEGREES));
    assertThat(fact(LegExtension.of(MAN).kneeBend(deg(100)).start(), "knee bend"))
        .isCloseTo(100, within(EXACT_DEGREES));
  }

  @Test
  void a_steeper_rail_presses_harder() {
    LegPress press = LegPress.of(MAN).machine(kg(150));
    for (double slope : new double[] {30, 45, 60}) {
      Position middle = press.padAngle(deg(slope)).middle();
      assertThat(middle.held()).as(slope + "°: " + middle.holding().sentence()).isTrue();
      double push =
          middle.forces().stream()
              .filter(f -> f.source().equals("sled"))
              .map(f -> f.force())
              .reduce(Vector3D.ZERO, Vector3D::add)
              .getNorm();
      // m g sin a
      assertThat(push).isCloseTo(150 * 9.80665 * Math.sin(Math.toRadians(slope)), within(1e-6));
    }
  }

  @Test
  void a_higher_bench_raises_the_shoulders_of_a_hip_thrust() {
    HipThrust thrust = HipThrust.of(MAN);
    Position high = thrust.padHeight(cm(45)).finish();
    assertThat(high.held()).isTrue();
    assertThat(centre(high, "right shoulder").getY())
        .isGreaterThan(centre(thrust.padHeight(cm(35)).finish(), "right shoulder").getY());
  }

  @Test
  void a_flat_back_extension_ends_with_the_trunk_level() {
    for (double tilt : new double[] {0, 20, 45, 60}) {
      BackExtension lift = BackExtension.of(MAN).padAngle(deg(tilt));
      Position finish = lift.finish();
      assertThat(finish.held()).as(tilt + "°: " + finish.holding().sentence()).isTrue();
      assertThat(lift.start().held()).isTrue();
      // Straight as the legs are; the shoulders lie a little off the line through the hips.
      assertThat(fact(finish, "trunk lean")).isCloseTo(90 - tilt, within(5.0));
    }
    BackExtension loaded = BackExtension.of(MAN).holding(HandWeights.pair("dumbbell", kg(10)));
    assertThat(moment(loaded.finish())).isGreaterThan(moment(BackExtension.of(MAN).finish()));
  }

  @Test
  void heels_of_a_calf_raise_sink_below_the_plate_and_rise_as_said() {
    CalfRaise raise = CalfRaise.of(MAN).stepHeight(cm(6)).heelHeight(cm(8));
    double up = heel(raise.finish());
    double down = heel(raise.start());
    assertThat(up).isCloseTo(0.14, within(EXACT));
    assertThat(down).isCloseTo(0.03, within(EXACT));
    assertThat(raise.start().held()).isTrue();
    assertThat(raise.finish().held()).isTrue();
  }

  @Test
  void a_heavier_bar_loads_the_hip_more_in_every_pull() {
    Position light = Deadlift.of(MAN).holding(Barbell.of(kg(60))).start();
    Position heavy = Deadlift.of(MAN).holding(Barbell.of(kg(180))).start();
    assertThat(moment(heavy)).isGreaterThan(moment(light));
  }

  @Test
  void a_grip_wider_than_the_bar_is_refused() {
    assertThatThrownBy(() -> Deadlift.of(MAN).gripWidth(cm(140)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("grip width")
        .hasMessageContaining("140")
        .hasMessageContaining("131");
  }

  @Test
  void an_impossible_pad_angle_is_refused() {
    assertThatThrownBy(() -> BackExtension.of(MAN).padAngle(deg(400)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("pad angle")
        .hasMessageContaining("400")
        .hasMessageContaining("100");
  }

  @Test
  void hips_that_nobody_gets_so_high_are_refused_with_what_stops_them() {
    assertThatThrownBy(() -> Deadlift.of(MAN).hipHeight(cm(95)).start())
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("Conventional deadlift at 0 % of the way: ")
        .hasMessageContaining("At the end of their range")
        .hasMessageContaining("Change a setting that gives way: ")
        .hasMessageContaining("hip height 95.0 cm");
  }

  @Test
  void a_squat_deeper_than_the_joints_go_is_refused() {
    assertThatThrownBy(() -> BackSquat.of(MAN).depth(deg(35)).finish())
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("Back squat at 100 % of the way: ")
        .hasMessageContaining("depth 35°");
  }

  @Test
  void a_bar_where_it_does_not_belong_and_a_side_that_is_none_are_refused() {
    assertThatThrownBy(() -> BackSquat.of(MAN).bar(Site.HIP_CREASE))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "In a back squat the bar lies UPPER_BACK_HIGH or UPPER_BACK_LOW, not on the hip crease.");
    assertThatThrownBy(() -> SplitSquat.of(MAN).working(Side.MIDLINE))
        .isInstanceOf(Refused.class)
        .hasMessage("One side works: say LEFT or RIGHT.");
  }

  private static double heel(Position position) {
    return position.placement().at(position.body().place(Site.HEEL, Side.RIGHT)).getY();
  }

  private static Vector3D centre(Position position, String joint) {
    return position.placement().centre(joint);
  }

  private static Vector3D hand(Position position, Side side) {
    return position.placement().at(position.body().place(Site.HAND, side));
  }

  private static double moment(Position position) {
    return position.moment(JointId.HIP).size();
  }

  private static double fact(Position position, String name) {
    double value = Double.NEGATIVE_INFINITY;
    for (var fact : position.facts()) {
      // Where the coach set a thing too, what came out stands last.
      value = fact.name().equals(name) ? fact.value() : value;
    }
    assertThat(value).as(name).isGreaterThan(Double.NEGATIVE_INFINITY);
    return value;
  }
}
