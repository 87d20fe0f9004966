package org.leverbook.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Statements as numbers: the residuals of conditions first, then those of the wishes, and how each
 * moves with the unknowns. The unknowns are the coordinates that are free, then a slack of zero or
 * more for each "at least"; what is held has no column.
 */
final class PoseProblem {

  /** Hardly a wish for a slack to be small. */
  private static final double SLACK_STIFFNESS = 1e-3;

  final Scene scene;

  /** Coordinates and slacks together, held ones too. */
  final int all;

  final int unknowns;
  final int conditions;
  final int rows;

  /** Which of all an unknown is. */
  final int[] open;

  final double[] low;
  final double[] high;
  final double[] usual;
  final double[] stiffness;
  final double[] weights;
  final FlatRow[] flat;

  /** Statements in the order of their rows, with the first row of each. */
  final List<Statement> statements = new ArrayList<>();

  final List<Integer> firsts = new ArrayList<>();

  private final Statements said;
  private final Slopes moves;
  private final double[] whole;
  private final double[] forces;
  private final List<int[]> pairs = new ArrayList<>();
  private final double[] pairPulls;
  private final Curving curving;

  PoseProblem(Statements said) {
    int coordinates = said.coordinates().count();
    all = coordinates + said.slacks();
    open =
        IntStream.range(0, all)
            .filter(i -> i >= coordinates || said.low[i] < said.high[i])
            .toArray();
    unknowns = open.length;
    int[] column = new int[all];
    Arrays.fill(column, -1);
    for (int i = 0; i < unknowns; i++) {
      column[open[i]] = i;
    }
    this.said = said;
    whole = Arrays.copyOf(said.low, all);
    low = chosen(said.low, 0);
    high = chosen(said.high, Double.POSITIVE_INFINITY);
    usual = chosen(said.usual, 0);
    stiffness = chosen(said.stiffness, SLACK_STIFFNESS);
    scene = new Scene(said.coordinates(), said.attitude(), column, halves(said));
    List<FlatRow> flattened = new ArrayList<>();
    said.said().stream().filter(Statement::mustHold).forEach(s -> take(s, coordinates, flattened));
    conditions = flattened.size();
    said.said().stream().filter(s -> !s.mustHold()).forEach(s -> take(s, coordinates, flattened));
    rows = flattened.size();
    flat = flattened.toArray(FlatRow[]::new);
    weights = new double[rows];
    for (int i = 0; i < statements.size(); i++) {
      int first = firsts.get(i);
      Arrays.fill(
          weights, first, first + statements.get(i).rows().size(), statements.get(i).weight());
    }
    scene.ready(said.low);
    moves = new Slopes(scene);
    for (FlatRow row : flat) {
      row.ready(column, moves);
    }
    forces = new double[3 * scene.size()];
    pairPulls = new double[pairs.size()];
    curving = new Curving(scene, moves, unknowns);
  }

  /** The halves, where the right one stands for both: the pelvis square, no word of left alone. */
  private static Halves halves(Statements said) {
    Halves halves = said.coordinates().halves;
    boolean square = said.attitude().z().distance(Vector3D.PLUS_K) == 0;
    for (int i : new int[] {2, 4, 5}) {
      square &= said.low[i] == 0 && said.high[i] == 0;
    }
    return halves != null && square && halves.suffice(said) ? halves : null;
  }

  private double[] chosen(double[] given, double rest) {
    double[] chosen = new double[unknowns];
    for (int i = 0; i < unknowns; i++) {
      chosen[i] = open[i] < given.length ? given[open[i]] : rest;
    }
    return chosen;
  }

  private void take(Statement statement, int coordinates, List<FlatRow> into) {
    statements.add(statement);
    firsts.add(into.size());
    int slack = statement.slack() < 0 ? -1 : coordinates + statement.slack();
    for (Row row : statement.rows()) {
      into.add(new FlatRow(row, scene, slack, pairs));
    }
  }

  /** Reads anew what is usual, and how strongly; all else must be as it was. */
  void usualAgain() {
    for (int i = 0; i < unknowns && open[i] < said.usual.length; i++) {
      usual[i] = said.usual[open[i]];
      stiffness[i] = said.stiffness[open[i]];
    }
  }

  /** All coordinates and slacks, held ones too; copied. */
  double[] whole(double[] x) {
    spread(x);
    return whole.clone();
  }

  /** The unknowns among all; what is not given is zero. */
  double[] unknownsOf(double[] given) {
    double[] x = new double[unknowns];
    for (int i = 0; i < unknowns; i++) {
      x[i] = open[i] < given.length ? given[open[i]] : 0;
    }
    return x;
  }

  private void spread(double[] x) {
    for (int i = 0; i < unknowns; i++) {
      whole[open[i]] = x[i];
    }
  }

  /** All residuals at given unknowns. */
  void residuals(double[] x, double[] into) {
    spread(x);
    scene.place(whole);
    for (int r = 0; r < rows; r++) {
      into[r] = flat[r].residual(whole);
    }
  }

  /** How all residuals move, at the unknowns last given to {@link #residuals}: into the rows. */
  void slopes() {
    moves.find();
    for (FlatRow row : flat) {
      row.slope();
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
    for (int r = 0; r < rows; r++) {
      if (pulls[r] != 0) {
        flat[r].pull(pulls[r], forces, pairPulls);
      }
    }
    for (int p = 0; p < pairPulls.length; p++) {
      pair(pairs.get(p)[0], pairs.get(p)[1], pairPulls[p], matrix);
    }
    curving.add(forces, matrix);
  }

  /** Both features of a product move: the slopes of the one times those of the other. */
  private void pair(int one, int other, double pull, double[] matrix) {
    double[] s = moves.slopes[one];
    double[] t = moves.slopes[other];
    int[] rowsOf = moves.columns[one];
    int[] columnsOf = moves.columns[other];
    int width = rowsOf.length;
    int across = columnsOf.length;
    for (int k = 0; k < width; k++) {
      double x = pull * s[k];
      double y = pull * s[width + k];
      double z = pull * s[2 * width + k];
      int i = rowsOf[k];
      for (int l = 0; l < across; l++) {
        double both = x * t[l] + y * t[across + l] + z * t[2 * across + l];
        int j = columnsOf[l];
        matrix[i > j ? i * unknowns + j : j * unknowns + i] += i == j ? 2 * both : both;
      }
    }
  }
}
