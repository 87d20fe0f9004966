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
 * Where features are for given coordinates. Nothing is allocated after {@link #ready}. Not for use
 * by two threads at once.
 */
final class Scene {

  static final byte POINT = 0;
  static final byte DIRECTION = 1;
  static final byte WAY = 2;
  static final byte MASS = 3;

  final Coordinates coordinates;
  final Chains chains;
  final FlatTree flat;

  /** Where the right half stands for both; otherwise null. */
  final Halves halves;

  /** The masses of the segments; of those in the right half for both sides. */
  final double[] masses;

  /** The segments that are placed, those that carry others first. */
  int[] placed;

  /** The angles that free coordinates drive and something hangs on, those that carry first. */
  int[] driven;

  Kinematics kinematics;

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

  /** What each feature is. */
  byte[] kinds;

  /** The segment of each point and direction. */
  int[] segments;

  private double[] locals;

  /** The features where ways begin and end. */
  int[] froms;

  int[] tos;

  /** Three a feature. */
  double[] values;

  Scene(Coordinates coordinates, Frame attitude, int[] column, Halves halves) {
    this.coordinates = coordinates;
    this.halves = halves;
    this.column = column;
    chains = coordinates.chains;
    flat = coordinates.tree().flat();
    masses = flat.masses().clone();
    for (int i = 0; i < masses.length && halves != null; i++) {
      masses[i] *= halves.counts(i);
    }
    angles = new double[coordinates.tree().angles()];
    beyond = new double[4 * coordinates.tree().size()];
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

  /**
   * To be called once, after the last feature was taken in.
   *
   * @param held the values of what is held, by coordinate
   */
  void ready(double[] held) {
    int size = features.size();
    values = new double[3 * size];
    kinds = new byte[size];
    segments = new int[size];
    locals = new double[3 * size];
    froms = new int[size];
    tos = new int[size];
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
      } else {
        kinds[i] = MASS;
      }
    }
    needed(held);
  }

  /** Only what a feature hangs on is placed, and only what may turn is turned. */
  private void needed(double[] held) {
    boolean[] asked = new boolean[masses.length];
    for (int i = 0; i < kinds.length; i++) {
      if (kinds[i] == MASS) {
        for (int s = 0; s < masses.length; s++) {
          asked[s] |= masses[s] > 0;
        }
      } else if (kinds[i] != WAY) {
        asked[segments[i]] = true;
      }
    }
    asked[0] = true;
    for (int s = asked.length - 1; s > 0; s--) {
      asked[flat.parents()[s]] |= asked[s];
    }
    int[] drivers = coordinates.driver;
    boolean[] turns = new boolean[drivers.length];
    for (int a = 0; a < drivers.length; a++) {
      turns[a] = drivers[a] >= 0 && (column[drivers[a]] >= 0 || held[drivers[a]] != 0);
    }
    kinematics = new Kinematics(coordinates.tree(), asked, turns);
    placed = IntStream.range(0, asked.length).filter(s -> asked[s]).toArray();
    driven =
        Arrays.stream(chains.driven)
            .filter(a -> asked[chains.holder[a]] && column[drivers[a]] >= 0)
            .toArray();
  }

  private void goesWith(int i, byte kind, int segment, Vector3D local) {
    kinds[i] = kind;
    segments[i] = segment;
    locals[3 * i] = local.getX();
    locals[3 * i + 1] = local.getY();
    locals[3 * i + 2] = local.getZ();
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
    double[] local = flat.centresOfMass();
    for (int s : placed) {
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
    for (int i = placed.length - 1; i > 0; i--) {
      int s = placed[i];
      for (int a = 0; a < 4; a++) {
        beyond[4 * parents[s] + a] += beyond[4 * s + a];
      }
    }
    for (int a = 0; a < 3; a++) {
      values[at + a] = beyond[1 + a] / beyond[0];
    }
    if (halves != null) {
      values[at + 2] = 0;
    }
  }

  /** How many features there are. */
  int size() {
    return features.size();
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
