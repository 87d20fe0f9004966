package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/** Each law alone, on a standing lifter or on a single handle at a known place. */
class LoadLawsTest {

  private static final double G = 9.80665;
  private static final double EXACT = 1e-9;

  private static final Body BODY = Person.of(Sex.MALE, Units.kg(85), Units.cm(178)).body();
  private static final Placement STANDING = Pose.neutral(BODY.tree()).placed();
  private static final Placement HANDLE =
      Pose.neutral(SegmentTree.root("handle", 1, Vector3D.ZERO).build()).placed();

  private static Grasps at(double x, double y) {
    return new Grasps(List.of(Grasp.fixed(0, new Vector3D(x, y, 0))));
  }

  private static Vector3D sum(Load load, Placement where) {
    Vector3D sum = Vector3D.ZERO;
    for (Force force : load.forces(where)) {
      sum = sum.add(force.force());
    }
    return sum;
  }

  @Test
  void what_rests_on_the_body_weighs_what_it_weighs() {
    List<Load> resting =
        List.of(
            Barbell.of(Units.kg(60)),
            Barbell.of(Units.kg(60)).on(Site.UPPER_BACK_LOW),
            Barbell.of(Units.kg(60)).on(Site.FRONT_OF_SHOULDER),
            Barbell.of(Units.kg(60)).on(Site.HIP_CREASE),
            Barbell.trap(Units.kg(60)),
            HandWeights.pair("dumbbell", Units.kg(30)),
            HandWeights.one("kettlebell", Units.kg(60), Side.LEFT),
            Worn.vest(Units.kg(60)),
            Worn.belt(Units.kg(60)));
    for (Load load : resting) {
      assertThat(load.mass()).as(load.description()).isEqualTo(60);
      assertThat(sum(load, STANDING).distance(new Vector3D(0, -60 * G, 0)))
          .as(load.description())
          .isLessThan(EXACT);
    }
  }

