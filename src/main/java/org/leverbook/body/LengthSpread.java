package org.leverbook.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;

/**
 * How far lengths may be off the usual ones when only sex, stature and mass of a person are known:
 * what the survey leaves open (ANSUR II, Gordon et al. 2014). Long forearms go with long shanks and
 * hands, so lengths are drawn together.
 *
 * <p>With S the covariance of the survey's dimensions, a normal distribution leaves of those not
 * known, given those known (k: stature and mass), the covariance S - S_k S_kk⁻¹ S_kᵀ; lengths are
 * sums of dimensions (the rules of {@code links_from_ansur.csv}, as {@link Population} draws them).
 */
public final class LengthSpread {

  /**
   * Which dimensions make a length, and how much each counts; constants do not scatter. An ordered
   * map.
   */
  private static final Map<Part, Map<String, Double>> RULES = rules();

  /** What the rules add, metres. */
  private static final Map<Part, Double> ADDED = Map.of(Part.THIGH, 0.005, Part.FOREARM, 0.002);

  private static final Lookup MEASURES =
      new Lookup(DataTable.read("body/population_anthropometry.csv"), "sex", "dimension");

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
    List<Part> all = List.copyOf(RULES.keySet());
    List<Part> parts = new ArrayList<>(all);
    parts.removeAll(except);
    if (parts.isEmpty()) {
      // Of a person whose every length was measured or drawn.
      return new LengthSpread(parts, MatrixUtils.createRealIdentityMatrix(1));
    }
    int[] kept = parts.stream().mapToInt(all::indexOf).toArray();
    RealMatrix covariance = KNOWN.computeIfAbsent(sex, LengthSpread::given);
    return new LengthSpread(parts, covariance.getSubMatrix(kept, kept));
  }

  private static Map<Part, Map<String, Double>> rules() {
    // In this order they are mixed: the first keep their own even draws.
    Map<Part, Map<String, Double>> rules = new LinkedHashMap<>();
    rules.put(
        Part.SHANK, Map.of("lateralfemoralepicondyleheight", 1.0, "lateralmalleolusheight", -1.0));
    rules.put(
        Part.THIGH, Map.of("trochanterionheight", 1.0, "lateralfemoralepicondyleheight", -1.0));
    rules.put(Part.FOOT, Map.of("footlength", 1.0));
    rules.put(Part.UPPER_ARM, Map.of("acromionradialelength", 0.853));
    rules.put(Part.FOREARM, Map.of("radialestylionlength", 1.0, "acromionradialelength", 0.043));
    rules.put(Part.HAND, Map.of("handlength", 1.0));
    rules.put(Part.SHOULDER_WIDTH, Map.of("biacromialbreadth", 1.0));
    rules.put(Part.HIP_WIDTH, Map.of("bicristalbreadth", 1.0));
    return rules;
  }

  /** The covariance of lengths over their means, stature and mass known. */
  private static RealMatrix given(Sex sex) {
    DataTable table = DataTable.read("body/population_correlation_" + sex.word() + ".csv");
    List<String> names = table.rows().stream().map(r -> r.text("dimension")).toList();
    int n = names.size();
    RealMatrix together = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      DataRow row = table.rows().get(i);
      for (int j = 0; j < n; j++) {
        double correlation = row.number(names.get(j));
        together.setEntry(
            i,
            j,
            correlation * measure(sex, names.get(i), "sd") * measure(sex, names.get(j), "sd"));
      }
    }
    int[] known = {names.indexOf("stature"), names.indexOf("mass")};
    RealMatrix across = together.getSubMatrix(IntStream.range(0, n).toArray(), known);
    RealMatrix inverse =
        new CholeskyDecomposition(together.getSubMatrix(known, known)).getSolver().getInverse();
    RealMatrix left = together.subtract(across.multiply(inverse).multiplyTransposed(across));
    RealMatrix rules = new Array2DRowRealMatrix(RULES.size(), n);
    int row = 0;
    for (Map.Entry<Part, Map<String, Double>> entry : RULES.entrySet()) {
      Map<String, Double> rule = entry.getValue();
      double mean =
          ADDED.getOrDefault(entry.getKey(), 0.0)
              + rule.entrySet().stream()
                  .mapToDouble(e -> e.getValue() * measure(sex, e.getKey(), "mean"))
                  .sum();
      for (Map.Entry<String, Double> e : rule.entrySet()) {
        rules.setEntry(row, names.indexOf(e.getKey()), e.getValue() / mean);
      }
      row++;
    }
    return rules.multiply(left).multiplyTransposed(rules);
  }

  private static double measure(Sex sex, String dimension, String column) {
    return MEASURES.row(sex.word(), dimension).number(column);
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
    double[] off = parts.isEmpty() ? new double[0] : factor.operate(scores);
    for (int i = 0; i < off.length; i++) {
      off[i] /= deviation(i);
    }
    return off;
  }
}
