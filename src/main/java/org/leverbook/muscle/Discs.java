package org.leverbook.muscle;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Lookup;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;

/**
 * What presses and shears the discs L5/S1 to T12/L1 in one pose.
 *
 * <p>The recipe, at each level:
 *
 * <ol>
 *   <li>The disc's axis: standing, the middle between the end plates above and below ({@code
 *       body/spine_levels.csv}); at L5/S1 34 degrees ({@code l5s1_disc_tilt}, from memory; those
 *       files would give 28). It turns half with the vertebra above, half with the one below.
 *   <li>The net force of loads, weight and supports on everything above.
 *   <li>Every muscle that crosses, with the share of it that does, along its line ({@code
 *       muscle/disc_lines.csv}).
 *   <li>Stretched tissue: its moment over the erectors' arm of 67 mm (from memory), along the
 *       disc's axis. Published: with passive tension included, compression in full flexion does not
 *       differ from upright (Macintosh, Bogduk and Pearcy 1993, abstract).
 * </ol>
 *
 * <p>Pressure in the belly, which takes some load off the spine, is left out. The area is 18 cm² at
 * the reference stature of 1.75 m (from memory), with the square of stature.
 */
public final class Discs {

  static final double PRESSURE_FACTOR = fact("pressure_to_force");

  private static final double L5_S1_TILT = Math.toRadians(fact("l5s1_disc_tilt"));
  private static final double TISSUE_ARM = fact("es_arm_L5S1");
  private static final double AREA = fact("disc_area_wilke") / 1e4;
  private static final double REFERENCE_STATURE = 1.75;
  private static final Map<String, double[]> LINES = lines();
  private static final Lookup LEVELS =
      new Lookup(DataTable.read("body/spine_levels.csv"), "joint_below");

  private final Effort effort;
  private final Body body;

  private Discs(Effort effort, Body body) {
    this.effort = effort;
    this.body = body;
  }

  /**
   * The discs of an effort.
   *
   * @param effort who pulls how hard
   * @param body whose
   * @return what its discs carry
   */
  public static Discs of(Effort effort, Body body) {
    return new Discs(effort, body);
  }

  /**
   * The levels that can be asked for.
   *
   * @return L5/S1 to T12/L1, from below
   */
  public static List<JointId> levels() {
    return JointId.spine().stream().filter(l -> l.compareTo(JointId.T12_L1) <= 0).toList();
  }

  /**
   * What all discs carry.
   *
   * @return L5/S1 to T12/L1, from below
   */
  public List<DiscLoad> all() {
    return levels().stream().map(this::at).toList();
  }

  /**
   * What to know of the muscles before these forces are read.
   *
   * @return who is at full pull, and whether that is enough; none where nobody is
   */
  public List<String> notes() {
    return FullPull.pressing(effort, levels());
  }

  /**
   * What one disc carries.
   *
   * @param level L5/S1 to T12/L1
   * @return its load
   * @throws Refused if it is no such level
   */
  public DiscLoad at(JointId level) {
    if (!levels().contains(level)) {
      throw new Refused(
          "What presses inside is known for the discs from L5/S1 to T12/L1, not for the "
              + level.word()
              + ": the rib cage holds a part of what is above, how much is not known.");
    }
    SegmentTree tree = body.tree();
    Placement where = effort.where();
    int upper = tree.distalOf(level.word());
    Vector3D axis = axis(level, upper);
    Vector3D right = where.frame(upper).z();
    Vector3D forward = axis.crossProduct(right).normalize();
    Vector3D force = effort.loads().force(upper);
    int angle = tree.angleOf(level.word(), "flexion");
    double bent = bent();
    double muscles = 0;
    double shear = force.dotProduct(forward);
    for (int i = 0; i < effort.muscles().strands().size(); i++) {
      double crossing = effort.force(i) * share(effort.muscles().strands().get(i), angle);
      if (crossing > 0) {
        double slant = slant(effort.muscles().strands().get(i), level, bent);
        muscles += crossing * Math.cos(slant);
        shear -= crossing * Math.sin(slant);
      }
    }
    double held = -effort.held().get(effort.muscles().row(angle)).tissue();
    double size = Si.metres(body.person().stature()) / REFERENCE_STATURE;
    return new DiscLoad(
        level,
        -force.dotProduct(axis),
        muscles,
        held / (TISSUE_ARM * size),
        shear,
        force.dotProduct(right),
        AREA * size * size);
  }

  /** The normal of a disc, upward, in the world. */
  private Vector3D axis(JointId level, int upper) {
    double tilt = tilt(level);
    Vector3D standing = new Vector3D(Math.sin(tilt), Math.cos(tilt), 0);
    Placement where = effort.where();
    int lower = body.tree().segment(upper).parent();
    Vector3D above = where.frame(upper).toWorld(standing);
    return above.add(where.frame(lower).toWorld(standing)).normalize();
  }

  /** How far a disc's normal leans forward in standing, radians. */
  private double tilt(JointId level) {
    if (level == JointId.L5_S1) {
      return L5_S1_TILT;
    }
    DataRow vertebra = LEVELS.row(level.word());
    DataRow below = LEVELS.row(JointId.values()[level.ordinal() - 1].word());
    double wedge = vertebra.number("body_wedge_" + body.person().sex().word() + "_deg");
    double lowerPlate = vertebra.number("neutral_upper_endplate_tilt_deg") + wedge;
    double upperPlate = below.number("neutral_upper_endplate_tilt_deg");
    return Math.toRadians((lowerPlate + upperPlate) / 2);
  }

  /** How far the lumbar spine is bent forward: 0 standing or backward, 1 full flexion. */
  private double bent() {
    double angle = 0;
    double full = 0;
    for (JointId level : levels()) {
      if (level.compareTo(JointId.L1_L2) <= 0) {
        angle += effort.where().pose().angle(level, Side.MIDLINE, "flexion");
        full +=
            body.tree()
                .segment(body.tree().distalOf(level.word()))
                .joint()
                .freedom("flexion")
                .orElseThrow()
                .high();
      }
    }
    return Math.max(0, Math.min(1, angle / full));
  }

  private static double share(Strand strand, int angle) {
    double share = 0;
    for (Crossing crossing : strand.crossings()) {
      share = crossing.axis() == angle ? crossing.share() : share;
    }
    return share;
  }

  private static double slant(Strand strand, JointId level, double bent) {
    double[] line = LINES.get(strand.muscle().key());
    if (line == null || level == JointId.L5_S1) {
      return 0;
    }
    return Math.toRadians(line[0] + bent * (line[1] - line[0]));
  }

  private static Map<String, double[]> lines() {
    Map<String, double[]> lines = new HashMap<>();
    for (DataRow row : DataTable.read("muscle/disc_lines.csv").rows()) {
      MuscleTable.SHIPPED.row(row.text("muscle"));
      lines.put(
          row.text("muscle"), new double[] {row.number("standing_deg"), row.number("flexed_deg")});
    }
    return lines;
  }

  private static double fact(String id) {
    return DataTable.read("muscle/spine_loading.csv")
        .only(id, row -> row.is("id", id))
        .number("value");
  }
}
