package org.leverbook.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Statements as numbers: the residuals of conditions first, then those of the wishes, and how each
 * moves with the unknowns. The unknowns are the coordinates, then a slack of zero or more for each
 * "at least".
 */
final class PoseProblem {

  /** Hardly a wish for a slack to be small. */
  private static final double SLACK_STIFFNESS = 1e-3;

  final Scene scene;
  final int coordinates;
  final int unknowns;
  final int conditions;
  final int rows;
  final double[] low;
  final double[] high;
  final double[] usual;
  final double[] stiffness;
  final double[] weights;

  /** Statements in the order of their rows, with the first row of each. */
  final List<Statement> statements = new ArrayList<>();

  final List<Integer> firsts = new ArrayList<>();

  private final List<Row> all = new ArrayList<>();
  private final int[][] features;
  private final double[][] directions;
  private final int[][] products;
  private final int[] slackOf;
  private final double[] forces;
  private final List<int[]> pairs = new ArrayList<>();
  private final int[][] pairOf;
  private final double[] pairPulls;
  private Curving curving;
  private double[] curvedInto;

  PoseProblem(Statements said) {
    scene = new Scene(said.coordinates(), said.attitude());
    coordinates = said.coordinates().count();
    unknowns = coordinates + said.slacks();
    low = grown(said.low, 0);
    high = grown(said.high, Double.POSITIVE_INFINITY);
    usual = grown(said.usual, 0);
    stiffness = grown(said.stiffness, SLACK_STIFFNESS);
    said.said().stream().filter(Statement::mustHold).forEach(this::take);
    conditions = all.size();
    said.said().stream().filter(s -> !s.mustHold()).forEach(this::take);
    rows = all.size();
    weights = new double[rows];
    slackOf = new int[rows];
    Arrays.fill(slackOf, -1);
    for (int i = 0; i < statements.size(); i++) {
      Statement statement = statements.get(i);
      for (int r = 0; r < statement.rows().size(); r++) {
        weights[firsts.get(i) + r] = statement.weight();
        slackOf[firsts.get(i) + r] = statement.slack() < 0 ? -1 : coordinates + statement.slack();
      }
    }
    features = new int[rows][];
    directions = new double[rows][];
    products = new int[rows][];
    pairOf = new int[rows][];
    for (int r = 0; r < rows; r++) {
      flatten(r);
    }
    scene.ready();
    forces = new double[3 * scene.size()];
    pairPulls = new double[pairs.size()];
  }

  private double[] grown(double[] given, double rest) {
    double[] all = Arrays.copyOf(given, unknowns);
    Arrays.fill(all, coordinates, unknowns, rest);
    return all;
  }

  private void take(Statement statement) {
    statements.add(statement);
    firsts.add(all.size());
    all.addAll(statement.rows());
  }

  private void flatten(int r) {
    Row row = all.get(r);
    features[r] = new int[row.along.size()];
    directions[r] = new double[3 * row.along.size()];
    for (int i = 0; i < features[r].length; i++) {
      features[r][i] = scene.take(row.along.get(i).feature());
      Vector3D d = row.along.get(i).direction();
      directions[r][3 * i] = d.getX();
      directions[r][3 * i + 1] = d.getY();
      directions[r][3 * i + 2] = d.getZ();
    }
    products[r] = new int[2 * row.products.size()];
    pairOf[r] = new int[row.products.size()];
    for (int i = 0; i < row.products.size(); i++) {
      products[r][2 * i] = scene.take(row.products.get(i).one());
      products[r][2 * i + 1] = scene.take(row.products.get(i).other());
      pairOf[r][i] = pairIndex(products[r][2 * i], products[r][2 * i + 1]);
    }
  }

  private int pairIndex(int one, int other) {
    for (int i = 0; i < pairs.size(); i++) {
      if (pairs.get(i)[0] == one && pairs.get(i)[1] == other) {
        return i;
      }
    }
    pairs.add(new int[] {one, other});
    return pairs.size() - 1;
  }

  /** All residuals at given unknowns. */
  void residuals(double[] x, double[] into) {
    scene.place(x);
    double[] v = scene.values;
    for (int r = 0; r < rows; r++) {
      Row row = all.get(r);
      double sum = -row.target;
      int[] f = features[r];
      double[] d = directions[r];
      for (int i = 0; i < f.length; i++) {
        int at = 3 * f[i];
        sum += d[3 * i] * v[at] + d[3 * i + 1] * v[at + 1] + d[3 * i + 2] * v[at + 2];
      }
      for (int i = 0; i < row.products.size(); i++) {
        int a = 3 * products[r][2 * i];
        int b = 3 * products[r][2 * i + 1];
        sum +=
            row.products.get(i).factor()
                * (v[a] * v[b] + v[a + 1] * v[b + 1] + v[a + 2] * v[b + 2]);
      }
      for (Row.Single single : row.singles) {
        sum += single.factor() * x[single.coordinate()];
      }
      if (slackOf[r] >= 0) {
        sum -= x[slackOf[r]];
      }
      into[r] = sum;
    }
  }

