package org.leverbook.muscle;

import java.util.Arrays;
import java.util.Optional;
import org.ojalgo.matrix.store.R064Store;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.convex.ConvexSolver;

/** The least summed squared stress by a general solver, for comparison. */
public final class Judge {

  private Judge() {}

  /**
   * Shares moments among muscles, all of them held.
   *
   * @param axes how many moments are needed
   * @param muscles how many muscles share them
   * @param moments row-major, newton metres at full force
   * @param needed newton metres
   * @return shares of the greatest forces; empty where it found none: its own verdict, or numbers
   *     that are none
   */
  public static Optional<double[]> pulls(int axes, int muscles, double[] moments, double[] needed) {
    R064Store q = R064Store.FACTORY.make(muscles, muscles);
    R064Store c = R064Store.FACTORY.make(muscles, 1);
    R064Store equal = R064Store.FACTORY.make(axes, muscles);
    R064Store right = R064Store.FACTORY.make(axes, 1);
    R064Store within = R064Store.FACTORY.make(2 * muscles, muscles);
    R064Store bounds = R064Store.FACTORY.make(2 * muscles, 1);
    for (int k = 0; k < axes; k++) {
      double size = 0;
      for (int i = 0; i < muscles; i++) {
        size = Math.max(size, Math.abs(moments[k * muscles + i]));
      }
      size = size == 0 ? 1 : size;
      right.set(k, 0, needed[k] / size);
      for (int i = 0; i < muscles; i++) {
        equal.set(k, i, moments[k * muscles + i] / size);
      }
    }
    for (int i = 0; i < muscles; i++) {
      q.set(i, i, 2);
      within.set(i, i, -1);
      within.set(muscles + i, i, 1);
      bounds.set(muscles + i, 0, 1);
    }
    Optimisation.Result result =
        ConvexSolver.newBuilder()
            .objective(q, c)
            .equalities(equal, right)
            .inequalities(within, bounds)
            .build()
            .solve();
    double[] found = result.toRawCopy1D();
    boolean usable =
        result.getState().isOptimal() && Arrays.stream(found).allMatch(Double::isFinite);
    return usable ? Optional.of(found) : Optional.empty();
  }
}
