package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * The same muscles with other numbers, as far as ours may be off: to see how far a verdict depends
 * on them.
 *
 * <p>Arms: evenly within 10, 15 or 30 % about ours, for values whose confidence is high, medium or
 * low (that column's own meaning in {@code muscle/moment_arms.csv}; 10 % for "high" is how far
 * people of one size differ: assumption). One draw for each muscle and joint; all levels of the
 * spine and both sides go together. Greatest pulls, cross-section times stress: log-normal, 25 %,
 * one draw a muscle, both sides alike (published spread between people of the stress alone: 5 of 30
 * N/cm², Erskine et al. 2009, abstract; 11 of 55, O'Brien et al. 2010, from memory; areas add to
 * it: assumption).
 */
final class Doubt {

  /** How many draws. */
  static final int DRAWS = 40;

  private static final long SEED = 20_250_607;
  private static final double FORCE = 0.25;
  private static final Map<String, Double> ARM = Map.of("high", 0.1, "medium", 0.15, "low", 0.3);

  private final double[] gains;
  private final double[] forces;

  private Doubt(double[] gains, double[] forces) {
    this.gains = gains;
    this.forces = forces;
  }

  /**
   * The draws, each time the same for one person's muscles.
   *
   * @param muscles whose
   * @return {@link #DRAWS} of them
   */
  static List<Doubt> draws(Musculature muscles) {
    Random random = new Random(SEED);
    List<Doubt> draws = new ArrayList<>();
    for (int k = 0; k < DRAWS; k++) {
      draws.add(draw(muscles, random));
    }
    return draws;
  }

  /** No doubt: our own numbers. */
  static Doubt none(Musculature muscles) {
    double[] gains = new double[muscles.axes().length * muscles.strands().size()];
    double[] forces = new double[muscles.strands().size()];
    Arrays.fill(gains, 1);
    Arrays.fill(forces, 1);
    return new Doubt(gains, forces);
  }

  private static Doubt draw(Musculature muscles, Random random) {
    List<Strand> strands = muscles.strands();
    double[] gains = new double[muscles.axes().length * strands.size()];
    double[] forces = new double[strands.size()];
    Map<String, Double> drawn = new HashMap<>();
    for (int i = 0; i < forces.length; i++) {
      Strand strand = strands.get(i);
      String key = strand.muscle().key();
      forces[i] = drawn.computeIfAbsent(key, k -> Math.exp(FORCE * random.nextGaussian()));
      for (Crossing crossing : strand.crossings()) {
        String joint =
            crossing.series().joint().startsWith("spine") ? "spine" : crossing.series().joint();
        double within = ARM.getOrDefault(crossing.series().confidence(), 0.3);
        double arm =
            drawn.computeIfAbsent(
                key + " " + joint, k -> 1 + within * (2 * random.nextDouble() - 1));
        gains[muscles.row(crossing.axis()) * forces.length + i] = arm * forces[i];
      }
    }
    return new Doubt(gains, forces);
  }

  /** What each moment at full pull is multiplied by: rows of axes, columns of muscles. */
  double[] gains() {
    return gains;
  }

  /** What a muscle's greatest pull is multiplied by. */
  double force(int strand) {
    return forces[strand];
  }
}
