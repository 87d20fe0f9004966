package org.leverbook.figure;

import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Girths;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.pose.Placement;

/**
 * Pelvis, trunk, shoulders, neck and head as broad as they are: elliptic sections with the survey's
 * breadths. How breadth changes between the measured places is drawn by eye (no source).
 */
final class FrontTrunk {

  private final Body body;
  private final Placement where;
  private final Girths girths;
  private final Loft loft;

  FrontTrunk(Body body, Placement where, Girths girths, Sight sight) {
    this.body = body;
    this.where = where;
    this.girths = girths;
    this.loft = new Loft(sight);
  }

  Area area() {
    List<Loft.Section> trunk = new ArrayList<>(pelvis());
    List<TrunkOutline.Depth> depths = TrunkOutline.depths(girths);
    List<Double> breadths = breadths();
    for (int i = 0; i < depths.size(); i++) {
      trunk.add(level(depths.get(i), breadths.get(i)));
    }
    Area area = loft.through(trunk);
    area.add(shoulders(trunk));
    area.add(head());
    return area;
  }

  private List<Loft.Section> pelvis() {
    double depth = 0.46 * girths.depth("buttockdepth");
    double half = 0.5 * girths.depth("hipbreadth");
    return List.of(
        section(0, -0.75 * depth, 0.7 * depth, 0.62 * half),
        section(0, -0.40 * depth, depth, 0.88 * half),
        section(0, 0, depth, half),
        section(0, 0.45 * depth, depth, 0.96 * half));
  }

  /** Half-breadths at the levels of {@link TrunkOutline#depths}, metres. */
  private List<Double> breadths() {
    double waist = 0.5 * girths.depth("waistbreadth");
    double chest = 0.5 * girths.depth("chestbreadth");
    double neck = 0.5 * girths.diameter("neckcircumference");
    return List.of(
        0.98 * waist,
        0.94 * waist,
        0.94 * waist,
        0.94 * chest,
        chest,
        chest,
        0.86 * chest,
        1.15 * neck,
        0.98 * neck,
        0.96 * neck);
  }

  private Loft.Section level(TrunkOutline.Depth depth, double half) {
    int vertebra = where.tree().distalOf(depth.level().on(Side.MIDLINE));
    double thick = (depth.front() + depth.back()) / 2;
    Vector3D middle =
        where.toWorld(vertebra, new Vector3D((depth.front() - depth.back()) / 2, 0, 0));
    return section(vertebra, middle, thick, half);
  }

  private Loft.Section section(int segment, double up, double thick, double half) {
    return section(segment, where.toWorld(segment, new Vector3D(0, up, 0)), thick, half);
  }

  private Loft.Section section(int segment, Vector3D middle, double thick, double half) {
    return new Loft.Section(
        middle,
        where.frame(segment).x().scalarMultiply(thick),
        where.frame(segment).z().scalarMultiply(half));
  }

  /** From the root of the neck and the upper ribs out to each shoulder. */
  private Area shoulders(List<Loft.Section> trunk) {
    double radius = 0.52 * girths.diameter("bicepscircumferenceflexed");
    int neck = trunk.size() - 3;
    Area area = new Area();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Loft.Section cap = loft.ball(where.centre(JointId.SHOULDER.on(side)), radius);
      Loft.Section root = trunk.get(neck);
      area.add(
          loft.through(
              List.of(
                  new Loft.Section(
                      root.centre(),
                      root.one().scalarMultiply(0.5),
                      root.other().scalarMultiply(0.8)),
                  cap,
                  trunk.get(neck - 2))));
    }
    return area;
  }

  /** A plain egg; length and breadth are measured. */
  private Area head() {
    int head = where.tree().distalOf(JointId.HEAD.word());
    double half = 0.5 * girths.length("headbreadth");
    double deep = 0.5 * girths.length("headlength");
    double up = body.links().head();
    double neck = 0.48 * girths.diameter("neckcircumference");
    // Shares of the height above the joint of the head, and of the breadth there.
    double[][] egg = {
      {-0.22, 0.46},
      {-0.10, 0.66},
      {0.15, 0.88},
      {0.45, 1.00},
      {0.65, 0.98},
      {0.82, 0.80},
      {0.94, 0.50},
      {1.00, 0.20}
    };
    List<Loft.Section> sections = new ArrayList<>();
    for (double[] e : egg) {
      sections.add(section(head, e[0] * up, e[1] * deep, e[1] * half));
    }
    Area area = loft.through(sections);
    int throat = where.tree().distalOf(JointId.C3_C4.word());
    area.add(
        loft.through(List.of(section(throat, 0, neck, neck), section(head, 0.1 * up, neck, neck))));
    return area;
  }
}
