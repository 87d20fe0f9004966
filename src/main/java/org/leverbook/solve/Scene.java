package org.leverbook.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.FlatTree;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Kinematics;

/**
 * Where features are for given coordinates, and how they move with each: v and dv/dx.
 *
 * <p>A point p moves with an angle about the axis a through c by a × (p - c) for each radian, a
 * direction by a × d; the body's centre of mass by a × (what is beyond the joint) over the whole
 * mass. Nothing is allocated after the constructor. Not for use by two threads at once.
 */
final class Scene {

  final Coordinates coordinates;
  private final int count;
  final Kinematics kinematics;
  final FlatTree flat;
  final List<Feature> features = new ArrayList<>();
  final Map<Feature, Integer> index = new LinkedHashMap<>();
  int[][] chains;
  final int[][] carriers;
  final int[] holder;
  private final double[] angles;
  final double[] place = new double[3];
  private final double[] rows = new double[9];
  private final double[] attitude;
  final double[] rootAxes = new double[9];
  final double[] beyond;
  double[] values;
  double[] slopes;

  Scene(Coordinates coordinates, Frame attitude) {
    this.coordinates = coordinates;
    this.count = coordinates.count();
    kinematics = new Kinematics(coordinates.tree());
    flat = coordinates.tree().flat();
    angles = new double[coordinates.tree().angles()];
    beyond = new double[4 * coordinates.tree().size()];
    this.attitude = rows(attitude);
    holder = new int[angles.length];
    int[] first = flat.firstAngles();
    for (int i = 0; i + 1 < first.length; i++) {
      for (int a = first[i]; a < first[i + 1]; a++) {
        holder[a] = i;
      }
    }
    carriers = new int[angles.length][];
    for (int a = 0; a < angles.length; a++) {
      int self = a;
      carriers[a] = Arrays.stream(chain(holder[a])).dropWhile(c -> c != self).toArray();
    }
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
    Integer known = index.get(feature);
    if (known != null) {
      return known;
    }
    if (feature instanceof Feature.Way way) {
      take(way.from());
      take(way.to());
    }
    features.add(feature);
    index.put(feature, features.size() - 1);
    return features.size() - 1;
  }

  /** To be called once, after the last feature was taken in. */
  void ready() {
    values = new double[3 * features.size()];
    slopes = new double[3 * features.size() * count];
    chains = new int[features.size()][];
    for (int i = 0; i < chains.length; i++) {
      if (features.get(i) instanceof Feature.Point point) {
        chains[i] = chain(point.segment());
      } else if (features.get(i) instanceof Feature.Direction direction) {
        chains[i] = chain(direction.segment());
      }
    }
  }

