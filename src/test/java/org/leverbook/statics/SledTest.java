package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;
import static org.leverbook.quantity.Units.seconds;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Sled;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Pad;

/** A lifter on seat and back rest who presses a sled up a rail: where along the soles. */
class SledTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(180)).body();
  private static final double SLOPE = 45;
  private static final Vector3D DOWN =
      new Vector3D(-Math.cos(Math.toRadians(SLOPE)), -Math.sin(Math.toRadians(SLOPE)), 0);

  /** Leaning back, soles square to the rail; at share 1 the knees are 30 degrees straighter. */
  private static Pose legs(double share) {
    return legs(Math.toRadians(90 - 30 * share), 0);
  }

  /** The same with the legs turned towards the head by so much. */
  private static Pose legs(double knee, double turned) {
    double lean = Math.toRadians(-40);
    // Seen from straight down, the shank is turned forward by a right angle and the slope.
    double hip = knee + Math.toRadians(90 + SLOPE) + turned + lean;
    Pose pose =
        Pose.neutral(BODY.tree()).rootAt(new Vector3D(0, 0.5, 0), Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose = pose.with(JointId.HIP.on(side), hip, 0, 0).with(JointId.KNEE.on(side), knee, 0, 0);
    }
    return pose;
  }

  private static Position press(Pose pose, Sled sled) {
    return Position.of(
        "leg press",
        BODY,
        pose,
        List.of(sled),
        List.of(Pad.seat().friction(0.8), Pad.back(deg(50)).friction(0.8)),
        List.of(),
        List.of());
  }

  private static Vector3D sum(Position position, String source) {
    Vector3D sum = Vector3D.ZERO;
    for (Force force : position.forces()) {
      sum = force.source().equals(source) ? sum.add(force.force()) : sum;
    }
    return sum;
  }

  /** What the joints of legs and trunk bear, each against what it can. */
  private static double effort(Position position) {
    SegmentTree tree = BODY.tree();
    double[] costs = Capacities.costs(tree);
    double sum = 0;
    for (int i = 1; i < tree.size(); i++) {
      int distal = i;
      JointMoment moment =
          position.all().stream()
              .filter(m -> m.joint() == tree.segment(distal).joint())
              .findFirst()
              .orElseThrow();
      for (int a = tree.firstAngle(i); a < tree.firstAngle(i + 1); a++) {
        double about = moment.moment().dotProduct(position.placement().axis(a));
        sum += Math.pow(costs[a] * about, 2);
      }
    }
    return sum;
  }

  @Test
  void all_of_the_push_arrives_and_the_pressure_point_is_told() {
    Position found = press(legs(0), Sled.of(kg(100), deg(SLOPE)));
    assertThat(found.holding().sentence()).isEmpty();
    double push = 100 * Gravity.STANDARD * Math.sin(Math.toRadians(SLOPE));
    assertThat(sum(found, "sled").distance(DOWN.scalarMultiply(push))).isLessThan(1e-6);
    assertThat(found.pressed()).extracting(Reaction::on).containsExactly("right foot", "left foot");
    assertThat(found.pressed().get(0).push()).isCloseTo(push / 2, within(1e-6));
    assertThat(found.reactions().text()).contains("sled", ".pressedAt(…)");
    assertThat(found.text()).contains("sled on the right foot: 347 N");
    // It is a load in every table, not a support.
    assertThat(found.supportForces()).noneMatch(r -> r.source().equals("sled"));
    assertThat(found.moment(JointId.KNEE).mainLoad()).isEqualTo("sled");
  }

  /** Heel, ball and toes of the right foot, newtons. */
  private static double[] sole(Position position) {
    double[] at = new double[3];
    for (Force force : position.forces()) {
      if (force.source().equals("sled") && force.point().getZ() > 0) {
        boolean toes = BODY.tree().segment(force.segment()).name().endsWith("toes");
        double ahead = position.placement().toLocal(force.segment(), force.point()).getX();
        at[toes ? 2 : ahead > 0 ? 1 : 0] += force.force().getNorm();
      }
    }
    return at;
  }

  @Test
  void no_other_point_of_the_soles_costs_less_effort() {
    Sled sled = Sled.of(kg(60), deg(SLOPE));
    Pose pose = legs(Math.toRadians(60), Math.toRadians(-15));
    Position found = press(pose, sled);
    double[] sole = sole(found);
    assertThat(sole[0]).as("heel").isGreaterThan(50);
    assertThat(sole[1]).as("ball").isGreaterThan(50);
    double best = Double.POSITIVE_INFINITY;
    double worst = 0;
    double at = 0;
    for (double share = 10; share <= 75; share += 5) {
      Position said = press(pose, sled.pressedAt(percent(share)));
      assertThat(said.pressed()).isEmpty();
      at = effort(said) < best ? share : at;
      best = Math.min(best, effort(said));
      worst = Math.max(worst, effort(said));
    }
    // What the pushes themselves cost, a few thousandths, is not counted here.
    assertThat(effort(found)).isCloseTo(best, within(0.002));
    assertThat(worst).as("the point matters").isGreaterThan(best + 0.1);
    // The centre of heel pressure lies 9 % of the foot from its back, the ball 68.5 %.
    double share = 9 + 59.5 * sole[1] / (sole[0] + sole[1]);
    assertThat(share).isCloseTo(at, within(5.0));
  }

  @Test
  void the_heels_come_off_where_the_push_goes_past_the_knees() {
    Position found =
        press(legs(Math.toRadians(60), Math.toRadians(-30)), Sled.of(kg(60), deg(SLOPE)));
    double[] sole = sole(found);
    assertThat(sole[0]).as("heel").isZero();
    assertThat(sole[1] + sole[2])
        .isCloseTo(30 * Gravity.STANDARD * Math.sin(Math.toRadians(SLOPE)), within(1e-6));
  }

  @Test
  void a_heavier_sled_in_the_same_posture_keeps_the_feet_alike() {
    for (double mass : new double[] {20, 60, 140}) {
      List<Reaction> feet = press(legs(0), Sled.of(kg(mass), deg(SLOPE))).pressed();
      assertThat(feet.get(0).push()).isCloseTo(feet.get(1).push(), within(1e-6));
      assertThat(feet.get(0).point().getY()).isCloseTo(feet.get(1).point().getY(), within(1e-6));
    }
  }

  @Test
  void a_sled_that_is_sped_up_pushes_back_harder_by_its_mass_times_that() {
    Movement press =
        Movement.of(
            "press",
            Tempo.smooth(seconds(1)),
            share -> press(legs(share), Sled.of(kg(100), deg(SLOPE))));
    double t = 0.2;
    double h = 1e-3;
    double speedsUp = (along(press, t + h) + along(press, t - h) - 2 * along(press, t)) / h / h;
    assertThat(speedsUp).isGreaterThan(0.3);
    Position moving = press.at(seconds(t));
    assertThat(moving.held()).as(moving.holding().sentence()).isTrue();
    // Second differences of this test: an error of the step squared, and rounding over it.
    assertThat(sum(moving, "sled inertia").dotProduct(DOWN))
        .isCloseTo(100 * speedsUp, within(0.05));
    // Weight and inertia press at the same points in the same shares.
    double ratio = sum(moving, "sled inertia").getNorm() / sum(moving, "sled").getNorm();
    for (Force force : moving.forces()) {
      if (force.source().equals("sled inertia")) {
        assertThat(moving.forces())
            .anyMatch(
                f ->
                    f.source().equals("sled")
                        && f.point().equals(force.point())
                        && Math.abs(f.force().getNorm() * ratio - force.force().getNorm()) < 1e-9);
      }
    }
    Position said =
        Movement.of(
                "press",
                Tempo.smooth(seconds(1)),
                share -> press(legs(share), Sled.of(kg(100), deg(SLOPE)).pressedAt(percent(50))))
            .at(seconds(t));
    assertThat(sum(said, "sled inertia").distance(sum(moving, "sled inertia"))).isLessThan(1e-6);
  }

  /** How far up the rail the soles are, metres. */
  private static double along(Movement press, double t) {
    var where = press.still(seconds(t)).placement();
    Vector3D foot = where.at(where.tree().place(org.leverbook.body.Site.FOOT, Side.RIGHT));
    return -foot.dotProduct(DOWN);
  }

  @Test
  void a_sled_that_is_slowed_faster_than_it_falls_leaves_the_feet() {
    Movement jerk =
        Movement.of(
            "press",
            Tempo.smooth(seconds(0.2)),
            share -> press(legs(share), Sled.of(kg(100), deg(SLOPE))));
    assertThatThrownBy(() -> jerk.at(seconds(0.15)))
        .isInstanceOf(Refused.class)
        .hasMessageMatching(
            "The sled leaves the feet: they slow down by \\d+\\.\\d m/s² along the rail, but it"
                + " slows by no more than 6\\.9 m/s²\\. Take more time\\.");
  }
}
