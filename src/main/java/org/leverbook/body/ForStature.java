package org.leverbook.body;

import java.util.Locale;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * How long a part usually is at a stature, and how much it varies among people of that stature.
 *
 * <p>The survey's measures are drawn as jointly normal (see {@link Population}); a part's length L
 * and the stature H are linear in them. So L at a given H is normal, with
 *
 * <pre>
 *   mean(L | H) = l + c / v · (H - h)        l, h    mean length and mean stature, m
 *   sd(L | H)   = √(w - c² / v)              v, w    variance of H and of L, m²
 *   percentile  = Φ((L - mean) / sd)         c       covariance of L and H, m²
 * </pre>
 *
 * <p>v, w and c follow from the survey's printed spreads and correlations of the person's sex.
 *
 * @param length l, metres
 * @param stature h, metres
 * @param lengthVariance w, square metres
 * @param covariance c, square metres
 * @param statureVariance v, square metres
 */
record ForStature(
    double length,
    double stature,
    double lengthVariance,
    double covariance,
    double statureVariance) {

  private static final NormalDistribution NORMAL = new NormalDistribution();

  /** Below this spread, metres, a part is a fixed share of stature. */
  private static final double NO_SPREAD = 1e-6;

  /**
   * Where a person's part stands among people of the same sex and stature.
   *
   * @return the share of them, 0 to 1, whose part is shorter
   * @throws Refused if the part has no spread of its own in what is drawn from
   */
  static double shareShorter(Person person, Part part) {
    ForStature rule = of(person.sex(), part);
    Links links = Links.of(person);
    double usual = rule.mean(links.stature());
    return NORMAL.cumulativeProbability((links.lengthOf(part) - usual) / rule.spread());
  }

  /** The rule of a part that varies. */
  static ForStature of(Sex sex, Part part) {
    ForStature rule = Population.forStature(sex, Ask.present("part", part, "THIGH"));
    if (rule.spread() < NO_SPREAD) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The survey's correlations hold no %s of its own: it is taken as a fixed share of"
                  + " stature, so nobody's is long or short for the stature. Take another, such as THIGH.",
              part.word()));
    }
    return rule;
  }

  /** The usual length at a stature, metres. */
  double mean(double at) {
    return length + covariance / statureVariance * (at - stature);
  }

  /** How much people of one stature differ, metres. */
  double spread() {
    return Math.sqrt(Math.max(0, lengthVariance - covariance * covariance / statureVariance));
  }
}
