package org.leverbook.muscle;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;

/**
 * How muscles pull on the upper arm, from {@code muscle/shoulder_lines_of_action.csv} (Ackland and
 * Pandy 2009, Table A2, found).
 *
 * <p>Between the two printed planes of raising the arm the direction is mixed by the squares of how
 * far the arm points forward and sideways (assumption). The printed middle and posterior deltoid
 * look exchanged and are changed back; the sign of the upward part, printed at 0 degrees only, is
 * kept over the whole range. The rotator cuff, not printed, pulls straight into the socket, the
 * teres major as the upper latissimus, the ribs' part of the latissimus as the lowest one, muscles
 * that run along the arm along it (assumptions).
 */
final class ShoulderLines {

  private static final List<String> CUFF =
      List.of("supraspinatus", "infraspinatus", "teres_minor", "subscapularis");

  private static final Map<String, String> LIKE =
      Map.of(
          "deltoid_middle", "deltoid_posterior",
          "deltoid_posterior", "deltoid_middle",
          "teres_major", "latissimus_thoracic",
          "latissimus_costal", "latissimus_iliac");

  /** Outward, forward, upward over the arm's elevation in radians, by muscle and plane. */
  private static final Map<String, TreeMap<Double, Vector3D>> LINES = read();

  private ShoulderLines() {}

  /** A unit vector in the world. */
  static Vector3D direction(Placement where, Side side, String muscle) {
    int arm = where.tree().indexOf(side.of("upper arm"));
    Frame girdle = where.frame(where.tree().indexOf(side.of("shoulder girdle")));
    Vector3D outward = girdle.z().scalarMultiply(side.sign());
    if (CUFF.contains(muscle)) {
      return outward.negate();
    }
    String like = LIKE.getOrDefault(muscle, muscle);
    if (!LINES.containsKey(like + "coronal_abduction")) {
      return where.frame(arm).y();
    }
    Frame trunk = where.frame(where.tree().indexOf("T1"));
    Vector3D pointing = trunk.toLocal(where.frame(arm).y().negate());
    double raised = Vector3D.angle(pointing, Vector3D.MINUS_J);
    double forward = pointing.getX() * pointing.getX();
    double sideways = pointing.getZ() * pointing.getZ();
    double mix = forward + sideways < 1e-12 ? 0.5 : forward / (forward + sideways);
    Vector3D flexed = at(LINES.get(like + "sagittal_flexion"), raised);
    Vector3D abducted = at(LINES.get(like + "coronal_abduction"), raised);
    Vector3D local = new Vector3D(mix, flexed, 1 - mix, abducted);
    return new Vector3D(local.getX(), outward, local.getY(), girdle.x(), local.getZ(), girdle.y())
        .normalize();
  }

  private static Vector3D at(TreeMap<Double, Vector3D> line, double raised) {
    Map.Entry<Double, Vector3D> below = line.floorEntry(raised);
    Map.Entry<Double, Vector3D> above = line.ceilingEntry(raised);
    if (below == null || above == null) {
      return below == null ? line.firstEntry().getValue() : line.lastEntry().getValue();
    }
    double span = above.getKey() - below.getKey();
    double part = span == 0 ? 0 : (raised - below.getKey()) / span;
    return new Vector3D(1 - part, below.getValue(), part, above.getValue());
  }

  private static Map<String, TreeMap<Double, Vector3D>> read() {
    DataTable table = DataTable.read("muscle/shoulder_lines_of_action.csv");
    Map<String, Double> signs = new HashMap<>();
    for (DataRow row : table.rows()) {
      row.optionalNumber("fz_source").ifPresent(z -> signs.put(row.text("muscle"), Math.signum(z)));
    }
    Map<String, TreeMap<Double, Vector3D>> lines = new HashMap<>();
    for (DataRow row : table.rows()) {
      double up = signs.get(row.text("muscle")) * row.number("fz_abs");
      lines
          .computeIfAbsent(row.text("muscle") + row.text("motion"), k -> new TreeMap<>())
          .put(
              Math.toRadians(row.number("angle_deg")),
              new Vector3D(row.number("fx"), row.number("fy"), up));
    }
    return lines;
  }
}
