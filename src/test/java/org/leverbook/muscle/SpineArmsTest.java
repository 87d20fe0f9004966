package org.leverbook.muscle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.m;

import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.pose.Pose;

/** How muscles of the trunk cross the levels of the spine, in people of two statures. */
class SpineArmsTest {

  private static final Body MAN = Person.of(Sex.MALE, kg(75), m(1.75)).body();
  private static final Body TALL = Person.of(Sex.MALE, kg(75), m(1.925)).body();
  private static final List<String> NECK = List.of("semispinalis_capitis_cervicis", "splenius");

  private static TreeMap<JointId, Crossing> bending(Body body, Strand strand) {
    TreeMap<JointId, Crossing> found = new TreeMap<>();
    for (JointId level : JointId.values()) {
      if (!level.paired()) {
        int axis = body.tree().angleOf(level.word(), "flexion");
        strand.crossings().stream().filter(c -> c.axis() == axis).forEach(c -> found.put(level, c));
      }
    }
    return found;
  }

  @Test
  void every_arm_grows_with_stature_also_those_of_bending_aside_and_turning() {
    List<Strand> before = Musculature.of(MAN).strands();
    List<Strand> after = Musculature.of(TALL).strands();
    int compared = 0;
    for (int i = 0; i < before.size(); i++) {
      for (int k = 0; k < before.get(i).crossings().size(); k++) {
        double own = before.get(i).crossings().get(k).arm(Pose.neutral(MAN.tree()));
        double longer = after.get(i).crossings().get(k).arm(Pose.neutral(TALL.tree()));
        assertThat(longer).as(before.get(i).fullName()).isCloseTo(1.1 * own, within(1e-12));
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(500);
  }

  @Test
  void between_two_levels_with_a_listed_arm_it_changes_evenly() {
    int compared = 0;
    for (Strand strand : Musculature.of(MAN).strands()) {
      if (SpineTables.BY_LEVEL.containsKey(strand.muscle().key())) {
        continue;
      }
      TreeMap<JointId, Crossing> levels = bending(MAN, strand);
      List<JointId> listed =
          ArmTable.SHIPPED.of(strand.muscle().key()).stream()
              .filter(s -> s.joint().startsWith("spine_"))
              .map(s -> SpineTables.joint(s.joint().substring("spine_".length())))
              .sorted()
              .toList();
      for (int k = 1; k < listed.size(); k++) {
        int from = listed.get(k - 1).ordinal();
        int to = listed.get(k).ordinal();
        double low = arm(levels, from);
        double high = arm(levels, to);
        for (int level = from + 1; level < to; level++) {
          double even = (low * (to - level) + high * (level - from)) / (to - from);
          assertThat(arm(levels, level)).as(strand.fullName()).isCloseTo(even, within(1e-12));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(10);
  }

  private static double arm(TreeMap<JointId, Crossing> levels, int ordinal) {
    return levels.get(JointId.values()[ordinal]).arm(Pose.neutral(MAN.tree()));
  }

  @Test
  void the_long_neck_muscles_gather_a_seventh_from_each_vertebra_from_t6_up_to_c7() {
    int compared = 0;
    for (Strand strand : Musculature.of(MAN).strands()) {
      if (NECK.contains(strand.muscle().key())) {
        for (var one : bending(MAN, strand).entrySet()) {
          // Below C7/T1 stand the six from T6 to T1; above C7 all fibres cross.
          double sevenths =
              switch (one.getKey()) {
                case T5_T6 -> 1;
                case T4_T5 -> 2;
                case T3_T4 -> 3;
                case T2_T3 -> 4;
                case T1_T2 -> 5;
                case C7_T1 -> 6;
                default -> one.getKey().compareTo(JointId.C7_T1) > 0 ? 7 : Double.NaN;
              };
          assertThat(one.getValue().share())
              .as(one.getKey().word())
              .isCloseTo(sevenths / 7, within(1e-12));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThanOrEqualTo(4);
  }
}
