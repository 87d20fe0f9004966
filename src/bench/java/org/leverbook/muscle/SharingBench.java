package org.leverbook.muscle;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Fifteen moments shared among fifty muscles by the least summed squared stress, each case from
 * cold. The baseline is the active-set solver of a general optimisation library. The budget: at
 * least a hundred times faster. Both sides get the same cases in the same order; before anything is
 * measured ours must be no worse anywhere, and equal wherever the library finds the optimum.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class SharingBench {

  private static final int CASES = 128;
  private static final int AXES = 15;
  private static final int MUSCLES = 50;

  private final SharingTest.Case[] cases = new SharingTest.Case[CASES];
  private final Sharing sharing = new Sharing(AXES, MUSCLES, 2);
  private final Sharing cubed = new Sharing(AXES, MUSCLES, 3);
  private int next;

  /** Makes the cases and checks that both sides answer alike. */
  @Setup
  public void setUp() {
    Random random = new Random(33);
    int alike = 0;
    for (int n = 0; n < CASES; n++) {
      SharingTest.Case one = new SharingTest.Case(random, AXES, MUSCLES, 1);
      cases[n] = one;
      sharing.forget();
      sharing.solve(one.moments, one.needed);
      double ours = 0;
      for (int i = 0; i < MUSCLES; i++) {
        ours += sharing.pullOf(i) * sharing.pullOf(i);
      }
      double[] theirs = Judge.pulls(AXES, MUSCLES, one.moments, one.needed).orElse(null);
      if (theirs == null) {
        continue;
      }
      double least = 0;
      for (double pull : theirs) {
        least += pull * pull;
      }
      if (ours > least + 1e-6) {
        throw new IllegalStateException("Ours is worse in case " + n + ": " + ours + ", " + least);
      }
      alike += ours > least - 1e-6 ? 1 : 0;
    }
    if (alike < CASES * 9 / 10) {
      throw new IllegalStateException("The two sides agree in " + alike + " of " + CASES);
    }
  }

  /**
   * The general optimisation library.
   *
   * @return its result
   */
  @Benchmark
  public Object library() {
    SharingTest.Case one = cases[next++ % CASES];
    return Judge.pulls(AXES, MUSCLES, one.moments, one.needed);
  }

  /**
   * Leverbook, squared stress.
   *
   * @return one of the pulls
   */
  @Benchmark
  public double leverbook() {
    return share(sharing);
  }

  /**
   * Leverbook, cubed stress.
   *
   * @return one of the pulls
   */
  @Benchmark
  public double leverbookCubed() {
    return share(cubed);
  }

  private double share(Sharing with) {
    SharingTest.Case one = cases[next++ % CASES];
    with.forget();
    with.solve(one.moments, one.needed);
    return with.pullOf(0);
  }
}
