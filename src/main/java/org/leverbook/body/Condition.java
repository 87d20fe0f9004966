package org.leverbook.body;

import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * What besides build decides how strong a person is. It changes neither lengths nor masses.
 *
 * @param years age, 18 to 80
 * @param training how much the person has trained with weights
 */
public record Condition(int years, Training training) {

  /** Where nothing is said: the age of most people measured, and untrained as they were. */
  public static final Condition USUAL = new Condition(25, Training.UNTRAINED);

  /** The measurements of strength against angle begin at 18; those against age end at 80. */
  private static final int YOUNGEST = 18;

  private static final int OLDEST = 80;

  /** Checks both. */
  public Condition {
    Ask.present("training", training, "TRAINED");
    if (years < YOUNGEST || years > OLDEST) {
      throw new Refused(
          "The age is "
              + years
              + " years, but the published strengths are of people between "
              + YOUNGEST
              + " and "
              + OLDEST
              + ".");
    }
  }

  /** The words added to a person's; empty where nothing was said. */
  String words() {
    String age = years == USUAL.years ? "" : ", " + years + " years";
    return age + (training == USUAL.training ? "" : ", " + training.word());
  }
}
