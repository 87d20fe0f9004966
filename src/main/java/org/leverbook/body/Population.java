package org.leverbook.body;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/**
 * Draws adults whose measures go together as they do in a survey: x = mean + sd · (L z), z standard
 * normal and L the Cholesky factor of the correlations of 30 dimensions ({@code
 * body/population_correlation_*.csv}, computed from the raw data of ANSUR II, Gordon et al. 2014;
 * soldiers of 17 to 58 years). Stature and mass are taken as drawn; shanks, thighs, feet, arms,
 * hands and widths by the rules of {@code links_from_ansur.csv}; the trunk takes what is left of
 * stature.
 *
 * <p>Person number i of a seed is always the same, however many are drawn.
 */
public final class Population {

  private static final Lookup MEASURES =
      new Lookup(DataTable.read("body/population_anthropometry.csv"), "sex", "dimension");

  private static final Map<Sex, Population> BY_SEX = new EnumMap<>(Sex.class);

  /** Draws further apart than this from what a person can be are drawn anew. */
  private static final int MOST_TRIES = 100;

  private final Sex sex;
  private final List<String> dimensions;
  private final RealMatrix factor;
  private final Map<String, Double> means = new HashMap<>();

  private Population(Sex sex) {
    this.sex = sex;
    DataTable table = DataTable.read("body/population_correlation_" + sex.word() + ".csv");
    dimensions = table.rows().stream().map(r -> r.text("dimension")).toList();
    int n = dimensions.size();
    RealMatrix correlations = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      DataRow row = table.rows().get(i);
      for (int j = 0; j < n; j++) {
        correlations.setEntry(i, j, row.number(dimensions.get(j)));
      }
    }
    dimensions.forEach(d -> means.put(d, MEASURES.row(sex.word(), d).number("mean")));
    factor = new CholeskyDecomposition(correlations, 1e-9, 1e-12).getL();
  }

  private static Population of(Sex sex) {
    synchronized (BY_SEX) {
      return BY_SEX.computeIfAbsent(sex, Population::new);
    }
  }

  /**
   * Draws adults.
   *
   * @param sex of all of them
   * @param count how many, 1 to a million
   * @param seed the same seed gives the same people
   * @return the people, in order
   * @throws Refused if the count is outside
   */
  public static List<Person> draw(Sex sex, int count, long seed) {
    if (count < 1 || count > 1_000_000) {
      throw new Refused(
          "Between 1 and 1,000,000 people can be drawn, but " + count + " were asked.");
    }
    List<Person> people = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      people.add(person(sex, seed, i));
    }
    return people;
  }

  /**
   * One adult of a seed.
   *
   * @param sex whose survey
   * @param seed the same seed gives the same people
   * @param number from 0
   * @return the person
   */
  public static Person person(Sex sex, long seed, int number) {
    SplittableRandom random =
        new SplittableRandom(seed * 0x9E3779B97F4A7C15L + number * 0xD1B54A32D192ED03L);
    Population population = of(sex);
    for (int i = 0; i < MOST_TRIES; i++) {
      try {
        return population.person(population.measures(random));
      } catch (Refused e) {
        // Someone beyond what a person can be asked to be: draw again.
        continue;
      }
    }
    throw new IllegalStateException("No person after " + MOST_TRIES + " draws");
  }

  private Map<String, Double> measures(SplittableRandom random) {
    int n = dimensions.size();
    double[] z = new double[n];
    for (int i = 0; i < n; i++) {
      z[i] = normal(random);
    }
    double[] together = factor.operate(z);
    Map<String, Double> measures = new HashMap<>();
    for (int i = 0; i < n; i++) {
      DataRow row = MEASURES.row(sex.word(), dimensions.get(i));
      measures.put(
          dimensions.get(i), means.get(dimensions.get(i)) + row.number("sd") * together[i]);
    }
    return measures;
  }

  /** Box and Muller 1958, from memory: the same numbers on every version of the JDK. */
  private static double normal(SplittableRandom random) {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
  }

  private Person person(Map<String, Double> drawn) {
    double stature = drawn.get("stature");
    Map<Part, Double> changes = new EnumMap<>(Part.class);
    for (Part part :
        List.of(
            Part.SHANK,
            Part.THIGH,
            Part.FOOT,
            Part.UPPER_ARM,
            Part.FOREARM,
            Part.HAND,
            Part.SHOULDER_WIDTH,
            Part.HIP_WIDTH)) {
      double here = length(part, drawn) / stature;
      double usual = length(part, means) / means.get("stature");
      changes.put(part, here / usual);
    }
    Person usual = Person.of(sex, Units.kg(drawn.get("mass")), Units.m(stature));
    return usual.with(changes);
  }

  /** By the rules of links_from_ansur.csv; of widths a breadth that goes with them. */
  private static double length(Part part, Map<String, Double> of) {
    double upperArm = of.get("acromionradialelength");
    return switch (part) {
      case SHANK -> of.get("lateralfemoralepicondyleheight") - of.get("lateralmalleolusheight");
      case THIGH ->
          of.get("trochanterionheight") + 0.005 - of.get("lateralfemoralepicondyleheight");
      case FOOT -> of.get("footlength");
      case UPPER_ARM -> 0.853 * upperArm;
      case FOREARM -> of.get("radialestylionlength") + 0.043 * upperArm + 0.002;
      case HAND -> of.get("handlength");
      case SHOULDER_WIDTH -> of.get("biacromialbreadth");
      case HIP_WIDTH -> of.get("bicristalbreadth");
      default -> throw new IllegalStateException("No rule for " + part);
    };
  }
}
