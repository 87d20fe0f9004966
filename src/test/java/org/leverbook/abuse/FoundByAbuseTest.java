package org.leverbook.abuse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.leverbook.body.JointId.HIP;
import static org.leverbook.body.JointId.KNEE;
import static org.leverbook.language.Vocabulary.FORWARD;
import static org.leverbook.language.Vocabulary.MALE;
import static org.leverbook.language.Vocabulary.barbell;
import static org.leverbook.language.Vocabulary.cm;
import static org.leverbook.language.Vocabulary.compare;
import static org.leverbook.language.Vocabulary.hinge;
import static org.leverbook.language.Vocabulary.histogram;
import static org.leverbook.language.Vocabulary.kg;
import static org.leverbook.language.Vocabulary.lowest;
import static org.leverbook.language.Vocabulary.newton;
import static org.leverbook.language.Vocabulary.noLoad;
import static org.leverbook.language.Vocabulary.person;
import static org.leverbook.language.Vocabulary.sweep;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.Segment;
import org.leverbook.body.Side;
import org.leverbook.display.Sheet;
import org.leverbook.lift.Hinge;
import org.leverbook.load.DirectedForce;
import org.leverbook.load.Grasps;
import org.leverbook.load.PivotingBar;
import org.leverbook.load.SteadyForce;
import org.leverbook.load.Stretch;
import org.leverbook.muscle.Verdict;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.support.Footing;

/** What the campaigns found, each as a test of its own. */
class FoundByAbuseTest {

  private static final Hinge PULL = hinge(person(MALE, kg(85), cm(178))).holding(barbell(kg(100)));
  private static final Body BODY = person(MALE, kg(85), cm(178)).body();
  private static final Vector3D NOWHERE = new Vector3D(Double.POSITIVE_INFINITY, 0, 0);

  private static void refused(ThrowingCallable call, String sentence) {
    assertThatThrownBy(call).isInstanceOf(Refused.class).hasMessageContaining(sentence);
  }

  @Test
  void a_joint_that_is_named_twice_has_one_column() {
    var swept = sweep("hip height", cm(55), cm(65), 3, h -> PULL.hipHeight(h).start());

    assertThat(swept.table(HIP, HIP, KNEE).columnNames())
        .isEqualTo(swept.table(HIP, KNEE).columnNames());
  }

  @Test
  void what_a_sweep_is_seen_against_has_a_unit_or_none() {
    var swept = sweep("hip height", cm(55), cm(65), 3, h -> PULL.hipHeight(h).start());

    refused(
        () -> swept.against("trunk lean", null, p -> p.fact("trunk lean")),
        "unit of the trunk lean");
    assertThat(swept.against("trunk lean", "", p -> p.fact("trunk lean")).unit()).isEmpty();
  }

  @Test
  void a_range_beyond_all_size_is_refused_at_either_end() {
    refused(
        () -> lowest("mass", kg(1e300), kg(5), m -> PULL.start(), HIP), "more than anything here");
    refused(
        () -> lowest("mass", kg(5), kg(1e300), m -> PULL.start(), HIP), "more than anything here");
  }

  @Test
  void a_first_that_could_not_be_done_is_no_measure_for_the_others() {
    var compared = compare(PULL.holding(noLoad()), PULL).atEqualLoad(kg(60)).start();

    refused(() -> compared.atEqualLoad(), "The others cannot be measured by the first");
    refused(() -> compared.atEqualEffort(), "which could not be done itself");
  }

  @Test
  void numbers_that_no_axis_can_show_make_no_histogram() {
    refused(
        () -> histogram("margin", "", List.of(1e308, -1e308), Double::doubleValue),
        "which no axis can show");
  }

  @Test
  void a_table_a_column_and_a_verdict_have_names() {
    refused(() -> new Sheet(null, List.of(), List.of(), List.of()), "title of the table");
    refused(() -> new Sheet.Column("trunk lean", null, 1), "unit of the trunk lean");
    Verdict verdict = PULL.start().verdict();
    refused(
        () -> Verdict.sideBySide(Arrays.asList("narrow", null), List.of(verdict, verdict)),
        "name of a verdict");
    refused(() -> Verdict.of("hinge", BODY, List.of()), "one position at least");
    refused(() -> PULL.start().effort().joints(null), "words for the title");
  }

  @Test
  void a_position_has_a_name_and_notes() {
    Pose pose = Pose.neutral(BODY.tree());
    refused(
        () -> Position.of(null, BODY, pose, List.of(), List.of(), List.of(), List.of()),
        "name of the position");
  }

  @Test
  void a_body_is_placed_and_turned_by_numbers() {
    Pose pose = Pose.neutral(BODY.tree());
    refused(() -> pose.rootAt(NOWHERE, Frame.WORLD), "place of the pelvis is Infinity");
    refused(() -> pose.rootAt(new Vector3D(0, 1e308, 0), Frame.WORLD), "place of the pelvis");
    refused(() -> Frame.leanedForward(Double.NaN), "cannot be turned by NaN");
    refused(() -> Frame.of(NOWHERE, Vector3D.PLUS_I), "long axis of the frame");
    refused(() -> Frame.of(Vector3D.PLUS_J, Vector3D.MINUS_J), "not along it");
    refused(() -> new Frame(NOWHERE, Vector3D.PLUS_J, Vector3D.PLUS_K), "An axis of a frame");
  }

  @Test
  void a_part_of_a_body_has_a_name_a_mass_and_a_place() {
    Vector3D centre = Vector3D.ZERO;
    refused(() -> new Segment("thigh", 0, null, Double.NaN, centre, centre), "mass of the thigh");
    refused(() -> new Segment("thigh", 0, null, 7, null, centre), "centre of mass of the thigh");
    refused(() -> new Segment(null, 0, null, 7, centre, centre), "name of the segment");
  }

  @Test
  void what_pulls_is_fixed_somewhere_and_pulls_with_an_amount() {
    refused(() -> SteadyForce.of("partner", newton(200), NOWHERE), "point it pulls to");
    refused(() -> DirectedForce.of(null, newton(200), FORWARD), "kind of the force");
    refused(() -> PivotingBar.of(NOWHERE, kg(20)), "pivot of the bar");
    refused(
        () -> Grasps.BOTH_HANDS.sharing("rope", PULL.start().placement(), NOWHERE),
        "pull on the handle");
  }

  @Test
  void a_band_is_stretched_as_far_as_bands_go() {
    Stretch band = Stretch.linear(300);
    refused(() -> band.force(1e308), "no band gives more than 100 m");
    refused(() -> Stretch.linear(Double.MIN_VALUE), "pulls harder the further");
    assertThat(band.force(0.5)).isEqualTo(150);
  }

  @Test
  void ground_has_a_friction() {
    refused(() -> Footing.feet(BODY).friction(Double.POSITIVE_INFINITY), "friction of the ground");
    refused(() -> Footing.foot(BODY, Side.LEFT).friction(-1), "between 0 and 10");
  }
}
