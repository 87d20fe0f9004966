package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.HandWeights;
import org.leverbook.pose.Placement;
import org.leverbook.statics.Position;

/** What a coach can count on in the lifts that pull, and in those of the trunk. */
class PullLiftsTest {

  /** The solver meets conditions to 1e-7. */
  private static final double SOLVED = 1e-6;

  private static final Person MAN = Person.of(Sex.MALE, kg(85), cm(178));

  private static final List<Person> LIFTERS =
      List.of(
          MAN,
          Person.of(Sex.FEMALE, kg(60), cm(165)),
          Person.of(Sex.MALE, kg(85), cm(178)).longer(Part.THIGH, percent(8)));

  /** Lifts in which both hands hold one straight bar or a pair of handles, and how far apart. */
  static Stream<Arguments> gripped() {
    return LIFTERS.stream()
        .flatMap(
            who ->
                Stream.of(
                    Arguments.of(BentOverRow.of(who).gripWidth(cm(60)), 0.60),
                    Arguments.of(BentOverRow.of(who).grip(Grip.UNDERHAND).gripWidth(cm(45)), 0.45),
                    Arguments.of(ChestSupportedRow.of(who).gripWidth(cm(50)), 0.50),
                    Arguments.of(SeatedCableRow.of(who).gripWidth(cm(20)), 0.20),
                    Arguments.of(
                        SeatedCableRow.of(who).grip(Grip.OVERHAND).gripWidth(cm(60)), 0.60),
                    Arguments.of(InvertedRow.of(who).gripWidth(cm(62)), 0.62),
                    Arguments.of(LatPulldown.of(who).gripWidth(cm(70)), 0.70),
                    Arguments.of(LatPulldown.of(who).grip(Grip.UNDERHAND).gripWidth(cm(45)), 0.45),
                    Arguments.of(PullUp.of(who).gripWidth(cm(50)), 0.50),
                    Arguments.of(PullUp.of(who).grip(Grip.UNDERHAND).gripWidth(cm(40)), 0.40),
                    Arguments.of(Shrug.of(who).gripWidth(cm(55)), 0.55)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("gripped")
  void both_hands_are_on_one_bar_at_the_width_that_was_asked_for(Lift<?> lift, double width) {
    for (Position position : lift.threePositions()) {
      Vector3D right = at(position, Site.HAND, Side.RIGHT);
      Vector3D left = at(position, Site.HAND, Side.LEFT);
      assertThat(right.subtract(left).distance(new Vector3D(0, 0, width)))
          .as(position.name())
          .isLessThan(SOLVED);
      assertThat(position.held()).as(position.name() + position.holding().sentence()).isTrue();
    }
  }

  static Stream<Lift<?>> standing() {
    return LIFTERS.stream()
        .flatMap(
            who ->
                Stream.of(
                    BentOverRow.of(who),
                    OneArmRow.of(who),
                    ChestSupportedRow.of(who),
                    FacePull.of(who),
                    RearDeltFly.of(who),
                    Shrug.of(who),
                    CableChop.of(who)));
  }

  @ParameterizedTest
  @MethodSource("standing")
  void both_soles_lie_flat_on_the_floor(Lift<?> lift) {
    for (Position position : lift.threePositions()) {
      for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
        for (Site site : List.of(Site.HEEL, Site.FOOT, Site.BALL_OF_FOOT)) {
          assertThat(at(position, site, side).getY())
              .as(position.name() + ", " + site.on(side))
              .isCloseTo(0, within(SOLVED));
        }
      }
    }
  }

  static Stream<Person> lifters() {
    return LIFTERS.stream();
  }

  @ParameterizedTest
  @MethodSource("lifters")
  void a_fixed_bar_stays_where_it_is(Person who) {
    for (Lift<?> lift : List.of(InvertedRow.of(who).barHeight(cm(75)), PullUp.of(who))) {
      double height = lift instanceof PullUp ? 1.3 * who.body().links().stature() : 0.75;
      for (int i = 0; i <= 4; i++) {
        Vector3D hand = at(lift.at(percent(25 * i)), Site.HAND, Side.RIGHT);
        assertThat(hand.getX()).isCloseTo(0, within(SOLVED));
        if (lift instanceof InvertedRow) {
          assertThat(hand.getY()).isCloseTo(height, within(SOLVED));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("lifters")
  void the_bar_comes_to_the_chest_in_an_inverted_row_and_the_chin_over_it_in_a_pull_up(Person who) {
    Position row = InvertedRow.of(who).finish();
    Vector3D chest = at(row, Site.LOWER_CHEST, Side.RIGHT);
    Vector3D hand = at(row, Site.HAND, Side.RIGHT);
    assertThat(Math.hypot(hand.getX() - chest.getX(), hand.getY() - chest.getY()))
        .as("a bar's radius and what the spine gives way")
        .isLessThan(0.03);

    Position up = PullUp.of(who).finish();
    double bar = at(up, Site.HAND, Side.RIGHT).getY();
    assertThat(up.placement().centre(JointId.HEAD.word()).getY())
        .isCloseTo(bar + 0.05, within(SOLVED));
  }

  @ParameterizedTest
  @MethodSource("lifters")
  void the_chest_lies_on_its_pad_at_the_angle_and_height_that_were_asked_for(Person who) {
    for (double tilt : new double[] {20, 40, 60}) {
      Vector3D out =
          new Vector3D(-Math.sin(Math.toRadians(tilt)), Math.cos(Math.toRadians(tilt)), 0);
      ChestSupportedRow row = ChestSupportedRow.of(who).padAngle(deg(tilt));
      for (Position position : row.threePositions()) {
        double upper = at(position, Site.UPPER_CHEST, Side.RIGHT).dotProduct(out);
        double lower = at(position, Site.LOWER_CHEST, Side.RIGHT).dotProduct(out);
        assertThat(upper).as(position.name()).isCloseTo(lower, within(SOLVED));
      }
    }
    double high = 55 * who.body().links().stature();
    Position set = ChestSupportedRow.of(who).padHeight(cm(high)).start();
    assertThat(at(set, Site.CHEST, Side.MIDLINE).getY()).isCloseTo(high / 100, within(SOLVED));
  }

  @ParameterizedTest
  @MethodSource("lifters")
  void the_other_palm_lies_on_the_bench_and_bears_weight_in_a_one_arm_row(Person who) {
    for (Side works : List.of(Side.RIGHT, Side.LEFT)) {
      Side leans = works == Side.RIGHT ? Side.LEFT : Side.RIGHT;
      for (Position position :
          OneArmRow.of(who).working(works).benchHeight(cm(46)).threePositions()) {
        assertThat(at(position, Site.HEEL_OF_HAND, leans).getY()).isCloseTo(0.46, within(SOLVED));
        assertThat(at(position, Site.BALL_OF_HAND, leans).getY()).isCloseTo(0.46, within(SOLVED));
        double share =
            position.supportForces().stream()
                .filter(r -> r.source().equals("bench"))
                .mapToDouble(r -> r.force().getY())
                .sum();
        assertThat(share).as(position.name()).isGreaterThan(50);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("lifters")
  void forearms_lie_level_under_the_shoulders_in_planks(Person who) {
    for (Lift<?> lift : List.of(Plank.of(who), SidePlank.of(who))) {
      Position position = lift.start();
      Vector3D elbow = at(position, Site.ELBOW, Side.RIGHT);
      assertThat(elbow.getY())
          .isCloseTo(at(position, Site.FOREARM, Side.RIGHT).getY(), within(SOLVED));
      assertThat(elbow.getX())
          .isCloseTo(
              position.placement().centre(JointId.SHOULDER.on(Side.RIGHT)).getX(), within(SOLVED));
    }
  }

  @Test
  void a_side_plank_loads_the_side_below_alike_on_both_sides() {
    Position right = SidePlank.of(MAN).start();
    Position left = SidePlank.of(MAN).working(Side.LEFT).start();
    assertThat(right.moment(JointId.SHOULDER, Side.RIGHT).size())
        .isCloseTo(left.moment(JointId.SHOULDER, Side.LEFT).size(), within(0.1));
  }

  @Test
  void a_weight_in_one_hand_asks_more_of_the_hip_that_stands_on_the_other_side() {
    double empty =
        sideways(FarmersCarry.of(MAN).holding(HandWeights.one("dumbbell", kg(0), Side.RIGHT)));
    double heavy =
        sideways(FarmersCarry.of(MAN).holding(HandWeights.one("dumbbell", kg(30), Side.RIGHT)));
    assertThat(heavy).isGreaterThan(1.2 * empty);
  }

  private static double sideways(Lift<?> carry) {
    return Math.abs(carry.middle().moment(JointId.HIP, Side.LEFT).about("abduction"));
  }

  /** One setting at two values, and what grows with it. */
  record Change(String what, Lift<?> less, Lift<?> more, ToDoubleFunction<Lift<?>> grows) {
    @Override
    public String toString() {
      return what;
    }
  }

  private static ToDoubleFunction<Lift<?>> height(JointId joint, ToPosition when) {
    return lift -> when.of(lift).placement().centre(joint.on(Side.RIGHT)).getY();
  }

  private static ToDoubleFunction<Lift<?>> minus(ToDoubleFunction<Lift<?>> one) {
    return lift -> -one.applyAsDouble(lift);
  }

  private static ToDoubleFunction<Lift<?>> fact(String name, ToPosition when) {
    return lift -> when.of(lift).fact(name);
  }

  /** Start, middle or finish. */
  private interface ToPosition {
    Position of(Lift<?> lift);
  }

  static Stream<Change> changes() {
    return Stream.concat(rows(), others());
  }

  private static Stream<Change> rows() {
    BentOverRow bent = BentOverRow.of(MAN);
    OneArmRow oneArm = OneArmRow.of(MAN);
    ChestSupportedRow chest = ChestSupportedRow.of(MAN);
    SeatedCableRow seated = SeatedCableRow.of(MAN);
    InvertedRow inverted = InvertedRow.of(MAN);
    return Stream.of(
        new Change(
            "more lean lowers the shoulders of a bent-over row",
            bent.trunkLean(deg(50)),
            bent.trunkLean(deg(75)),
            minus(height(JointId.SHOULDER, Lift::start))),
        new Change(
            "more lean loads the low back more",
            bent.trunkLean(deg(45)),
            bent.trunkLean(deg(70)),
            l -> l.start().moment(JointId.L5_S1).size()),
        new Change(
            "more knee bend lowers the hips",
            bent.kneeBend(deg(10)),
            bent.kneeBend(deg(40)),
            minus(height(JointId.HIP, Lift::start))),
        new Change(
            "a rounded back is rounded",
            bent.spineRounding(deg(0)),
            bent.spineRounding(deg(30)),
            fact("spine flexion", Lift::start)),
        new Change(
            "elbows go out",
            bent.elbowsOut(deg(15)),
            bent.elbowsOut(deg(70)),
            l -> l.finish().placement().centre(JointId.ELBOW.on(Side.RIGHT)).getZ()),
        new Change(
            "a raised arm ends higher in a one-arm row",
            oneArm.raise(deg(70)),
            oneArm.raise(deg(95)),
            height(JointId.ELBOW, Lift::finish)),
        new Change(
            "a steeper pad sets the trunk up",
            chest.padAngle(deg(25)),
            chest.padAngle(deg(55)),
            minus(fact("trunk lean", Lift::start))),
        new Change(
            "a higher seat lifts the hips",
            seated.seatHeight(cm(35)),
            seated.seatHeight(cm(45)),
            height(JointId.HIP, Lift::start)),
        new Change(
            "a higher pulley loads the low back of a seated row less",
            seated.pulleyHeight(cm(40)),
            seated.pulleyHeight(cm(80)),
            l -> -l.finish().moment(JointId.L5_S1).size()),
        new Change(
            "a higher bar sets the body of an inverted row up",
            inverted.barHeight(cm(70)),
            inverted.barHeight(cm(80)),
            fact("trunk lean", Lift::start)),
        new Change(
            "feet on a box lie higher",
            inverted,
            inverted.barHeight(cm(90)).stepHeight(cm(20)),
            height(JointId.ANKLE, Lift::start)));
  }

  private static Stream<Change> others() {
    FacePull face = FacePull.of(MAN);
    RearDeltFly fly = RearDeltFly.of(MAN);
    CableChop chop = CableChop.of(MAN);
    ToDoubleFunction<Lift<?>> swing =
        l ->
            -at(l.start(), Site.HEEL, Side.RIGHT).getX()
                + at(l.finish(), Site.HEEL, Side.RIGHT).getX();
    return Stream.of(
        new Change(
            "a pulldown leans back",
            LatPulldown.of(MAN).trunkLean(deg(-5)),
            LatPulldown.of(MAN).trunkLean(deg(-30)),
            minus(fact("trunk lean", Lift::finish))),
        new Change(
            "a higher bar lifts the hang",
            PullUp.of(MAN).barHeight(cm(220)),
            PullUp.of(MAN).barHeight(cm(250)),
            height(JointId.HIP, Lift::start)),
        new Change(
            "elbows end higher in a face pull",
            face.raise(deg(75)),
            face.raise(deg(95)),
            height(JointId.ELBOW, Lift::finish)),
        new Change(
            "straight arms point higher to a higher pulley",
            face.pulleyHeight(cm(120)),
            face.pulleyHeight(cm(180)),
            l -> at(l.start(), Site.HAND, Side.RIGHT).getY()),
        new Change(
            "dumbbells rise further in a fly",
            fly.raise(deg(50)),
            fly.raise(deg(85)),
            height(JointId.ELBOW, Lift::finish)),
        new Change(
            "shoulders rise further in a shrug",
            Shrug.of(MAN).shrug(deg(10)),
            Shrug.of(MAN).shrug(deg(30)),
            height(JointId.SHOULDER, Lift::finish)),
        new Change(
            "hips rise in a plank",
            Plank.of(MAN).hipHeight(cm(30)),
            Plank.of(MAN).hipHeight(cm(45)),
            height(JointId.HIP, Lift::start)),
        new Change(
            "hips rise in a side plank",
            SidePlank.of(MAN).hipHeight(cm(30)),
            SidePlank.of(MAN).hipHeight(cm(42)),
            height(JointId.HIP, Lift::start)),
        new Change(
            "knees bend in a sit-up",
            SitUp.of(MAN).kneeBend(deg(85)),
            SitUp.of(MAN).kneeBend(deg(110)),
            fact("knee bend", Lift::start)),
        new Change(
            "a chop turns further",
            chop.turn(deg(10)),
            chop.turn(deg(40)),
            l -> -l.finish().placement().frame(l.body().tree().indexOf("T4")).x().getZ()),
        new Change(
            "a longer step swings further",
            FarmersCarry.of(MAN).stepLength(cm(40)),
            FarmersCarry.of(MAN).stepLength(cm(70)),
            swing));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("changes")
  void a_setting_moves_what_a_coach_expects(Change change) {
    double less = change.grows().applyAsDouble(change.less());
    double more = change.grows().applyAsDouble(change.more());
    assertThat(more).isGreaterThan(less + 0.005);
    for (Lift<?> lift : List.of(change.less(), change.more())) {
      for (Position position : lift.threePositions()) {
        assertThat(position.held()).as(position.name() + position.holding().sentence()).isTrue();
      }
    }
  }

  private static Vector3D at(Position position, Site site, Side side) {
    Placement where = position.placement();
    return where.at(position.body().place(site, side));
  }
}
