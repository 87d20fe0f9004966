package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;
import org.leverbook.statics.Notes;
import org.leverbook.statics.Position;
import org.leverbook.statics.Standing;
import org.leverbook.support.Floor;

/**
 * People who stand on the floor with a bar in both hands and a weight in one, one-sided in stance,
 * trunk and arms: 120 random positions that hold, from a seed.
 */
class StandingTest {

  private static final List<Position> POSITIONS = new RandomScenes(5).positions(120);

  /** Moments reach a few hundred N·m: ten digits, as for all sums that must be exact. */
  private static final double ROUNDING = 1e-9;

  @Test
  void the_floor_only_pushes_and_carries_all_the_weight() {
    for (Position position : POSITIONS) {
      double up = 0;
      for (Force force : supports(position)) {
        assertThat(force.force().getY()).isPositive();
        assertThat(Math.hypot(force.force().getX(), force.force().getZ()))
            .isLessThanOrEqualTo(Floor.SHOE_FRICTION * force.force().getY() + 1e-9);
        assertThat(force.point().getY()).isCloseTo(0, within(1e-6));
        up += force.force().getY();
      }
      double weight = position.loads().stream().mapToDouble(load -> load.mass()).sum();
      weight += position.body().tree().mass();
      assertThat(up).isCloseTo(weight * Gravity.STANDARD, within(1e-8));
    }
  }

  @Test
  void the_floors_pushes_have_their_centre_where_the_balance_says() {
    for (Position position : POSITIONS) {
      Vector3D centre = Vector3D.ZERO;
      double up = 0;
      for (Force force : supports(position)) {
        centre = centre.add(force.point().scalarMultiply(force.force().getY()));
        up += force.force().getY();
      }
      Vector3D told = position.balance().centreOfPressure();
      assertThat(centre.getX() / up).isCloseTo(told.getX(), within(1e-10));
      assertThat(centre.getZ() / up).isCloseTo(told.getZ(), within(1e-10));
      assertThat(position.balance().held()).isTrue();
      assertThat(position.balance().margin()).isPositive();
    }
  }

  @Test
  void the_centre_of_pressure_lies_under_the_common_centre_of_mass() {
    for (Position position : POSITIONS) {
      Vector3D sum =
          position
              .placement()
              .centreOfMass()
              .scalarMultiply(position.body().tree().mass() * Gravity.STANDARD);
      double weight = position.body().tree().mass() * Gravity.STANDARD;
      for (Force force : position.forces()) {
        if (force.kind() == Force.Kind.LOAD) {
          sum = sum.add(force.point().scalarMultiply(-force.force().getY()));
          weight -= force.force().getY();
        }
      }
      Vector3D told = position.balance().centreOfPressure();
      assertThat(sum.getX() / weight).isCloseTo(told.getX(), within(1e-10));
      assertThat(sum.getZ() / weight).isCloseTo(told.getZ(), within(1e-10));
    }
  }

  @Test
  void all_forces_and_weights_cancel_and_so_do_their_moments_about_any_point() {
    RandomScenes random = new RandomScenes(6);
    for (Position position : POSITIONS) {
      NetLoads net = NetLoads.of(position.placement(), position.forces(), Gravity.VECTOR);
      assertThat(net.force(0).getNorm()).isLessThan(1e-8);
      Vector3D anywhere = random.vector(2);
      Vector3D moment = Vector3D.ZERO;
      for (String source : net.sources()) {
        moment = moment.add(net.moment(source, 0, anywhere));
      }
      assertThat(moment.getNorm()).isLessThan(1e-8);
    }
  }

  @Test
  void the_parts_of_every_joint_add_up_to_its_moment() {
    int joints = 0;
    for (Position position : POSITIONS) {
      for (JointMoment moment : position.all()) {
        Vector3D sum = Vector3D.ZERO;
        double told = 0;
        for (var part : moment.parts().entrySet()) {
          sum = sum.add(part.getValue().moment());
          told += moment.from(part.getKey());
        }
        assertThat(sum.distance(moment.moment())).isLessThan(ROUNDING);
        assertThat(told).isCloseTo(moment.size(), within(ROUNDING));
        joints++;
      }
    }
    assertThat(joints).isEqualTo(120 * 45);
  }

