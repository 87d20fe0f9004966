package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;

/** Lays out as tables what presses inside. */
public final class InsideSheets {

  private static final double MEGA = 1e6;

  /** m/s², by definition. */
  private static final double STANDARD_GRAVITY = 9.80665;

  private InsideSheets() {}

  /**
   * What the discs carry.
   *
   * @param discs of one effort
   * @param what to call it in the title, as in "hinge, start"
   * @return L5/S1 to T12/L1
   */
  public static Sheet discs(Discs discs, String what) {
    List<Column> columns =
        List.of(
            Column.text("disc"),
            new Column("compression", "N", 0),
            new Column("from weight and load", "N", 0),
            new Column("from muscles", "N", 0),
            new Column("from stretched tissue", "N", 0),
            new Column("shear forward", "N", 0),
            new Column("shear to the right", "N", 0),
            new Column("area", "cm²", 1),
            new Column("pressure", "MPa", 2));
    List<List<Object>> rows = new ArrayList<>();
    for (DiscLoad disc : discs.all()) {
      rows.add(
          List.of(
              disc.level().word(),
              disc.compression(),
              disc.weight(),
              disc.muscles(),
              disc.tissue(),
              disc.shear(),
              disc.lateral(),
              1e4 * disc.area(),
              disc.pressure() / MEGA));
    }
    List<String> notes = new ArrayList<>(discs.notes());
    notes.add(
        "Estimates. Muscles at their least stress: people who brace press their discs harder."
            + " Pressure in the belly, which unloads, is left out. Shear is how the upper"
            + " vertebra is pushed.");
    notes.add(
        "Lines of the lumbar erectors: McGill, Hughson and Parks 2000 (from memory), other"
            + " lines, the tilt of L5/S1, area and pressure factor (Dreischarf et al. 2013):"
            + " from memory or own estimates.");
    notes.add(Caution.TEXT);
    return new Sheet("Discs, " + what, columns, rows, notes);
  }

  /**
   * What presses in hips, knees and shoulders.
   *
   * @param bones of one effort
   * @param body whose
   * @param what to call it in the title, as in "hinge, start"
   * @return both sides
   */
  public static Sheet bones(Bones bones, Body body, String what) {
    List<Column> columns =
        List.of(
            Column.text("joint"),
            Column.text("side"),
            new Column("before muscles", "N", 0),
            new Column("between the bones", "N", 0),
            new Column("times body weight", "", 1),
            new Column("along the bone or into the socket", "N", 0),
            new Column("on the kneecap", "N", 0));
    List<List<Object>> rows = new ArrayList<>();
    double weight = body.tree().mass() * STANDARD_GRAVITY;
    for (JointId joint : List.of(JointId.HIP, JointId.KNEE, JointId.SHOULDER)) {
      for (Side side : joint.sides()) {
        BoneLoad load = bones.at(joint, side);
        List<Object> row = new ArrayList<>();
        row.add(joint.word());
        row.add(side.word());
        row.add(load.net());
        row.add(load.size());
        row.add(load.size() / weight);
        row.add(load.along());
        row.add(joint == JointId.KNEE ? load.kneecap() : null);
        rows.add(row);
      }
    }
    List<String> notes = new ArrayList<>(bones.notes());
    notes.add(
        "Estimates. Muscles at their least stress; their lines across hip and knee are own"
            + " estimates, good to some 10 degrees; lines of the shoulder: Ackland and Pandy"
            + " 2009 (found), rotator cuff straight into the socket (assumption).");
    notes.add(Caution.TEXT);
    return new Sheet("Bones, " + what, columns, rows, notes);
  }
}
