package org.leverbook.study;

/**
 * What came of one setting in the search for the best. The cost is what the search makes small: the
 * quantity asked for, with its sign turned where the highest is wanted.
 *
 * @param x first setting, in its unit
 * @param y second setting, in its unit; zero where only one is sought
 * @param cost larger than any other where nothing came of it, so that any comparison is right
 * @param wall what stood in the way
 * @param reason in the coach's words; empty where nothing stood in the way
 */
record Trial(double x, double y, double cost, Wall wall, String reason) {

  /** What may stand in the way of a setting. */
  enum Wall {
    /** Nothing. */
    NONE,
    /** A limit that the coach set. */
    LIMIT,
    /** It cannot be reached or held, or its quantity is not known. */
    IMPOSSIBLE
  }

  /** Two costs this close, as a share of their size, are one: the solver's own tolerance. */
  private static final double SAME = 1e-9;

  static Trial found(double x, double y, double cost) {
    return new Trial(x, y, cost, Wall.NONE, "");
  }

  static Trial blocked(double x, double y, Wall wall, String reason) {
    return new Trial(x, y, Double.POSITIVE_INFINITY, wall, reason);
  }

  boolean free() {
    return wall == Wall.NONE;
  }

  /** The cheaper one; this one where both cost the same. */
  Trial orBetter(Trial other) {
    return other.cost < cost ? other : this;
  }

  /** Whether this truly costs less, more than rounding can. */
  boolean trulyBelow(Trial other) {
    return free() && (!other.free() || cost < other.cost - slack(other));
  }

  /** Whether both cost the same, but for rounding. */
  boolean level(Trial other) {
    return free() && other.free() && Math.abs(cost - other.cost) <= slack(other);
  }

  private double slack(Trial other) {
    return SAME * Math.max(Math.abs(cost), Math.abs(other.cost));
  }
}
