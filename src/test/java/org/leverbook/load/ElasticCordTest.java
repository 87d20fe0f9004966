package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.SegmentTree;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/** A band fixed at the world's origin and held by a body that moves away from it. */
class ElasticCordTest {

  private static final SegmentTree TREE = SegmentTree.root("hand", 1, Vector3D.ZERO).build();

  private static Placement handAt(double x, double y) {
    return Pose.neutral(TREE).rootAt(new Vector3D(x, y, 0), Frame.WORLD).placed();
  }

  private static ElasticCord band() {
    return new ElasticCord(Vector3D.ZERO, 0.5, 200, 0, Vector3D.ZERO);
  }

  @Test
  void a_slack_band_gives_no_force() {
    assertThat(band().forces(handAt(0.4, 0))).isEmpty();
    assertThat(band().forces(handAt(0.5, 0))).isEmpty();
    assertThat(band().stretch(handAt(0.1, 0))).isZero();
  }

  @Test
  void a_stretched_band_pulls_back_towards_its_anchor_in_proportion() {
    Force pull = band().forces(handAt(0.6, 0.8)).get(0);
    assertThat(pull.force().getNorm()).isCloseTo(100, within(1e-12));
    assertThat(pull.force().distance(new Vector3D(-60, -80, 0))).isLessThan(1e-12);
    assertThat(pull.momentAbout(Vector3D.ZERO).getNorm()).isLessThan(1e-12);
    assertThat(band().tension(handAt(1.5, 0))).isCloseTo(200, within(1e-12));
  }

  @Test
  void impossible_bands_are_refused() {
    assertThatThrownBy(() -> new ElasticCord(Vector3D.ZERO, 0.5, -1, 0, Vector3D.ZERO))
        .isInstanceOf(Refused.class)
        .hasMessage("The band's stiffness is -1.0 N/m, but must be a number above zero.");
    assertThatThrownBy(() -> new ElasticCord(Vector3D.ZERO, -0.5, 100, 0, Vector3D.ZERO))
        .isInstanceOf(Refused.class)
        .hasMessage("The band's unstretched length is -0.5 m, but must be zero or more.");
    assertThatThrownBy(() -> band().stretchFor(-3))
        .isInstanceOf(Refused.class)
        .hasMessage("A band cannot push: it was asked for -3.0 N. Give 0 N or more.");
  }
}
