package org.leverbook.body;

import java.util.HashMap;
import java.util.Map;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Recent;

/**
 * Shares of body mass and centres of mass of one published table, brought to the segments of {@link
 * Body}.
 *
 * <p>Limbs are taken as printed. Trunk, neck and head are divided by level with {@code
 * body/spine_levels.csv}: for de Leva by its columns, which add up to de Leva's head and trunk; for
 * Winter by scaling the same slices in blocks (thorax T1-T12, abdomen L1-L4, pelvis with L5, head
 * with neck) to Winter's masses. Shares are divided by their sum, which rounding leaves at 0.9999
 * to 1, so that they add up to the person's mass.
 */
final class SegmentMasses {

  /**
   * Share of body mass (one side) and centre of mass as fraction of length from the proximal end.
   */
  record Limb(double share, double along) {}

  private static final DataTable LEVELS = DataTable.read("body/spine_levels.csv");
  private static final DataTable DE_LEVA = DataTable.read("body/segments_de_leva_1996.csv");
  private static final DataTable WINTER = DataTable.read("body/segments_winter_dempster.csv");

  /** Which of the few there are. */
  private record Kind(SegmentTable table, Sex sex) {}

  private static final Recent<Kind, SegmentMasses> KNOWN =
      new Recent<>(
          SegmentTable.values().length * Sex.values().length, kind -> read(kind.table, kind.sex));

  private final Map<String, Limb> limbs = new HashMap<>();
  private final Map<String, Double> slices = new HashMap<>();

  private SegmentMasses() {}

  static SegmentMasses of(SegmentTable table, Sex sex) {
    return KNOWN.get(new Kind(table, sex));
  }

  private static SegmentMasses read(SegmentTable table, Sex sex) {
    SegmentMasses masses = new SegmentMasses();
    if (table == SegmentTable.DE_LEVA_1996) {
      masses.readDeLeva(sex);
    } else {
      masses.readWinter();
    }
    masses.normalise();
    return masses;
  }

  /** A limb's share and centre; names as in "upper arm". */
  Limb limb(String name) {
    return limbs.get(name);
  }

  /** The share of one slice of the trunk, neck or head; names as in "L5", "pelvis", "head". */
  double slice(String level) {
    return slices.get(level);
  }

  private void readDeLeva(Sex sex) {
    // Variant b of the shank runs from knee to ankle centre, the others join the joint centres too.
    String[][] rows = {
      {"upper arm", "upper_arm", "a"}, {"forearm", "forearm", "a"}, {"hand", "hand", "a"},
      {"thigh", "thigh", "a"}, {"shank", "shank", "b"}, {"foot", "foot", "a"}
    };
    for (String[] row : rows) {
      DataRow found =
          DE_LEVA.only(
              sex.word() + " " + row[1],
              r -> r.is("sex", sex.word()) && r.is("segment", row[1]) && r.is("variant", row[2]));
      limbs.put(
          row[0],
          new Limb(found.number("mass_pct") / 100, found.number("com_pct_from_proximal") / 100));
    }
    for (DataRow row : LEVELS.rows()) {
      slices.put(row.text("level"), row.number("slice_mass_pct_" + sex.word()) / 100);
    }
  }

  private void readWinter() {
    String[] names = {"upper arm", "forearm", "hand", "thigh", "shank", "foot"};
    for (String name : names) {
      String segment = name.replace(' ', '_');
      DataRow row = WINTER.only(segment, r -> r.is("segment", segment));
      limbs.put(name, new Limb(row.number("mass_frac"), row.number("com_frac_proximal")));
    }
    for (DataRow row : LEVELS.rows()) {
      String level = row.text("level");
      slices.put(
          level,
          level.startsWith("C") || level.equals("head")
              ? row.number("slice_mass_pct_male")
              : row.number("slice_mass_pct_pearsall"));
    }
    scaleBlock("thorax", "T([1-9]|1[0-2])");
    scaleBlock("abdomen", "L[1-4]");
    scaleBlock("pelvis", "L5|pelvis");
    scaleBlock("head_neck", "C[1-7]|head");
  }

  private void scaleBlock(String winterSegment, String levels) {
    double block =
        WINTER.only(winterSegment, r -> r.is("segment", winterSegment)).number("mass_frac");
    double sum =
        slices.entrySet().stream()
            .filter(e -> e.getKey().matches(levels))
            .mapToDouble(Map.Entry::getValue)
            .sum();
    slices.replaceAll((level, share) -> level.matches(levels) ? share * block / sum : share);
  }

  /**
   * The same for a body that differs from its kind; shares are brought to their sum again. Slices
   * vary with the part of trunk or head in which {@link Gyration} has them.
   */
  SegmentMasses varied(Variation v) {
    if (v.sizes().isEmpty()) {
      return this;
    }
    SegmentMasses masses = new SegmentMasses();
    limbs.forEach(
        (name, limb) ->
            masses.limbs.put(
                name,
                new Limb(
                    limb.share() * v.factor(Variation.Trait.MASS, name),
                    limb.along() + v.shift(Variation.Trait.CENTRE, name))));
    slices.forEach(
        (level, share) ->
            masses.slices.put(level, share * v.factor(Variation.Trait.MASS, part(level))));
    masses.normalise();
    return masses;
  }

  private static String part(String level) {
    if (level.startsWith("C") || level.equals("head")) {
      return "head and neck";
    }
    if (level.matches("L5|pelvis")) {
      return "lower trunk";
    }
    return level.matches("T[1-9]") ? "upper trunk" : "mid trunk";
  }

  private void normalise() {
    double sum =
        2 * limbs.values().stream().mapToDouble(Limb::share).sum()
            + slices.values().stream().mapToDouble(Double::doubleValue).sum();
    limbs.replaceAll((name, limb) -> new Limb(limb.share() / sum, limb.along()));
    slices.replaceAll((level, share) -> share / sum);
  }
}