  @Test
  void on_ice_every_leg_passes_the_whole_push_on_to_what_it_carries() {
    int joints = 0;
    for (Position onFloor : POSITIONS) {
      Position position = onFloor.without("floor").on(new Floor(onFloor.body(), 0));
      for (JointMoment moment : position.all()) {
        if (moment.force().getY() > 0) {
          assertThat(moment.parts().get("floor").moment().getNorm()).isLessThan(1e-8);
          joints++;
        }
      }
    }
    // Hip, knee and ankle of every leg that carries more than its own weight.
    assertThat(joints).isGreaterThan(500);
  }

  @Test
  void over_both_legs_the_shares_of_a_load_add_up_to_the_load() {
    for (Position position : POSITIONS) {
      NetLoads net = NetLoads.of(position.placement(), position.forces(), Gravity.VECTOR);
      JointMoment right = hip(position, Side.RIGHT);
      JointMoment left = hip(position, Side.LEFT);
      for (String source : List.of("bar", "bell")) {
        double both =
            right.parts().get(source).force().getY() + left.parts().get(source).force().getY();
        assertThat(both).isCloseTo(net.force(source, 0).getY(), within(1e-8));
      }
    }
  }

  private static JointMoment hip(Position position, Side side) {
    return position.moment(JointId.HIP, side);
  }

  /**
   * In the sagittal plane, where both feet press alike. Sideways a foot's own centre of pressure
   * moves as the heavier bar brings the balance forward onto the broader ball of the foot, and the
   * toes take another share: there nothing is linear in the load (some 2 N·m here), by the choice
   * of the least effort.
   */
  @Test
  void twice_the_bar_in_the_same_hinge_gives_twice_the_bars_own_share_at_every_joint() {
    Person lifter = Person.of(Sex.MALE, kg(85), cm(178));
    Position once = Hinge.of(lifter).holding(Barbell.of(kg(70))).start();
    Position twice = again(once, 140);
    int joints = 0;
    for (JointMoment moment : once.all()) {
      JointMoment more = byName(twice, moment.joint().fullName());
      Vector3D bar = moment.parts().get("bar").moment();
      Vector3D bars = more.parts().get("bar").moment();
      Vector3D own = moment.parts().get("body weight").moment();
      Vector3D still = more.parts().get("body weight").moment();
      if (!moment.joint().name().equals("ball of the foot")) {
        assertThat(bars.getZ()).isCloseTo(2 * bar.getZ(), within(1e-8));
        assertThat(still.getZ()).isCloseTo(own.getZ(), within(1e-8));
        joints++;
      }
      if (!moment.joint().fullName().matches(".*(hip|knee|ankle|ball of the foot)")) {
        assertThat(bars.distance(bar.scalarMultiply(2))).isLessThan(1e-8);
        assertThat(still.distance(own)).isLessThan(1e-8);
      }
    }
    assertThat(joints).isEqualTo(43);
    assertThat(twice.moment(JointId.HIP).from("bar"))
        .isCloseTo(2 * once.moment(JointId.HIP).from("bar"), within(1e-8));
  }

  private static Position again(Position position, double kilograms) {
    return Standing.position(
        "again",
        position.body(),
        position.placement().pose(),
        List.of(Barbell.of(kg(kilograms))),
        List.of(),
        Notes.ofPosture(List.of()));
  }

  private static JointMoment byName(Position position, String joint) {
    return position.all().stream()
        .filter(moment -> moment.joint().fullName().equals(joint))
        .findFirst()
        .orElseThrow();
  }

  private static List<Force> supports(Position position) {
    return position.forces().stream().filter(f -> f.kind() == Force.Kind.SUPPORT).toList();
  }
}
