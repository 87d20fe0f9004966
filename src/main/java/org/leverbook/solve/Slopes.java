package org.leverbook.solve;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * How the features of a scene move with each coordinate that is free and carries them: dv/dx.
 *
 * <p>A point p moves with an angle about the axis a through c by a × (p - c) for each radian, a
 * direction by a × d; the body's centre of mass by a × (what is beyond the joint) over the whole
 * mass. Where one coordinate drives several angles of a chain, the sums of a and of a × c go along
 * the chain. Nothing is allocated after the constructor. Not for use by two threads at once.
 */
final class Slopes {

  private final Scene scene;
  private final Chains chains;

  /** For each angle the sum of its coordinate's axes along the chain, with their shares. */
  final double[] turning;

  private final double[] moving;
  private final int[] moves;

  /** The ways that the root turns freely: 0 to 2. */
  final int[] turns;

  private final int[][] fromColumns;
  private final int[][] toColumns;
  private int[] massColumns;

  /** For each feature the coordinates' columns that move it, in order. */
  final int[][] columns;

  /** For each feature how it moves: along x with each of its columns, then y, then z. */
  final double[][] slopes;

  /**
   * For a scene.
   *
   * @param scene ready
   */
  Slopes(Scene scene) {
    this.scene = scene;
    chains = scene.coordinates.chains;
    turning = new double[3 * scene.coordinates.driver.length];
    moving = new double[turning.length];
    moves = IntStream.range(0, 3).filter(r -> scene.column[r] >= 0).toArray();
    turns = IntStream.range(0, 3).filter(r -> scene.column[3 + r] >= 0).toArray();
    int size = scene.size();
    fromColumns = new int[size][];
    toColumns = new int[size][];
    columns = new int[size][];
    slopes = new double[size][];
    boolean[] moved = new boolean[scene.column.length];
    for (int i = 0; i < size; i++) {
      Arrays.fill(moved, false);
      if (scene.kinds[i] == Scene.WAY) {
        Columns.mark(moved, columns[scene.froms[i]]);
        Columns.mark(moved, columns[scene.tos[i]]);
      } else {
        carry(moved, i);
      }
      columns[i] = Columns.marked(moved);
      slopes[i] = new double[3 * columns[i].length];
      if (scene.kinds[i] == Scene.WAY) {
        fromColumns[i] = Columns.within(columns[i], columns[scene.froms[i]]);
        toColumns[i] = Columns.within(columns[i], columns[scene.tos[i]]);
      } else if (scene.kinds[i] == Scene.MASS) {
        massColumns = Columns.within(columns[i], scene.column);
      }
    }
  }

  /** Marks what carries a feature: of the root, and of its chain or of all chains. */
  private void carry(boolean[] moved, int feature) {
    byte kind = scene.kinds[feature];
    for (int r = kind == Scene.DIRECTION ? 3 : 0; r < Coordinates.ROOT; r++) {
      Columns.mark(moved, scene.column[r]);
    }
    for (int a : kind == Scene.MASS ? scene.driven : chains.ends[scene.segments[feature]]) {
      Columns.mark(moved, scene.column[scene.coordinates.driver[a]]);
    }
  }

  /** Finds how all features move, at the place the scene was last given. */
  void find() {
    alongChains();
    for (int i = 0; i < scene.size(); i++) {
      switch (scene.kinds[i]) {
        case Scene.WAY -> difference(i);
        case Scene.MASS -> massSlope(i);
        default -> chainSlope(i, scene.kinds[i] == Scene.POINT);
      }
    }
  }

  private void alongChains() {
    for (int a : scene.driven) {
      int at = 3 * a;
      int s = chains.holder[a];
      double gain = scene.coordinates.gain[a];
      double x = gain * scene.kinematics.axis(a, 0);
      double y = gain * scene.kinematics.axis(a, 1);
      double z = gain * scene.kinematics.axis(a, 2);
      double cx = scene.kinematics.origin(s, 0);
      double cy = scene.kinematics.origin(s, 1);
      double cz = scene.kinematics.origin(s, 2);
      turning[at] = x;
      turning[at + 1] = y;
      turning[at + 2] = z;
      moving[at] = y * cz - z * cy;
      moving[at + 1] = z * cx - x * cz;
      moving[at + 2] = x * cy - y * cx;
      if (chains.before[a] >= 0) {
        int from = 3 * chains.before[a];
        for (int k = 0; k < 3; k++) {
          turning[at + k] += turning[from + k];
          moving[at + k] += moving[from + k];
        }
      }
    }
  }

