package org.leverbook.figure;

import java.awt.Shape;
import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Body;
import org.leverbook.body.Girths;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.pose.Placement;

/** Pelvis, trunk along the levels of the spine, neck and head. */
final class TrunkOutline {

  /** Levels that carry the outline, and how deep the trunk is there. */
  record Depth(JointId level, double back, double front) {}

  private final Body body;
  private final Placement where;
  private final Girths girths;
  private final Sight sight;

  TrunkOutline(Body body, Placement where, Girths girths, Sight sight) {
    this.sight = sight;
    this.body = body;
    this.where = where;
    this.girths = girths;
  }

  Area area() {
    Area area = new Area(trunk());
    area.add(new Area(head()));
    return area;
  }

  /** From the seat up the back to the base of the neck, and down the front to the groin. */
  private Shape trunk() {
    double buttock = girths.depth("buttockdepth");
    List<Vector2D> around = new ArrayList<>();
    // In the pelvis: seat behind and below the hip joint, then the skin over the sacrum.
    around.add(pelvis(0.02 * buttock, -0.36 * buttock));
    around.add(pelvis(-0.26 * buttock, -0.32 * buttock));
    around.add(pelvis(-0.46 * buttock, -0.05 * buttock));
    around.add(pelvis(-0.45 * buttock, 0.18 * buttock));
    List<Depth> depths = depths(girths);
    depths.forEach(d -> around.add(beside(d.level(), -d.back())));
    for (int i = depths.size() - 1; i >= 0; i--) {
      around.add(beside(depths.get(i).level(), depths.get(i).front()));
    }
    around.add(pelvis(0.40 * buttock, 0.16 * buttock));
    around.add(pelvis(0.26 * buttock, -0.16 * buttock));
    return Curves.closed(around);
  }

  /** Shares of the measured depths to back and front are drawn by eye (no source). */
  static List<Depth> depths(Girths girths) {
    double waist = girths.depth("waistdepth");
    double chest = girths.depth("chestdepth");
    double neck = girths.diameter("neckcircumference");
    return List.of(
        new Depth(JointId.L5_S1, 0.33 * waist, 0.66 * waist),
        new Depth(JointId.L3_L4, 0.31 * waist, 0.67 * waist),
        new Depth(JointId.L1_L2, 0.30 * waist, 0.66 * waist),
        new Depth(JointId.T11_T12, 0.28 * chest, 0.66 * chest),
        new Depth(JointId.T8_T9, 0.27 * chest, 0.72 * chest),
        new Depth(JointId.T5_T6, 0.26 * chest, 0.70 * chest),
        new Depth(JointId.T3_T4, 0.26 * chest, 0.55 * chest),
        new Depth(JointId.T1_T2, 0.25 * chest, 0.36 * chest),
        new Depth(JointId.C6_C7, 0.53 * neck, 0.62 * neck),
        new Depth(JointId.C3_C4, 0.42 * neck, 0.46 * neck));
  }

  /** A plain profile; its length is measured, its features are drawn by eye. */
  private Shape head() {
    int head = where.tree().distalOf(JointId.HEAD.word());
    double long1 = girths.length("headlength");
    double up = body.links().head();
    // Shares of head length forward and of the height of the head above its joint, from the crown
    // round by the face; the last but five lie in the neck.
    double[][] profile = {
      {0.12, 1.00},
      {0.40, 0.90},
      {0.545, 0.66},
      {0.565, 0.45},
      {0.555, 0.33},
      {0.655, 0.14},
      {0.575, 0.06},
      {0.590, -0.06},
      {0.565, -0.12},
      {0.575, -0.28},
      {0.490, -0.37},
      {0.30, -0.32},
      {0.20, -0.50},
      {-0.27, -0.62},
      {-0.35, -0.28},
      {-0.38, 0.12},
      {-0.43, 0.50},
      {-0.36, 0.80},
      {-0.16, 0.96},
    };
    List<Vector2D> around = new ArrayList<>();
    for (double[] p : profile) {
      Vector3D local = new Vector3D(p[0] * long1, p[1] * up, 0);
      around.add(sight.seen(where.toWorld(head, local)));
    }
    return Curves.closed(around);
  }

  private Vector2D pelvis(double forward, double up) {
    return sight.seen(where.toWorld(0, new Vector3D(forward, up, 0)));
  }

  /** A point level with a joint of the spine, so far in front of it (negative: behind). */
  private Vector2D beside(JointId level, double forward) {
    int vertebra = where.tree().distalOf(level.on(Side.MIDLINE));
    return sight.seen(where.toWorld(vertebra, new Vector3D(forward, 0, 0)));
  }
}
