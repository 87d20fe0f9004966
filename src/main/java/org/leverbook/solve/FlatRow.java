package org.leverbook.solve;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A {@link Row} by the indices of a scene, with a place for how it moves: only what can move it.
 */
final class FlatRow {

  private final Scene scene;
  private final double target;
  private final int[] features;
  private final double[] directions;
  private final int[] ones;
  private final int[] others;
  private final double[] factors;
  private final int[] pairs;
  private final int[] singles;
  private final double[] singleFactors;
  private final int slack;
  private int[][] places;
  private int[][] onePlaces;
  private int[][] otherPlaces;
  private int[] singlePlaces;
  private int slackPlace = -1;

  /** The columns that move it, in order. */
  int[] columns;

  /** How it moves with each of them. */
  double[] slopes;

  /**
   * Takes the row's features into the scene.
   *
   * @param row what it says
   * @param scene whose features
   * @param slack index of its slack among all unknowns, or -1
   * @param known products of two features known so far; grows
   */
  FlatRow(Row row, Scene scene, int slack, List<int[]> known) {
    this.scene = scene;
    this.slack = slack;
    target = row.target;
    features = new int[row.along.size()];
    directions = new double[3 * features.length];
    for (int i = 0; i < features.length; i++) {
      features[i] = scene.take(row.along.get(i).feature());
      Vector3D d = row.along.get(i).direction();
      directions[3 * i] = d.getX();
      directions[3 * i + 1] = d.getY();
      directions[3 * i + 2] = d.getZ();
    }
    int products = row.products.size();
    ones = new int[products];
    others = new int[products];
    factors = new double[products];
    pairs = new int[products];
    for (int i = 0; i < products; i++) {
      ones[i] = scene.take(row.products.get(i).one());
      others[i] = scene.take(row.products.get(i).other());
      factors[i] = row.products.get(i).factor();
      pairs[i] = pair(known, ones[i], others[i]);
    }
    singles = row.singles.stream().mapToInt(Row.Single::coordinate).toArray();
    singleFactors = row.singles.stream().mapToDouble(Row.Single::factor).toArray();
  }

  private static int pair(List<int[]> known, int one, int other) {
    for (int i = 0; i < known.size(); i++) {
      if (known.get(i)[0] == one && known.get(i)[1] == other) {
        return i;
      }
    }
    known.add(new int[] {one, other});
    return known.size() - 1;
  }

  /**
   * Finds its columns, once the scene is ready.
   *
   * @param column of each unknown, -1 where it is held
   */
  void ready(int[] column) {
    IntStream all = IntStream.of(singles).map(c -> column[c]);
    if (slack >= 0) {
      all = IntStream.concat(all, IntStream.of(column[slack]));
    }
    for (int[] some : List.of(features, ones, others)) {
      for (int feature : some) {
        all = IntStream.concat(all, IntStream.of(scene.columns[feature]));
      }
    }
    columns = all.filter(c -> c >= 0).sorted().distinct().toArray();
    slopes = new double[columns.length];
    places = places(features);
    onePlaces = places(ones);
    otherPlaces = places(others);
    singlePlaces = within(columns, IntStream.of(singles).map(c -> column[c]).toArray());
    slackPlace = slack < 0 ? -1 : Arrays.binarySearch(columns, column[slack]);
  }

  private int[][] places(int[] some) {
    return Arrays.stream(some)
        .mapToObj(f -> within(columns, scene.columns[f]))
        .toArray(int[][]::new);
  }

  /** Where some columns stand among all; -1 where they do not. */
  static int[] within(int[] all, int[] some) {
    return IntStream.of(some).map(c -> Math.max(-1, Arrays.binarySearch(all, c))).toArray();
  }

  /** What it misses, the scene placed; x all unknowns. */
  double residual(double[] x) {
    double[] v = scene.values;
    double sum = -target;
    for (int i = 0; i < features.length; i++) {
      int at = 3 * features[i];
      sum +=
          directions[3 * i] * v[at]
              + directions[3 * i + 1] * v[at + 1]
              + directions[3 * i + 2] * v[at + 2];
    }
    for (int i = 0; i < ones.length; i++) {
      int a = 3 * ones[i];
      int b = 3 * others[i];
      sum += factors[i] * (v[a] * v[b] + v[a + 1] * v[b + 1] + v[a + 2] * v[b + 2]);
    }
    for (int i = 0; i < singles.length; i++) {
      sum += singleFactors[i] * x[singles[i]];
    }
    return slack < 0 ? sum : sum - x[slack];
  }

  /** Writes how it moves, the scene's slopes known. */
  void slope() {
    Arrays.fill(slopes, 0);
    for (int i = 0; i < features.length; i++) {
      add(features[i], places[i], directions[3 * i], directions[3 * i + 1], directions[3 * i + 2]);
    }
    double[] v = scene.values;
    for (int i = 0; i < ones.length; i++) {
      int a = 3 * ones[i];
      int b = 3 * others[i];
      double f = factors[i];
      add(ones[i], onePlaces[i], f * v[b], f * v[b + 1], f * v[b + 2]);
      add(others[i], otherPlaces[i], f * v[a], f * v[a + 1], f * v[a + 2]);
    }
    for (int i = 0; i < singles.length; i++) {
      if (singlePlaces[i] >= 0) {
        slopes[singlePlaces[i]] += singleFactors[i];
      }
    }
    if (slackPlace >= 0) {
      slopes[slackPlace] -= 1;
    }
  }

  private void add(int feature, int[] to, double x, double y, double z) {
    double[] s = scene.slopes[feature];
    int width = to.length;
    for (int k = 0; k < width; k++) {
      slopes[to[k]] += x * s[k] + y * s[width + k] + z * s[2 * width + k];
    }
  }

  /** Hands a pull on to the features it speaks of, and to their products. */
  void pull(double pull, double[] forces, double[] pairPulls) {
    for (int i = 0; i < features.length; i++) {
      for (int a = 0; a < 3; a++) {
        forces[3 * features[i] + a] += pull * directions[3 * i + a];
      }
    }
    double[] v = scene.values;
    for (int i = 0; i < ones.length; i++) {
      double both = pull * factors[i];
      pairPulls[pairs[i]] += both;
      for (int a = 0; a < 3; a++) {
        forces[3 * ones[i] + a] += both * v[3 * others[i] + a];
        forces[3 * others[i] + a] += both * v[3 * ones[i] + a];
      }
    }
  }
}
