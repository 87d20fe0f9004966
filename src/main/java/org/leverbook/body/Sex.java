package org.leverbook.body;

/** The sex of the sample from which lengths and masses are taken. */
public enum Sex {
  /** Men. */
  MALE,
  /** Women. */
  FEMALE;

  /**
   * The word used in the published tables.
   *
   * @return male or female
   */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
