package org.leverbook.study;

import java.util.SplittableRandom;

/**
 * Draws of one input that leave no gap: the range is cut into as many parts of equal chance as
 * there are draws, and each part gets one, in an order of its own (McKay, Beckman and Conover 1979,
 * Technometrics 21:239-245, from memory). Fewer draws are then needed than with free ones.
 *
 * <p>The order hangs on seed and name alone: an input is drawn alike whatever else varies.
 */
final class Strata {

  private Strata() {}

  /**
   * The scores of one input.
   *
   * @param name of the input
   * @param count how many
   * @param seed the same seed gives the same scores
   * @return standard normal scores, one a case
   */
  static double[] scores(String name, int count, long seed) {
    SplittableRandom random =
        new SplittableRandom(seed * 0x9E3779B97F4A7C15L ^ name.hashCode() * 0xD1B54A32D192ED03L);
    int[] order = new int[count];
    for (int i = 0; i < count; i++) {
      int other = random.nextInt(i + 1);
      order[i] = order[other];
      order[other] = i;
    }
    double[] scores = new double[count];
    for (int i = 0; i < count; i++) {
      // Neither end is ever reached: there the score would be infinite.
      double within = (random.nextInt(1 << 20) + 0.5) / (1 << 20);
      scores[i] = Spread.score((order[i] + within) / count);
    }
    return scores;
  }
}
