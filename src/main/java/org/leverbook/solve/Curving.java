package org.leverbook.solve;

import java.util.Arrays;
import org.leverbook.pose.Kinematics;

/**
 * How the slopes of a scene's features turn with the coordinates: the sum over features of force ·
 * d²v/dx², added to the lower half of a matrix.
 *
 * <p>Where an angle about a carries one about b through c, the second derivative of a point p is a
 * × (b × (p - c)), so a force f on it gives a · ((b × r) × f) = a · ((b · f) r - (r · f) b) with r
 * = p - c. Summed over all points beyond the joint that is a · (M b - tr(M) b) with M = sum of r
 * fᵀ, and M is gathered from the tips to the root in one pass: Q - c Fᵀ with Q the sum of p fᵀ and
 * F that of the forces. Directions add to Q but not to F: they do not shift with c.
 */
final class Curving {

  private final Scene scene;
  private final Slopes slopes;
  private final Coordinates coordinates;
  private final Kinematics kinematics;
  private final int n;
  private final double[] points;
  private final double[] sums;
  private final double[] m = new double[9];
  private double[] matrix;

  /**
   * For one scene.
   *
   * @param scene whose features
   * @param slopes how they move
   * @param n how many unknowns
   */
  Curving(Scene scene, Slopes slopes, int n) {
    this.scene = scene;
    this.slopes = slopes;
    this.coordinates = scene.coordinates;
    this.kinematics = scene.kinematics;
    this.n = n;
    int size = scene.coordinates.tree().size();
    points = new double[9 * size];
    sums = new double[3 * size];
  }

  /**
   * Adds the second derivatives, each times its force.
   *
   * @param forces three a feature; those of ways are handed on to their ends
   * @param into the lower half of a matrix of the unknowns, row by row
   */
  void add(double[] forces, double[] into) {
    matrix = into;
    int last = scene.placed[scene.placed.length - 1] + 1;
    Arrays.fill(points, 0, 9 * last, 0);
    Arrays.fill(sums, 0, 3 * last, 0);
    for (int i = scene.size() - 1; i >= 0; i--) {
      double fx = forces[3 * i];
      double fy = forces[3 * i + 1];
      double fz = forces[3 * i + 2];
      if (fx != 0 || fy != 0 || fz != 0) {
        take(i, forces, fx, fy, fz);
      }
    }
    gather();
    for (int a : scene.driven) {
      carried(a);
    }
    root();
  }

  private void take(int i, double[] forces, double fx, double fy, double fz) {
    double x = scene.values[3 * i];
    double y = scene.values[3 * i + 1];
    double z = scene.values[3 * i + 2];
    if (scene.kinds[i] == Scene.WAY) {
      push(forces, scene.tos[i], fx, fy, fz);
      push(forces, scene.froms[i], -fx, -fy, -fz);
    } else if (scene.kinds[i] == Scene.POINT) {
      outer(points, scene.segments[i], x, y, z, fx, fy, fz);
      push(sums, scene.segments[i], fx, fy, fz);
    } else if (scene.kinds[i] == Scene.DIRECTION) {
      outer(points, scene.segments[i], x, y, z, fx, fy, fz);
    } else {
      masses(fx, fy, scene.halves == null ? fz : 0);
    }
  }

  /** The centre of mass: each segment's centre carries its share of the force. */
  private void masses(double fx, double fy, double fz) {
    double[] masses = scene.masses;
    double[] local = scene.flat.centresOfMass();
    double all = scene.beyond[0];
    for (int s : scene.placed) {
      if (masses[s] > 0) {
        double share = masses[s] / all;
        double lx = local[3 * s];
        double ly = local[3 * s + 1];
        double lz = local[3 * s + 2];
        outer(
            points,
            s,
            kinematics.coordinate(s, 0, lx, ly, lz),
            kinematics.coordinate(s, 1, lx, ly, lz),
            kinematics.coordinate(s, 2, lx, ly, lz),
            share * fx,
            share * fy,
            share * fz);
        push(sums, s, share * fx, share * fy, share * fz);
      }
    }
  }

  private static void push(double[] into, int index, double x, double y, double z) {
    into[3 * index] += x;
    into[3 * index + 1] += y;
    into[3 * index + 2] += z;
  }

