package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.SegmentTree;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/** A band fixed at the world's origin and held by a body that moves away from it. */
class BandTest {

  private static final SegmentTree TREE = SegmentTree.root("hand", 1, Vector3D.ZERO).build();

  private static Placement handAt(double x, double y) {
    return Pose.neutral(TREE).rootAt(new Vector3D(x, y, 0), Frame.WORLD).placed();
  }

  private static final Grasps HAND = new Grasps(List.of(Grasp.fixed(0, Vector3D.ZERO)));

  private static Band band() {
    return new Band(Vector3D.ZERO, 0.5, Stretch.linear(200), HAND);
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
  void a_measured_curve_is_followed_point_to_point_and_read_backwards() {
    Stretch curve =
        new Stretch(List.of(new Stretch.Point(0, 0), new Stretch.Point(0.1, 40))).and(0.5, 80);
    assertThat(curve.force(0.05)).isCloseTo(20, within(1e-12));
    assertThat(curve.force(0.3)).isCloseTo(60, within(1e-12));
    assertThat(curve.force(0.9)).isCloseTo(120, within(1e-12));
    for (double newtons : new double[] {0, 10, 40, 70, 200}) {
      assertThat(curve.force(curve.metres(newtons))).isCloseTo(newtons, within(1e-12));
    }
    assertThatThrownBy(() -> curve.and(0.6, 70))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "A band pulls harder the further it is stretched, but its curve goes from 80.0 N at 50.0 cm to 70.0 N at"
                + " 60.0 cm.");
  }

  @Test
  void a_band_is_told_by_its_length_and_one_pull() {
    Band band = Band.of(Vector3D.ZERO, Units.cm(100), Units.newton(150), Units.cm(200));
    assertThat(band.curve().force(1)).isCloseTo(150, within(1e-12));
    assertThatThrownBy(() -> Band.of(Vector3D.ZERO, Units.cm(100), Units.newton(150), Units.cm(90)))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "At 90.0 cm a band of 100.0 cm is not stretched, so it cannot pull 150.0 N: give a length above 100.0 cm.");
  }

  @Test
  void impossible_bands_are_refused() {
    assertThatThrownBy(() -> Stretch.linear(-1))
        .isInstanceOf(Refused.class)
        .hasMessage("The band's stiffness is -1.0 N/m, but must be a number above zero.");
    assertThatThrownBy(() -> new Band(Vector3D.ZERO, -0.5, Stretch.linear(100), HAND))
        .isInstanceOf(Refused.class)
        .hasMessage("The band's unstretched length is -0.5 m, but must be zero or more.");
    assertThatThrownBy(() -> Stretch.linear(100).metres(-3))
        .isInstanceOf(Refused.class)
        .hasMessage("A band cannot push: it was asked for -3.0 N. Give 0 N or more.");
  }
}
