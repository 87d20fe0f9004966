package org.leverbook.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.deg;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.percent;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.HandWeights;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/** What each setting of the lifts that press, raise and curl moves, and what is refused. */
class PressSettingsTest {

  private static final Person MAN = Person.of(Sex.MALE, kg(85), cm(178));
  private static final Person WOMAN = Person.of(Sex.FEMALE, kg(60), cm(165));

  private static Vector3D at(Position position, Site site) {
    Placement where = position.placement();
    Side side = site.sides().size() == 1 ? Side.MIDLINE : Side.RIGHT;
    return where.at(where.tree().place(site, side));
  }

  private static Vector3D joint(Position position, JointId joint) {
    return position.placement().centre(joint.on(Side.RIGHT));
  }

  private static double degrees(Position position, JointId joint, String axis) {
    return Math.toDegrees(position.placement().pose().angle(joint, Side.RIGHT, axis));
  }

  @Test
  void a_bench_press_ends_on_the_chest_and_starts_over_the_shoulders() {
    BenchPress press = BenchPress.of(MAN);
    Vector3D bar = at(press.finish(), Site.HAND);
    Vector3D chest = at(press.finish(), Site.LOWER_CHEST);
    assertThat(bar.getX()).isCloseTo(chest.getX(), within(1e-6));
    // The bar's axis is its radius, 14 mm, above the skin.
    assertThat(bar.getY() - chest.getY()).isCloseTo(0.014, within(1e-6));
    assertThat(at(press.start(), Site.HAND).getX())
        .isCloseTo(joint(press.start(), JointId.SHOULDER).getX(), within(1e-6));
  }

  @Test
  void an_inclined_bench_raises_the_trunk_and_a_wide_grip_opens_the_elbows() {
    BenchPress flat = BenchPress.of(MAN);
    Position inclined = flat.benchAngle(deg(30)).finish();
    assertThat(inclined.held()).isTrue();
    assertThat(inclined.fact("trunk lean") - flat.finish().fact("trunk lean"))
        .isCloseTo(30, within(5.0));
    Position narrow = flat.gripWidth(cm(50)).finish();
    Position wide = flat.gripWidth(cm(81)).finish();
    assertThat(degrees(wide, JointId.ELBOW, "flexion"))
        .isLessThan(degrees(narrow, JointId.ELBOW, "flexion") - 10);
    assertThat(joint(wide, JointId.ELBOW).getZ())
        .isGreaterThan(joint(narrow, JointId.ELBOW).getZ() + 0.03);
    Position tucked = flat.elbowsOut(deg(20)).finish();
    Position out = flat.elbowsOut(deg(80)).finish();
    assertThat(joint(out, JointId.ELBOW).getZ())
        .isGreaterThan(joint(tucked, JointId.ELBOW).getZ() + 0.02);
  }

  @Test
  void a_push_ups_hands_carry_what_was_measured() {
    // Mier, Amasay, Capehart and Garner 2014, Int J Exerc Sci 7:161-168 (abstract), held still:
    // up 67.0 (SD 3.8) and 65.1 (3.1) % of body weight for men and women, down 74.6 (3.6) and
    // 70.3 (3.1) %. Two standard deviations around each.
    assertThat(onHands(PushUp.of(MAN).start())).isCloseTo(67.0, within(7.6));
    assertThat(onHands(PushUp.of(MAN).finish())).isCloseTo(74.6, within(7.2));
    assertThat(onHands(PushUp.of(WOMAN).start())).isCloseTo(65.1, within(6.2));
    assertThat(onHands(PushUp.of(WOMAN).finish())).isCloseTo(70.3, within(6.2));
  }

  private static double onHands(Position position) {
    double hands = 0;
    double all = 0;
    for (var reaction : position.supportForces()) {
      all += reaction.force().getY();
      hands += reaction.on().contains("hand") ? reaction.force().getY() : 0;
    }
    return 100 * hands / all;
  }

  @Test
  void a_push_ups_palms_stay_where_they_are() {
    PushUp push = PushUp.of(MAN).gripWidth(cm(60));
    for (Position position : push.threePositions()) {
      assertThat(at(position, Site.HAND).distance(at(push.start(), Site.HAND))).isLessThan(1e-6);
      assertThat(at(position, Site.BALL_OF_HAND).getY()).isCloseTo(0, within(1e-6));
      assertThat(at(position, Site.BALL_OF_FOOT).getY()).isCloseTo(0, within(1e-6));
    }
    assertThat(at(push.finish(), Site.LOWER_CHEST).getY()).isCloseTo(0.07, within(1e-6));
  }

