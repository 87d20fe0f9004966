package org.leverbook.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;

/**
 * What a coach knows beside the marks.
 *
 * @param standing whether both feet stand flat on level ground
 * @param stanceWidth between the ankles, metres
 * @param turnOut of each foot, radians
 * @param gripWidth between the hands, metres
 * @param hands what they hold
 * @param nearer pairs of places, the first nearer to the camera than the second
 * @param planted where each ankle stays, for a lift over time; empty for a photo
 * @param toTheRight which way the lifter's right points, for a lift over time
 */
record Known(
    boolean standing,
    Optional<Double> stanceWidth,
    Optional<Double> turnOut,
    Optional<Double> gripWidth,
    Hands hands,
    List<Pair> nearer,
    Map<Side, Vector3D> planted,
    Optional<Vector3D> toTheRight) {

  /** What the hands hold. */
  enum Hands {
    /** Most lifts hold a bar. */
    UNSAID,
    /** One straight bar. */
    ON_BAR,
    /** Each its own weight. */
    APART
  }

  /** Two places by name. */
  record Pair(Landmark one, Side oneSide, Landmark other, Side otherSide) {}

  /** Keeps its own copies. */
  Known {
    nearer = List.copyOf(nearer);
    planted = Map.copyOf(planted);
  }

  static Known nothing() {
    return new Known(
        true,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Hands.UNSAID,
        List.of(),
        Map.of(),
        Optional.empty());
  }

  Known offTheFloor() {
    return new Known(false, stanceWidth, turnOut, gripWidth, hands, nearer, planted, toTheRight);
  }

  Known stanceWidth(double metres) {
    return new Known(
        standing, Optional.of(metres), turnOut, gripWidth, hands, nearer, planted, toTheRight);
  }

  Known turnOut(double radians) {
    return new Known(
        standing, stanceWidth, Optional.of(radians), gripWidth, hands, nearer, planted, toTheRight);
  }

  Known gripWidth(double metres) {
    return new Known(
        standing,
        stanceWidth,
        turnOut,
        Optional.of(metres),
        Hands.ON_BAR,
        nearer,
        planted,
        toTheRight);
  }

  /** Each hand holds its own weight. */
  Known handsApart() {
    return new Known(
        standing, stanceWidth, turnOut, Optional.empty(), Hands.APART, nearer, planted, toTheRight);
  }

  Known nearer(List<Pair> pairs) {
    return new Known(standing, stanceWidth, turnOut, gripWidth, hands, pairs, planted, toTheRight);
  }

  Known nearer(Pair pair) {
    List<Pair> more = new ArrayList<>(nearer);
    more.add(pair);
    return new Known(standing, stanceWidth, turnOut, gripWidth, hands, more, planted, toTheRight);
  }

  Known planted(Map<Side, Vector3D> ankles, Vector3D right) {
    return new Known(
        standing, stanceWidth, turnOut, gripWidth, hands, nearer, ankles, Optional.of(right));
  }
}
