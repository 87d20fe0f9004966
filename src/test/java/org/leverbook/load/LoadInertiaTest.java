package org.leverbook.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.body.SegmentTree;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Frame;
import org.leverbook.pose.MovingPose;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Units;

/**
 * Whatever way the handle takes, what inertia takes from the hand per second is what the moving
 * parts gain in energy of motion. The gain is a central difference over 2e-4 s, good to about 1e-6
 * of watts of order 10.
 */
class LoadInertiaTest {

  private static final SegmentTree TREE = SegmentTree.root("handle", 1, Vector3D.ZERO).build();
  private static final Grasps HANDLE = new Grasps(List.of(Grasp.fixed(0, Vector3D.ZERO)));
  private static final Vector3D FIXED = new Vector3D(0.1, 0.2, 0);
  private static final double STEP = 1e-4;

  private static Vector3D place(double t) {
    return new Vector3D(0.9 + 0.3 * Math.sin(2 * t), 0.8 + 0.4 * Math.cos(3 * t), 0);
  }

  private static Vector3D velocity(double t) {
    return new Vector3D(0.6 * Math.cos(2 * t), -1.2 * Math.sin(3 * t), 0);
  }

  private static Vector3D acceleration(double t) {
    return new Vector3D(-1.2 * Math.sin(2 * t), -3.6 * Math.cos(3 * t), 0);
  }

  private static double taken(Load load, double t) {
    Accelerations moving =
        MovingPose.of(
                Pose.neutral(TREE).rootAt(place(t), Frame.WORLD),
                new double[0],
                new double[0],
                new MovingPose.Root(velocity(t), acceleration(t), Vector3D.ZERO, Vector3D.ZERO))
            .accelerations();
    return -load.inertia(moving).stream().mapToDouble(f -> f.force().dotProduct(velocity(t))).sum();
  }

  private static double rate(DoubleUnaryOperator of, double t) {
    return (of.applyAsDouble(t + STEP) - of.applyAsDouble(t - STEP)) / (2 * STEP);
  }

  private static double angle(double t) {
    Vector3D arm = place(t).subtract(FIXED);
    return Math.atan2(arm.getY(), arm.getX());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.4, 0.7, 1.3, 2.0})
  void a_cables_stack_takes_what_it_gains(double t) {
    DoubleUnaryOperator energy =
        s -> 0.5 * 50 * Math.pow(rate(u -> place(u).distance(FIXED), s) / 2, 2);
    assertThat(taken(new Cable(50, 2, FIXED, HANDLE.all()), t))
        .isCloseTo(rate(energy, t), within(1e-4));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.4, 0.7, 1.3, 2.0})
  void a_pivoting_bar_takes_what_it_gains(double t) {
    double resists = 20 * 2.2 * 2.2 + 20 * 2.2 * 2.2 / 3;
    DoubleUnaryOperator energy = s -> 0.5 * resists * Math.pow(rate(LoadInertiaTest::angle, s), 2);
    assertThat(taken(new PivotingBar(FIXED, 20, 20, 2.2, HANDLE), t))
        .isCloseTo(rate(energy, t), within(1e-3));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 0.4, 0.7, 1.3, 2.0})
  void a_lever_and_a_cam_take_what_they_gain(double t) {
    DoubleUnaryOperator plates =
        s -> 0.5 * 30 * 0.36 * Math.pow(rate(LoadInertiaTest::angle, s), 2);
    assertThat(taken(new LeverMachine(FIXED, 30, 0.6, 0.4, Optional.empty(), HANDLE), t))
        .isCloseTo(rate(plates, t), within(1e-4));
    Cam cam = Cam.at(Units.deg(-90), Units.cm(5)).and(Units.deg(170), Units.cm(30));
    DoubleUnaryOperator stack =
        s -> 0.5 * 30 * Math.pow(cam.radius(angle(s)) * rate(LoadInertiaTest::angle, s), 2);
    assertThat(taken(new LeverMachine(FIXED, 30, 0, 0, Optional.of(cam), HANDLE), t))
        .isCloseTo(rate(stack, t), within(1e-4));
  }
}