  private void difference(int i) {
    double[] out = slopes[i];
    Arrays.fill(out, 0);
    add(out, columns[i].length, slopes[scene.tos[i]], toColumns[i], 1);
    add(out, columns[i].length, slopes[scene.froms[i]], fromColumns[i], -1);
  }

  private static void add(double[] out, int width, double[] from, int[] to, int sign) {
    for (int k = 0; k < to.length; k++) {
      for (int a = 0; a < 3; a++) {
        out[a * width + to[k]] += sign * from[a * to.length + k];
      }
    }
  }

  private void chainSlope(int i, boolean point) {
    double x = scene.values[3 * i];
    double y = scene.values[3 * i + 1];
    double z = scene.values[3 * i + 2];
    double[] out = slopes[i];
    int width = columns[i].length;
    int k = 0;
    if (point) {
      k = moved(out, width);
    }
    k =
        turnedWithRoot(
            out,
            width,
            k,
            point ? x - scene.place[0] : x,
            point ? y - scene.place[1] : y,
            point ? z - scene.place[2] : z);
    for (int a : chains.ends[scene.segments[i]]) {
      if (scene.column[scene.coordinates.driver[a]] >= 0) {
        int at = 3 * a;
        double ax = turning[at];
        double ay = turning[at + 1];
        double az = turning[at + 2];
        double dx = ay * z - az * y;
        double dy = az * x - ax * z;
        double dz = ax * y - ay * x;
        out[k] = point ? dx - moving[at] : dx;
        out[width + k] = point ? dy - moving[at + 1] : dy;
        out[2 * width + k] = point ? dz - moving[at + 2] : dz;
        k++;
      }
    }
  }

  private void massSlope(int i) {
    double all = scene.beyond[0];
    double[] out = slopes[i];
    int width = columns[i].length;
    Arrays.fill(out, 0);
    int first = moved(out, width);
    turnedWithRoot(
        out,
        width,
        first,
        scene.values[3 * i] - scene.place[0],
        scene.values[3 * i + 1] - scene.place[1],
        scene.values[3 * i + 2] - scene.place[2]);
    for (int a : scene.driven) {
      int k = massColumns[scene.coordinates.driver[a]];
      if (k >= 0) {
        int s = chains.holder[a];
        double mass = scene.beyond[4 * s];
        double gain = scene.coordinates.gain[a] / all;
        double ax = gain * scene.kinematics.axis(a, 0);
        double ay = gain * scene.kinematics.axis(a, 1);
        double az = gain * scene.kinematics.axis(a, 2);
        double dx = scene.beyond[4 * s + 1] - mass * scene.kinematics.origin(s, 0);
        double dy = scene.beyond[4 * s + 2] - mass * scene.kinematics.origin(s, 1);
        double dz = scene.beyond[4 * s + 3] - mass * scene.kinematics.origin(s, 2);
        out[k] += ay * dz - az * dy;
        out[width + k] += az * dx - ax * dz;
        out[2 * width + k] += ax * dy - ay * dx;
      }
    }
    if (scene.halves != null) {
      // The other side goes the other way.
      Arrays.fill(out, 2 * width, 3 * width, 0);
    }
  }

  private int turnedWithRoot(double[] out, int width, int first, double x, double y, double z) {
    int k = first;
    for (int r : turns) {
      double ax = scene.rootAxes[3 * r];
      double ay = scene.rootAxes[3 * r + 1];
      double az = scene.rootAxes[3 * r + 2];
      out[k] = ay * z - az * y;
      out[width + k] = az * x - ax * z;
      out[2 * width + k] = ax * y - ay * x;
      k++;
    }
    return k;
  }

  private int moved(double[] out, int width) {
    for (int k = 0; k < moves.length; k++) {
      for (int a = 0; a < 3; a++) {
        out[a * width + k] = a == moves[k] ? 1 : 0;
      }
    }
    return moves.length;
  }
}