  @Test
  void a_deeper_dip_brings_the_shoulders_down_and_a_leaning_one_brings_them_ahead() {
    Dip dip = Dip.of(MAN);
    assertThat(joint(dip.raise(deg(90)).finish(), JointId.SHOULDER).getY())
        .isLessThan(joint(dip.raise(deg(60)).finish(), JointId.SHOULDER).getY() - 0.05);
    assertThat(dip.trunkLean(deg(35)).finish().fact("trunk lean")).isCloseTo(35, within(1e-4));
    assertThat(joint(dip.elbowsOut(deg(60)).finish(), JointId.ELBOW).getZ())
        .isGreaterThan(joint(dip.elbowsOut(deg(20)).finish(), JointId.ELBOW).getZ() + 0.05);
  }

  @Test
  void an_overhead_press_goes_past_the_face_and_ends_over_the_foot() {
    OverheadPress press = OverheadPress.of(MAN);
    assertThat(at(press.finish(), Site.HAND).getX()).isCloseTo(0, within(1e-6));
    for (int share = 0; share <= 100; share += 5) {
      Position position = press.at(percent(share));
      Vector3D bar = at(position, Site.HAND);
      Vector3D forehead = at(position, Site.HEAD);
      if (bar.getY() < forehead.getY() + 0.03) {
        // Above that the head draws back. The bar's radius is 14 mm.
        assertThat(bar.getX() - forehead.getX()).as(share + " %").isGreaterThan(0.014);
      }
    }
    assertThat(at(press.gripWidth(cm(80)).finish(), Site.HAND).getY())
        .isLessThan(at(press.gripWidth(cm(45)).finish(), Site.HAND).getY() - 0.03);
  }

  @Test
  void raises_end_where_they_are_asked_to_and_bent_elbows_make_them_lighter() {
    LateralRaise side = LateralRaise.of(MAN).holding(HandWeights.pair("dumbbell", kg(8)));
    Position level = side.raise(deg(90)).finish();
    assertThat(joint(level, JointId.ELBOW).getY())
        .isCloseTo(joint(level, JointId.SHOULDER).getY(), within(1e-6));
    assertThat(at(side.raise(deg(60)).finish(), Site.HAND).getY())
        .isLessThan(at(level, Site.HAND).getY() - 0.15);
    assertThat(side.elbowBend(deg(90)).finish().moment(JointId.SHOULDER).size3d())
        .isLessThan(0.8 * level.moment(JointId.SHOULDER).size3d());
    FrontRaise front = FrontRaise.of(MAN);
    assertThat(at(front.raise(deg(120)).finish(), Site.HAND).getY())
        .isGreaterThan(at(front.raise(deg(90)).finish(), Site.HAND).getY() + 0.2);
  }

  @Test
  void the_pulley_decides_where_a_cable_raise_is_hard() {
    CableLateralRaise raise = CableLateralRaise.of(MAN).stack(kg(6));
    CableLateralRaise low = raise.pulleyHeight(cm(15));
    CableLateralRaise atHand = raise.pulleyHeight(cm(80));
    assertThat(atHand.start().moment(JointId.SHOULDER, Side.RIGHT).size3d())
        .isGreaterThan(1.05 * low.start().moment(JointId.SHOULDER, Side.RIGHT).size3d());
    assertThat(atHand.finish().moment(JointId.SHOULDER, Side.RIGHT).size3d())
        .isLessThan(low.finish().moment(JointId.SHOULDER, Side.RIGHT).size3d());
    Position left = raise.working(Side.LEFT).finish();
    assertThat(left.placement().at(left.placement().tree().place(Site.HAND, Side.LEFT)).getZ())
        .isLessThan(-0.6);
  }

  @Test
  void a_pullover_starts_over_the_shoulders_and_goes_as_far_back_as_asked() {
    Pullover pullover = Pullover.of(MAN);
    Position start = pullover.start();
    assertThat(at(start, Site.HAND).getX())
        .isCloseTo(joint(start, JointId.SHOULDER).getX(), within(1e-6));
    assertThat(at(pullover.raise(deg(165)).finish(), Site.HAND).getY())
        .isLessThan(at(pullover.raise(deg(130)).finish(), Site.HAND).getY() - 0.1);
  }

