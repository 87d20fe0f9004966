package org.leverbook.lift;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.Grasps;
import org.leverbook.load.HandWeights;

/**
 * Gives a posture what is lifted: what the coach said, or a usual mass for the lift as a share of
 * the lifter's own (common practice, no source: light enough for a technique lesson).
 */
final class Weights {

  /** Usual masses are whole steps of a rack, kilograms. */
  private static final double STEP = 2.5;

  private Weights() {}

  /**
   * A bar that rests on a site of both sides; its weight counts for the balance.
   *
   * @param p the posture
   * @param usual share of body mass
   * @param site where it rests
   * @return the bar
   */
  static Barbell bar(Posture p, double usual, Site site) {
    Barbell bar =
        (Barbell)
            p.setup()
                .main()
                .filter(Barbell.class::isInstance)
                .orElseGet(() -> new Barbell(said(p, usual), Barbell.STANDARD_PLATE_RADIUS));
    Barbell placed =
        new Barbell(bar.kilograms(), bar.plateRadius(), site, bar.kind(), bar.floorShare());
    if (placed.kilograms() > 0) {
      p.lifts(placed);
    }
    p.carries(placed.mass(), both(p, site));
    return placed;
  }

  /**
   * Weights in the hands; they count for the balance.
   *
   * @param p the posture
   * @param kind as in "dumbbell"
   * @param usual share of body mass of each
   * @param sides which hands hold one
   * @return the weights
   */
  static HandWeights hands(Posture p, String kind, double usual, List<Side> sides) {
    double each = said(p, usual);
    return held(
        p,
        new HandWeights(
            kind, sides.contains(Side.RIGHT) ? each : 0, sides.contains(Side.LEFT) ? each : 0));
  }

  /** What the coach said, or else the usual. */
  private static HandWeights held(Posture p, HandWeights usual) {
    HandWeights held =
        p.setup()
            .main()
            .filter(HandWeights.class::isInstance)
            .map(HandWeights.class::cast)
            .orElse(usual);
    if (held.mass() > 0) {
      p.lifts(held);
    }
    p.carries(held.right(), p.body().place(Site.HAND, Side.RIGHT));
    p.carries(held.left(), p.body().place(Site.HAND, Side.LEFT));
    return held;
  }

  /**
   * One weight in both hands; it counts for the balance.
   *
   * @param p the posture
   * @param kind as in "kettlebell"
   * @param usual share of body mass
   * @return the weight
   */
  static HandWeights inBothHands(Posture p, String kind, double usual) {
    double half = mass(p, usual) / 2;
    return held(p, new HandWeights(kind, half, half, true));
  }

  /** Weights in the hands only where the coach said so. */
  static void handsOrNothing(Posture p) {
    if (p.setup().main().isPresent()) {
      hands(p, "dumbbell", 0, List.of());
    }
  }

  /**
   * A cable from a last pulley to what holds its handle.
   *
   * @param p the posture
   * @param usual share of body mass
   * @param pulley in the world, metres
   * @param grasps where it is held
   * @return the cable
   */
  static Cable cable(Posture p, double usual, Vector3D pulley, Grasps grasps) {
    double stack =
        p.setup()
            .main()
            .filter(Cable.class::isInstance)
            .map(c -> ((Cable) c).kilograms())
            .orElseGet(() -> mass(p, usual));
    Cable cable = new Cable(stack, 1, 0, pulley, grasps);
    p.lifts(cable);
    return cable;
  }

  /** The mass lifted: what was said, also if that was nothing, or usual. */
  static double said(Posture p, double usual) {
    return p.setup().main().map(m -> m.mass()).orElseGet(() -> mass(p, usual));
  }

  static double mass(Posture p, double usual) {
    return Math.max(STEP, STEP * Math.round(usual * p.body().tree().mass() / STEP));
  }

  private static Place[] both(Posture p, Site site) {
    List<Place> places = new ArrayList<>();
    for (Side side : site.sides()) {
      places.add(p.body().place(site, side));
    }
    return places.toArray(new Place[0]);
  }
}
