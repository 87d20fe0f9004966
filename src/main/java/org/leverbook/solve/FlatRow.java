package org.leverbook.solve;

import java.util.Arrays;
import java.util.List;
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
  private Slopes moves;
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
      Row.Along along = row.along.get(i);
      if (scene.halves != null) {
        along = scene.halves.twin(along);
      }
      features[i] = scene.take(along.feature());
      Vector3D d = along.direction();
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
    singles = new int[row.singles.size()];
    singleFactors = new double[singles.length];
    for (int i = 0; i < singles.length; i++) {
      singles[i] = row.singles.get(i).coordinate();
      singleFactors[i] = row.singles.get(i).factor();
    }
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
   * @param moves how its features move
   */
  void ready(int[] column, Slopes moves) {
    this.moves = moves;
    boolean[] moved = new boolean[column.length];
    for (int single : singles) {
      Columns.mark(moved, column[single]);
    }
    if (slack >= 0) {
      Columns.mark(moved, column[slack]);
    }
    mark(moved, features);
    mark(moved, ones);
    mark(moved, others);
    columns = Columns.marked(moved);
    slopes = new double[columns.length];
    places = places(features);
    onePlaces = places(ones);
    otherPlaces = places(others);
    int[] own = new int[singles.length];
    for (int i = 0; i < own.length; i++) {
      own[i] = column[singles[i]];
    }
    singlePlaces = Columns.within(columns, own);
    slackPlace = slack < 0 ? -1 : Arrays.binarySearch(columns, column[slack]);
  }

  private void mark(boolean[] moved, int[] some) {
    for (int feature : some) {
      Columns.mark(moved, moves.columns[feature]);
    }
  }

  private int[][] places(int[] some) {
    int[][] places = new int[some.length][];
    for (int i = 0; i < some.length; i++) {
      places[i] = Columns.within(columns, moves.columns[some[i]]);
    }
    return places;
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
    double[] s = moves.slopes[feature];
    int width = to.length;
    // Most directions are those of one axis.
    add(s, 0, to, x);
    add(s, width, to, y);
    add(s, 2 * width, to, z);
  }

  private void add(double[] from, int first, int[] to, double factor) {
    for (int k = 0; k < to.length && factor != 0; k++) {
      slopes[to[k]] += factor * from[first + k];
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