  private static void outer(
      double[] into, int segment, double x, double y, double z, double fx, double fy, double fz) {
    int at = 9 * segment;
    into[at] += x * fx;
    into[at + 1] += x * fy;
    into[at + 2] += x * fz;
    into[at + 3] += y * fx;
    into[at + 4] += y * fy;
    into[at + 5] += y * fz;
    into[at + 6] += z * fx;
    into[at + 7] += z * fy;
    into[at + 8] += z * fz;
  }

  private void gather() {
    int[] parents = scene.flat.parents();
    for (int i = scene.placed.length - 1; i > 0; i--) {
      int s = scene.placed[i];
      int to = parents[s];
      for (int k = 0; k < 9; k++) {
        points[9 * to + k] += points[9 * s + k];
      }
      for (int k = 0; k < 3; k++) {
        sums[3 * to + k] += sums[3 * s + k];
      }
    }
  }

  /**
   * M of a segment about a place: the three entries of Q less those of c Fᵀ, directions among them.
   */
  private boolean about(int segment, double cx, double cy, double cz) {
    double fx = sums[3 * segment];
    double fy = sums[3 * segment + 1];
    double fz = sums[3 * segment + 2];
    int at = 9 * segment;
    m[0] = points[at] - cx * fx;
    m[1] = points[at + 1] - cx * fy;
    m[2] = points[at + 2] - cx * fz;
    m[3] = points[at + 3] - cy * fx;
    m[4] = points[at + 4] - cy * fy;
    m[5] = points[at + 5] - cy * fz;
    m[6] = points[at + 6] - cz * fx;
    m[7] = points[at + 7] - cz * fy;
    m[8] = points[at + 8] - cz * fz;
    return m[0] != 0 || m[1] != 0 || m[2] != 0 || m[3] != 0 || m[4] != 0 || m[5] != 0 || m[6] != 0
        || m[7] != 0 || m[8] != 0;
  }

  /** One angle with itself and all that carry it. */
  private void carried(int angle) {
    int s = coordinates.chains.holder[angle];
    if (!about(s, kinematics.origin(s, 0), kinematics.origin(s, 1), kinematics.origin(s, 2))) {
      return;
    }
    double g = coordinates.gain[angle];
    int j = scene.column[coordinates.driver[angle]];
    double bx = g * kinematics.axis(angle, 0);
    double by = g * kinematics.axis(angle, 1);
    double bz = g * kinematics.axis(angle, 2);
    double trace = m[0] + m[4] + m[8];
    double ux = m[0] * bx + m[1] * by + m[2] * bz - trace * bx;
    double uy = m[3] * bx + m[4] * by + m[5] * bz - trace * by;
    double uz = m[6] * bx + m[7] * by + m[8] * bz - trace * bz;
    double[] turning = slopes.turning;
    int own = 3 * angle;
    // All angles of its own coordinate before it count twice, it itself once.
    matrix[j * n + j] +=
        (2 * turning[own] - bx) * ux
            + (2 * turning[own + 1] - by) * uy
            + (2 * turning[own + 2] - bz) * uz;
    for (int a : coordinates.chains.others[angle]) {
      int i = scene.column[coordinates.driver[a]];
      if (i >= 0) {
        int at = 3 * a;
        matrix[i > j ? i * n + j : j * n + i] +=
            turning[at] * ux + turning[at + 1] * uy + turning[at + 2] * uz;
      }
    }
    double[] axes = scene.rootAxes;
    for (int r : slopes.turns) {
      matrix[j * n + scene.column[3 + r]] +=
          axes[3 * r] * ux + axes[3 * r + 1] * uy + axes[3 * r + 2] * uz;
    }
  }

  private void root() {
    about(0, scene.place[0], scene.place[1], scene.place[2]);
    double trace = m[0] + m[4] + m[8];
    double[] axes = scene.rootAxes;
    for (int b : slopes.turns) {
      double bx = axes[3 * b];
      double by = axes[3 * b + 1];
      double bz = axes[3 * b + 2];
      double ux = m[0] * bx + m[1] * by + m[2] * bz - trace * bx;
      double uy = m[3] * bx + m[4] * by + m[5] * bz - trace * by;
      double uz = m[6] * bx + m[7] * by + m[8] * bz - trace * bz;
      int row = scene.column[3 + b] * n;
      for (int a : slopes.turns) {
        if (a <= b) {
          matrix[row + scene.column[3 + a]] +=
              axes[3 * a] * ux + axes[3 * a + 1] * uy + axes[3 * a + 2] * uz;
        }
      }
    }
  }
}
