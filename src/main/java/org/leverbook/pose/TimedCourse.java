package org.leverbook.pose;

import java.util.Arrays;
import java.util.List;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.hipparchus.complex.Quaternion;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Refused;

/**
 * The way of a body through poses that are known at equal times, as a camera gives them: natural
 * cubic splines through every joint angle, the root's place and its quaternion, so that pose, speed
 * and acceleration are continuous. At both ends the accelerations are those of a movement that goes
 * on steadily: zero.
 *
 * <p>With q the spline through the quaternions, of nearly unit length, the root turns with w = 2
 * vec(q' q*) / |q|² and gains a' = 2 vec(q'' q*) / |q|² - 2 w (q · q') / |q|².
 */
public final class TimedCourse implements Course {

  private static final int FEWEST = 4;

  private final Pose like;
  private final PolynomialSplineFunction[] angles;
  private final PolynomialSplineFunction[] place;
  private final PolynomialSplineFunction[] turn;

  private TimedCourse(
      Pose like,
      PolynomialSplineFunction[] angles,
      PolynomialSplineFunction[] place,
      PolynomialSplineFunction[] turn) {
    this.like = like;
    this.angles = angles;
    this.place = place;
    this.turn = turn;
  }

  /**
   * A course through poses at equal steps.
   *
   * @param poses four or more, of the same tree
   * @return the course, the first at share 0, the last at share 1
   * @throws Refused if they are too few
   */
  public static TimedCourse through(List<Pose> poses) {
    if (poses.size() < FEWEST) {
      throw new Refused(
          "A movement needs at least " + FEWEST + " poses, but there are " + poses.size() + ".");
    }
    int n = poses.size();
    double[] shares = new double[n];
    double[][] places = new double[3][n];
    double[][] turns = new double[4][n];
    int count = poses.get(0).tree().angles();
    double[][] bends = new double[count][n];
    double[] before = null;
    for (int i = 0; i < n; i++) {
      Pose pose = poses.get(i);
      shares[i] = i / (n - 1.0);
      double[] root = pose.rootPlace().toArray();
      double[] q = quaternion(pose.rootFrame(), before);
      before = q;
      for (int k = 0; k < 4; k++) {
        turns[k][i] = q[k];
      }
      for (int k = 0; k < 3; k++) {
        places[k][i] = root[k];
      }
      for (int k = 0; k < count; k++) {
        bends[k][i] = pose.angle(k);
      }
    }
    return new TimedCourse(
        poses.get(0), splines(shares, bends), splines(shares, places), splines(shares, turns));
  }

  private static PolynomialSplineFunction[] splines(double[] shares, double[][] rows) {
    return Arrays.stream(rows)
        .map(row -> new SplineInterpolator().interpolate(shares, row))
        .toArray(PolynomialSplineFunction[]::new);
  }

  /** The frame's quaternion, of the two signs the one nearer to the one before. */
  private static double[] quaternion(Frame frame, double[] before) {
    Rotation r = new Rotation(Vector3D.PLUS_I, Vector3D.PLUS_J, frame.x(), frame.y());
    // Hipparchus keeps the scalar of its rotations as a vector operator with the sign turned.
    double[] q = {r.getQ0(), -r.getQ1(), -r.getQ2(), -r.getQ3()};
    double dot = 0;
    for (int k = 0; before != null && k < 4; k++) {
      dot += q[k] * before[k];
    }
    return dot < 0 ? new double[] {-q[0], -q[1], -q[2], -q[3]} : q;
  }

  /** Value, slope and curvature of one spline. */
  private static double[] at(PolynomialSplineFunction spline, double share) {
    double[] knots = spline.getKnots();
    double x = Math.max(knots[0], Math.min(knots[knots.length - 1], share));
    int i = Arrays.binarySearch(knots, x);
    i = i < 0 ? -i - 2 : Math.min(i, knots.length - 2);
    PolynomialFunction piece = spline.getPolynomials()[i];
    PolynomialFunction slope = piece.polynomialDerivative();
    double t = x - knots[i];
    return new double[] {piece.value(t), slope.value(t), slope.polynomialDerivative().value(t)};
  }

  @Override
  public MovingPose at(double share) {
    double[][] bends = new double[3][angles.length];
    for (int k = 0; k < angles.length; k++) {
      double[] now = at(angles[k], share);
      for (int d = 0; d < 3; d++) {
        bends[d][k] = now[d];
      }
    }
    double[][] way = new double[3][3];
    for (int k = 0; k < 3; k++) {
      double[] now = at(place[k], share);
      for (int d = 0; d < 3; d++) {
        way[d][k] = now[d];
      }
    }
    double[][] q = new double[3][4];
    for (int k = 0; k < 4; k++) {
      double[] now = at(turn[k], share);
      for (int d = 0; d < 3; d++) {
        q[d][k] = now[d];
      }
    }
    Quaternion still = quaternion(q[0]);
    double square = still.getNorm() * still.getNorm();
    Vector3D turning = twice(q[1], still, square);
    double growing = 2 * Quaternion.dotProduct(quaternion(q[1]), still) / square;
    Vector3D turningUp = twice(q[2], still, square).subtract(turning.scalarMultiply(growing));
    Rotation r = new Rotation(q[0][0], -q[0][1], -q[0][2], -q[0][3], true);
    Frame frame =
        new Frame(
            r.applyTo(Vector3D.PLUS_I), r.applyTo(Vector3D.PLUS_J), r.applyTo(Vector3D.PLUS_K));
    Pose pose = Pose.of(like.tree(), bends[0], new Vector3D(way[0]), frame);
    return MovingPose.of(
        pose,
        bends[1],
        bends[2],
        new MovingPose.Root(new Vector3D(way[1]), new Vector3D(way[2]), turning, turningUp));
  }

  private static Quaternion quaternion(double[] q) {
    return new Quaternion(q[0], q[1], q[2], q[3]);
  }

  private static Vector3D twice(double[] slope, Quaternion q, double square) {
    double[] product = Quaternion.multiply(quaternion(slope), q.getConjugate()).getVectorPart();
    return new Vector3D(2 / square, new Vector3D(product));
  }
}
