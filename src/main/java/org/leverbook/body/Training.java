package org.leverbook.body;

import org.leverbook.quantity.Refused;

/**
 * How much a person has trained with weights: a small scale of our own. What each level is worth at
 * each joint stands with its sources in {@code strength/training_levels.csv}.
 */
public enum Training {
  /** A healthy adult who does not train with weights: the people that most tables measured. */
  UNTRAINED("untrained"),
  /** Has trained with weights for a year or more. */
  TRAINED("trained"),
  /** Competes in strength sports at national level. */
  COMPETITIVE("competitive");

  private final String word;

  Training(String word) {
    this.word = word;
  }

  /**
   * The level as a word.
   *
   * @return as in "trained"
   */
  public String word() {
    return word;
  }

  /**
   * A level by its number.
   *
   * <p>{@code level(2)} is {@code TRAINED}; {@code level(0)} is refused: "The training level is 0,
   * but must be 1 (untrained), 2 (trained) or 3 (competitive)."
   *
   * @param number 1, 2 or 3
   * @return the level
   * @throws Refused if the number is another
   */
  public static Training level(int number) {
    if (number < 1 || number > values().length) {
      throw new Refused(
          "The training level is "
              + number
              + ", but must be 1 (untrained), 2 (trained) or 3 (competitive).");
    }
    return values()[number - 1];
  }
}
