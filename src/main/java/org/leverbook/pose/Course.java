package org.leverbook.pose;

import java.util.function.DoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import org.leverbook.quantity.Refused;

/**
 * The way a body goes through a movement, without its timing: a pose for every share from 0 (start)
 * to 1 (end), and its derivatives with respect to that share.
 */
public interface Course {

  /**
   * One place on the way.
   *
   * @param share 0 to 1
   * @return the pose there, with derivatives per unit of share
   * @throws Refused if there is no pose, or it turns a corner there
   */
  MovingPose at(double share);

  /**
   * From one pose to another, every joint angle in proportion to the share, the root along a
   * straight line and about one fixed axis. The derivatives are exact.
   *
   * @param start at share 0
   * @param end at share 1, of the same tree
   * @return the course
   * @throws Refused if the poses belong to different bodies
   */
  static Course between(Pose start, Pose end) {
    if (start.tree() != end.tree()) {
      throw new Refused("A course leads from one pose of a body to another of the same body.");
    }
    int count = start.tree().angles();
    double[] rates = new double[count];
    for (int i = 0; i < count; i++) {
      rates[i] = end.angle(i) - start.angle(i);
    }
    Vector3D way = end.rootPlace().subtract(start.rootPlace());
    Rotation turn = rotation(end.rootFrame()).applyTo(rotation(start.rootFrame()).revert());
    Vector3D axis = turn.getAxis(RotationConvention.VECTOR_OPERATOR);
    double whole = turn.getAngle();
    MovingPose.Root root =
        new MovingPose.Root(way, Vector3D.ZERO, axis.scalarMultiply(whole), Vector3D.ZERO);
    return share -> {
      double[] angles = new double[count];
      for (int i = 0; i < count; i++) {
        angles[i] = start.angle(i) + share * rates[i];
      }
      Rotation part = new Rotation(axis, share * whole, RotationConvention.VECTOR_OPERATOR);
      Frame from = start.rootFrame();
      Frame frame =
          new Frame(part.applyTo(from.x()), part.applyTo(from.y()), part.applyTo(from.z()));
      Vector3D place = start.rootPlace().add(way.scalarMultiply(share));
      Pose pose = Pose.of(start.tree(), angles, place, frame);
      return MovingPose.of(pose, rates, new double[count], root);
    };
  }

  /**
   * Through the poses that a function gives, as a solver does for every hip height. The derivatives
   * are those of the polynomial through nine neighbouring poses ({@link Neighbours}).
   *
   * @param poses from a share to a pose; always of the same tree
   * @return the course
   */
  static Course through(DoubleFunction<Pose> poses) {
    return new Neighbours(poses);
  }

  private static Rotation rotation(Frame frame) {
    RealMatrix rows =
        new Array2DRowRealMatrix(
            new double[][] {frame.x().toArray(), frame.y().toArray(), frame.z().toArray()});
    // Frames hold the images of the axes: columns of the matrix, so the rows are transposed.
    return new Rotation(rows.transpose().getData(), 1e-9);
  }
}
