package org.leverbook.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.FlatTree;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Kinematics;

/**
 * Where features are for given coordinates, and how they move with each: v and dv/dx, one column
 * for each coordinate that is free and carries the feature.
 *
 * <p>A point p moves with an angle about the axis a through c by a × (p - c) for each radian, a
 * direction by a × d; the body's centre of mass by a × (what is beyond the joint) over the whole
 * mass. Where one coordinate drives several angles of a chain, the sums of a and of a × c go along
 * the chain. Nothing is allocated after {@link #ready}. Not for use by two threads at once.
 */
final class Scene {

  private static final byte POINT = 0;
  private static final byte DIRECTION = 1;
  private static final byte WAY = 2;
  private static final byte MASS = 3;

  final Coordinates coordinates;
  final Chains chains;
  final Kinematics kinematics;
  final FlatTree flat;

  /** The column of a coordinate, or -1 where it is held. */
  final int[] column;

  private final List<Feature> features = new ArrayList<>();
  private final Map<Feature, Integer> index = new LinkedHashMap<>();
  private final Map<Feature, Integer> same = new IdentityHashMap<>();
  private final double[] angles;
  final double[] place = new double[3];
  private final double[] rows = new double[9];
  private final double[] attitude;
  final double[] rootAxes = new double[9];

  /** For each segment its mass and first moment with all beyond it. */
  final double[] beyond;

  /** For each angle the sum of its coordinate's axes along the chain, with their shares. */
  final double[] turning;

  private final double[] moving;
  private final int[] moves;
  final int[] turns;
  private byte[] kinds;
  int[] segments;
  private double[] locals;
  private int[] froms;
  private int[] tos;
  private int[][] fromColumns;
  private int[][] toColumns;
  private int[] massColumns;

  /** Three a feature. */
  double[] values;

  /** For each feature the coordinates' columns that move it. */
  int[][] columns;

  /** For each feature how it moves: along x with each of its columns, then y, then z. */
  double[][] slopes;

  Scene(Coordinates coordinates, Frame attitude, int[] column) {
    this.coordinates = coordinates;
    this.column = column;
    chains = coordinates.chains;
    kinematics = new Kinematics(coordinates.tree());
    flat = coordinates.tree().flat();
    angles = new double[coordinates.tree().angles()];
    beyond = new double[4 * coordinates.tree().size()];
    turning = new double[3 * angles.length];
    moving = new double[3 * angles.length];
    moves = IntStream.range(0, 3).filter(r -> column[r] >= 0).toArray();
    turns = IntStream.range(0, 3).filter(r -> column[3 + r] >= 0).toArray();
    this.attitude = rows(attitude);
  }

  private static double[] rows(Frame frame) {
    return new double[] {
      frame.x().getX(), frame.y().getX(), frame.z().getX(),
      frame.x().getY(), frame.y().getY(), frame.z().getY(),
      frame.x().getZ(), frame.y().getZ(), frame.z().getZ()
    };
  }

  /** Takes a feature in; the same one only once. */
  int take(Feature feature) {
    Integer known = same.get(feature);
    if (known == null) {
      known = index.get(feature);
      if (known == null) {
        if (feature instanceof Feature.Way way) {
          take(way.from());
          take(way.to());
        }
        known = features.size();
        features.add(feature);
        index.put(feature, known);
      }
      same.put(feature, known);
    }
    return known;
  }

