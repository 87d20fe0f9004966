package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.HandWeights;
import org.leverbook.load.Load;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Contact;
import org.leverbook.support.Floor;
import org.leverbook.support.Pad;
import org.leverbook.support.Support;

/** Where the floor pushes, which way one tips, and by how much: against the law of the lever. */
class GroundTest {

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(180)).body();

  /** A push or pull at a place that goes with the pelvis. */
  private record At(Vector3D place, Vector3D force) implements Load {

    @Override
    public String source() {
      return "belt";
    }

    @Override
    public String description() {
      return "belt";
    }

    @Override
    public double mass() {
      return 0;
    }

    @Override
    public List<Force> forces(Placement where) {
      return List.of(Force.ofLoad("belt", 0, place, force));
    }
  }

  /** Upright, soles at a height. */
  private static Pose upright(double height) {
    double hips = height + BODY.links().standingHipHeight();
    return Pose.neutral(BODY.tree()).rootAt(new Vector3D(0, hips, 0), Frame.WORLD);
  }

  private static Position standing(Load... loads) {
    return Position.of(
        "standing",
        BODY,
        upright(0),
        List.of(loads),
        List.of(new Floor(BODY)),
        List.of(),
        List.of());
  }

  private static Load down(double ahead, double right, double newtons) {
    return new At(new Vector3D(ahead, 1, right), new Vector3D(0, -newtons, 0));
  }

  private static double weight() {
    return 80 * Gravity.STANDARD;
  }

  private static List<Vector3D> soles() {
    Placement where = upright(0).placed();
    List<Vector3D> soles = new ArrayList<>();
    BODY.soles().forEach(sole -> soles.add(where.toWorld(sole.segment(), sole.place())));
    return soles;
  }

  @ParameterizedTest(name = "80 N at {0} m ahead and {1} m to the right")
  @CsvSource({"0.3, 0", "0.2, 0.5", "0.2, -0.5"})
  void the_floor_pushes_where_all_weights_balance(double ahead, double right) {
    Balance balance = standing(down(ahead, right, 80)).balance();
    Vector3D body = upright(0).placed().centreOfMass();
    double all = weight() + 80;
    double x = (weight() * body.getX() + 80 * ahead) / all;
    double z = (weight() * body.getZ() + 80 * right) / all;
    assertThat(balance.centreOfPressure().distance(new Vector3D(x, 0, z))).isLessThan(1e-9);
    // The foot is as long as the table says, from the back of the heel to the tip of the toes.
    double toes = soles().stream().mapToDouble(Vector3D::getX).max().orElseThrow();
    double heel = toes - BODY.links().footLength();
    assertThat(balance.shareOfFoot())
        .isCloseTo((x - heel) / BODY.links().footLength(), within(1e-9));
    assertThat(balance.held()).isTrue();
  }

  @Test
  void a_level_pull_at_a_height_moves_the_pressure_by_pull_times_height_over_weight() {
    Load pull = new At(new Vector3D(0, 1.2, 0), new Vector3D(20, 0, -10));
    Vector3D body = upright(0).placed().centreOfMass();
    Vector3D pressure = standing(pull).balance().centreOfPressure();
    assertThat(pressure.getX()).isCloseTo(body.getX() + 20 * 1.2 / weight(), within(1e-9));
    assertThat(pressure.getZ()).isCloseTo(body.getZ() - 10 * 1.2 / weight(), within(1e-9));
  }

  @ParameterizedTest(name = "{0} N at {1} m ahead, {2} m to the right: {3}")
  @CsvSource({
    "900, 1, 0, Tips forward, 'ahead of the toes', x",
    "900, -1, 0, Tips backward, 'behind the heels'' support', -x",
    "900, 0.05, 1, Tips sideways, 'outside the feet', z",
    "900, 0.05, -1, Tips sideways, 'outside the feet', -z"
  })
  void who_tips_is_told_by_how_many_centimetres_and_what_would_hold_him(
      double newtons, double ahead, double right, String way, String place, String edge) {
    Position tips = standing(down(ahead, right, newtons));
    assertThat(tips.holding().verdict()).isEqualTo(Holding.Verdict.TIPS);
    Vector3D body = upright(0).placed().centreOfMass();
    double all = weight() + newtons;
    double x = (weight() * body.getX() + newtons * ahead) / all;
    double z = (weight() * body.getZ() + newtons * right) / all;
    double sign = edge.startsWith("-") ? -1 : 1;
    boolean along = edge.endsWith("x");
    double end =
        soles().stream().mapToDouble(s -> sign * (along ? s.getX() : s.getZ())).max().orElseThrow();
    if (along) {
      double beyond = sign * x - end;
      assertThat(tips.holding().sentence())
          .startsWith(way)
          .contains(String.format(Locale.ROOT, " falls %.1f cm %s", 100 * beyond, place));
      // Weight times what it lies beyond the edge, against the way it turns: forward is -z.
      assertThat(tips.holding().missingMoment().getZ())
          .isCloseTo(sign * all * beyond, within(1e-6));
    } else {
      // The outer edge runs from heel to ball, so the nearest point lies less than straight aside.
      double straight = sign * z - end;
      double told = told(tips.holding().sentence());
      assertThat(tips.holding().sentence()).startsWith(way).contains(place);
      assertThat(told).isBetween(90 * straight, 100 * straight + 3);
      // To the right is +x.
      double missing = -sign * tips.holding().missingMoment().getX() / all;
      assertThat(100 * missing).isBetween(0.9 * told, told + 0.1);
    }
    assertThat(tips.balance().held()).isFalse();
  }

  private static double told(String sentence) {
    return Double.parseDouble(sentence.replaceAll(".* falls ([0-9.]+) cm .*", "$1"));
  }

  @Test
  void on_a_box_all_is_as_on_the_floor() {
    Load level = new At(new Vector3D(0.1, 1.5, 0), new Vector3D(15, -50, 5));
    Load lower = new At(new Vector3D(0.1, 1.1, 0), new Vector3D(15, -50, 5));
    Support box = new Box(BODY);
    Position high =
        Position.of("box", BODY, upright(0.4), List.of(level), List.of(box), List.of(), List.of());
    Position low = standing(lower);
    Vector3D up = new Vector3D(0, 0.4, 0);
    assertThat(high.balance().centreOfPressure().distance(low.balance().centreOfPressure().add(up)))
        .isLessThan(1e-9);
    assertThat(high.balance().shareOfFoot()).isCloseTo(low.balance().shareOfFoot(), within(1e-9));
    for (JointId joint : List.of(JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.L5_S1)) {
      assertThat(high.moment(joint).signed()).isCloseTo(low.moment(joint).signed(), within(1e-6));
    }
  }

  /** Ground under both soles, wherever they are. */
  private record Box(Body body) implements Support {

    @Override
    public String source() {
      return "floor";
    }

    @Override
    public String description() {
      return "box";
    }

    @Override
    public List<Contact> contacts(Placement where) {
      return body.soles().stream()
          .map(
              s ->
                  new Contact(
                      s.name(),
                      s.segment(),
                      where.toWorld(s.segment(), s.place()),
                      Vector3D.PLUS_J,
                      0.6,
                      false))
          .toList();
    }
  }

  /** Legs upright, trunk bent far forward with a weight far ahead of the toes, over a pad. */
  private static Position over(double kilograms) {
    double lean = Math.toRadians(60);
    Pose pose = upright(0).rootAt(upright(0).rootPlace(), Frame.leanedForward(lean));
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      pose =
          pose.with(JointId.HIP.on(side), lean, 0, 0).with(JointId.SHOULDER.on(side), lean, 0, 0);
    }
    Load bells = HandWeights.pair("dumbbell", kg(kilograms));
    return Position.of(
            "over a pad",
            BODY,
            pose,
            List.of(bells),
            List.of(new Floor(BODY)),
            List.of(),
            List.of())
        .on(Pad.chest(deg(30)));
  }

  @Test
  void a_pad_that_cannot_be_left_out_is_touched_as_little_as_can_be() {
    Position relaxed = over(10);
    assertThat(relaxed.without("chest pad").held()).isFalse();
    Position least = relaxed.leaning(percent(0));
    assertThat(least.held()).isTrue();
    assertThat(pushOfPad(least)).isPositive().isLessThan(0.9 * pushOfPad(relaxed));
    assertThat(least.bothEnds().text()).contains("Untouched: chest pad on the trunk: ");
  }

  private static double pushOfPad(Position position) {
    return position.supportForces().stream()
        .filter(r -> r.source().equals("chest pad"))
        .mapToDouble(Reaction::push)
        .sum();
  }

  @Test
  void who_is_not_held_still_knows_the_moments_of_the_free_arms() {
    Load bells = HandWeights.pair("dumbbell", kg(10));
    Pose forward = upright(0);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      forward = forward.with(JointId.SHOULDER.on(side), Math.PI / 2, 0, 0);
    }
    List<Load> loads = List.of(bells);
    Position held =
        Position.of("held", BODY, forward, loads, List.of(new Floor(BODY)), List.of(), List.of());
    Position falls = Position.of("falls", BODY, forward, loads, List.of(), List.of(), List.of());
    assertThat(held.held()).isTrue();
    assertThat(falls.held()).isFalse();
    for (JointId joint : List.of(JointId.SHOULDER, JointId.ELBOW)) {
      assertThat(falls.moment(joint).size()).isGreaterThan(10);
      assertThat(falls.moment(joint).signed()).isCloseTo(held.moment(joint).signed(), within(1e-9));
    }
  }

  @Test
  void the_table_of_forces_through_joints_says_what_each_joint_says_and_warns() {
    Position position = standing(Barbell.of(kg(40)));
    Sheet sheet = position.contactForces();
    for (List<Object> row : sheet.rows()) {
      JointId joint =
          List.of(JointId.values()).stream()
              .filter(j -> j.word().equals(row.get(0)))
              .findFirst()
              .orElseThrow();
      Side side =
          joint.sides().stream().filter(s -> s.word().equals(row.get(1))).findFirst().orElseThrow();
      ContactForce one = position.contactForce(joint, side);
      assertThat(row.subList(2, 6))
          .containsExactly(one.compression(), one.forward(), one.outward(), one.size());
    }
    assertThat(sheet.rows()).hasSizeGreaterThan(40);
    assertThat(sheet.notes()).contains(Caution.TEXT);
    assertThat(sheet.title()).isEqualTo("Forces through the joints, standing");
  }

  @Test
  void what_is_not_there_cannot_be_taken_away() {
    assertThatThrownBy(() -> standing(Barbell.of(kg(40))).without("cable"))
        .isInstanceOf(Refused.class)
        .hasMessage("There is no \"cable\" here to take away; there is bar, floor.");
  }
}
