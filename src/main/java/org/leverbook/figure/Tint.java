package org.leverbook.figure;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.quantity.Refused;

/** The parts of a picture that have one colour each. */
enum Tint {
  /** The background. */
  PAPER("paper", 1),
  /** Text and lines of force. */
  INK("ink", Contrast.OF_TEXT),
  /** Secondary text, floor, scale bar. */
  QUIET("quiet", Contrast.OF_TEXT),
  /** Near parts of the body. */
  BODY("body", 1),
  /** Far limbs, and grounds behind bars. */
  FAR_BODY("far body", 1),
  /** The body's outline. */
  EDGE("edge", 1),
  /** The spine's line and joint marks. */
  SPINE("spine", 1),
  /** Bar and plates. */
  METAL("metal", Contrast.OF_LINES),
  /** Where a claim holds. */
  HOLDS("holds", Contrast.OF_TEXT),
  /** Where it does not. */
  FAILS("fails", Contrast.OF_TEXT),
  /** The lower end of an input. */
  LOW("low end", 1),
  /** Its upper end. */
  HIGH("high end", Contrast.OF_LINES),
  /** The bands of positive values, where they are strongest. */
  FLEXES("flexes", 1),
  /** The bands of negative values, where they are strongest. */
  EXTENDS("extends", 1);

  private final String word;
  private final double least;

  Tint(String word, double least) {
    this.word = word;
    this.least = least;
  }

  String word() {
    return word;
  }

  /** The least contrast to the paper; 1 where none is needed. */
  double least() {
    return least;
  }

  static Tint of(String word) {
    String asked = word.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(tint -> tint.word.equals(asked))
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "No part of a picture is called \""
                        + word
                        + "\"; there are "
                        + Arrays.stream(values()).map(Tint::word).collect(Collectors.joining(", "))
                        + "."));
  }
}
