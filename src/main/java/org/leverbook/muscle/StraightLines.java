package org.leverbook.muscle;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;

/** Straight lines of muscles across hip and knee, from {@code muscle/joint_lines.csv}. */
final class StraightLines {

  private static final double REFERENCE_STATURE = 1.75;

  /** Angle of the patellar tendon to the shank's axis, forward positive, over the knee's bend. */
  private static final ArmCurve TENDON =
      ArmCurve.through(
          new double[] {0, Math.toRadians(75), Math.toRadians(120)},
          new double[] {Math.toRadians(20), 0, Math.toRadians(-10)});

  /** One row: two ends, each in the frame of its segment. */
  private record Line(String from, Vector3D start, String to, Vector3D end) {}

  /** The table, read once. */
  private static final class Read {

    static final Map<String, Line> LINES = new HashMap<>();
    static final Set<String> TENDONS = new HashSet<>();

    static {
      for (DataRow row : DataTable.read("muscle/joint_lines.csv").rows()) {
        String muscle = MuscleTable.SHIPPED.row(row.text("muscle")).key();
        if (row.is("kind", "tendon")) {
          TENDONS.add(muscle);
        } else {
          LINES.put(
              muscle,
              new Line(row.text("from"), point(row, "from"), row.text("to"), point(row, "to")));
        }
      }
    }

    private static Vector3D point(DataRow row, String end) {
      return new Vector3D(row.number(end + "_x"), row.number(end + "_y"), row.number(end + "_z"));
    }
  }

  private final double scale;

  StraightLines(Body body) {
    scale = Si.metres(body.person().stature()) / REFERENCE_STATURE;
  }

  /** Whether it pulls the shank by the patellar tendon. */
  boolean byTendon(String muscle) {
    return Read.TENDONS.contains(muscle);
  }

  /** How a muscle pulls on what is distal: a unit vector in the world. */
  Vector3D direction(Placement where, Side side, String muscle) {
    Line line = Read.LINES.get(muscle);
    if (line == null) {
      throw new Refused("The table of lines of muscles lacks the " + muscle + ".");
    }
    Vector3D start = place(where, side, line.from(), line.start());
    return start.subtract(place(where, side, line.to(), line.end())).normalize();
  }

  private Vector3D place(Placement where, Side side, String segment, Vector3D local) {
    double out = side.sign() * scale * local.getZ();
    Vector3D scaled = new Vector3D(scale * local.getX(), scale * local.getY(), out);
    if (segment.equals("pelvis")) {
      return where.frame(0).toWorld(scaled).add(where.centre(JointId.HIP.on(side)));
    }
    return where.toWorld(where.tree().indexOf(side.of(segment)), scaled);
  }

  /** How the quadriceps pull on the shank: a unit vector in the world. */
  Vector3D tendon(Placement where, Side side) {
    double angle = TENDON.at(where.pose().angle(JointId.KNEE, side, "flexion"));
    Vector3D local = new Vector3D(Math.sin(angle), Math.cos(angle), 0);
    return where.frame(where.tree().indexOf(side.of("shank"))).toWorld(local);
  }
}