  /** To be called once, after the last feature was taken in. */
  void ready() {
    int size = features.size();
    values = new double[3 * size];
    kinds = new byte[size];
    segments = new int[size];
    locals = new double[3 * size];
    froms = new int[size];
    tos = new int[size];
    fromColumns = new int[size][];
    toColumns = new int[size][];
    columns = new int[size][];
    slopes = new double[size][];
    for (int i = 0; i < size; i++) {
      Feature feature = features.get(i);
      if (feature instanceof Feature.Point point) {
        goesWith(i, POINT, point.segment(), point.local());
      } else if (feature instanceof Feature.Direction direction) {
        goesWith(i, DIRECTION, direction.segment(), direction.local());
      } else if (feature instanceof Feature.Way way) {
        kinds[i] = WAY;
        froms[i] = take(way.from());
        tos[i] = take(way.to());
        columns[i] =
            IntStream.concat(Arrays.stream(columns[froms[i]]), Arrays.stream(columns[tos[i]]))
                .sorted()
                .distinct()
                .toArray();
        fromColumns[i] = FlatRow.within(columns[i], columns[froms[i]]);
        toColumns[i] = FlatRow.within(columns[i], columns[tos[i]]);
      } else {
        kinds[i] = MASS;
        columns[i] =
            IntStream.concat(
                    IntStream.range(0, Coordinates.ROOT),
                    Arrays.stream(chains.driven).map(a -> coordinates.driver[a]))
                .map(c -> column[c])
                .filter(c -> c >= 0)
                .sorted()
                .distinct()
                .toArray();
        massColumns = new int[column.length];
        for (int c = 0; c < column.length; c++) {
          massColumns[c] = Math.max(-1, Arrays.binarySearch(columns[i], column[c]));
        }
      }
      slopes[i] = new double[3 * columns[i].length];
    }
  }

  private void goesWith(int i, byte kind, int segment, Vector3D local) {
    kinds[i] = kind;
    segments[i] = segment;
    locals[3 * i] = local.getX();
    locals[3 * i + 1] = local.getY();
    locals[3 * i + 2] = local.getZ();
    IntStream root =
        IntStream.concat(
            kind == POINT ? Arrays.stream(moves) : IntStream.empty(),
            Arrays.stream(turns).map(r -> 3 + r));
    columns[i] =
        IntStream.concat(root, Arrays.stream(chains.ends[segment]).map(a -> coordinates.driver[a]))
            .map(c -> column[c])
            .filter(c -> c >= 0)
            .toArray();
  }

  /** Places the body and all features. */
  void place(double[] x) {
    coordinates.angles(x, angles);
    System.arraycopy(x, 0, place, 0, 3);
    turnRoot(x);
    kinematics.place(angles, place, rows);
    for (int i = 0; i < kinds.length; i++) {
      value(i);
    }
  }

  /** The attitude turned about its own -z, x and y in turn; notes the axes in the world. */
  private void turnRoot(double[] x) {
    System.arraycopy(attitude, 0, rows, 0, 9);
    noteAxis(0, 2, -1);
    turn(0, 1, -x[3]);
    noteAxis(1, 0, 1);
    turn(1, 2, x[4]);
    noteAxis(2, 1, 1);
    turn(2, 0, x[5]);
  }

  private void noteAxis(int which, int from, int sign) {
    for (int r = 0; r < 3; r++) {
      rootAxes[3 * which + r] = sign * rows[3 * r + from];
    }
  }

  /** Turns column a towards column b. */
  private void turn(int a, int b, double angle) {
    if (angle == 0) {
      return;
    }
    double s = Math.sin(angle);
    double c = Math.cos(angle);
    for (int r = 0; r < 9; r += 3) {
      double old = rows[r + a];
      rows[r + a] = c * old + s * rows[r + b];
      rows[r + b] = c * rows[r + b] - s * old;
    }
  }

  private void value(int i) {
    int at = 3 * i;
    switch (kinds[i]) {
      case POINT -> {
        for (int a = 0; a < 3; a++) {
          values[at + a] =
              kinematics.coordinate(segments[i], a, locals[at], locals[at + 1], locals[at + 2]);
        }
      }
      case DIRECTION -> {
        for (int a = 0; a < 3; a++) {
          values[at + a] =
              kinematics.direction(segments[i], a, locals[at], locals[at + 1], locals[at + 2]);
        }
      }
      case WAY -> {
        for (int a = 0; a < 3; a++) {
          values[at + a] = values[3 * tos[i] + a] - values[3 * froms[i] + a];
        }
      }
      default -> centreOfMass(at);
    }
  }

  /** Gathers mass and first moment beyond every joint. */
  private void centreOfMass(int at) {
    double[] masses = flat.masses();
    double[] local = flat.centresOfMass();
    for (int s = 0; s < masses.length; s++) {
      beyond[4 * s] = masses[s];
      for (int a = 0; a < 3; a++) {
        beyond[4 * s + 1 + a] =
            masses[s] == 0
                ? 0
                : masses[s]
                    * kinematics.coordinate(s, a, local[3 * s], local[3 * s + 1], local[3 * s + 2]);
      }
    }
    int[] parents = flat.parents();
    for (int s = masses.length - 1; s > 0; s--) {
      for (int a = 0; a < 4; a++) {
        beyond[4 * parents[s] + a] += beyond[4 * s + a];
      }
    }
    for (int a = 0; a < 3; a++) {
      values[at + a] = beyond[1 + a] / beyond[0];
    }
  }

