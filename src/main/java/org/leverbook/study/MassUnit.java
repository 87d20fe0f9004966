package org.leverbook.study;

/** In which unit the masses of a club's list are read. */
enum MassUnit {
  /** As the heading says; asked about where that cannot be. */
  AS_WRITTEN(0),
  /** Kilograms, whatever the heading says and however heavy the lifters. */
  KILOGRAMS(1),
  /** Pounds, whatever the heading says and however heavy the lifters. */
  POUNDS(ClubHeading.POUND);

  private final double kilograms;

  MassUnit(double kilograms) {
    this.kilograms = kilograms;
  }

  /** From a number of the column to kilograms. */
  double factor(ClubHeading mass) {
    return this == AS_WRITTEN ? mass.factor() : kilograms;
  }
}
