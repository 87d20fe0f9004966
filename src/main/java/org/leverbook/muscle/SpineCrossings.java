package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;

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
 *   <li>Side bending and turning: {@code muscle/trunk_side_arms.csv}, lumbar levels only, recalled
 *       or estimated. Above, and against flexors above L1/L2, nothing is known: those axes have no
 *       row, or no muscle in one direction.
 * </ul>
 */
final class SpineCrossings {

  private static final double STANDING = 1.3;
  private static final double LATISSIMUS_LIMIT = 6.3;
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

  /**
   * The crossings of one muscle.
   *
   * @param muscle which
   * @param side left or right
   * @param series its series; those of other joints are passed over
   * @param force its greatest pull in this person, newtons
   * @return one for each level, from below
   */
  List<Crossing> of(MuscleRow muscle, Side side, List<ArmSeries> series, double force) {
    TreeMap<JointId, ArmSeries> listed = new TreeMap<>();
    for (ArmSeries one : series) {
      if (one.joint().startsWith("spine_")) {
        listed.put(SpineTables.joint(one.joint().substring("spine_".length())), one);
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
        PlainCrossing bending = crossing(muscle, level, listed, force);
        crossings.add(bending);
        crossings.addAll(sideways(muscle.key(), side, level, bending.share()));
      }
    }
    return crossings;
  }

  /** Side bending and turning at a lumbar level: the file's arms, for the fibres that cross. */
  private List<Crossing> sideways(String key, Side side, JointId level, double share) {
    List<Crossing> crossings = new ArrayList<>();
    for (ArmSeries one : SpineTables.SIDEWAYS.getOrDefault(key, List.of())) {
      if (level.compareTo(JointId.L1_L2) <= 0) {
        int axis = tree.angleOf(level.word(), one.axis());
        // Both axes are positive for a muscle of the right: to the right, and the front to the
        // left.
        ArmCurve curve = one.curve().times(side.sign() * scale);
        crossings.add(PlainCrossing.of(axis, share, curve, lumbar, one));
      }
    }
    return crossings;
  }

  private PlainCrossing crossing(
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
    boolean shortens =
        SpineTables.BY_LEVEL.containsKey(muscle.key()) && SpineTables.BENT.containsKey(level);
    return shortens ? plain.shortenedBy(SpineTables.BENT.get(level), lumbar) : plain;
  }

  /** The arm of extension at a level, metres, reference man. */
  private static double extension(String key, JointId level, TreeMap<JointId, ArmSeries> listed) {
    SpineTables.Level known = SpineTables.BY_LEVEL.getOrDefault(key, Map.of()).get(level);
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
    TreeMap<JointId, SpineTables.Level> known =
        new TreeMap<>(SpineTables.BY_LEVEL.getOrDefault(muscle.key(), Map.of()));
    if (!known.isEmpty()) {
      Map.Entry<JointId, SpineTables.Level> here = known.floorEntry(level);
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
}