  /** How all features move with the free coordinates, at the place last given. */
  void slope() {
    alongChains();
    for (int i = 0; i < kinds.length; i++) {
      switch (kinds[i]) {
        case WAY -> difference(i);
        case MASS -> massSlope(i);
        default -> chainSlope(i, kinds[i] == POINT);
      }
    }
  }

  private void alongChains() {
    for (int a : chains.driven) {
      int at = 3 * a;
      int s = chains.holder[a];
      double gain = coordinates.gain[a];
      double x = gain * kinematics.axis(a, 0);
      double y = gain * kinematics.axis(a, 1);
      double z = gain * kinematics.axis(a, 2);
      double cx = kinematics.origin(s, 0);
      double cy = kinematics.origin(s, 1);
      double cz = kinematics.origin(s, 2);
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
    add(out, columns[i].length, slopes[tos[i]], toColumns[i], 1);
    add(out, columns[i].length, slopes[froms[i]], fromColumns[i], -1);
  }

  private static void add(double[] out, int width, double[] from, int[] to, int sign) {
    for (int k = 0; k < to.length; k++) {
      for (int a = 0; a < 3; a++) {
        out[a * width + to[k]] += sign * from[a * to.length + k];
      }
    }
  }

  private void chainSlope(int i, boolean point) {
    double x = values[3 * i];
    double y = values[3 * i + 1];
    double z = values[3 * i + 2];
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
            point ? x - place[0] : x,
            point ? y - place[1] : y,
            point ? z - place[2] : z);
    for (int a : chains.ends[segments[i]]) {
      if (column[coordinates.driver[a]] >= 0) {
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
    double all = beyond[0];
    double[] out = slopes[i];
    int width = columns[i].length;
    Arrays.fill(out, 0);
    int first = moved(out, width);
    turnedWithRoot(
        out,
        width,
        first,
        values[3 * i] - place[0],
        values[3 * i + 1] - place[1],
        values[3 * i + 2] - place[2]);
    for (int a : chains.driven) {
      int k = massColumns[coordinates.driver[a]];
      if (k >= 0) {
        int s = chains.holder[a];
        double mass = beyond[4 * s];
        double gain = coordinates.gain[a] / all;
        double ax = gain * kinematics.axis(a, 0);
        double ay = gain * kinematics.axis(a, 1);
        double az = gain * kinematics.axis(a, 2);
        double dx = beyond[4 * s + 1] - mass * kinematics.origin(s, 0);
        double dy = beyond[4 * s + 2] - mass * kinematics.origin(s, 1);
        double dz = beyond[4 * s + 3] - mass * kinematics.origin(s, 2);
        out[k] += ay * dz - az * dy;
        out[width + k] += az * dx - ax * dz;
        out[2 * width + k] += ax * dy - ay * dx;
      }
    }
  }

  private int turnedWithRoot(double[] out, int width, int first, double x, double y, double z) {
    int k = first;
    for (int r : turns) {
      double ax = rootAxes[3 * r];
      double ay = rootAxes[3 * r + 1];
      double az = rootAxes[3 * r + 2];
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

  /** How many features there are. */
  int size() {
    return features.size();
  }

  boolean isWay(int feature) {
    return kinds[feature] == WAY;
  }

  boolean isPoint(int feature) {
    return kinds[feature] == POINT;
  }

  boolean isDirection(int feature) {
    return kinds[feature] == DIRECTION;
  }

  /** Where a way begins. */
  int from(int way) {
    return froms[way];
  }

  /** Where a way ends. */
  int to(int way) {
    return tos[way];
  }

  /** The root's frame at the place last given. */
  Frame rootFrame() {
    return new Frame(
        new Vector3D(rows[0], rows[3], rows[6]),
        new Vector3D(rows[1], rows[4], rows[7]),
        new Vector3D(rows[2], rows[5], rows[8]));
  }

  /** The joint angles at the place last given; copied. */
  double[] jointAngles() {
    return angles.clone();
  }
}
