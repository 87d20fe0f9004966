package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.m;

import java.util.List;
import java.util.function.Predicate;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Segment;
import org.leverbook.body.SegmentTable;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;

/**
 * Numbers worked by hand from the published segment tables: de Leva 1996 (Table 4), Winter 2009
 * (Table 4.1), the spine levels (Pearsall et al. 1996, Panjabi et al. 1991, 1992, Pearcy et al.
 * 1984) and the survey links (Gordon et al. 2014). Tolerance: half of the last digit written, and
 * as much again where the table's own rounding (a sum of 99.99 %) is divided out.
 */
class SegmentTableTest {

  private static final Person MAN = Person.of(Sex.MALE, kg(80), m(1.80));
  private static final Person WOMAN = Person.of(Sex.FEMALE, kg(60), m(1.65));

  private static double mass(Body body, Predicate<String> which) {
    return body.tree().segments().stream()
        .filter(segment -> which.test(segment.name()))
        .mapToDouble(Segment::mass)
        .sum();
  }

  private static Segment segment(Body body, String name) {
    return body.tree().segment(body.tree().indexOf(name));
  }

  private static boolean hangsOn(SegmentTree tree, String segment, String joint) {
    return tree.hangsOn(tree.indexOf(segment), tree.distalOf(joint));
  }

  @ParameterizedTest(name = "{0}, {1}, {2} kg, {3} cm")
  @CsvSource({
    "MALE, DE_LEVA_1996, 80, 180",
    "FEMALE, DE_LEVA_1996, 60, 165",
    "MALE, WINTER_2009, 97.3, 171",
    "FEMALE, WINTER_2009, 51, 190"
  })
  void the_segments_weigh_what_the_person_weighs(
      Sex sex, SegmentTable table, double kilograms, double centimetres) {
    Body body = Person.of(sex, kg(kilograms), cm(centimetres)).weighedBy(table).body();
    // 55 numbers are added: rounding stays below 1e-12 of the mass.
    assertThat(body.tree().mass()).isCloseTo(kilograms, within(1e-12 * kilograms));
    assertThat(body.tree().segments()).allMatch(segment -> segment.mass() >= 0);
  }

  @Test
  void winters_thigh_of_an_80_kg_man_weighs_8_kg_with_its_centre_191_mm_below_the_hip() {
    Body body = MAN.weighedBy(SegmentTable.WINTER_2009).measured(Part.THIGH, m(0.4410)).body();
    Segment thigh = segment(body, "right thigh");
    assertThat(thigh.mass()).isCloseTo(8.000, within(5e-4));
    assertThat(-thigh.centreOfMass().getY()).isCloseTo(0.1910, within(5e-5));
  }

  @Test
  void winters_head_arms_and_trunk_of_an_80_kg_man_weigh_54_24_kg() {
    Body body = MAN.weighedBy(SegmentTable.WINTER_2009).body();
    SegmentTree tree = body.tree();
    Predicate<String> legs =
        name -> hangsOn(tree, name, "right hip") || hangsOn(tree, name, "left hip");
    assertThat(mass(body, legs.negate())).isCloseTo(54.24, within(5e-3));
  }

  @Test
  void de_levas_80_kg_man_has_a_thigh_of_11_328_kg_a_trunk_of_34_768_kg_and_legs_of_31_776_kg() {
    Body body = MAN.body();
    SegmentTree tree = body.tree();
    assertThat(segment(body, "left thigh").mass()).isCloseTo(11.328, within(1e-3));
    assertThat(2 * mass(body, name -> hangsOn(tree, name, "left hip")))
        .isCloseTo(31.776, within(1e-3));
    assertThat(mass(body, name -> name.matches("pelvis|L\\d|T\\d+")))
        .isCloseTo(34.768, within(0.01));
  }

  @Test
  void de_levas_level_forearm_of_an_80_kg_man_loads_the_elbow_with_3_285_newton_metres() {
    Body body = MAN.measured(Part.FOREARM, m(0.2780)).body();
    Pose level = Pose.neutral(body.tree()).with("right elbow", Math.PI / 2, 0);
    NetLoads net = NetLoads.of(level.placed(), List.of(), new Vector3D(0, -9.81, 0));
    JointMoment elbow = JointMoment.of(net, "right elbow", "");
    assertThat(elbow.size()).isCloseTo(3.285, within(5e-4));
    assertThat(elbow.tendsTo()).isEqualTo("extend");
  }

  @Test
  void de_levas_shank_of_a_60_kg_woman_weighs_2_886_kg_with_its_centre_181_mm_below_the_knee() {
    Segment shank = segment(WOMAN.measured(Part.SHANK, m(0.4171)).body(), "right shank");
    assertThat(shank.mass()).isCloseTo(2.886, within(1e-3));
    assertThat(-shank.centreOfMass().getY()).isCloseTo(0.1815, within(5e-5));
  }

  @Test
  void above_l5_s1_an_80_kg_man_weighs_41_38_kg_with_arms_and_33_48_kg_without() {
    Body body = MAN.body();
    SegmentTree tree = body.tree();
    Predicate<String> above = name -> hangsOn(tree, name, "L5/S1");
    Predicate<String> arms =
        name -> hangsOn(tree, name, "right shoulder") || hangsOn(tree, name, "left shoulder");
    assertThat(mass(body, above)).isCloseTo(41.38, within(5e-3));
    assertThat(mass(body, above.and(arms.negate()))).isCloseTo(33.48, within(5e-3));
  }

  @Test
  void forty_degrees_of_trunk_bend_turn_l4_l5_by_8_50_and_t12_l1_by_0_947_degrees() {
    assertThat(40 * Body.flexionShare(JointId.L4_L5)).isCloseTo(8.50, within(5e-3));
    assertThat(40 * Body.flexionShare(JointId.T12_L1)).isCloseTo(0.947, within(5e-4));
    double all = JointId.spine().stream().mapToDouble(Body::flexionShare).sum();
    assertThat(all).isCloseTo(1, within(1e-5));
  }

  @Test
  void a_man_of_180_cm_stands_with_hips_back_and_shoulders_at_the_survey_heights() {
    Body body = MAN.body();
    assertThat(body.links().thigh()).isCloseTo(0.4246, within(5e-5));
    assertThat(body.links().shank()).isCloseTo(0.4291, within(5e-5));
    assertThat(body.links().spine()).isCloseTo(0.4851, within(5e-5));
    Placement standing = Pose.neutral(body.tree()).placed();
    double floor = -body.links().standingHipHeight();
    double back = standing.centre("L5/S1").getY() - floor;
    double shoulder = standing.centre(JointId.SHOULDER.on(Side.RIGHT)).getY() - floor;
    assertThat(back).isCloseTo(1.0372, within(1e-4));
    assertThat(shoulder).isCloseTo(1.4409, within(1e-4));
  }

  @Test
  void the_low_back_lies_106_mm_above_and_22_mm_behind_the_hips_of_the_surveys_mean_man() {
    // 0.105 m at 14 degrees and 0.0052 m at 36.5 degrees; the survey's mean stature is 1.7562 m.
    Body body = Person.of(Sex.MALE, kg(85), m(1.7562)).body();
    Vector3D back = Pose.neutral(body.tree()).placed().centre("L5/S1");
    assertThat(back.getY()).isCloseTo(0.1061, within(5e-5));
    assertThat(back.getX()).isCloseTo(-0.0223, within(5e-5));
  }
}
