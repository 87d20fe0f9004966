package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;
import org.leverbook.load.Force;
import org.leverbook.support.Contact;

/** How a weight spreads over the points of a level floor. */
class ReactionsTest {

  private static Contact at(int name, double x, double z) {
    return Contact.smooth("point " + name, name, new Vector3D(x, 0, z), Vector3D.PLUS_J);
  }

  /** The pushes under a weight that acts at a place, one for each contact (zero where idle). */
  private static double[] pushes(List<Contact> contacts, double weight, double x, double z) {
    Vector3D down = new Vector3D(0, -weight, 0);
    Vector3D moment = new Vector3D(x, 0.9, z).crossProduct(down);
    double[] pushes = new double[contacts.size()];
    for (Force force : Reactions.levelFloor("floor", contacts, down, moment)) {
      assertThat(force.kind()).isEqualTo(Force.Kind.SUPPORT);
      pushes[force.segment()] = force.force().getY();
    }
    return pushes;
  }

  @Test
  void two_thirds_of_the_way_between_two_pairs_the_nearer_pair_carries_two_thirds() {
    List<Contact> corners =
        List.of(at(0, 0, -0.1), at(1, 0, 0.1), at(2, 0.3, -0.1), at(3, 0.3, 0.1));
    double[] pushes = pushes(corners, 900, 0.2, 0);
    assertThat(pushes[0]).isCloseTo(150, within(1e-9));
    assertThat(pushes[1]).isCloseTo(150, within(1e-9));
    assertThat(pushes[2]).isCloseTo(300, within(1e-9));
    assertThat(pushes[3]).isCloseTo(300, within(1e-9));
  }

  @Test
  void three_points_leave_no_choice_and_carry_as_the_lever_rule_says() {
    List<Contact> tripod = List.of(at(0, 0, 0), at(1, 0.4, 0), at(2, 0, 0.4));
    double[] pushes = pushes(tripod, 1000, 0.1, 0.2);
    assertThat(pushes[0]).isCloseTo(250, within(1e-9));
    assertThat(pushes[1]).isCloseTo(250, within(1e-9));
    assertThat(pushes[2]).isCloseTo(500, within(1e-9));
  }

  @Test
  void a_weight_straight_over_one_corner_rests_on_that_corner_alone() {
    List<Contact> corners =
        List.of(at(0, 0, -0.1), at(1, 0, 0.1), at(2, 0.3, -0.1), at(3, 0.3, 0.1));
    double[] pushes = pushes(corners, 500, 0.3, 0.1);
    assertThat(pushes[3]).isCloseTo(500, within(1e-6));
    assertThat(pushes[0] + pushes[1] + pushes[2]).isCloseTo(0, within(1e-6));
  }

  /**
   * Least squares under push-only limits has exactly one answer, known by its conditions (Karush,
   * Kuhn and Tucker): where a point pushes, the push is an affine function of its place; where it
   * is idle, that function is not positive.
   */
  @Test
  void random_contacts_push_only_balance_the_weight_and_are_the_least_pushes() {
    Random random = new Random(11);
    int idle = 0;
    for (int round = 0; round < 500; round++) {
      List<Contact> contacts = new ArrayList<>();
      double x = 0;
      double z = 0;
      double sum = 0;
      int count = 4 + random.nextInt(9);
      for (int i = 0; i < count; i++) {
        Contact contact = at(i, random.nextDouble(), random.nextDouble());
        contacts.add(contact);
        // Squared twice, so that the weight often lies near an edge and points fall idle.
        double share = Math.pow(random.nextDouble(), 4) + 1e-3;
        x += share * contact.point().getX();
        z += share * contact.point().getZ();
        sum += share;
      }
      double[] pushes = pushes(contacts, 1000, x / sum, z / sum);
      double up = 0;
      double px = 0;
      double pz = 0;
      for (int i = 0; i < count; i++) {
        assertThat(pushes[i]).isNotNegative();
        up += pushes[i];
        px += pushes[i] * contacts.get(i).point().getX();
        pz += pushes[i] * contacts.get(i).point().getZ();
        idle += pushes[i] == 0 ? 1 : 0;
      }
      assertThat(up).isCloseTo(1000, within(1e-9));
      assertThat(px / up).isCloseTo(x / sum, within(1e-12));
      assertThat(pz / up).isCloseTo(z / sum, within(1e-12));
      assertLeast(contacts, pushes);
    }
    assertThat(idle).as("idle points met").isGreaterThan(200);
  }

  private static void assertLeast(List<Contact> contacts, double[] pushes) {
    List<Integer> pushing = new ArrayList<>();
    for (int i = 0; i < pushes.length; i++) {
      if (pushes[i] > 0) {
        pushing.add(i);
      }
    }
    double[][] rows = new double[pushing.size()][];
    double[] values = new double[pushing.size()];
    for (int k = 0; k < rows.length; k++) {
      rows[k] = row(contacts.get(pushing.get(k)));
      values[k] = pushes[pushing.get(k)];
    }
    Array2DRowRealMatrix places = new Array2DRowRealMatrix(rows);
    RealVector affine =
        new SingularValueDecomposition(places).getSolver().solve(new ArrayRealVector(values));
    // Pushes are of some 100 N; a nearly straight row of points costs a few digits.
    assertThat(places.operate(affine).subtract(new ArrayRealVector(values)).getLInfNorm())
        .isLessThan(1e-6);
    if (pushing.size() >= 3) {
      for (int i = 0; i < pushes.length; i++) {
        if (pushes[i] == 0) {
          assertThat(new ArrayRealVector(row(contacts.get(i))).dotProduct(affine)).isLessThan(1e-6);
        }
      }
    }
  }

  private static double[] row(Contact contact) {
    return new double[] {1, contact.point().getX(), contact.point().getZ()};
  }
}
