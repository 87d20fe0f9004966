package org.leverbook.body;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;
import org.leverbook.quantity.Refused;

/**
 * Draws adults whose measures go together as they do in a survey: x = mean + sd · (L z), z standard
 * normal and L the Cholesky factor of the correlations of 30 dimensions ({@code
 * body/population_correlation_*.csv}, computed from the raw data of ANSUR II, Gordon et al. 2014;
 * soldiers of 17 to 58 years). Stature and mass are taken as drawn; shanks, thighs, feet, arms,
 * hands and widths by the rules of {@code links_from_ansur.csv}; the trunk takes what is left of
 * stature.
 *
 * <p>The correlations are of all ages together, so a drawn body does not depend on its age.
 *
 * <p>Person number i of a seed is always the same, however many are drawn.
 */
public final class Population {

  /** Where the correlations come from, for tables. */
  public static final String SOURCE =
      "ANSUR II (Gordon et al. 2014): soldiers of 17 to 58 years, all ages together";

  private static final Lookup MEASURES =
      new Lookup(DataTable.read("body/population_anthropometry.csv"), "sex", "dimension");

  /** Read once, then asked by many threads without a lock. */
  private static final class Read {
    static final Map<Sex, Population> BY_SEX = new EnumMap<>(Sex.class);

    static {
      for (Sex sex : Sex.values()) {
        BY_SEX.put(sex, new Population(sex));
      }
    }
  }

  /** The parts that are drawn themselves. */
  private static final List<Part> DRAWN =
      List.of(
          Part.SHANK,
          Part.THIGH,
          Part.FOOT,
          Part.UPPER_ARM,
          Part.FOREARM,
          Part.HAND,
          Part.SHOULDER_WIDTH,
          Part.HIP_WIDTH);

  /** Draws further apart than this from what a person can be are drawn anew. */
  private static final int MOST_TRIES = 100;

  private final Sex sex;
  private final List<String> dimensions;
  private final RealMatrix correlations;
  private final double[][] factor;
  private final double[] means;
  private final double[] spreads;
  private final Map<Part, ForStature> forStature = new EnumMap<>(Part.class);

  private Population(Sex sex) {
    this.sex = sex;
    DataTable table = DataTable.read("body/population_correlation_" + sex.word() + ".csv");
    dimensions = table.rows().stream().map(r -> r.text("dimension")).toList();
    int n = dimensions.size();
    correlations = new Array2DRowRealMatrix(n, n);
    means = new double[n];
    spreads = new double[n];
    for (int i = 0; i < n; i++) {
      DataRow row = table.rows().get(i);
      for (int j = 0; j < n; j++) {
        correlations.setEntry(i, j, row.number(dimensions.get(j)));
      }
      DataRow measure = MEASURES.row(sex.word(), dimensions.get(i));
      means[i] = measure.number("mean");
      spreads[i] = measure.number("sd");
    }
    factor = new CholeskyDecomposition(correlations, 1e-9, 1e-12).getL().getData();
    for (Part part : Part.values()) {
      forStature.put(part, reckoned(part));
    }
  }

