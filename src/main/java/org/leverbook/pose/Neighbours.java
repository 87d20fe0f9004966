package org.leverbook.pose;

import java.util.Locale;
import java.util.concurrent.atomic.AtomicReferenceArray;
import java.util.function.DoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.quantity.Refused;

/**
 * The derivatives of a course of which only the poses are known.
 *
 * <p>Nine neighbouring poses at shares k/256 lie on a polynomial of degree eight for every angle;
 * its slope and curvature at the share asked for are the derivatives. For a smooth course its error
 * falls with the eighth power of the step. The pose itself is the one the function gives.
 *
 * <p>A body cannot change its speed at once, so a course with a corner (a joint reaches its range
 * and another takes over) has no accelerations there. Corners are found by leaving out the two
 * outer poses: on a smooth course that changes nothing to speak of. What is then refused is about
 * three per cent of the way around the corner.
 */
final class Neighbours implements Course {

  private static final int STEPS = 256;
  private static final int COUNT = 9;

  /**
   * Curvatures of nine and of seven poses may differ by this much, rad (or m) per squared share,
   * and by this share of themselves. Rounding of a pose solver (1e-10) shows as 1e-5 here, a corner
   * of one degree per share as 4.
   */
  private static final double CORNER = 0.2;

  private static final double CORNER_SHARE = 0.02;

  private final DoubleFunction<Pose> poses;
  private final AtomicReferenceArray<Pose> known = new AtomicReferenceArray<>(STEPS + 1);

  Neighbours(DoubleFunction<Pose> poses) {
    this.poses = poses;
  }

  @Override
  public MovingPose at(double share) {
    Pose pose = pose(share);
    int first =
        Math.max(0, Math.min(STEPS + 1 - COUNT, (int) Math.rint(share * STEPS) - COUNT / 2));
    Pose[] near = new Pose[COUNT];
    double[] shares = new double[COUNT];
    for (int k = 0; k < COUNT; k++) {
      near[k] = neighbour(first + k, pose.tree());
      shares[k] = (first + k) / (double) STEPS;
    }
    double[][] all = Stencil.weights(share, shares, 0, COUNT);
    double[][] inner = Stencil.weights(share, shares, 1, COUNT - 1);
    int count = pose.tree().angles();
    double[] rates = new double[count];
    double[] curvatures = new double[count];
    for (int angle = 0; angle < count; angle++) {
      double rough = 0;
      for (int k = 0; k < COUNT; k++) {
        // Turning by a whole turn is no movement.
        double step = Math.IEEEremainder(near[k].angle(angle) - pose.angle(angle), 2 * Math.PI);
        rates[angle] += all[1][k] * step;
        curvatures[angle] += all[2][k] * step;
        rough += inner[2][k] * step;
      }
      smooth(share, curvatures[angle] - rough, curvatures[angle], pose.tree(), angle);
    }
    return MovingPose.of(pose, rates, curvatures, root(share, pose, near, all, inner));
  }

  private Pose pose(double share) {
    Pose pose = poses.apply(share);
    if (pose == null) {
      throw new Refused(String.format(Locale.ROOT, "There is no pose at share %.3f.", share));
    }
    return pose;
  }

  private Pose neighbour(int step, SegmentTree tree) {
    Pose pose = known.get(step);
    if (pose == null) {
      pose = pose(step / (double) STEPS);
      known.set(step, pose);
    }
    if (pose.tree().angles() != tree.angles()) {
      throw new Refused("A movement is that of one body, but its poses belong to different ones.");
    }
    return pose;
  }

  /** The root's derivatives: its frame's matrix R gives [w] = R' Rᵀ and [a'] from R'' Rᵀ. */
  private static MovingPose.Root root(
      double share, Pose pose, Pose[] near, double[][] all, double[][] inner) {
    Vector3D velocity = Vector3D.ZERO;
    Vector3D acceleration = Vector3D.ZERO;
    Vector3D rough = Vector3D.ZERO;
    Vector3D turning = Vector3D.ZERO;
    Vector3D turningUp = Vector3D.ZERO;
    Vector3D turningRough = Vector3D.ZERO;
    for (int k = 0; k < COUNT; k++) {
      Vector3D step = near[k].rootPlace().subtract(pose.rootPlace());
      velocity = velocity.add(step.scalarMultiply(all[1][k]));
      acceleration = acceleration.add(step.scalarMultiply(all[2][k]));
      rough = rough.add(step.scalarMultiply(inner[2][k]));
      // The skew part of (a frame near by) times (this frame, transposed), as a vector.
      Vector3D turn = halfCross(pose.rootFrame(), near[k].rootFrame());
      turning = turning.add(turn.scalarMultiply(all[1][k]));
      turningUp = turningUp.add(turn.scalarMultiply(all[2][k]));
      turningRough = turningRough.add(turn.scalarMultiply(inner[2][k]));
    }
    smooth(share, acceleration.distance(rough), acceleration.getNorm(), pose.tree(), -1);
    smooth(share, turningUp.distance(turningRough), turningUp.getNorm(), pose.tree(), -1);
    return new MovingPose.Root(velocity, acceleration, turning, turningUp);
  }

  private static Vector3D halfCross(Frame from, Frame to) {
    return from.x()
        .crossProduct(to.x())
        .add(from.y().crossProduct(to.y()))
        .add(from.z().crossProduct(to.z()))
        .scalarMultiply(0.5);
  }

  private static void smooth(
      double share, double difference, double curvature, SegmentTree tree, int angle) {
    if (Math.abs(difference) > CORNER + CORNER_SHARE * Math.abs(curvature)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The movement turns a corner near %.1f %% of its way: there the %s would have to"
                  + " change its speed at once, which no body can. Choose a way on which joints set"
                  + " in gradually, or read the instants before and after.",
              100 * share,
              nameOf(tree, angle)));
    }
  }

  private static String nameOf(SegmentTree tree, int angle) {
    for (int i = 1; i < tree.size(); i++) {
      if (angle >= tree.firstAngle(i) && angle < tree.firstAngle(i + 1)) {
        Side side = tree.segment(i).joint().side();
        return side.of(tree.segment(i).joint().name());
      }
    }
    return tree.segment(0).name();
  }
}
