package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.load.Barbell;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Ranges;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import org.leverbook.support.Pad;

/** What a coach can count on in a hinge, whoever lifts. */
class HingeTest {

  /** Conditions are met to 1e-7 m and 1e-7 rad; what hangs on several of them to ten times that. */
  private static final double SOLVED = 1e-6;

  /** Wrists that give by some degrees shorten the reach by less, metres. */
  private static final double WRISTS = 1e-3;

  private static final Person LIFTER_A = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private static Hinge pull() {
    return Hinge.of(LIFTER_A).holding(Barbell.of(Units.kg(140)));
  }

  /** Seeded lifters of many builds with loads up to twice their mass, at heights that work. */
  static Stream<Position> held() {
    java.util.Random random = new java.util.Random(20262);
    List<Position> held =
        IntStream.range(0, 120)
            .mapToObj(
                i -> {
                  Person person =
                      Person.of(
                              random.nextBoolean() ? Sex.MALE : Sex.FEMALE,
                              Units.kg(50 + 70 * random.nextDouble()),
                              Units.cm(150 + 50 * random.nextDouble()))
                          .longer(Part.THIGH, Units.percent(-8 + 16 * random.nextDouble()));
                  Hinge hinge =
                      Hinge.of(person)
                          .holding(
                              Barbell.of(Units.kg(2 * person.kilograms() * random.nextDouble())))
                          .hipHeight(
                              Units.m(person.metres() * (0.32 + 0.11 * random.nextDouble())));
                  try {
                    return hinge.start();
                  } catch (Refused e) {
                    return null;
                  }
                })
            .filter(java.util.Objects::nonNull)
            .toList();
    // The heights were chosen inside what most lifters reach; refusals must stay the exception.
    assertThat(held).hasSizeGreaterThan(90);
    return held.stream();
  }

