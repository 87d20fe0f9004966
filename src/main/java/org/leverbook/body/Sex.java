package org.leverbook.body;

/** The sex of the sample from which lengths and masses are taken. */
public enum Sex {
  /** Men. */
  MALE("male"),
  /** Women. */
  FEMALE("female");

  private final String word;

  Sex(String word) {
    this.word = word;
  }

  /**
   * The word used in the published tables.
   *
   * @return male or female
   */
  public String word() {
    return word;
  }
}
