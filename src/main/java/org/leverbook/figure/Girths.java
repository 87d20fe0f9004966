package org.leverbook.figure;

import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.data.DataTable;

/**
 * How thick a person's parts are, for drawing only: no moment depends on it.
 *
 * <p>Survey means as shares of stature, from {@code body/population_anthropometry.csv} (ANSUR II,
 * Gordon et al. 2014); girths are turned into the diameter of a circle of that girth. A person
 * heavier than the survey's mean at this stature is drawn thicker: at the same length, volume goes
 * with the square of thickness, so thickness goes with the root of mass over stature.
 */
final class Girths {

  private static final DataTable SURVEY = DataTable.read("body/population_anthropometry.csv");

  private final Sex sex;
  private final double stature;
  private final double thickening;

  private Girths(Sex sex, double stature, double thickening) {
    this.sex = sex;
    this.stature = stature;
    this.thickening = thickening;
  }

  static Girths of(Person person) {
    String sex = person.sex().word();
    double meanMass =
        SURVEY.only("mass", r -> r.is("sex", sex) && r.is("dimension", "mass")).number("mean");
    double meanStature =
        SURVEY
            .only("stature", r -> r.is("sex", sex) && r.is("dimension", "stature"))
            .number("mean");
    double usual = meanMass * Math.pow(person.metres() / meanStature, 3);
    double thickening = Math.sqrt(person.kilograms() / usual);
    return new Girths(person.sex(), person.metres(), Math.max(0.75, Math.min(1.5, thickening)));
  }

  /** A depth from front to back, metres. */
  double depth(String dimension) {
    return share(dimension) * stature * thickening;
  }

  /** The diameter that belongs to a girth, metres. */
  double diameter(String girth) {
    return share(girth) * stature * thickening / Math.PI;
  }

  /** A length that does not grow with weight, metres. */
  double length(String dimension) {
    return share(dimension) * stature;
  }

  private double share(String dimension) {
    return SURVEY
        .only(dimension, r -> r.is("sex", sex.word()) && r.is("dimension", dimension))
        .number("mean_frac_stature");
  }
}
