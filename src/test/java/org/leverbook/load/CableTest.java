package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.SegmentTree;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/** A stack of 50 kg whose last pulley hangs two metres above the world's origin. */
class CableTest {

  private static final Placement STILL =
      Pose.neutral(SegmentTree.root("lifter", 80, Vector3D.ZERO).build()).placed();
  private static final Vector3D PULLEY = new Vector3D(0, 2, 0);

  private static Cable cable(double kilograms, double ratio, Vector3D... hands) {
    return new Cable(
        kilograms, ratio, PULLEY, List.of(hands).stream().map(h -> Grasp.fixed(0, h)).toList());
  }

  @Test
  void the_pull_points_from_the_hand_to_the_pulley() {
    Force pull = cable(50, 1, new Vector3D(0.6, 1.2, 0)).forces(STILL).get(0);
    double tension = 50 * 9.80665;
    assertThat(pull.force().distance(new Vector3D(-0.6 * tension, 0.8 * tension, 0)))
        .isLessThan(1e-9);
  }

  @Test
  void two_hands_on_one_bar_share_a_pull_from_midway_between_them() {
    Cable cable = cable(50, 2, new Vector3D(0, 1, 0.3), new Vector3D(0, 1, -0.3));
    List<Force> pulls = cable.forces(STILL);
    assertThat(pulls).hasSize(2);
    for (Force pull : pulls) {
      assertThat(pull.force().distance(new Vector3D(0, 50 * 9.80665 / 4, 0))).isLessThan(1e-9);
    }
    assertThat(cable.handleTravel(0.4)).isCloseTo(0.8, within(1e-15));
    assertThat(cable.description()).isEqualTo("cable 50.0 kg, 2.00 : 1");
  }

  @Test
  void impossible_machines_are_refused() {
    Vector3D hand = new Vector3D(0, 1, 0);
    assertThatThrownBy(() -> cable(-1, 1, hand))
        .isInstanceOf(Refused.class)
        .hasMessage("The stack is -1.0 kg, but must be zero or more.");
    assertThatThrownBy(() -> cable(50, 0, hand))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("The pulley ratio is 0.0, but must be above zero");
    assertThatThrownBy(() -> cable(50, 1))
        .isInstanceOf(Refused.class)
        .hasMessage("Nothing holds the handle: say which hand or cuff does.");
    assertThatThrownBy(() -> cable(50, 1, PULLEY).forces(STILL))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("the cable has no direction");
  }
}