  @ParameterizedTest
  @MethodSource("held")
  void every_position_is_one_a_body_can_take(Position start) {
    Placement where = start.placement();
    Body body = start.body();
    assertThat(Ranges.exceeded(where.pose())).isEmpty();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D grip = where.centre(JointId.GRIP.on(side));
      double ball = where.centre(JointId.BALL.on(side)).getX();
      assertThat(grip.getX())
          .as("bar over the middle of the foot or a little ahead")
          .isBetween(-0.01, ball + HingeWays.BEYOND_THE_BALL + SOLVED);
      assertThat(grip.getY()).as("bar at plate height").isCloseTo(0.225, within(SOLVED));
      double reach = grip.subtract(where.centre(JointId.SHOULDER.on(side))).getNorm();
      assertThat(reach).as("straight arms").isCloseTo(body.links().reach(), within(WRISTS));
      assertThat(where.pose().angle(JointId.ELBOW, side, "flexion")).isZero();
      Vector3D knee = where.centre(JointId.KNEE.on(side));
      Vector3D ankle = where.centre(JointId.ANKLE.on(side));
      double up = (grip.getY() - ankle.getY()) / (knee.getY() - ankle.getY());
      double shin = ankle.getX() + up * (knee.getX() - ankle.getX());
      assertThat(grip.getX() - shin).as("room for shin and bar").isGreaterThan(0.04);
      assertThat(where.frame(where.tree().indexOf(side.of("foot"))).y().getY())
          .as("flat foot")
          .isCloseTo(1, within(SOLVED));
    }
    for (Body.SolePoint sole : body.soles()) {
      assertThat(where.toWorld(sole.segment(), sole.place()).getY())
          .as(sole.name())
          .isCloseTo(0, within(SOLVED));
    }
    assertThat(start.balance().held()).isTrue();
    double ahead = start.fact("shoulders ahead of the bar") / 100;
    double most = HingeWays.mostAhead(body, (Barbell) start.loads().get(0));
    assertThat(ahead).isBetween(-SOLVED, most + SOLVED);
  }

  @ParameterizedTest
  @MethodSource("held")
  void the_balance_is_over_the_middle_of_the_foot_whoever_lifts_whatever(Position start) {
    // Common practice, no source (case E01): 35 to 65 % of the foot from the heel.
    assertThat(start.balance().shareOfFoot()).isBetween(0.35, 0.65);
    assertThat(start.notes()).noneMatch(note -> note.startsWith("The balance is near the heels"));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 20, 140})
  void it_stays_there_all_the_way_up(double kilograms) {
    Hinge hinge = pull().holding(Barbell.of(Units.kg(kilograms))).hipHeight(Units.cm(62));
    double before = 0;
    for (int i = 0; i <= 10; i++) {
      Position position = hinge.at(Units.percent(10 * i));
      assertThat(position.balance().shareOfFoot()).isBetween(0.35, 0.65);
      double bar = position.placement().centre("right grip").getY();
      assertThat(bar).as("the bar rises").isGreaterThan(before);
      before = bar;
    }
    assertThat(hinge.finish().fact("knee bend")).isLessThan(5);
    assertThat(hinge.finish().fact("trunk lean")).isLessThan(8);
  }

  @Test
  void what_is_said_of_the_balance_goes_when_loads_supports_or_speed_change_it() {
    Hinge behind = pull().holding(Barbell.of(Units.kg(20))).barAhead(Units.cm(-14));
    Position start = behind.hipHeight(Units.cm(68)).start();
    String heels = "The balance is near the heels";
    assertThat(start.notes()).anyMatch(note -> note.startsWith(heels));
    assertThat(start.finerFriction().notes()).isEqualTo(start.notes());

    Position heavier = start.with(Barbell.of(Units.kg(120)));
    assertThat(heavier.notes()).noneMatch(note -> note.startsWith(heels));
    assertThat(heavier.notes().get(0)).startsWith("Loads or supports were changed after");
    assertThat(heavier.notes()).contains("Usual posture: common practice, no source.");
    assertThat(heavier.with(Barbell.of(Units.kg(1))).notes())
        .as("said once")
        .isEqualTo(heavier.notes());
    assertThat(start.on(Pad.chest(Units.deg(35))).notes())
        .noneMatch(note -> note.startsWith(heels));

    Position leaning = start.leaning(Units.percent(50));
    assertThat(leaning.notes())
        .noneMatch(note -> note.startsWith(heels) || note.startsWith("Loads or supports"));

    Movement moving =
        Movement.of(
            "pull",
            Tempo.smooth(Units.seconds(1)),
            share -> behind.hipHeight(Units.cm(66 + 2 * share)).start());
    assertThat(moving.at(Units.seconds(0.2)).notes())
        .noneMatch(note -> note.startsWith(heels))
        .anyMatch(note -> note.startsWith("Moving: 0.20 s"));
    assertThat(moving.still(Units.seconds(0.2)).notes()).anyMatch(note -> note.startsWith(heels));
  }

  @ParameterizedTest
  @MethodSource("held")
  void the_load_bends_the_low_back_more_than_the_levels_above(Position start) {
    // Common practice, no source (case E02): arms hang straight down, so arms shrink on the way up.
    double below = 2 * start.moment(JointId.HIP).signed();
    List<JointId> levels = JointId.spine().subList(0, 17);
    double arm = Double.POSITIVE_INFINITY;
    for (JointId level : levels) {
      JointMoment moment = start.moment(level);
      assertThat(moment.signed()).as(level.word()).isLessThan(below);
      below = moment.signed();
      double forward = -moment.centre().getX();
      assertThat(forward).as("arm at " + level.word()).isLessThan(arm);
      arm = forward;
    }
  }

  @Test
  void shoulders_straight_over_a_very_heavy_bar_carry_next_to_nothing() {
    // Case E02: moment about the shoulder with hanging arms over moment at L5/S1, at most 0.05.
    Position start =
        Hinge.of(LIFTER_A).holding(Barbell.of(Units.kg(340))).hipHeight(Units.cm(60)).start();
    assertThat(start.fact("shoulders ahead of the bar")).isBetween(-1e-4, 2.5);
    double ratio = start.moment(JointId.SHOULDER).size() / start.moment(JointId.L5_S1).size();
    assertThat(ratio).isLessThan(0.05);
  }

  @Test
  void the_hips_end_at_their_published_flexion_and_the_spine_hardly_gives_way() {
    Position start = pull().hipHeight(Units.cm(58)).start();
    assertThat(start.fact("hip height")).isCloseTo(58, within(1e-4));
    assertThat(start.fact("hip flexion")).isCloseTo(130.4, within(1e-6));
    assertThat(start.fact("spine flexion")).isBetween(-1.0, 1.0);
    assertThat(start.notes()).contains("The spine keeps its standing shape.");
  }

  @Test
  void a_spine_rounded_as_asked_shares_it_over_its_levels() {
    Position start = pull().hipHeight(Units.cm(62)).spineRounding(Units.deg(25)).start();
    assertThat(start.fact("spine flexion")).isCloseTo(25, within(1e-4));
    double lumbar = 0;
    for (JointId level : JointId.spine().subList(0, 5)) {
      double bend = start.placement().pose().angle(level, Side.MIDLINE, "flexion");
      assertThat(bend).as(level.word()).isPositive();
      lumbar += bend;
    }
    assertThat(Math.toDegrees(lumbar)).isBetween(10.0, 25.0);
    assertThat(start.notes()).contains("The spine is bent by 25°, as asked for.");
    double straight = pull().hipHeight(Units.cm(62)).start().fact("hip flexion");
    assertThat(start.fact("hip flexion")).isLessThan(straight - 3);
  }

  @Test
  void a_bar_on_blocks_leaves_the_spine_straight() {
    Position start = pull().barHeight(Units.cm(45)).hipHeight(Units.cm(75)).start();
    assertThat(start.fact("spine flexion")).isBetween(-0.5, 0.5);
    assertThat(start.fact("hip flexion")).isLessThan(120);
    assertThat(start.notes()).contains("The spine keeps its standing shape.");
  }

  @Test
  void hip_height_knee_bend_and_trunk_lean_lead_to_much_the_same_position() {
    // Each word fixes one number and leaves the wishes to settle the others, so not to the digit.
    Position byHeight = pull().hipHeight(Units.cm(66)).start();
    Position byKnee = pull().kneeBend(Units.deg(byHeight.fact("knee bend"))).start();
    assertThat(byKnee.fact("hip height")).isCloseTo(66, within(1.0));
    Position byLean = pull().trunkLean(Units.deg(byHeight.fact("trunk lean"))).start();
    assertThat(byLean.fact("hip height")).isCloseTo(66, within(1.0));
    assertThat(byLean.moment(JointId.L5_S1).size())
        .isCloseTo(byHeight.moment(JointId.L5_S1).size(), within(10.0));
  }

  @Test
  void the_last_word_counts() {
    assertThat(pull().kneeBend(Units.deg(90)).hipHeight(Units.cm(66)).start().fact("hip height"))
        .isCloseTo(66, within(1e-4));
  }

  @Test
  void a_longer_trunk_sets_the_hips_further_behind_the_bar() {
    Person lifterB = LIFTER_A.longer(Part.TRUNK, Units.percent(6));
    Barbell bar = Barbell.of(Units.kg(140));
    double usual = pull().hipHeight(Units.cm(66)).start().moment(JointId.HIP).arm();
    Position other = Hinge.of(lifterB).holding(bar).hipHeight(Units.cm(66)).start();
    assertThat(other.moment(JointId.HIP).arm()).isGreaterThan(usual + 0.01);
  }

  @Test
  void pounds_and_inches_give_the_same_numbers() {
    Position metric = pull().hipHeight(Units.cm(60.96)).start();
    Position imperial =
        Hinge.of(LIFTER_A)
            .holding(Barbell.of(Units.lb(140 / 0.45359237)))
            .hipHeight(Units.inch(24))
            .start();
    assertThat(imperial.moment(JointId.HIP).size())
        .isCloseTo(metric.moment(JointId.HIP).size(), within(1e-4));
  }

  @Test
  void empty_hands_are_a_position_too() {
    Position start = Hinge.of(LIFTER_A).hipHeight(Units.cm(66)).start();
    assertThat(start.loads()).isEmpty();
    assertThat(start.moment(JointId.HIP).size()).isPositive();
    assertThat(start.moment(JointId.HIP).arm()).isZero();
  }

  @Test
  void feet_turned_out_and_wide_still_stand_flat() {
    Position wide =
        pull()
            .stance(Units.cm(60), Units.deg(30))
            .gripWidth(Units.cm(40))
            .hipHeight(Units.cm(60))
            .start();
    assertThat(wide.placement().centre("right ankle").getZ()).isCloseTo(0.3, within(SOLVED));
    assertThat(wide.placement().centre("right grip").getZ()).isCloseTo(0.2, within(SOLVED));
    assertThat(wide.balance().held()).isTrue();
  }
}