  /** The driven angles from a segment back to the root. */
  private int[] chain(int segment) {
    List<Integer> chain = new ArrayList<>();
    for (int i = segment; i > 0; i = flat.parents()[i]) {
      for (int a = flat.firstAngles()[i + 1] - 1; a >= flat.firstAngles()[i]; a--) {
        if (coordinates.driver[a] >= 0) {
          chain.add(a);
        }
      }
    }
    return chain.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Places the body and all features. */
  void place(double[] x) {
    coordinates.angles(x, angles);
    System.arraycopy(x, 0, place, 0, 3);
    turnRoot(x);
    kinematics.place(angles, place, rows);
    for (int i = 0; i < features.size(); i++) {
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

  private void noteAxis(int which, int column, int sign) {
    for (int r = 0; r < 3; r++) {
      rootAxes[3 * which + r] = sign * rows[3 * r + column];
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
    Feature feature = features.get(i);
    if (feature instanceof Feature.Point p) {
      for (int a = 0; a < 3; a++) {
        values[3 * i + a] =
            kinematics.coordinate(
                p.segment(), a, p.local().getX(), p.local().getY(), p.local().getZ());
      }
    } else if (feature instanceof Feature.Direction d) {
      for (int a = 0; a < 3; a++) {
        values[3 * i + a] =
            kinematics.direction(
                d.segment(), a, d.local().getX(), d.local().getY(), d.local().getZ());
      }
    } else if (feature instanceof Feature.Way way) {
      int from = 3 * index.get(way.from());
      int to = 3 * index.get(way.to());
      for (int a = 0; a < 3; a++) {
        values[3 * i + a] = values[to + a] - values[from + a];
      }
    } else {
      centreOfMass(i);
    }
  }

  /** Gathers mass and first moment beyond every joint. */
  private void centreOfMass(int i) {
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
      values[3 * i + a] = beyond[1 + a] / beyond[0];
    }
  }

  /** How all features move with the coordinates, at the place last given. */
  void slope() {
    Arrays.fill(slopes, 0);
    for (int i = 0; i < features.size(); i++) {
      Feature feature = features.get(i);
      if (feature instanceof Feature.Way way) {
        difference(i, index.get(way.from()), index.get(way.to()));
      } else if (feature instanceof Feature.CentreOfMass) {
        massSlope(i);
      } else {
        chainSlope(i, feature instanceof Feature.Point);
      }
    }
  }

  private void difference(int i, int from, int to) {
    int block = 3 * count;
    for (int k = 0; k < block; k++) {
      slopes[i * block + k] = slopes[to * block + k] - slopes[from * block + k];
    }
  }

  private void chainSlope(int i, boolean point) {
    double x = values[3 * i];
    double y = values[3 * i + 1];
    double z = values[3 * i + 2];
    for (int a : chains[i]) {
      int s = holder[a];
      double dx = point ? x - kinematics.origin(s, 0) : x;
      double dy = point ? y - kinematics.origin(s, 1) : y;
      double dz = point ? z - kinematics.origin(s, 2) : z;
      turned(i, coordinates.driver[a], coordinates.gain[a], a, dx, dy, dz);
    }
    for (int r = 0; r < 3; r++) {
      turnedWithRoot(
          i, r, point ? x - place[0] : x, point ? y - place[1] : y, point ? z - place[2] : z);
    }
    if (point) {
      moved(i);
    }
  }

  private void massSlope(int i) {
    double all = beyond[0];
    for (int a = 0; a < angles.length; a++) {
      if (coordinates.driver[a] >= 0) {
        int s = holder[a];
        double mass = beyond[4 * s];
        turned(
            i,
            coordinates.driver[a],
            coordinates.gain[a] / all,
            a,
            beyond[4 * s + 1] - mass * kinematics.origin(s, 0),
            beyond[4 * s + 2] - mass * kinematics.origin(s, 1),
            beyond[4 * s + 3] - mass * kinematics.origin(s, 2));
      }
    }
    for (int r = 0; r < 3; r++) {
      turnedWithRoot(
          i,
          r,
          values[3 * i] - place[0],
          values[3 * i + 1] - place[1],
          values[3 * i + 2] - place[2]);
    }
    moved(i);
  }

  private void turned(
      int i, int coordinate, double gain, int angle, double dx, double dy, double dz) {
    double ax = gain * kinematics.axis(angle, 0);
    double ay = gain * kinematics.axis(angle, 1);
    double az = gain * kinematics.axis(angle, 2);
    int at = 3 * i * count + coordinate;
    slopes[at] += ay * dz - az * dy;
    slopes[at + count] += az * dx - ax * dz;
    slopes[at + 2 * count] += ax * dy - ay * dx;
  }

  private void turnedWithRoot(int i, int r, double dx, double dy, double dz) {
    double ax = rootAxes[3 * r];
    double ay = rootAxes[3 * r + 1];
    double az = rootAxes[3 * r + 2];
    int at = 3 * i * count + 3 + r;
    slopes[at] = ay * dz - az * dy;
    slopes[at + count] = az * dx - ax * dz;
    slopes[at + 2 * count] = ax * dy - ay * dx;
  }

  private void moved(int i) {
    for (int a = 0; a < 3; a++) {
      slopes[(3 * i + a) * count + a] = 1;
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