  @Test
  void a_bar_on_the_back_lies_on_the_thorax_behind_the_arms_and_is_told_so() {
    Barbell bar = Barbell.of(Units.kg(100)).on(Site.UPPER_BACK_HIGH);
    assertThat(bar.description()).isEqualTo("barbell 100.0 kg on the upper back high");
    for (Force force : bar.forces(STANDING)) {
      String segment = BODY.tree().segment(force.segment()).name();
      assertThat(segment).doesNotContain("hand").doesNotContain("fingers");
      assertThat(force.point().getX()).isLessThan(STANDING.centre("right shoulder").getX());
    }
    assertThatThrownBy(() -> bar.on(Site.ANKLE))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A bar does not lie on the ankle; it can lie on HAND, UPPER_BACK_HIGH, UPPER_BACK_LOW, FRONT_OF_SHOULDER,"
                + " HIP_CREASE.");
  }

  @Test
  void each_hand_carries_its_own_weight() {
    HandWeights uneven =
        HandWeights.one("dumbbell", Units.kg(30), Side.RIGHT).withOther(Units.kg(10), Side.LEFT);
    assertThat(uneven.forces(STANDING))
        .extracting(f -> -f.force().getY() / G)
        .satisfiesExactly(
            right -> assertThat(right).isCloseTo(30, within(EXACT)),
            left -> assertThat(left).isCloseTo(10, within(EXACT)));
    assertThat(uneven.description()).isEqualTo("dumbbell: right 30.0 kg, left 10.0 kg");
    assertThatThrownBy(() -> HandWeights.one("dumbbell", Units.kg(30), Side.MIDLINE))
        .isInstanceOf(Refused.class)
        .hasMessage("A dumbbell is held in one hand: say LEFT or RIGHT.");
  }

  @Test
  void chains_weigh_what_has_left_the_floor_in_proportion_to_height() {
    Chains chains = Chains.of(Units.kg(4), Units.cm(150));
    assertThat(chains.hanging(0)).isZero();
    assertThat(chains.hanging(0.5)).isCloseTo(4, within(EXACT));
    assertThat(chains.hanging(1)).isCloseTo(8, within(EXACT));
    assertThat(chains.hanging(2)).isCloseTo(12, within(EXACT));
    // Cases D14a to D14d: 8, 10, 13, 16 mm, 10 %.
    double[][] published = {{8, 1.2, 1.6}, {10, 2.0, 2.5}, {13, 3.4, 4.2}, {16, 5.2, 6.4}};
    for (double[] row : published) {
      double perMetre = Chains.ofSteel(Units.mm(row[0]), Units.cm(100)).perMetre();
      assertThat(perMetre).isBetween(row[1], row[2]);
    }
  }

  @Test
  void friction_of_the_pulleys_adds_while_lifting_and_takes_while_lowering() {
    Cable cable = Cable.of(Units.kg(50), new Vector3D(1, 2, 0));
    assertThat(cable.tension()).isCloseTo(50 * G, within(EXACT));
    assertThat(cable.lifting(Units.percent(10)).tension()).isCloseTo(55 * G, within(EXACT));
    assertThat(cable.lowering(Units.percent(10)).tension()).isCloseTo(45 * G, within(EXACT));
    assertThat(cable.through(2, 2).tension()).isCloseTo(12.5 * G, within(EXACT));
    assertThat(cable.through(2, 2).handleTravel(0.1)).isCloseTo(0.4, within(EXACT));
    assertThatThrownBy(() -> cable.lifting(Units.percent(-5)))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("The friction of the pulleys is -5 %, but must lie between 0 and");
  }

  @Test
  void a_lever_that_lies_level_with_plates_at_the_handle_pulls_straight_down_with_their_weight() {
    LeverMachine machine =
        new LeverMachine(Vector3D.ZERO, 40, 0.8, 0, Optional.empty(), at(0.8, 0));
    assertThat(sum(machine, HANDLE).distance(new Vector3D(0, -40 * G, 0))).isLessThan(EXACT);
  }

  @Test
  void plates_half_way_out_weigh_half_and_opposite_ones_push_up() {
    LeverMachine half = new LeverMachine(Vector3D.ZERO, 40, 0.4, 0, Optional.empty(), at(0.8, 0));
    assertThat(sum(half, HANDLE).getY()).isCloseTo(-20 * G, within(EXACT));
    LeverMachine opposite =
        new LeverMachine(Vector3D.ZERO, 40, 0.8, Math.PI, Optional.empty(), at(0.8, 0));
    assertThat(sum(opposite, HANDLE).getY()).isCloseTo(40 * G, within(EXACT));
  }

  @Test
  void a_lever_and_a_cam_keep_the_moment_about_their_pivot() {
    Random random = new Random(20263);
    Cam cam = Cam.at(Units.deg(-60), Units.cm(8)).and(Units.deg(60), Units.cm(14));
    for (int i = 0; i < 200; i++) {
      double x = 0.2 + random.nextDouble();
      double y = random.nextDouble() - 0.5;
      Vector3D pivot = new Vector3D(0.1, 0.9, 0);
      Grasps grasps = at(x + 0.1, y + 0.9);
      LeverMachine plates =
          new LeverMachine(pivot, 30, 0.6, random.nextDouble(), Optional.empty(), grasps);
      LeverMachine stack = new LeverMachine(pivot, 30, 0, 0, Optional.of(cam), grasps);
      for (LeverMachine machine : List.of(plates, stack)) {
        Force force = machine.forces(HANDLE).get(0);
        assertThat(force.momentAbout(pivot).getZ())
            .isCloseTo(machine.moment(Math.atan2(y, x)), within(EXACT));
        assertThat(force.force().dotProduct(force.point().subtract(pivot)))
            .isCloseTo(0, within(EXACT));
      }
    }
    assertThat(cam.radius(0)).isCloseTo(0.11, within(EXACT));
    assertThat(cam.radius(3)).isCloseTo(0.14, within(EXACT));
  }

  @Test
  void a_bar_that_pivots_on_the_floor_balances_about_its_pivot() {
    Vector3D pivot = new Vector3D(-1.2, 0, 0);
    PivotingBar bar = new PivotingBar(pivot, 20, 20, 2.2, at(0.4, 1.2));
    Force press = bar.forces(HANDLE).get(0);
    double level = 1.6 / 2.0;
    // Plates at the end, the bar's own weight half-way: m b + M b / 2, times g cos e.
    double needed = -G * level * (20 * 2.2 + 20 * 1.1);
    assertThat(press.momentAbout(pivot).getZ()).isCloseTo(needed, within(1e-9));
    assertThatThrownBy(() -> new PivotingBar(pivot, 20, 20, 2.2, at(3, 1)).forces(HANDLE))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("but this bar is held between 20 and 220 cm from it");
  }

  @Test
  void a_partner_and_a_fixed_handle_pull_where_they_are_told() {
    SteadyForce partner = new SteadyForce("partner", 200, new Vector3D(3, 4, 0), at(0, 0));
    assertThat(sum(partner, HANDLE).distance(new Vector3D(120, 160, 0))).isLessThan(EXACT);
    assertThatThrownBy(
            () -> new SteadyForce("partner", 200, Vector3D.ZERO, at(0, 0)).forces(HANDLE))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("so it has no direction");
    assertThatThrownBy(() -> SteadyForce.of("fixed handle", Units.newton(-5), Vector3D.PLUS_I))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The fixed handle's force is -5 N, but must lie between 0 and 2.000e+04 N. A force has no sign here: say"
                + " which way by where it pulls.");
  }

  @Test
  void the_work_of_a_cable_is_the_stacks() {
    // Along any path the pull's work is weight times what the stack rises.
    Vector3D pulley = new Vector3D(0, 2, 0);
    double work = 0;
    int steps = 20_000;
    for (int i = 0; i < steps; i++) {
      double from = (double) i / steps;
      double to = (i + 1.0) / steps;
      Vector3D step = path(to).subtract(path(from));
      Cable cable =
          new Cable(
              50, 2, pulley, at(path((from + to) / 2).getX(), path((from + to) / 2).getY()).all());
      work += sum(cable, HANDLE).dotProduct(step);
    }
    double rises = (pulley.distance(path(1)) - pulley.distance(path(0))) / 2;
    assertThat(work).isCloseTo(-50 * G * rises, within(1e-5));
  }

  private static Vector3D path(double share) {
    return new Vector3D(0.3 + share, 1.5 - share * share, 0);
  }
}
