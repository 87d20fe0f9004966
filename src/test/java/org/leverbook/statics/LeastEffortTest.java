package org.leverbook.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.junit.jupiter.api.Test;
import org.ojalgo.matrix.store.MatrixStore;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.convex.ConvexSolver;

/**
 * The solver of support reactions against an independent one, on random people who stand, lean on a
 * pad or sit under a thigh pad: the same verdict, the same least effort, equilibrium exactly.
 */
class LeastEffortTest {

  private static final int CASES = 2100;
  private static final double LITTLE = 1e-4;

  /** Columns of a random set of contacts, a wrench, and a random share of joint moments. */
  static final class Case {

    final double[][] w;
    final double[] b;
    final double[][] h;
    final double[] g;
    private final double constant;

    Case(Random random, int kind) {
      List<double[]> columns = new ArrayList<>();
      List<Integer> owners = new ArrayList<>();
      feet(random, columns, owners);
      if (kind == 1) {
        double angle = random.nextDouble() * 1.2;
        Vector3D normal = new Vector3D(-Math.sin(angle), Math.cos(angle), 0);
        pad(random, columns, owners, new Vector3D(0.3, 1.0, 0), normal, 2);
      } else if (kind == 2) {
        pad(random, columns, owners, new Vector3D(-0.3, 0.5, 0), Vector3D.PLUS_J, 3);
        pad(random, columns, owners, new Vector3D(0, 0.6, 0), Vector3D.MINUS_J, 4);
      }
      w = columns.toArray(new double[0][]);
      b = wrench(random, kind);
      int rows = 24;
      double[][] effort = new double[rows][w.length];
      double[] known = new double[rows];
      for (int r = 0; r < rows; r++) {
        Vector3D axis = direction(random);
        Vector3D centre = new Vector3D(random.nextGaussian(), random.nextDouble(), 0.3);
        int owner = r % 5;
        known[r] = random.nextGaussian();
        for (int j = 0; j < w.length; j++) {
          if (owners.get(j) == owner) {
            Vector3D force = new Vector3D(w[j][0], w[j][1], w[j][2]);
            Vector3D moment =
                new Vector3D(w[j][3], w[j][4], w[j][5]).subtract(centre.crossProduct(force));
            effort[r][j] = 4 * moment.dotProduct(axis);
          }
        }
      }
      h = new double[w.length][w.length];
      g = new double[w.length];
      double sum = 0;
      for (int r = 0; r < rows; r++) {
        sum += known[r] * known[r];
        for (int i = 0; i < w.length; i++) {
          g[i] -= effort[r][i] * known[r];
          for (int j = 0; j < w.length; j++) {
            h[i][j] += effort[r][i] * effort[r][j];
          }
        }
      }
      constant = sum;
      for (int i = 0; i < w.length; i++) {
        h[i][i] += LITTLE;
      }
    }

    private static void feet(Random random, List<double[]> columns, List<Integer> owners) {
      for (int foot = 0; foot < 2; foot++) {
        double z = (foot == 0 ? 1 : -1) * (0.08 + 0.2 * random.nextDouble());
        for (double[] at : new double[][] {{-0.05, -0.02}, {0.13, 0.04}, {0.2, 0}}) {
          point(columns, owners, new Vector3D(at[0], 0, z + at[1]), Vector3D.PLUS_J, 0.6, foot);
        }
      }
    }

    private static void pad(
        Random random,
        List<double[]> columns,
        List<Integer> owners,
        Vector3D middle,
        Vector3D normal,
        int owner) {
      Vector3D across = normal.crossProduct(normal.orthogonal());
      for (int i = -1; i <= 1; i += 2) {
        Vector3D at = new Vector3D(1, middle, 0.1 * i, across);
        point(columns, owners, at, normal, 0.3 + 0.2 * random.nextDouble(), owner);
      }
    }

    private static void point(
        List<double[]> columns,
        List<Integer> owners,
        Vector3D at,
        Vector3D normal,
        double friction,
        int owner) {
      Vector3D along = normal.orthogonal();
      Vector3D across = normal.crossProduct(along);
      for (int k = 0; k < 4; k++) {
        double angle = Math.PI / 2 * k;
        Vector3D edge =
            new Vector3D(
                1, normal, friction * Math.cos(angle), along, friction * Math.sin(angle), across);
        Vector3D moment = at.crossProduct(edge);
        columns.add(
            new double[] {
              edge.getX(), edge.getY(), edge.getZ(), moment.getX(), moment.getY(), moment.getZ()
            });
        owners.add(owner);
      }
    }

    private static double[] wrench(Random random, int kind) {
      double reach = kind == 1 ? 0.35 : kind == 2 ? -0.35 : 0.16;
      Vector3D at = new Vector3D(reach * random.nextDouble(), 1, 0.05 * random.nextGaussian());
      Vector3D force =
          new Vector3D(
              0.1 * random.nextGaussian(), 1 + random.nextDouble(), 0.05 * random.nextGaussian());
      Vector3D moment = at.crossProduct(force);
      return new double[] {
        force.getX(), force.getY(), force.getZ(), moment.getX(), moment.getY(), moment.getZ()
      };
    }

    private static Vector3D direction(Random random) {
      return new Vector3D(random.nextGaussian(), random.nextGaussian(), random.nextGaussian())
          .normalize();
    }