  /** How all residuals move, at the unknowns last given to {@link #residuals}; row by row. */
  void slopes(double[] into) {
    scene.slope();
    double[] v = scene.values;
    double[] s = scene.slopes;
    Arrays.fill(into, 0, rows * unknowns, 0);
    for (int r = 0; r < rows; r++) {
      Row row = all.get(r);
      int to = r * unknowns;
      int[] f = features[r];
      double[] d = directions[r];
      for (int i = 0; i < f.length; i++) {
        add(into, to, f[i], d[3 * i], d[3 * i + 1], d[3 * i + 2], s);
      }
      for (int i = 0; i < row.products.size(); i++) {
        double factor = row.products.get(i).factor();
        int a = products[r][2 * i];
        int b = products[r][2 * i + 1];
        add(into, to, a, factor * v[3 * b], factor * v[3 * b + 1], factor * v[3 * b + 2], s);
        add(into, to, b, factor * v[3 * a], factor * v[3 * a + 1], factor * v[3 * a + 2], s);
      }
      for (Row.Single single : row.singles) {
        into[to + single.coordinate()] += single.factor();
      }
      if (slackOf[r] >= 0) {
        into[to + slackOf[r]] -= 1;
      }
    }
  }

  /**
   * Adds the second derivatives of the rows, each times its pull, to the lower half of a matrix.
   *
   * @param pulls one a row
   * @param matrix of the unknowns, row by row
   */
  void curve(double[] pulls, double[] matrix) {
    Arrays.fill(forces, 0);
    Arrays.fill(pairPulls, 0);
    double[] v = scene.values;
    for (int r = 0; r < rows; r++) {
      double pull = pulls[r];
      if (pull == 0) {
        continue;
      }
      int[] f = features[r];
      for (int i = 0; i < f.length; i++) {
        for (int a = 0; a < 3; a++) {
          forces[3 * f[i] + a] += pull * directions[r][3 * i + a];
        }
      }
      for (int i = 0; i < products[r].length; i += 2) {
        double both = pull * all.get(r).products.get(i / 2).factor();
        int one = products[r][i];
        int other = products[r][i + 1];
        pairPulls[pairOf[r][i / 2]] += both;
        for (int a = 0; a < 3; a++) {
          forces[3 * one + a] += both * v[3 * other + a];
          forces[3 * other + a] += both * v[3 * one + a];
        }
      }
    }
    for (int p = 0; p < pairs.size(); p++) {
      pair(pairs.get(p), pairPulls[p], matrix);
    }
    curving(matrix).add(forces);
  }

  /** Both features of a product move: the slopes of the one times those of the other. */
  private void pair(int[] pair, double pull, double[] matrix) {
    double[] s = scene.slopes;
    int n = coordinates;
    for (int a = 0; a < 3; a++) {
      int p = (3 * pair[0] + a) * n;
      int q = (3 * pair[1] + a) * n;
      for (int k = 0; k < n; k++) {
        double one = pull * s[p + k];
        double other = pull * s[q + k];
        if (one != 0 || other != 0) {
          int row = k * unknowns;
          for (int l = 0; l <= k; l++) {
            matrix[row + l] += one * s[q + l] + other * s[p + l];
          }
        }
      }
    }
  }

  /** The same one as long as the matrix is the same: nothing is allocated step by step. */
  private Curving curving(double[] matrix) {
    if (curvedInto != matrix) {
      curving = new Curving(scene, matrix, unknowns);
      curvedInto = matrix;
    }
    return curving;
  }

  private void add(
      double[] into, int to, int feature, double x, double y, double z, double[] slopes) {
    int n = coordinates;
    int at = 3 * feature * n;
    if (x != 0) {
      for (int k = 0; k < n; k++) {
        into[to + k] += x * slopes[at + k];
      }
    }
    if (y != 0) {
      for (int k = 0; k < n; k++) {
        into[to + k] += y * slopes[at + n + k];
      }
    }
    if (z != 0) {
      for (int k = 0; k < n; k++) {
        into[to + k] += z * slopes[at + 2 * n + k];
      }
    }
  }
}
