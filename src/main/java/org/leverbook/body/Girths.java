package org.leverbook.body;

import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;

/**
 * How thick a person's parts are: for drawing, and for the places of the skin at which loads and
 * pads touch ({@link Place}).
 *
 * <p>Survey means as shares of stature, from {@code body/population_anthropometry.csv} (ANSUR II,
 * Gordon et al. 2014); girths are turned into the diameter of a circle of that girth. A person
 * heavier than the survey's mean at this stature is drawn thicker: at the same length, volume goes
 * with the square of thickness, so thickness goes with the root of mass over stature.
 */
public final class Girths {

  private static final Lookup SURVEY =
      new Lookup(DataTable.read("body/population_anthropometry.csv"), "sex", "dimension");

  private final Sex sex;
  private final double stature;
  private final double thickening;

  private Girths(Sex sex, double stature, double thickening) {
    this.sex = sex;
    this.stature = stature;
    this.thickening = thickening;
  }

  /**
   * The thickness of a person's parts.
   *
   * @param person whose
   * @return by survey means, stature and mass
   */
  public static Girths of(Person person) {
    String sex = person.sex().word();
    double meanMass = SURVEY.row(sex, "mass").number("mean");
    double meanStature = SURVEY.row(sex, "stature").number("mean");
    double usual = meanMass * Math.pow(person.metres() / meanStature, 3);
    double thickening = Math.sqrt(person.kilograms() / usual);
    return new Girths(person.sex(), person.metres(), Math.max(0.75, Math.min(1.5, thickening)));
  }

  /**
   * A depth from front to back.
   *
   * @param dimension as the survey calls it, as in "chestdepth"
   * @return metres
   */
  public double depth(String dimension) {
    return share(dimension) * stature * thickening;
  }

  /**
   * The diameter that belongs to a girth.
   *
   * @param girth as the survey calls it, as in "thighcircumference"
   * @return metres
   */
  public double diameter(String girth) {
    return share(girth) * stature * thickening / Math.PI;
  }

  /**
   * A length that does not grow with weight.
   *
   * @param dimension as the survey calls it, as in "handbreadth"
   * @return metres
   */
  public double length(String dimension) {
    return share(dimension) * stature;
  }

  private double share(String dimension) {
    return SURVEY.row(sex.word(), dimension).number("mean_frac_stature");
  }
}
