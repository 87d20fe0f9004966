package org.leverbook.body;

/** A part of the body whose length a coach may change. */
public enum Part {
  /** Foot length; the height of the ankle goes with it. */
  FOOT("feet"),
  /** Ankle to knee. */
  SHANK("shanks"),
  /** Knee to hip. */
  THIGH("thighs"),
  /** Hip axis to the base of the neck (C7/T1). */
  TRUNK("trunk"),
  /** Base of the neck to the head. */
  NECK("neck"),
  /** Shoulder to elbow. */
  UPPER_ARM("upper arms"),
  /** Elbow to wrist. */
  FOREARM("forearms"),
  /** Wrist to grip and fingertips. */
  HAND("hands"),
  /** Midline to shoulder joint. */
  SHOULDER_WIDTH("shoulder width"),
  /** Midline to hip joint. */
  HIP_WIDTH("hip width");

  private final String word;

  Part(String word) {
    this.word = word;
  }

  /**
   * The part in words.
   *
   * @return as in "thighs"
   */
  public String word() {
    return word;
  }
}
