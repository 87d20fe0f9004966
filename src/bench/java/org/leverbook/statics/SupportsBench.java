package org.leverbook.statics;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.ojalgo.optimisation.Optimisation;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Support reactions of random people who stand, lean on a pad or sit under a thigh pad, from cold:
 * whether they can be held, and the least effort. The baseline is the active-set solver of a
 * general optimisation library. The budget: at least a hundred times faster. Both sides get the
 * same cases in the same order and must agree before anything is measured.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class SupportsBench {

  private static final int CASES = 240;
  private static final double AGREE = 1e-6;

  private final LeastEffortTest.Case[] cases = new LeastEffortTest.Case[CASES];
  private int next;

  /** Makes the cases and checks that both sides answer alike. */
  @Setup
  public void setUp() {
    Random random = new Random(32);
    for (int n = 0; n < CASES; n++) {
      cases[n] = new LeastEffortTest.Case(random, n % 3);
      double[] ours = solve(cases[n]);
      Optimisation.Result theirs = cases[n].judged();
      if ((ours != null) != theirs.getState().isFeasible()) {
        throw new IllegalStateException("The two sides disagree whether case " + n + " holds.");
      }
      if (ours != null) {
        double best = cases[n].effort(theirs.toRawCopy1D());
        if (Math.abs(cases[n].effort(ours) - best) > AGREE * Math.max(1, best)) {
          throw new IllegalStateException("The two sides disagree on the effort of case " + n);
        }
      }
    }
  }

  private static double[] solve(LeastEffortTest.Case one) {
    NonNegative.Answer possible = NonNegative.of(one.w, one.b);
    return possible.held() ? LeastEffort.of(one.h, one.g, one.w, one.b, possible.x()) : null;
  }

  /**
   * The general optimisation library.
   *
   * @return its result
   */
  @Benchmark
  public Object library() {
    return cases[next++ % CASES].judged();
  }

  /**
   * Leverbook's two solvers.
   *
   * @return the reactions, or null where they cannot hold
   */
  @Benchmark
  public Object leverbook() {
    return solve(cases[next++ % CASES]);
  }
}
