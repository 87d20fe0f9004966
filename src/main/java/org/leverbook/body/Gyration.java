package org.leverbook.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;

/**
 * How the mass of each segment is spread: radii of gyration about lines through its centre of mass.
 *
 * <p>De Leva (1996) Table 4 prints three for each segment, as shares of its length: about the
 * sagittal axis (forward, our x), the transverse axis (sideways, our z) and the longitudinal axis
 * (along the bone: our y, and x for the foot). Winter (2009) Table 4.1 prints one, across the bone;
 * about the bone's own axis its segment is then taken as a round bar of the table's density d, of
 * which r² = m / (2 pi d L).
 *
 * <p>Slices of the trunk: from the three radii s, t, l of one trunk part follow its mean squares of
 * depth x² = (t² + l² - s²) / 2 and breadth z² = (s² + l² - t²) / 2. Every slice has the depth and
 * breadth of the part it lies in and fills its own height h evenly, y² = h² / 12; its radii are
 * then the roots of y² + z², x² + z², x² + y². Upper trunk T1 to T9, mid trunk T10 to L4, lower
 * trunk L5 and pelvis: the levels whose middle lies nearest by the heights of xiphion and navel in
 * {@code body/spine_levels.csv}. Winter's table prints none for the trunk, so depth and breadth are
 * de Leva's there too. Neck slices are round bars of 1110 kg/m3 (Winter's head and neck).
 */
final class Gyration {

  private static final Lookup DE_LEVA =
      new Lookup(DataTable.read("body/segments_de_leva_1996.csv"), "sex", "segment", "variant");
  private static final Lookup WINTER =
      new Lookup(DataTable.read("body/segments_winter_dempster.csv"), "segment");

  private final Person person;

  Gyration(Person person) {
    this.person = person;
  }

  /** A limb's radii; it hangs along -y from its joint. */
  Vector3D limb(String name, double length, double mass) {
    String segment = name.replace(' ', '_');
    if (person.table() == SegmentTable.WINTER_2009) {
      DataRow row = winter(segment);
      double across = length * row.number("rg_frac_com");
      double along = roundBar(mass, row.number("density_kg_m3"), length);
      return new Vector3D(across, along, across);
    }
    // As for the masses: variant b of the shank joins the joint centres.
    DataRow row = deLeva(segment, segment.equals("shank") ? "b" : "a");
    return new Vector3D(
        length * row.number("rg_sagittal_pct") / 100,
        length * row.number("rg_longitudinal_pct") / 100,
        length * row.number("rg_transverse_pct") / 100);
  }

  /** The foot's radii; its long axis points forward. */
  Vector3D foot(double length) {
    if (person.table() == SegmentTable.WINTER_2009) {
      DataRow row = winter("foot");
      double mass = person.kilograms() * row.number("mass_frac");
      double across = length * row.number("rg_frac_com");
      double along = roundBar(mass, row.number("density_kg_m3"), length);
      return new Vector3D(along, across, across);
    }
    DataRow row = deLeva("foot", "a");
    return new Vector3D(
        length * row.number("rg_longitudinal_pct") / 100,
        length * row.number("rg_sagittal_pct") / 100,
        length * row.number("rg_transverse_pct") / 100);
  }

  /** The head's radii. */
  Vector3D head() {
    DataRow row = deLeva("head", "a");
    return radii(row, person.metres() * row.number("length_frac_stature"));
  }

  /** The pelvis' radii: those of the lower trunk, of which it is most. */
  Vector3D pelvis(double trunkFactor) {
    DataRow row = deLeva("lower_trunk", "a");
    return radii(row, trunkFactor * person.metres() * row.number("length_frac_stature"));
  }

  /**
   * The radii of a slice of trunk or neck.
   *
   * @param joint the joint below it
   * @param height metres
   * @param mass kilograms
   */
  Vector3D slice(JointId joint, double height, double mass) {
    if (joint.compareTo(JointId.C7_T1) >= 0) {
      double density = winter("head_neck").number("density_kg_m3");
      double along = roundBar(mass, density, height);
      double across = Math.sqrt(along * along / 2 + height * height / 12);
      return new Vector3D(across, along, across);
    }
    String part =
        joint == JointId.L5_S1
            ? "lower_trunk"
            : joint.compareTo(JointId.T10_T11) <= 0 ? "mid_trunk" : "upper_trunk";
    DataRow row = deLeva(part, "a");
    Vector3D whole = radii(row, person.metres() * row.number("length_frac_stature"));
    double s = whole.getX() * whole.getX();
    double l = whole.getY() * whole.getY();
    double t = whole.getZ() * whole.getZ();
    double depth = (t + l - s) / 2;
    double breadth = (s + l - t) / 2;
    double high = height * height / 12;
    return new Vector3D(
        Math.sqrt(high + breadth), Math.sqrt(depth + breadth), Math.sqrt(high + depth));
  }

  private static double roundBar(double mass, double density, double length) {
    return length > 0 ? Math.sqrt(mass / (2 * Math.PI * density * length)) : 0;
  }

  private static Vector3D radii(DataRow row, double length) {
    return new Vector3D(
        length * row.number("rg_sagittal_pct") / 100,
        length * row.number("rg_longitudinal_pct") / 100,
        length * row.number("rg_transverse_pct") / 100);
  }

  private DataRow deLeva(String segment, String variant) {
    return DE_LEVA.row(person.sex().word(), segment, variant);
  }

  private static DataRow winter(String segment) {
    return WINTER.row(segment);
  }
}
