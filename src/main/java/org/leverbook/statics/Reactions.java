package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.leverbook.load.Force;
import org.leverbook.support.Contact;

/**
 * How hard each contact of a level floor pushes.
 *
 * <p>Equilibrium fixes three sums of the pushes N (their total, and their moments about the two
 * level axes); where more than three points touch, the pushes with the least sum of squares are
 * taken: minimise sum N²/2 with A N = b, N ≥ 0. The multipliers v (three of them) give N = max(0,
 * Aᵀv), and A max(0, Aᵀv) = b is solved by Newton's method on the concave dual with a line search;
 * it ends after finitely many steps because the dual is piecewise quadratic.
 */
final class Reactions {

  private static final int MOST_STEPS = 100;

  /** Residual at which the pushes count as in equilibrium, as a share of the weight carried. */
  private static final double ROUNDING = 1e-13;

  private Reactions() {}

  /**
   * The pushes of a level floor.
   *
   * @param source the floor's name
   * @param contacts its points, all at one height with upward normals
   * @param force sum of all known forces on the body, newtons
   * @param moment sum of their moments about the world's origin, newton metres
   * @return one force for each contact that pushes
   */
  static List<Force> levelFloor(
      String source, List<Contact> contacts, Vector3D force, Vector3D moment) {
    double weight = -force.getY();
    // In units of the weight: sum N = 1, sum N x = centre of pressure x, sum N z = centre of
    // pressure z.
    double[] target = {1, moment.getZ() / -weight, moment.getX() / weight};
    double[] pushes = leastSquares(contacts, target);
    List<Force> forces = new ArrayList<>();
    for (int i = 0; i < pushes.length; i++) {
      Contact contact = contacts.get(i);
      if (pushes[i] > 0) {
        forces.add(
            Force.ofSupport(
                source,
                contact.segment(),
                contact.point(),
                contact.normal().scalarMultiply(pushes[i] * weight)));
      }
    }
    return forces;
  }

  private static double[] leastSquares(List<Contact> contacts, double[] target) {
    double[][] rows = new double[contacts.size()][];
    for (int i = 0; i < rows.length; i++) {
      Vector3D point = contacts.get(i).point();
      rows[i] = new double[] {1, point.getX(), point.getZ()};
    }
    double[] multipliers = new double[3];
    multipliers[0] = 1.0 / rows.length;
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] pushes = pushes(rows, multipliers);
      double[] lacking = lacking(rows, pushes, target);
      if (new ArrayRealVector(lacking, false).getLInfNorm() < ROUNDING) {
        return pushes;
      }
      double[] direction = newtonStep(rows, pushes, lacking);
      multipliers = lineSearch(rows, target, multipliers, direction);
    }
    return pushes(rows, multipliers);
  }

  private static double[] pushes(double[][] rows, double[] multipliers) {
    double[] pushes = new double[rows.length];
    for (int i = 0; i < rows.length; i++) {
      pushes[i] = Math.max(0, dot(rows[i], multipliers));
    }
    return pushes;
  }

  private static double[] lacking(double[][] rows, double[] pushes, double[] target) {
    double[] lacking = target.clone();
    for (int i = 0; i < rows.length; i++) {
      for (int k = 0; k < 3; k++) {
        lacking[k] -= rows[i][k] * pushes[i];
      }
    }
    return lacking;
  }

  private static double[] newtonStep(double[][] rows, double[] pushes, double[] lacking) {
    RealMatrix curvature = new Array2DRowRealMatrix(3, 3);
    for (int i = 0; i < rows.length; i++) {
      // Idle points count a little, so that the matrix stays invertible when fewer than three push.
      double share = pushes[i] > 0 ? 1 : 1e-9;
      for (int r = 0; r < 3; r++) {
        for (int c = 0; c < 3; c++) {
          // In this order the two mirror entries round alike: the matrix must be exactly symmetric.
          curvature.addToEntry(r, c, rows[i][r] * rows[i][c] * share);
        }
      }
    }
    return new CholeskyDecomposition(curvature, 1e-12, 1e-18)
        .getSolver()
        .solve(new ArrayRealVector(lacking, false))
        .toArray();
  }

  /**
   * The step along which the dual's slope first falls to a tenth: exact enough, and never uphill
   * past the top.
   */
  private static double[] lineSearch(
      double[][] rows, double[] target, double[] from, double[] direction) {
    double slope = dot(direction, lacking(rows, pushes(rows, from), target));
    double length = 1;
    for (int halving = 0; halving < 60; halving++) {
      double[] to = new double[3];
      for (int k = 0; k < 3; k++) {
        to[k] = from[k] + length * direction[k];
      }
      if (dot(direction, lacking(rows, pushes(rows, to), target)) >= -0.9 * slope) {
        return to;
      }
      length /= 2;
    }
    return from;
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