    double effort(double[] x) {
      double sum = constant;
      for (int i = 0; i < x.length; i++) {
        double row = 0;
        for (int j = 0; j < x.length; j++) {
          row += h[i][j] * x[j];
        }
        sum += x[i] * (row - 2 * g[i]);
      }
      return sum;
    }

    /**
     * How far the answer is from the conditions of Karush, Kuhn and Tucker: the free variables give
     * the six multipliers by least squares; the least multiplier of a variable at zero, or minus
     * what a free one lacks.
     */
    double worstMultiplier(double[] x) {
      List<Integer> free = new ArrayList<>();
      double[] gradient = new double[x.length];
      for (int i = 0; i < x.length; i++) {
        gradient[i] = -g[i];
        for (int j = 0; j < x.length; j++) {
          gradient[i] += h[i][j] * x[j];
        }
        if (x[i] > 1e-9) {
          free.add(i);
        }
      }
      double[][] rows = new double[free.size()][];
      double[] right = new double[free.size()];
      for (int k = 0; k < rows.length; k++) {
        rows[k] = w[free.get(k)];
        right[k] = -gradient[free.get(k)];
      }
      double[] lambda =
          new SingularValueDecomposition(new Array2DRowRealMatrix(rows))
              .getSolver()
              .solve(new ArrayRealVector(right))
              .toArray();
      double worst = 0;
      for (int i = 0; i < x.length; i++) {
        double multiplier = gradient[i];
        for (int r = 0; r < 6; r++) {
          multiplier += w[i][r] * lambda[r];
        }
        boolean isFree = x[i] > 1e-9;
        // With fewer than six free variables the multipliers have room that this does not use.
        if (isFree) {
          worst = Math.min(worst, -Math.abs(multiplier));
        } else if (free.size() >= 7) {
          worst = Math.min(worst, multiplier);
        }
      }
      return worst;
    }

    double outOfBalance(double[] x) {
      double worst = 0;
      for (int r = 0; r < 6; r++) {
        double sum = -b[r];
        for (int j = 0; j < x.length; j++) {
          sum += w[j][r] * x[j];
        }
        worst = Math.max(worst, Math.abs(sum));
      }
      return worst;
    }

    Optimisation.Result judged() {
      int n = w.length;
      R064Store q = R064Store.FACTORY.make(n, n);
      R064Store c = R064Store.FACTORY.make(n, 1);
      R064Store equal = R064Store.FACTORY.make(6, n);
      R064Store right = R064Store.FACTORY.make(6, 1);
      R064Store negative = R064Store.FACTORY.make(n, n);
      MatrixStore<Double> zero = R064Store.FACTORY.make(n, 1);
      for (int i = 0; i < n; i++) {
        c.set(i, 0, g[i]);
        negative.set(i, i, -1);
        for (int j = 0; j < n; j++) {
          q.set(i, j, h[i][j]);
        }
        for (int r = 0; r < 6; r++) {
          equal.set(r, i, w[i][r]);
        }
      }
      for (int r = 0; r < 6; r++) {
        right.set(r, 0, b[r]);
      }
      return ConvexSolver.newBuilder()
          .objective(q, c)
          .equalities(equal, right)
          .inequalities(negative, zero)
          .build()
          .solve();
    }
  }

  @Test
  void an_independent_solver_gives_the_same_verdict_and_the_same_least_effort() {
    Random random = new Random(31);
    List<Case> cases = new ArrayList<>();
    for (int round = 0; round < CASES; round++) {
      cases.add(new Case(random, round % 3));
    }
    // The judge takes some 30 ms a case: on all processors.
    long held = IntStream.range(0, CASES).parallel().filter(i -> compared(i, cases.get(i))).count();
    assertThat(held).isBetween(CASES / 3L, CASES - 50L);
  }

  /** Compares one case; true where it can be held. */
  private static boolean compared(int round, Case one) {
    NonNegative.Answer possible = NonNegative.of(one.w, one.b);
    Optimisation.Result judged = one.judged();
    assertThat(possible.held()).as("case %d", round).isEqualTo(judged.getState().isFeasible());
    if (!possible.held()) {
      return false;
    }
    double[] x = LeastEffort.of(one.h, one.g, one.w, one.b, possible.x());
    double theirs = one.effort(judged.toRawCopy1D());
    // The judge's own answer is in balance to some 1e-8 only; the effort is of the order of ten.
    assertThat(one.effort(x))
        .as("case %d", round)
        .isCloseTo(theirs, within(1e-6 * Math.max(1, theirs)));
    assertThat(one.outOfBalance(x)).as("case %d, body weights", round).isLessThan(1e-12);
    for (double share : x) {
      assertThat(share).isNotNegative();
    }
    return true;
  }

  @Test
  void many_more_cases_end_in_balance_with_no_push_turned_to_pull() {
    Random random = new Random(77);
    int held = 0;
    for (int round = 0; round < 20_000; round++) {
      Case one = new Case(random, round % 3);
      NonNegative.Answer possible = NonNegative.of(one.w, one.b);
      // Nothing lies between: a case holds to rounding or lacks clearly.
      assertThat(possible.lack() < 1e-12 || possible.lack() > 1e-7).isTrue();
      if (possible.held()) {
        held++;
        double[] x = LeastEffort.of(one.h, one.g, one.w, one.b, possible.x());
        assertThat(one.outOfBalance(x)).as("case %d", round).isLessThan(1e-12);
        assertThat(one.worstMultiplier(x)).as("case %d", round).isGreaterThan(-1e-6);
      }
    }
    assertThat(held).isGreaterThan(10_000);
  }
}
