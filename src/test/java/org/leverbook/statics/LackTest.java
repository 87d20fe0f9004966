package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.support.Contact;

/**
 * What is said of a person whom supports cannot hold: a block of 800 N on four corners, 20 cm by 20
 * cm, pushed and turned in ways that are worked out by hand.
 */
class LackTest {

  private static final SegmentTree TREE = Person.of(Sex.MALE, kg(80), cm(180)).body().tree();
  private static final Placement WHERE = Pose.neutral(TREE).placed();
  private static final Vector3D WEIGHT = new Vector3D(0, -800, 0);

  private static List<ContactProblem.Touch> corners(double friction, double height) {
    List<ContactProblem.Touch> corners = new ArrayList<>();
    for (String foot : List.of("right foot", "left foot")) {
      double z = foot.startsWith("right") ? 0.1 : -0.1;
      for (double x : new double[] {-0.1, 0.1}) {
        Vector3D at = new Vector3D(x, height, z);
        int segment = TREE.indexOf(foot);
        corners.add(
            new ContactProblem.Touch(
                "floor",
                false,
                new Contact("corner", segment, at, Vector3D.PLUS_J, friction, false)));
      }
    }
    return corners;
  }

  private static Holding told(double friction, Vector3D force, Vector3D moment) {
    return new Lack(WHERE, corners(friction, 0), List.of(), 800, force, moment, 4).told();
  }

  @ParameterizedTest(name = "pulled by ({0}, {1}, {2}) N: {3}")
  @CsvSource({
    "-3000, 0, 0, 3000 N forward",
    "3000, 0, 0, 3000 N backward",
    "0, 1300, 0, 500 N downward",
    "0, 0, -3000, 3000 N to the right",
    "0, 0, 3000, 3000 N to the left"
  })
  void a_pull_that_nothing_takes_up_lacks_as_much_the_other_way(
      double x, double y, double z, String lacking) {
    Vector3D pull = new Vector3D(x, y, z);
    Holding holding = told(0, WEIGHT.add(pull), Vector3D.ZERO);
    assertThat(holding.verdict()).isEqualTo(Holding.Verdict.NOT_HELD);
    assertThat(holding.sentence()).contains("nothing gives the " + lacking + " that are lacking");
    Vector3D expected = y > 0 ? new Vector3D(0, -500, 0) : pull.negate();
    // Forces are weighed a thousandfold, squared: a millionth is left of what was to be found.
    assertThat(holding.missingForce().distance(expected)).isLessThan(0.01);
    assertThat(holding.neededFriction()).isZero();
  }

  @ParameterizedTest(name = "weight {0} m ahead, {1} m to the right: {2}")
  @CsvSource({
    "1, 0, the lifter tips forward, left–right, 0, 720",
    "-1, 0, the lifter tips backward, left–right, 0, -720",
    "0, 1, the lifter tips to the right, front–back, -720, 0",
    "0, -1, the lifter tips to the left, front–back, 720, 0"
  })
  void a_weight_beside_the_feet_tips_to_its_side_by_weight_times_distance_from_the_edge(
      double ahead, double right, String way, String axis, double aboutX, double aboutZ) {
    Vector3D moment = new Vector3D(ahead, 0, right).crossProduct(WEIGHT);
    Holding holding = told(0.6, WEIGHT, moment);
    assertThat(holding.verdict()).isEqualTo(Holding.Verdict.TIPS);
    // 800 N, 90 cm beyond the edge.
    assertThat(holding.sentence())
        .contains("720 N·m are lacking about the " + axis + " axis")
        .contains(way + ".");
    assertThat(holding.missingMoment().distance(new Vector3D(aboutX, 0, aboutZ))).isLessThan(0.1);
    assertThat(holding.missingForce().getNorm()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"1, turns to the left", "-1, turns to the right"})
  void a_twist_that_no_friction_takes_turns_the_lifter_its_way(int sign, String way) {
    // Seen from above, left is against the clock: right-handed about up. Friction of 2 at 14 cm
    // takes 230 N·m at most.
    Holding holding = told(0, WEIGHT, new Vector3D(0, sign * 1000, 0));
    assertThat(holding.sentence()).contains("1000 N·m", "about the vertical axis", way + ".");
    assertThat(holding.missingMoment().getY()).isCloseTo(-sign * 1000, within(1e-3));
  }

  @ParameterizedTest(name = "pulled level by {0} N on friction {1}")
  @CsvSource({"80, 0.05, 0.10", "200, 0.1, 0.25", "1000, 0.6, 1.25"})
  void the_needed_friction_is_the_pull_over_the_weight(double pull, double given, double needed) {
    // The pull acts at the height of the soles, so it turns nothing.
    Holding holding = told(given, WEIGHT.add(new Vector3D(pull, 0, 0)), Vector3D.ZERO);
    assertThat(holding.verdict()).isEqualTo(Holding.Verdict.SLIPS);
    assertThat(holding.neededFriction()).isCloseTo(needed, within(1e-6));
    assertThat(holding.sentence())
        .isEqualTo(
            String.format(
                "Slips at the feet: needs friction %.2f, the floor gives %.2f.", needed, given));
  }

  @Test
  void where_only_one_foot_is_on_ice_only_that_one_slips() {
    List<ContactProblem.Touch> mixed = new ArrayList<>(corners(0.9, 0).subList(0, 2));
    mixed.addAll(corners(0.1, 0).subList(2, 4));
    // 300 N straight back in the plane of the left foot, which carries half the weight.
    Vector3D pull = new Vector3D(300, 0, 0);
    Vector3D moment = new Vector3D(0, 0, -0.1).crossProduct(pull);
    Holding holding = new Lack(WHERE, mixed, List.of(), 800, WEIGHT.add(pull), moment, 4).told();
    assertThat(holding.sentence())
        .startsWith("Slips at the left foot: needs friction ")
        .endsWith("the floor gives 0.10.");
  }

  @Test
  void where_the_supports_stand_in_the_room_changes_nothing() {
    // All moved up by 2 m: only the moment about the world's origin knows.
    Vector3D pull = WEIGHT.add(new Vector3D(80, 0, 0));
    Vector3D moment = new Vector3D(0, 2, 0).crossProduct(pull);
    Holding high = new Lack(WHERE, corners(0.05, 2), List.of(), 800, pull, moment, 4).told();
    assertThat(high.neededFriction()).isCloseTo(0.1, within(1e-6));
  }
}