  @Test
  void curls_bend_as_far_as_asked_and_grips_turn_the_forearm() {
    BarbellCurl curl = BarbellCurl.of(MAN);
    assertThat(curl.elbowBend(deg(100)).finish().fact("elbow bend")).isCloseTo(100, within(1e-6));
    assertThat(degrees(curl.finish(), JointId.FOREARM, "rotation"))
        .isLessThan(degrees(curl.grip(Grip.OVERHAND).finish(), JointId.FOREARM, "rotation") - 90);
    InclineCurl lying = InclineCurl.of(MAN);
    assertThat(lying.benchAngle(deg(45)).start().fact("trunk lean"))
        .isLessThan(lying.benchAngle(deg(70)).start().fact("trunk lean") - 20);
    assertThat(degrees(lying.start(), JointId.SHOULDER, "flexion")).isLessThan(-20);
  }

  @Test
  void the_pad_decides_where_a_preacher_curl_is_hard() {
    PreacherCurl curl = PreacherCurl.of(MAN);
    for (double slope : new double[] {40, 50, 60}) {
      Position position = curl.padAngle(deg(slope)).start();
      Vector3D arm = joint(position, JointId.ELBOW).subtract(joint(position, JointId.SHOULDER));
      assertThat(Math.toDegrees(Math.atan2(-arm.getY(), arm.getX())))
          .isCloseTo(slope, within(1e-4));
      assertThat(position.held()).isTrue();
    }
    // Long arms down on a flatter pad: the forearm starts nearer to level.
    assertThat(curl.padAngle(deg(40)).start().moment(JointId.ELBOW).size())
        .isGreaterThan(1.1 * curl.padAngle(deg(65)).start().moment(JointId.ELBOW).size());
  }

  @Test
  void a_pushdown_keeps_the_body_still_and_follows_its_pulley() {
    TricepsPushdown push = TricepsPushdown.of(MAN);
    assertThat(joint(push.finish(), JointId.HIP).distance(joint(push.start(), JointId.HIP)))
        .isLessThan(0.01);
    assertThat(
            joint(push.finish(), JointId.SHOULDER).distance(joint(push.start(), JointId.SHOULDER)))
        .isLessThan(0.02);
    assertThat(push.elbowBend(deg(120)).start().fact("elbow bend")).isCloseTo(120, within(1e-6));
    assertThat(push.pulleyAhead(cm(90)).start().held()).isTrue();
  }

  @Test
  void an_overhead_extension_takes_dumbbells_or_a_cable_from_behind() {
    OverheadTriceps extension = OverheadTriceps.of(MAN);
    assertThat(extension.start().loads()).extracting("source").isEqualTo(List.of("dumbbell"));
    for (Position position : extension.stack(kg(10)).threePositions()) {
      assertThat(position.loads()).hasSize(1);
      assertThat(position.loads().get(0).source()).isEqualTo("cable");
      assertThat(position.held()).as(position.holding().sentence()).isTrue();
    }
    assertThat(extension.pulleyHeight(cm(60)).middle().loads().get(0).source()).isEqualTo("cable");
  }

  @Test
  void wrists_curl_up_underhand_and_down_overhand() {
    WristCurl curl = WristCurl.of(MAN);
    Position start = curl.start();
    assertThat(joint(start, JointId.ELBOW).getY())
        .isCloseTo(joint(start, JointId.WRIST).getY(), within(1e-6));
    assertThat(at(curl.finish(), Site.HAND).getY())
        .isGreaterThan(at(start, Site.HAND).getY() + 0.05);
    assertThat(joint(curl.padHeight(cm(60)).start(), JointId.WRIST).getY())
        .isCloseTo(0.635, within(1e-6));
    WristCurl reverse = curl.grip(Grip.OVERHAND);
    assertThat(at(reverse.finish(), Site.HAND).getY())
        .isGreaterThan(at(reverse.start(), Site.HAND).getY() + 0.05);
    assertThat(degrees(reverse.finish(), JointId.WRIST, "flexion")).isLessThan(-30);
  }

  @Test
  void an_upright_row_lifts_the_elbows_above_the_bar() {
    UprightRow row = UprightRow.of(MAN);
    Position top = row.finish();
    assertThat(joint(top, JointId.ELBOW).getY()).isGreaterThan(at(top, Site.HAND).getY() + 0.1);
    assertThat(at(row.raise(deg(70)).finish(), Site.HAND).getY())
        .isLessThan(at(top, Site.HAND).getY() - 0.05);
  }

  @Test
  void what_cannot_be_is_refused_in_words() {
    assertThatThrownBy(() -> BenchPress.of(MAN).gripWidth(cm(200)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("grip width")
        .hasMessageContaining("131");
    assertThatThrownBy(() -> PreacherCurl.of(MAN).padAngle(deg(400)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("pad angle")
        .hasMessageContaining("100");
    assertThatThrownBy(() -> Dip.of(MAN).raise(deg(170)).finish())
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("Dip at 100 % of the way")
        .hasMessageContaining("Change a setting that gives way");
  }
}
