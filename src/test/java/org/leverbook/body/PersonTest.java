package org.leverbook.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;

class PersonTest {

  /** Sums of some sixty doubles. */
  private static final double ROUNDING = 1e-12;

  private static Person man() {
    return Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
  }

  private static Person woman() {
    return Person.of(Sex.FEMALE, Units.kg(60), Units.cm(165));
  }

  static Stream<Person> random() {
    Random random = new Random(20261);
    return IntStream.range(0, 60)
        .mapToObj(
            i ->
                Person.of(
                    random.nextBoolean() ? Sex.MALE : Sex.FEMALE,
                    Units.kg(45 + 90 * random.nextDouble()),
                    Units.cm(145 + 65 * random.nextDouble())));
  }

  @ParameterizedTest
  @MethodSource("random")
  void segments_weigh_as_much_as_the_person_by_either_table(Person person) {
    for (SegmentTable table : SegmentTable.values()) {
      assertThat(person.weighedBy(table).body().tree().mass())
          .isCloseTo(person.kilograms(), within(1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("random")
  void links_stack_up_to_stature(Person person) {
    Links links = person.body().links();
    double stacked =
        links.footHeight()
            + links.shank()
            + links.thigh()
            + links.pelvisUp()
            + links.spine()
            + links.neck()
            + links.head();
    assertThat(stacked).isCloseTo(person.metres(), within(ROUNDING));
  }

  @ParameterizedTest
  @EnumSource(
      value = Part.class,
      names = {"SHANK", "THIGH", "TRUNK"})
  void a_longer_part_leaves_stature_and_mass_as_they_were(Part part) {
    Person changed = man().longer(part, Units.percent(8));
    Links usual = man().body().links();
    Links links = changed.body().links();
    assertThat(links.lengthOf(part)).isCloseTo(1.08 * usual.lengthOf(part), within(ROUNDING));
    assertThat(Si.metres(changed.stature())).isCloseTo(1.78, within(ROUNDING));
    assertThat(links.stature()).isCloseTo(1.78, within(ROUNDING));
    assertThat(changed.body().tree().mass()).isCloseTo(85, within(1e-9));
    assertThat(changed.text()).contains(part.word() + " 8.0 % longer, stature kept, mass kept");
  }

  @Test
  void stature_kept_means_that_unchanged_legs_and_trunk_share_the_difference() {
    Links usual = man().body().links();
    Links links = man().longer(Part.THIGH, Units.percent(8)).body().links();
    double shank = links.shank() / usual.shank();
    double trunk = links.lengthOf(Part.TRUNK) / usual.lengthOf(Part.TRUNK);
    assertThat(shank).isCloseTo(trunk, within(ROUNDING)).isLessThan(1);
    assertThat(links.upperArm()).isEqualTo(usual.upperArm());
    assertThat(links.footLength()).isEqualTo(usual.footLength());
  }

  @Test
  void stature_and_mass_can_follow_instead() {
    Person changed = man().longer(Part.THIGH, Units.percent(10)).statureFollows().massFollows();
    Links usual = man().body().links();
    double longer = 0.1 * usual.thigh();
    assertThat(Si.metres(changed.stature())).isCloseTo(1.78 + longer, within(ROUNDING));
    double thigh = man().body().tree().segment(man().body().tree().indexOf("right thigh")).mass();
    assertThat(Si.kilograms(changed.mass())).isCloseTo(85 + 2 * 0.1 * thigh, within(1e-9));
    assertThat(changed.text()).contains("stature follows, mass follows");
  }

  @Test
  void longer_arms_touch_neither_stature_nor_legs() {
    Person changed = man().longer(Part.UPPER_ARM, Units.percent(10));
    assertThat(changed.body().links().stature()).isCloseTo(1.78, within(ROUNDING));
    assertThat(changed.body().links().thigh()).isEqualTo(man().body().links().thigh());
  }

  @Test
  void a_measured_length_is_met_exactly() {
    Links links = woman().measured(Part.THIGH, Units.cm(42)).body().links();
    assertThat(links.thigh()).isCloseTo(0.42, within(ROUNDING));
  }

  @Test
  void a_change_by_nothing_changes_nothing() {
    Person same = man().longer(Part.THIGH, Units.percent(0));
    assertThat(same.body().links()).isEqualTo(man().body().links());
  }

  @Test
  void an_absurd_proportion_is_refused_with_the_range() {
    assertThatThrownBy(() -> man().longer(Part.THIGH, Units.percent(60)))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The thighs would have 160 % of their usual length; 70 to 140 % can be asked for.");
  }

  @Test
  void stature_that_cannot_stay_is_refused_with_the_way_out() {
    Person two = man().longer(Part.THIGH, Units.percent(5)).longer(Part.SHANK, Units.percent(5));
    assertThatThrownBy(() -> two.longer(Part.TRUNK, Units.percent(5)))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("stature cannot stay 178.0 cm")
        .hasMessageEndingWith("Leave one of them free, or add .statureFollows().");
  }

  @Test
  void bad_people_are_refused_in_whole_sentences() {
    assertThatThrownBy(() -> Person.of(Sex.MALE, Units.kg(-5), Units.cm(178)))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("The body mass is -5 kg, but must lie between 30 and 300 kg.");
    assertThatThrownBy(() -> Person.of(Sex.MALE, Units.kg(85), Units.m(17.8)))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "The stature is 17.8 m, but must lie between 120 and 230 cm. Is a decimal point one place off?");
    assertThatThrownBy(() -> Person.of(null, Units.kg(85), Units.cm(178)))
        .isInstanceOf(Refused.class)
        .hasMessage("The sex is missing (null): give one, such as MALE.");
  }

  @ParameterizedTest
  @MethodSource("random")
  void left_mirrors_right_in_the_standing_body(Person person) {
    Body body = person.body();
    var standing = Pose.neutral(body.tree()).placed();
    for (JointId joint : JointId.values()) {
      if (joint.paired()) {
        var right = standing.centre(joint.on(Side.RIGHT));
        var left = standing.centre(joint.on(Side.LEFT));
        assertThat(left.getX()).isCloseTo(right.getX(), within(ROUNDING));
        assertThat(left.getY()).isCloseTo(right.getY(), within(ROUNDING));
        assertThat(left.getZ()).as(joint.word()).isCloseTo(-right.getZ(), within(ROUNDING));
        assertThat(right.getZ()).as(joint.word()).isPositive();
      }
    }
  }

  @Test
  void the_whole_tree_is_there() {
    Body body = man().body();
    assertThat(JointId.spine()).hasSize(18);
    long joints =
        IntStream.range(1, body.tree().size())
            .mapToObj(i -> body.tree().segment(i).joint().fullName())
            .distinct()
            .count();
    // 25 joints of spine, neck and head; ten on each side.
    assertThat(joints).isEqualTo(25 + 2 * 10);
    assertThat(body.soles().stream().map(s -> s.name().toLowerCase(Locale.ROOT)))
        .anyMatch(n -> n.contains("heel"))
        .anyMatch(n -> n.contains("ball"))
        .anyMatch(n -> n.contains("toe tip"));
  }

  @Test
  void shares_of_bending_add_up_to_the_whole() {
    double sum = JointId.spine().stream().mapToDouble(Body::flexionShare).sum();
    assertThat(sum).isCloseTo(1, within(1e-9));
  }

  @Test
  void hips_flex_as_far_as_passively_the_mean_of_men_or_women() {
    // Soucie et al. 2011, ages 20 to 44, passive, from memory; the active 120° end before it.
    assertThat(hipFlexion(man())).isCloseTo(130.4, within(1e-9));
    assertThat(hipFlexion(woman())).isCloseTo(133.8, within(1e-9));
  }

  private static double hipFlexion(Person person) {
    SegmentTree tree = person.body().tree();
    int thigh = tree.distalOf(JointId.HIP.on(Side.LEFT));
    return Math.toDegrees(tree.segment(thigh).joint().freedom("flexion").orElseThrow().high());
  }
}
