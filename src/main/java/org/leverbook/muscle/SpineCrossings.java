package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;

/**
 * How the muscles of the trunk turn each level of the spine.
 *
 * <ul>
 *   <li>The long back muscles: share and arm at each level from {@code
 *       muscle/spine_extensors_by_level.csv}. Above its topmost level (T3/T4) the share there holds
 *       (assumption).
 *   <li>Their lumbar arms shorten as the lumbar spine bends forward, by the ratio that the table of
 *       arms gives for the whole mass of erectors between standing and 50 degrees; published: no
 *       more than 18 % (Macintosh, Bogduk and Pearcy 1993, abstract).
 *   <li>The abdominal wall's arms were measured lying; standing they are 1.3 times as long (McGill
 *       et al. 1996, abstract).
 *   <li>A level that a muscle passes, but for which nothing is listed, takes the value between its
 *       neighbours (assumption).
 *   <li>Fibres of the psoas begin evenly from T12/L1 to L5, those of the long neck extensors evenly
 *       from C7 to T6 (assumption).
 *   <li>The latissimus can extend the lumbar spine by 6.3 N·m in all (Bogduk, Johnson and Spalding
 *       1998, abstract); its share is cut to that, whoever pulls.
 * </ul>
 */
final class SpineCrossings {

  private static final double STANDING = 1.3;
  private static final double LATISSIMUS_LIMIT = 6.3;
  private static final double FULL_FLEXION = Math.toRadians(50);
  private static final List<String> ABDOMINAL =
      List.of("rectus_abdominis", "external_oblique", "internal_oblique");
  private static final List<String> NECK = List.of("semispinalis_capitis_cervicis", "splenius");

  private final SegmentTree tree;
  private final double scale;
  private final Coordinate lumbar;

  SpineCrossings(SegmentTree tree, double scale) {
    this.tree = tree;
    this.scale = scale;
    int[] angles =
        JointId.spine().stream()
            .filter(j -> j.compareTo(JointId.L1_L2) <= 0)
            .mapToInt(j -> tree.angleOf(j.word(), "flexion"))
            .toArray();
    lumbar = new Coordinate(angles, 1);
  }

  /** Where a long back muscle crosses, from the table by level. */
  private record Level(double area, double arm) {}

  /** The data, read once. */
  private static final class Read {
    static final Map<String, Map<JointId, Level>> BY_LEVEL =
        levels(DataTable.read("muscle/spine_extensors_by_level.csv"));
    static final Map<JointId, ArmCurve> BENT = bent(DataTable.read("muscle/moment_arms.csv"));
  }

  /**
   * The crossings of one muscle.
   *
   * @param muscle which
   * @param series its series; those of other joints are passed over
   * @param force its greatest pull in this person, newtons
   * @return one for each level, from below
   */
  List<Crossing> of(MuscleRow muscle, List<ArmSeries> series, double force) {
    TreeMap<JointId, ArmSeries> listed = new TreeMap<>();
    for (ArmSeries one : series) {
      if (one.joint().startsWith("spine_")) {
        listed.put(joint(one.joint().substring("spine_".length())), one);
      }
    }
    List<Crossing> crossings = new ArrayList<>();
    if (listed.isEmpty()) {
      return crossings;
    }
    for (JointId level : JointId.values()) {
      boolean passed =
          level.compareTo(listed.firstKey()) >= 0 && level.compareTo(listed.lastKey()) <= 0;
      if (passed) {
        crossings.add(crossing(muscle, level, listed, force));
      }
    }
    return crossings;
  }

