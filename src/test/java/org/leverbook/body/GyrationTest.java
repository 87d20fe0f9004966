package org.leverbook.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;

/** How the mass of each segment is spread, against the worked numbers of the published tables. */
class GyrationTest {

  private static double inertia(SegmentTree tree, String segment, Vector3D axis) {
    Segment found = tree.segment(tree.indexOf(segment));
    double radius = Math.abs(found.radii().dotProduct(axis));
    return found.mass() * radius * radius;
  }

  /** Winter 2009, Table 4.1: thigh of an 80 kg man, 8.0 kg (0.323 L)² with our own thigh length. */
  @Test
  void winters_thigh_resists_turning_across_the_bone_with_his_radius() {
    Body body = Body.of(Person.of(Sex.MALE, kg(80), cm(180)).weighedBy(SegmentTable.WINTER_2009));
    double expected = 8.0 * Math.pow(0.323 * body.links().thigh(), 2);
    assertThat(inertia(body.tree(), "right thigh", Vector3D.PLUS_K))
        .isCloseTo(expected, within(1e-6));
    // A round bar of 1050 kg/m3: m²/(2 pi d L).
    assertThat(inertia(body.tree(), "right thigh", Vector3D.PLUS_J))
        .isCloseTo(64 / (2 * Math.PI * 1050 * body.links().thigh()), within(1e-6));
  }

  /**
   * De Leva 1996, Table 4: shank of a 60 kg woman, 2.886 kg (0.263 L)², variant between the joint
   * centres, with our own shank length; masses are divided by their sum of 0.9999.
   */
  @Test
  void de_levas_shank_resists_turning_across_the_bone_with_her_radius() {
    Body body = Body.of(Person.of(Sex.FEMALE, kg(60), cm(165)));
    double expected = 2.886 / 0.9999 * Math.pow(0.263 * body.links().shank(), 2);
    assertThat(inertia(body.tree(), "left shank", Vector3D.PLUS_K))
        .isCloseTo(expected, within(1e-5));
  }

  /**
   * De Leva 1996, Table 4 prints for a man's whole trunk (suprasternale to mid-hip, 0.3055 of
   * stature) 0.372, 0.347 and 0.191 of its length about sagittal, transverse and longitudinal axis.
   * Slices and pelvis put together again come near: the slices' centres lie where Pearsall et al.
   * have them, and their joints along the spine's curve.
   */
  @Test
  void slices_put_together_again_resist_turning_like_the_published_trunk() {
    Body body = Body.of(Person.of(Sex.MALE, kg(73), cm(174.1)));
    SegmentTree tree = body.tree();
    Placement where = Pose.neutral(tree).placed();
    double mass = 0;
    Vector3D centre = Vector3D.ZERO;
    for (int i = 0; i < tree.size(); i++) {
      if (trunk(tree.segment(i))) {
        mass += tree.segment(i).mass();
        centre = centre.add(where.centreOfMass(i).scalarMultiply(tree.segment(i).mass()));
      }
    }
    centre = centre.scalarMultiply(1 / mass);
    double[] sums = new double[3];
    for (int i = 0; i < tree.size(); i++) {
      Segment segment = tree.segment(i);
      if (trunk(segment)) {
        double[] d = where.centreOfMass(i).subtract(centre).toArray();
        double[] r = segment.radii().toArray();
        for (int k = 0; k < 3; k++) {
          double a = d[(k + 1) % 3];
          double b = d[(k + 2) % 3];
          sums[k] += segment.mass() * (r[k] * r[k] + a * a + b * b);
        }
      }
    }
    double length = 0.3055 * 1.741;
    double sagittal = Math.sqrt(sums[0] / mass) / length;
    double longitudinal = Math.sqrt(sums[1] / mass) / length;
    double transverse = Math.sqrt(sums[2] / mass) / length;
    // A tenth: two sources and a curved spine.
    assertThat(sagittal).isCloseTo(0.372, within(0.037));
    assertThat(transverse).isCloseTo(0.347, within(0.035));
    assertThat(longitudinal).isCloseTo(0.191, within(0.019));
  }

  private static boolean trunk(Segment segment) {
    return segment.name().equals("pelvis") || segment.name().matches("[LT][0-9]+");
  }

  @Test
  void no_segment_is_flatter_than_a_plate_in_either_table() {
    for (Sex sex : Sex.values()) {
      for (SegmentTable table : SegmentTable.values()) {
        SegmentTree tree = Body.of(Person.of(sex, kg(70), cm(172)).weighedBy(table)).tree();
        for (Segment segment : tree.segments()) {
          double[] r = segment.radii().toArray();
          double all = r[0] * r[0] + r[1] * r[1] + r[2] * r[2];
          for (double one : r) {
            assertThat(one).as(segment.name()).isGreaterThanOrEqualTo(0);
            // Of three mean squares none exceeds the sum of the other two, but for rounding in
            // print.
            assertThat(one * one).as(segment.name()).isLessThan(0.51 * all + 1e-12);
          }
          assertThat(segment.mass() == 0 || all > 0).as(segment.name()).isTrue();
        }
      }
    }
  }
}