  private static Population of(Sex sex) {
    return Read.BY_SEX.get(sex);
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
          "Between 1 and 1,000,000 people can be drawn, but " + count + " were asked for.");
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
    return new Draws(sex, seed, number).next();
  }

  /**
   * The body mass that goes with a stature: m + r · s / s_h · (h - h_m), with the survey's means m
   * and h_m, spreads s and s_h and correlation r of mass and stature.
   *
   * @param sex whose survey
   * @param stature metres
   * @return kilograms
   */
  public static double usualMass(Sex sex, double stature) {
    Population survey = of(sex);
    int mass = survey.dimensions.indexOf("mass");
    int height = survey.dimensions.indexOf("stature");
    return survey.means[mass]
        + survey.correlations.getEntry(mass, height)
            * survey.spreads[mass]
            / survey.spreads[height]
            * (stature - survey.means[height]);
  }

  /** How long a part is at a stature. */
  static ForStature forStature(Sex sex, Part part) {
    return of(sex).forStature.get(part);
  }

  /**
   * One person number of a seed, drawn again and again: the first draw is the person, the next ones
   * stand in where a wish is not met.
   */
  public static final class Draws {

    private final Population survey;
    private final SplittableRandom random;

    /**
     * Nothing drawn yet.
     *
     * @param sex whose survey
     * @param seed the same seed gives the same people
     * @param number the person's number
     */
    public Draws(Sex sex, long seed, int number) {
      survey = of(sex);
      random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + number * 0xD1B54A32D192ED03L);
    }

    /**
     * Draws.
     *
     * @return the next adult
     */
    public Person next() {
      for (int i = 0; i < MOST_TRIES; i++) {
        try {
          return survey.person(survey.measures(random));
        } catch (Refused e) {
          // Someone beyond what a person can be asked to be: draw again.
          continue;
        }
      }
      throw new IllegalStateException("No person after " + MOST_TRIES + " draws");
    }
  }

  private double[] measures(SplittableRandom random) {
    int n = means.length;
    double[] z = new double[n];
    for (int i = 0; i < n; i++) {
      z[i] = normal(random);
    }
    double[] measures = new double[n];
    for (int i = 0; i < n; i++) {
      double together = 0;
      for (int j = 0; j < n; j++) {
        together += factor[i][j] * z[j];
      }
      measures[i] = means[i] + spreads[i] * together;
    }
    return measures;
  }

  /**
   * Box and Muller 1958, from memory. The library's logarithm and cosine, unlike those of the JDK,
   * are the same to the last bit on every machine.
   */
  private static double normal(SplittableRandom random) {
    double u = 1 - random.nextDouble();
    return Math.sqrt(-2 * FastMath.log(u)) * FastMath.cos(2 * Math.PI * random.nextDouble());
  }

  /**
   * A drawn person's lengths are linear in the 30 dimensions, so small steps from the mean tell how
   * each counts, whatever the rules of drawing are.
   */
  private ForStature reckoned(Part part) {
    int n = means.length;
    double[] slopes = new double[n];
    double[] statures = new double[n];
    for (int i = 0; i < n; i++) {
      Links more = stepped(i, 0.1 * spreads[i]);
      Links less = stepped(i, -0.1 * spreads[i]);
      slopes[i] = (more.lengthOf(part) - less.lengthOf(part)) / 0.2;
      statures[i] = (more.stature() - less.stature()) / 0.2;
    }
    Links mean = stepped(0, 0);
    return new ForStature(
        mean.lengthOf(part),
        mean.stature(),
        together(slopes, slopes),
        together(slopes, statures),
        together(statures, statures));
  }

  private double together(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      for (int j = 0; j < other.length; j++) {
        sum += one[i] * correlations.getEntry(i, j) * other[j];
      }
    }
    return sum;
  }

  private Links stepped(int dimension, double by) {
    double[] measures = means.clone();
    measures[dimension] += by;
    return Links.of(person(measures));
  }

  private Person person(double[] drawn) {
    double stature = of("stature", drawn);
    double meanStature = of("stature", means);
    Map<Part, Double> changes = new EnumMap<>(Part.class);
    for (Part part : DRAWN) {
      double here = length(part, drawn) / stature;
      double usual = length(part, means) / meanStature;
      changes.put(part, here / usual);
    }
    double mass = of("mass", drawn);
    if (!Person.possible(mass, stature)) {
      throw new Refused("Nobody is asked to be " + mass + " kg and " + stature + " m.");
    }
    return Person.usual(sex, mass, stature).with(changes);
  }

  private double of(String dimension, double[] measures) {
    return measures[dimensions.indexOf(dimension)];
  }

  /** By the rules of links_from_ansur.csv; of widths a breadth that goes with them. */
  private double length(Part part, double[] measures) {
    double upperArm = of("acromionradialelength", measures);
    return switch (part) {
      case SHANK ->
          of("lateralfemoralepicondyleheight", measures) - of("lateralmalleolusheight", measures);
      case THIGH ->
          of("trochanterionheight", measures)
              + 0.005
              - of("lateralfemoralepicondyleheight", measures);
      case FOOT -> of("footlength", measures);
      case UPPER_ARM -> 0.853 * upperArm;
      case FOREARM -> of("radialestylionlength", measures) + 0.043 * upperArm + 0.002;
      case HAND -> of("handlength", measures);
      case SHOULDER_WIDTH -> of("biacromialbreadth", measures);
      case HIP_WIDTH -> of("bicristalbreadth", measures);
      default -> throw new IllegalStateException("No rule for " + part);
    };
  }
}
