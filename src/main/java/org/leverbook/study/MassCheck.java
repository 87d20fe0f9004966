package org.leverbook.study;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.quantity.Refused;

/**
 * Whether masses can be in the unit that a heading says. Each is compared with the mass that goes
 * with the stature in the survey. Where half of the list is nearer to 2.2 times that than to it
 * (√2.2 = 1.48 times), the unit is asked about; where a single one is 1.8 times as heavy, its row
 * is. The limits are ours: no source.
 */
final class MassCheck {

  private static final double HALF_OF_THEM = Math.sqrt(1 / ClubHeading.POUND);
  private static final double ONE_ALONE = 1.8;

  /** In a shorter list the median is one lifter. */
  private static final int LIST = 3;

  private final MassUnit unit;
  private final ClubHeading heading;
  private final DoubleStream.Builder ratios = DoubleStream.builder();

  MassCheck(MassUnit unit, ClubHeading heading) {
    this.unit = unit;
    this.heading = heading;
  }

  private boolean pounds() {
    return heading.factor() == ClubHeading.POUND;
  }

  private static boolean adult(double metres) {
    return metres >= 1.2 && metres <= 2.3;
  }

  void add(Sex sex, OptionalDouble kilograms, OptionalDouble metres) {
    if (sex != null && kilograms.isPresent() && metres.isPresent() && adult(metres.getAsDouble())) {
      ratios.add(kilograms.getAsDouble() / Population.usualMass(sex, metres.getAsDouble()));
    }
  }

  /** What is to be asked about the column; empty where nothing is. */
  String question(String file) {
    double[] all = ratios.build().sorted().toArray();
    if (unit != MassUnit.AS_WRITTEN || all.length == 0) {
      return "";
    }
    double median = all[all.length / 2];
    double limit = all.length < LIST ? ONE_ALONE : HALF_OF_THEM;
    boolean heavy = !pounds() && median > limit;
    boolean light = pounds() && median < 1 / limit;
    if (!heavy && !light) {
      return "";
    }
    String says = heading.text();
    return String.format(
        Locale.ROOT,
        "%s: are the masses of the column \"%s\" %s? Read as %s they are %.1f times what people of"
            + " these statures weigh (median of %d; survey's mean for stature and sex). If so, write"
            + " mass (%s) in the heading or add .%s; if the heading is right, add .%s.",
        file,
        says,
        heavy ? "pounds" : "kilograms",
        heavy ? "kilograms" : "pounds",
        median,
        all.length,
        heavy ? "lb" : "kg",
        heavy ? "inPounds()" : "inKilograms()",
        heavy ? "inKilograms()" : "inPounds()");
  }

  /**
   * One lifter of a list whose other masses look right.
   *
   * @throws Refused if this mass looks as if it were in the other unit
   */
  void alone(Sex sex, double kilograms, double metres) {
    if (unit != MassUnit.AS_WRITTEN || !adult(metres)) {
      return;
    }
    double ratio = kilograms / Population.usualMass(sex, metres);
    boolean asked = pounds() ? ratio < 1 / ONE_ALONE : ratio > ONE_ALONE;
    if (asked && kilograms > 0) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "%.1f kg at %.1f cm is %.1f times what people of this stature weigh: is it in %s? If"
                  + " it is right, add .%s.",
              kilograms,
              100 * metres,
              ratio,
              pounds() ? "kilograms" : "pounds",
              pounds() ? "inPounds()" : "inKilograms()"));
    }
  }
}
