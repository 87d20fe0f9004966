package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.m;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Sled;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.FixedBar;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;
import org.leverbook.support.Rings;
import org.leverbook.support.Support;

/** Every other way of being carried: hanging, sitting, lying, kneeling, one foot, raised heels. */
class CarriedTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(180)).body();
  private static final double WEIGHT = 80 * Gravity.STANDARD;

  private static Position carried(Pose pose, Support... supports) {
    Position position =
        Position.of("test", BODY, pose, List.of(), List.of(supports), List.of(), List.of());
    if (position.held()) {
      Vector3D force = new Vector3D(0, -WEIGHT, 0);
      Vector3D moment = position.placement().centreOfMass().crossProduct(force);
      for (Force one : position.forces()) {
        force = force.add(one.force());
        moment = moment.add(one.momentAbout(Vector3D.ZERO));
      }
      // 1e-12 body weights of 785 N, and as much over a metre.
      assertThat(force.getNorm()).isLessThan(1e-9);
      assertThat(moment.getNorm()).isLessThan(1e-9);
    }
    return position;
  }

  private static double up(Position position, String source) {
    return position.supportForces().stream()
        .filter(r -> r.source().equals(source))
        .mapToDouble(r -> r.force().getY())
        .sum();
  }

  private static Pose upright(double hips) {
    return Pose.neutral(BODY.tree()).rootAt(new Vector3D(0, hips, 0), Frame.WORLD);
  }

  private static Pose both(Pose pose, JointId joint, double... angles) {
    return pose.with(joint.on(Side.RIGHT), angles).with(joint.on(Side.LEFT), angles);
  }

  @Test
  void hanging_from_a_bar_each_hand_carries_half() {
    Pose arms = both(upright(1.2), JointId.SHOULDER, Math.PI, 0, 0);
    assertThat(carried(arms, new FixedBar()).holding().sentence())
        .matches(
            "Cannot be held: \\d+ N·m are lacking about the left–right axis, so the lifter tips"
                + " (forward|backward)\\. Move the load nearer to what carries the lifter, or the"
                + " supports further apart\\.");
    // Let it swing until the centre of mass is under the hands.
    Vector3D down = arms.placed().centreOfMass().subtract(arms.placed().centre("right grip"));
    double swing = Math.atan2(down.getX(), -down.getY());
    Position hangs =
        carried(arms.rootAt(arms.rootPlace(), Frame.leanedForward(swing)), new FixedBar());
    assertThat(hangs.held()).isTrue();
    for (Reaction hand : hangs.supportForces()) {
      assertThat(hand.force().getY()).isCloseTo(WEIGHT / 2, within(1e-6));
      assertThat(hand.frictionUsed()).isEmpty();
    }
    // The forearms are drawn apart, not pressed together.
    assertThat(hangs.contactForce(JointId.ELBOW, Side.RIGHT).compression()).isLessThan(-300);
    assertThatThrownBy(hangs::balance)
        .isInstanceOf(Refused.class)
        .hasMessage(
            "Nothing stands on level ground here, so there is no balance to tell: ask for"
                + " .reactions().");
    assertThat(hangs.worksheet().text()).contains("\"centre_of_pressure\" : null");
    assertThat(hangs.picture().text()).contains("Test");
  }

  @Test
  void a_strap_only_pulls_along_itself() {
    Pose still = both(upright(1.2), JointId.SHOULDER, Math.PI, 0, 0);
    double forward = still.placed().centreOfMass().getX();
    Position swings = carried(still, Rings.from(m(1), m(4), cm(50)));
    assertThat(swings.held()).isFalse();
    assertThat(swings.holding().sentence()).startsWith("Cannot be held: ");
    assertThatThrownBy(() -> Rings.from(m(0), m(2.2), cm(40)).contacts(close(still)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("a strap needs at least 5 cm");
    assertThat(forward).isNotNaN();
  }

  /** Placed so that the right hand is at the anchor of the rings asked for. */
  private static org.leverbook.pose.Placement close(Pose pose) {
    Vector3D hand = pose.placed().centre("right grip");
    Vector3D anchor = new Vector3D(0, 2.2, 0.2);
    return pose.rootAt(pose.rootPlace().add(anchor.subtract(hand)), Frame.WORLD).placed();
  }

  private static Pose seated(double hips) {
    Pose pose = both(upright(hips), JointId.HIP, Math.PI / 2, 0, 0);
    return both(pose, JointId.KNEE, Math.PI / 2, 0, 0);
  }

  @Test
  void a_seated_person_is_carried_by_seat_and_feet() {
    double hips = BODY.links().footHeight() + BODY.links().shank();
    Position sits = carried(seated(hips), Pad.seat(), Footing.feet(BODY));
    assertThat(sits.held()).isTrue();
    assertThat(up(sits, "seat")).isGreaterThan(0.5 * WEIGHT);
    assertThat(up(sits, "seat") + up(sits, "floor")).isCloseTo(WEIGHT, within(1e-6));
    assertThat(sits.moment(JointId.KNEE).size()).isLessThan(20);
  }

  @Test
  void lying_on_a_flat_bench_the_bench_carries_the_trunk() {
    Pose pose =
        Pose.neutral(BODY.tree())
            .rootAt(
                new Vector3D(0, 0.6, 0),
                // On the back: front up, head to the rear.
                Frame.of(Vector3D.MINUS_I, Vector3D.PLUS_J));
    Position lies = carried(pose, Pad.bench(deg(0)).size(cm(190), cm(60)));
    assertThat(lies.supports()).hasSize(1);
    assertThat(up(lies, "bench") > 0 || !lies.held()).isTrue();
    Pose bent = both(both(pose, JointId.HIP, Math.PI / 2, 0, 0), JointId.KNEE, Math.PI / 2, 0, 0);
    Position tucked = carried(bent, Pad.bench(deg(0)));
    assertThat(tucked.held()).isTrue();
    assertThat(up(tucked, "bench")).isCloseTo(WEIGHT, within(1e-6));
  }

  @Test
  void a_back_rest_takes_part_of_a_reclined_trunk() {
    double hips = BODY.links().footHeight() + BODY.links().shank();
    Pose pose =
        seated(hips).rootAt(new Vector3D(0, hips, 0), Frame.leanedForward(-Math.toRadians(25)));
    Pose legs = both(pose, JointId.HIP, Math.toRadians(65), 0, 0);
    Position free = carried(legs, Pad.seat(), Footing.feet(BODY));
    Position rests = carried(legs, Pad.seat(), Footing.feet(BODY), Pad.back(deg(65)));
    assertThat(rests.held()).isTrue();
    assertThat(rests.moment(JointId.L5_S1).size()).isLessThan(free.moment(JointId.L5_S1).size());
  }

  @Test
  void kneeling_upright_the_knees_and_shins_carry() {
    Pose pose = both(upright(0.6), JointId.KNEE, Math.PI / 2, 0, 0);
    Pose flat = both(pose, JointId.ANKLE, -Math.PI / 2, 0, 0);
    double lowest =
        Pad.underKnees().sites().stream()
            .mapToDouble(
                site -> {
                  var place = BODY.place(site, Side.RIGHT);
                  return flat.placed().toWorld(place.segment(), place.local()).getY();
                })
            .min()
            .orElseThrow();
    Pose down = flat.rootAt(new Vector3D(0, 0.6 - lowest, 0), Frame.WORLD);
    Position kneels = carried(down, Pad.underKnees());
    assertThat(kneels.held()).isTrue();
    assertThat(up(kneels, "floor under the knees")).isCloseTo(WEIGHT, within(1e-6));
  }

  @Test
  void standing_on_the_balls_of_the_feet_only_balls_and_toes_touch() {
    double rise = Math.toRadians(20);
    Pose pose = both(upright(1), JointId.ANKLE, -rise, 0, 0);
    Pose toes = both(pose, JointId.BALL, -rise);
    double lowest =
        BODY.soles().stream()
            .mapToDouble(s -> toes.placed().toWorld(s.segment(), s.place()).getY())
            .min()
            .orElseThrow();
    Pose down = toes.rootAt(new Vector3D(0, 1 - lowest, 0), Frame.WORLD);
    assertThat(Footing.feet(BODY).contacts(down.placed()))
        .isNotEmpty()
        .noneMatch(c -> c.name().contains("heel"));
  }

  @Test
  void plates_under_the_heels_are_touched_where_the_heels_are_raised() {
    Pose flat = upright(BODY.links().standingHipHeight());
    assertThatThrownBy(() -> Footing.feet(BODY).platesUnderHeels(cm(2)).contacts(flat.placed()))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The right foot is 2.0 cm below its ground: raise or lower the foot, or say how high"
                + " its ground is.");
  }

  @Test
  void a_split_stance_on_a_step_shares_the_weight_between_both_feet() {
    Pose pose = upright(BODY.links().standingHipHeight());
    double bend = Math.toRadians(15);
    Pose split =
        pose.with(JointId.HIP.on(Side.LEFT), bend, 0, 0)
            .with(JointId.KNEE.on(Side.LEFT), bend, 0, 0)
            .with(JointId.ANKLE.on(Side.LEFT), 0, 0, 0);
    double step =
        BODY.soles().stream()
            .filter(s -> s.name().startsWith("left"))
            .mapToDouble(s -> split.placed().toWorld(s.segment(), s.place()).getY())
            .min()
            .orElseThrow();
    Position stands = carried(split, Footing.feet(BODY).step(Side.LEFT, m(step)));
    assertThat(stands.holding().sentence()).isEmpty();
    assertThat(up(stands, "floor")).isCloseTo(WEIGHT, within(1e-6));
    assertThat(stands.supportForces()).hasSize(2);
  }

  @Test
  void a_sled_on_a_rail_is_taken_up_by_seat_and_back_rest() {
    Pose pose =
        seated(0.5).rootAt(new Vector3D(0, 0.5, 0), Frame.leanedForward(-Math.toRadians(35)));
    Pose legs = both(both(pose, JointId.HIP, Math.toRadians(115), 0, 0), JointId.KNEE, 1.2, 0, 0);
    Sled sled = Sled.of(kg(100), deg(30));
    assertThat(sled.push()).isCloseTo(100 * Gravity.STANDARD / 2, within(1e-9));
    Position presses =
        Position.of(
            "leg press",
            BODY,
            legs,
            List.of(sled),
            List.of(Pad.seat().friction(0.8), Pad.back(deg(55)).friction(0.8)),
            List.of(),
            List.of());
    assertThat(presses.holding().sentence()).isEmpty();
    double back = 0;
    for (Reaction reaction : presses.supportForces()) {
      back += reaction.force().getX();
    }
    // What the rail pushes back level, seat and back rest together push forward.
    assertThat(back).isCloseTo(sled.push() * Math.cos(Math.toRadians(30)), within(1e-6));
  }

  @Test
  void a_fixed_foot_plate_holds_a_seated_person_against_a_pull() {
    double hips = BODY.links().footHeight() + BODY.links().shank();
    Position sits = carried(seated(hips), Pad.seat(), Footing.feet(BODY), Pad.footPlate(deg(0)));
    assertThat(sits.held()).isTrue();
  }
}
