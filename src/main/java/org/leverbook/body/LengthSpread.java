package org.leverbook.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * How far lengths may be off the usual ones when only sex, stature and mass of a person are known:
 * what the survey leaves open, computed from its correlations (ANSUR II, Gordon et al. 2014). Long
 * forearms go with long shanks and hands, so lengths are drawn together.
 */
public final class LengthSpread {

  private static final Map<Sex, RealMatrix> KNOWN =
      Collections.synchronizedMap(new EnumMap<>(Sex.class));

  private final List<Part> parts;
  private final RealMatrix covariance;
  private final RealMatrix factor;

  private LengthSpread(List<Part> parts, RealMatrix covariance) {
    this.parts = List.copyOf(parts);
    this.covariance = covariance;
    factor = new CholeskyDecomposition(covariance, 1e-9, 1e-14).getL();
  }

  /**
   * The spread of some parts; the others are known, or take what is left.
   *
   * @param sex whose survey
   * @param except parts that are not to vary
   * @return the spread of all other parts the survey tells: all but trunk and neck
   */
  public static LengthSpread of(Sex sex, List<Part> except) {
    List<Part> parts = new ArrayList<>(Population.DRAWN);
    parts.removeAll(except);
    int[] kept = parts.stream().mapToInt(Population.DRAWN::indexOf).toArray();
    RealMatrix all = KNOWN.computeIfAbsent(sex, Population::lengthsGivenSize);
    return new LengthSpread(parts, all.getSubMatrix(kept, kept));
  }

  /**
   * The parts that vary.
   *
   * @return in the order of all numbers here
   */
  public List<Part> parts() {
    return parts;
  }

  /**
   * The standard deviation of one part's length.
   *
   * @param part its place in {@link #parts}
   * @return as a share of its usual length
   */
  public double deviation(int part) {
    return Math.sqrt(covariance.getEntry(part, part));
  }

  /**
   * Lengths that go together.
   *
   * @param scores independent standard normal numbers, one a part
   * @return for each part how many of its own standard deviations it is off; correlated
   */
  public double[] together(double[] scores) {
    double[] off = factor.operate(scores);
    for (int i = 0; i < off.length; i++) {
      off[i] /= deviation(i);
    }
    return off;
  }
}
