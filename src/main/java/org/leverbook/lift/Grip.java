package org.leverbook.lift;

/** Which way the hands take a bar or handle. */
public enum Grip {
  /** Palms towards the lifter where the arms hang: knuckles ahead. */
  OVERHAND("overhand", -1, 150),
  /** Palms away from the lifter where the arms hang. */
  UNDERHAND("underhand", 1, 10),
  /** Palms facing each other. */
  NEUTRAL("neutral", 0, 80);

  private final String word;
  private final int across;
  private final double pronation;

  Grip(String word, int across, double pronation) {
    this.word = word;
    this.across = across;
    this.pronation = Math.toRadians(pronation);
  }

  /**
   * What a coach calls it.
   *
   * @return as in "overhand"
   */
  public String word() {
    return word;
  }

  /** Which way the hand's own z axis runs along a bar from left to right; 0 for none. */
  int across() {
    return across;
  }

  /**
   * How far the forearm is turned from palm forward, radians; the shoulder gives the rest. Common
   * practice, no source.
   */
  double pronation() {
    return pronation;
  }
}
