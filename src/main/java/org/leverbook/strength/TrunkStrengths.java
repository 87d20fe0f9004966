package org.leverbook.strength;

import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.leverbook.body.Body;
import org.leverbook.body.Freedom;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;

/**
 * Low back and neck.
 *
 * <p>The low back's extension was measured on a rig that holds the pelvis, from 0° (lumbar spine
 * fully extended) to 72° (fully bent), on healthy men and women (J Korean Acad Rehabil Med 1997).
 * The rig's angle is not the trunk's lean: here the whole lumbar range of the body, from its most
 * extended to its most bent, is laid onto the rig's 72° (assumption), so that a lumbar spine bent
 * as in standing is at 19°. Such a rig nearly excludes the hips; the values hold for L5/S1 to
 * L1/L2, each taken to carry all of it.
 */
final class TrunkStrengths {

  private static final DataTable TABLE = DataTable.read("strength/torque_angle_trunk.csv");

  /** The rig's angle where the lumbar spine is fully bent, degrees. */
  private static final double RIG = 72;

  private TrunkStrengths() {}

  static void into(Map<String, Strength> strengths, Who who, Body body) {
    strengths.put("trunk extend", extension(who, body.tree()));
    steady(
        strengths,
        who,
        "flex",
        "flexion",
        "MCNEILL1980",
        "McNeill et al. 1980",
        "upright; how it goes with the angle is contradictory");
    for (String way : List.of("bend to the right", "bend to the left")) {
      steady(strengths, who, way, "lateral bending", "STOBBE1982", "Stobbe 1982", "seated erect");
    }
    for (String way : List.of("turn to the left", "turn to the right")) {
      steady(
          strengths,
          who,
          way,
          "axial rotation",
          "GENERAL",
          "no single table",
          "the middle of published values");
    }
    neck(strengths, who, "turn to the left", "rotation left");
    neck(strengths, who, "turn to the right", "rotation right");
  }

  private static Strength extension(Who who, SegmentTree tree) {
    List<DataRow> rows =
        TABLE.rows().stream()
            .filter(
                r ->
                    r.is("source", "KAREHAB1997")
                        && r.is("sex", who.letter())
                        && r.is("group", "healthy")
                        && r.is("unit", "N m"))
            .toList();
    Shape shape = Shape.of(rows, "angle_deg", "mean");
    double low = 0;
    double high = 0;
    for (JointId level : lumbar()) {
      Freedom flexion =
          tree.segment(tree.distalOf(level.word())).joint().freedom("flexion").orElseThrow();
      low += flexion.low();
      high += flexion.high();
    }
    double extended = low;
    double range = high - low;
    double factor = who.size() * who.aged();
    return new Strength(
        (bend, speed) -> {
          double rig = RIG * (bend - extended) / range;
          return factor
              * who.trained("trunk", "extend", Math.max(0, Math.min(RIG, rig)))
              * shape.at(rig);
        },
        false,
        low,
        high,
        new Evidence(
            "J Korean Acad Rehabil Med 1997" + who.trainedBy("trunk", "extend"),
            "found",
            "pelvis held by a rig, which nearly excludes the hips"));
  }

  /** The joints that the rig's moment is taken for. */
  static List<JointId> lumbar() {
    return JointId.spine().stream().filter(j -> j.compareTo(JointId.L1_L2) <= 0).toList();
  }

  private static void steady(
      Map<String, Strength> strengths,
      Who who,
      String action,
      String motion,
      String source,
      String authors,
      String note) {
    double value =
        row(r -> r.is("action", motion) && r.is("sex", who.letter()) && r.is("source", source))
            .number("mean");
    double most = value * who.size() * who.aged() * who.trained("trunk", action, 0);
    strengths.put(
        "trunk " + action,
        steady(most, new Evidence(authors + who.trainedBy("trunk", action), "from memory", note)));
  }

  /** Measured in women; men by the ratio of flexion and extension (Garces et al. 2002). */
  private static void neck(Map<String, Strength> strengths, Who who, String action, String motion) {
    double women = row(r -> r.is("region", "neck") && r.is("action", motion)).number("mean");
    double ratio = row(r -> r.is("source", "GARCES2002") && r.is("region", "neck")).number("mean");
    boolean man = who.letter().equals("M");
    double most = women * (man ? ratio : 1) * who.aged() * who.trained("neck", action, 0);
    strengths.put(
        "neck " + action,
        steady(
            most,
            new Evidence(
                "Salo et al. 2006" + who.trainedBy("neck", action),
                "found",
                man ? "women's, times the ratio of Garces et al. 2002" : "")));
  }

  private static Strength steady(double most, Evidence evidence) {
    return new Strength((angle, speed) -> most, false, 0, 0, evidence);
  }

  private static DataRow row(Predicate<DataRow> fits) {
    return TABLE.only("this strength", fits);
  }
}
