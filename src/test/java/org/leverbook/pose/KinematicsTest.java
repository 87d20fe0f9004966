package org.leverbook.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;
import org.leverbook.body.Motion;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;

/**
 * Placing a tree whose joints turn about the frame's axes, either way round, or about any other.
 */
class KinematicsTest {

  private static final Random RANDOM = new Random(11);

  private static Vector3D direction(int n) {
    return switch (n % 4) {
      case 0 -> Vector3D.PLUS_I;
      case 1 -> Vector3D.MINUS_J;
      case 2 -> Vector3D.MINUS_K;
      default ->
          new Vector3D(RANDOM.nextGaussian(), RANDOM.nextGaussian(), RANDOM.nextGaussian())
              .normalize();
    };
  }

  private static SegmentTree chain() {
    SegmentTree.Builder builder = SegmentTree.root("0", 1, Vector3D.ZERO);
    for (int i = 1; i < 12; i++) {
      List<Freedom> freedoms =
          List.of(
              new Freedom(Motion.FLEXION, direction(i), -4, 4),
              new Freedom(Motion.ABDUCTION, direction(i / 2), -4, 4),
              new Freedom(Motion.ROTATION, direction(i / 3), -4, 4));
      Vector3D centre = new Vector3D(0.1 * i, -0.3, 0.2);
      Joint joint = new Joint("joint " + i, Side.MIDLINE, "none", centre, freedoms);
      builder.segment(Integer.toString((i - 1) / 2), joint, Integer.toString(i), 1, centre);
    }
    return builder.build();
  }

  @Test
  void places_and_axes_are_those_of_rotations_applied_one_after_another() {
    SegmentTree tree = chain();
    for (int round = 0; round < 20; round++) {
      double[] angles = new double[tree.angles()];
      for (int i = 0; i < angles.length; i++) {
        angles[i] = 6 * RANDOM.nextDouble() - 3;
      }
      Placement where = Pose.of(tree, angles, new Vector3D(1, 2, 3), Frame.WORLD).placed();
      for (int i = 0; i < tree.size(); i++) {
        Vector3D local = new Vector3D(0.3, -0.1, 0.7);
        Vector3D expected = toWorld(tree, angles, i, local);
        // Rounding of a few metres over a chain of rotations.
        assertThat(where.toWorld(i, local).distance(expected)).isLessThan(1e-13);
        assertThat(where.frame(i).x().getNorm()).isCloseTo(1, within(1e-14));
      }
    }
  }

  @Test
  void the_axis_of_every_angle_is_the_line_that_its_segment_turns_about() {
    SegmentTree tree = chain();
    double[] angles = new double[tree.angles()];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = 6 * RANDOM.nextDouble() - 3;
    }
    Placement where = Pose.of(tree, angles, new Vector3D(1, 2, 3), Frame.WORLD).placed();
    Vector3D local = new Vector3D(0.3, -0.1, 0.7);
    double step = 1e-6;
    for (int segment = 1; segment < tree.size(); segment++) {
      for (int angle = tree.firstAngle(segment); angle < tree.firstAngle(segment) + 3; angle++) {
        double[] more = angles.clone();
        more[angle] += step;
        Vector3D moved =
            toWorld(tree, more, segment, local).subtract(toWorld(tree, angles, segment, local));
        Vector3D arm = where.toWorld(segment, local).subtract(where.origin(segment));
        // A difference quotient: half the step times the arm, and rounding over the step.
        assertThat(moved.scalarMultiply(1 / step).distance(where.axis(angle).crossProduct(arm)))
            .isLessThan(1e-6);
      }
    }
  }

  private static Vector3D toWorld(SegmentTree tree, double[] angles, int segment, Vector3D local) {
    if (segment == 0) {
      return local.add(new Vector3D(1, 2, 3));
    }
    Joint joint = tree.segment(segment).joint();
    Vector3D point = local;
    for (int k = joint.freedoms().size() - 1; k >= 0; k--) {
      Rotation turn =
          new Rotation(
              joint.freedoms().get(k).axis(),
              angles[tree.firstAngle(segment) + k],
              RotationConvention.VECTOR_OPERATOR);
      point = turn.applyTo(point);
    }
    return toWorld(tree, angles, tree.segment(segment).parent(), point.add(joint.centre()));
  }
}
