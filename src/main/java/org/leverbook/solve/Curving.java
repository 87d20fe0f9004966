package org.leverbook.solve;

import org.leverbook.pose.Kinematics;

/** How the slopes of a scene's features turn with the coordinates: second derivatives. */
final class Curving {

  private final Scene scene;
  private final Coordinates coordinates;
  private final Kinematics kinematics;
  private final double[] matrix;
  private final int n;

  /**
   * Adds to the lower half of a matrix.
   *
   * @param scene whose features
   * @param matrix n by n, row by row
   * @param n its width
   */
  Curving(Scene scene, double[] matrix, int n) {
    this.scene = scene;
    this.coordinates = scene.coordinates;
    this.kinematics = scene.kinematics;
    this.matrix = matrix;
    this.n = n;
  }

  /**
   * Adds how the slopes themselves turn: the sum over features of force · d²v/dx², into the lower
   * half of a matrix. Where one angle carries another, the second derivative of a point p is a × (b
   * × (p - c)), a the axis of the carrying one.
   *
   * @param forces three a feature; spent on the parts of ways
   */
  void add(double[] forces) {
    for (int i = scene.features.size() - 1; i >= 0; i--) {
      double fx = forces[3 * i];
      double fy = forces[3 * i + 1];
      double fz = forces[3 * i + 2];
      if (fx == 0 && fy == 0 && fz == 0) {
        continue;
      }
      Feature feature = scene.features.get(i);
      if (feature instanceof Feature.Way way) {
        push(forces, scene.index.get(way.to()), fx, fy, fz);
        push(forces, scene.index.get(way.from()), -fx, -fy, -fz);
      } else if (feature instanceof Feature.CentreOfMass) {
        double all = scene.beyond[0];
        for (int a = 0; a < coordinates.driver.length; a++) {
          if (coordinates.driver[a] >= 0) {
            int s = scene.holder[a];
            double mass = scene.beyond[4 * s];
            double dx = scene.beyond[4 * s + 1] - mass * kinematics.origin(s, 0);
            double dy = scene.beyond[4 * s + 2] - mass * kinematics.origin(s, 1);
            double dz = scene.beyond[4 * s + 3] - mass * kinematics.origin(s, 2);
            carried(scene.carriers[a], 0, a, dx / all, dy / all, dz / all, fx, fy, fz);
          }
        }
        rootPairs(i, true, fx, fy, fz);
      } else {
        boolean point = feature instanceof Feature.Point;
        int[] chain = scene.chains[i];
        for (int c = 0; c < chain.length; c++) {
          int a = chain[c];
          int s = scene.holder[a];
          double dx = scene.values[3 * i] - (point ? kinematics.origin(s, 0) : 0);
          double dy = scene.values[3 * i + 1] - (point ? kinematics.origin(s, 1) : 0);
          double dz = scene.values[3 * i + 2] - (point ? kinematics.origin(s, 2) : 0);
          carried(chain, c, a, dx, dy, dz, fx, fy, fz);
        }
        rootPairs(i, point, fx, fy, fz);
      }
    }
  }

  private static void push(double[] forces, int feature, double x, double y, double z) {
    forces[3 * feature] += x;
    forces[3 * feature + 1] += y;
    forces[3 * feature + 2] += z;
  }

  /** One angle with all that carry it, from its own place in a chain on, and with the root. */
  private void carried(
      int[] chain,
      int from,
      int angle,
      double dx,
      double dy,
      double dz,
      double fx,
      double fy,
      double fz) {
    double g = coordinates.gain[angle];
    int j = coordinates.driver[angle];
    double bx = g * kinematics.axis(angle, 0);
    double by = g * kinematics.axis(angle, 1);
    double bz = g * kinematics.axis(angle, 2);
    double vx = by * dz - bz * dy;
    double vy = bz * dx - bx * dz;
    double vz = bx * dy - by * dx;
    // force · (a × v) = a · (v × force)
    double wx = vy * fz - vz * fy;
    double wy = vz * fx - vx * fz;
    double wz = vx * fy - vy * fx;
    for (int c = from; c < chain.length; c++) {
      int a = chain[c];
      double both =
          coordinates.gain[a]
              * (kinematics.axis(a, 0) * wx
                  + kinematics.axis(a, 1) * wy
                  + kinematics.axis(a, 2) * wz);
      addPair(coordinates.driver[a], j, a == angle ? both : 2 * both);
    }
    for (int r = 0; r < 3; r++) {
      double both =
          scene.rootAxes[3 * r] * wx
              + scene.rootAxes[3 * r + 1] * wy
              + scene.rootAxes[3 * r + 2] * wz;
      addPair(3 + r, j, 2 * both);
    }
  }

  private void rootPairs(int i, boolean point, double fx, double fy, double fz) {
    double dx = scene.values[3 * i] - (point ? scene.place[0] : 0);
    double dy = scene.values[3 * i + 1] - (point ? scene.place[1] : 0);
    double dz = scene.values[3 * i + 2] - (point ? scene.place[2] : 0);
    for (int b = 0; b < 3; b++) {
      double bx = scene.rootAxes[3 * b];
      double by = scene.rootAxes[3 * b + 1];
      double bz = scene.rootAxes[3 * b + 2];
      double vx = by * dz - bz * dy;
      double vy = bz * dx - bx * dz;
      double vz = bx * dy - by * dx;
      double wx = vy * fz - vz * fy;
      double wy = vz * fx - vx * fz;
      double wz = vx * fy - vy * fx;
      for (int a = 0; a <= b; a++) {
        double both =
            scene.rootAxes[3 * a] * wx
                + scene.rootAxes[3 * a + 1] * wy
                + scene.rootAxes[3 * a + 2] * wz;
        addPair(3 + a, 3 + b, a == b ? both : 2 * both);
      }
    }
  }

  /** A quadratic form's term x_i x_j with factor whole/2 into the lower half of its matrix. */
  private void addPair(int i, int j, double whole) {
    if (i == j) {
      matrix[i * n + i] += whole;
    } else {
      matrix[Math.max(i, j) * n + Math.min(i, j)] += whole / 2;
    }
  }
}