  private Crossing crossing(
      MuscleRow muscle, JointId level, TreeMap<JointId, ArmSeries> listed, double force) {
    ArmSeries series = listed.floorEntry(level).getValue();
    double arm = extension(muscle.key(), level, listed) * scale;
    double share = share(muscle, level);
    if (muscle.key().equals("latissimus_lumbar")) {
      // Both sides together.
      share = Math.min(share, LATISSIMUS_LIMIT / (2 * force * arm));
    }
    int axis = tree.angleOf(level.word(), "flexion");
    // The tables count extension as positive, the body flexion.
    ArmCurve curve = ArmCurve.through(new double[1], new double[] {-arm});
    PlainCrossing plain = PlainCrossing.of(axis, share, curve, lumbar, series);
    boolean shortens = Read.BY_LEVEL.containsKey(muscle.key()) && Read.BENT.containsKey(level);
    return shortens ? plain.shortenedBy(Read.BENT.get(level), lumbar) : plain;
  }

  /** The arm of extension at a level, metres, reference man. */
  private static double extension(String key, JointId level, TreeMap<JointId, ArmSeries> listed) {
    Level known = Read.BY_LEVEL.getOrDefault(key, Map.of()).get(level);
    if (known != null) {
      return known.arm();
    }
    Map.Entry<JointId, ArmSeries> below = listed.floorEntry(level);
    Map.Entry<JointId, ArmSeries> above = listed.ceilingEntry(level);
    double low = below.getValue().curve().at(0);
    double high = above.getValue().curve().at(0);
    int span = above.getKey().ordinal() - below.getKey().ordinal();
    double part = span == 0 ? 0 : (level.ordinal() - below.getKey().ordinal()) / (double) span;
    double arm = low + part * (high - low);
    return ABDOMINAL.contains(key) ? STANDING * arm : arm;
  }

  private static double share(MuscleRow muscle, JointId level) {
    TreeMap<JointId, Level> known =
        new TreeMap<>(Read.BY_LEVEL.getOrDefault(muscle.key(), Map.of()));
    if (!known.isEmpty()) {
      Map.Entry<JointId, Level> here = known.floorEntry(level);
      // The file's areas are rounded otherwise than the table's: never more than the whole.
      return Math.min(1, here.getValue().area() / muscle.area());
    }
    if (muscle.key().equals("psoas_major")) {
      return (JointId.L1_L2.ordinal() - level.ordinal() + 1) / 5.0;
    }
    if (NECK.contains(muscle.key()) && level.compareTo(JointId.C7_T1) <= 0) {
      // Of seven vertebrae, C7 to T6, those below the level.
      return (level.ordinal() - JointId.T6_T7.ordinal()) / 7.0;
    }
    return 1;
  }

  private static JointId joint(String word) {
    if (word.equals("head_neck")) {
      return JointId.HEAD;
    }
    for (JointId id : JointId.values()) {
      if (id.word().equals(word)) {
        return id;
      }
    }
    throw new org.leverbook.quantity.Refused(
        "The tables of muscles name a level \"" + word + "\", which the spine does not have.");
  }

  private static Map<String, Map<JointId, Level>> levels(DataTable table) {
    Map<String, Map<JointId, Level>> levels = new TreeMap<>();
    for (DataRow row : table.rows()) {
      Level level = new Level(row.number("pcsa_crossing_cm2") / 1e4, row.number("arm_m"));
      levels
          .computeIfAbsent(row.text("muscle"), k -> new TreeMap<>())
          .put(joint(row.text("level")), level);
    }
    return levels;
  }

  /** For each lumbar level, what is left of an erector's arm while the spine bends. */
  private static Map<JointId, ArmCurve> bent(DataTable arms) {
    Map<JointId, ArmCurve> curves = new TreeMap<>();
    Map<String, Double> upright = new TreeMap<>();
    for (DataRow row : arms.rows()) {
      if (row.is("muscle", "erector_spinae_mass") && row.is("angle_deg", "0")) {
        upright.put(row.text("joint"), row.number("moment_arm_m"));
      }
    }
    for (DataRow row : arms.rows()) {
      if (row.is("muscle", "erector_spinae_mass") && row.is("angle_deg", "50")) {
        double left = row.number("moment_arm_m") / upright.get(row.text("joint"));
        curves.put(
            joint(row.text("joint").substring("spine_".length())),
            ArmCurve.through(new double[] {0, FULL_FLEXION}, new double[] {1, left}));
      }
    }
    return curves;
  }
}
