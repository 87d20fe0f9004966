package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;

/** Lays out as tables what the supports give and what passes through the joints. */
final class SupportSheets {

  private static final double CM = 100;

  private SupportSheets() {}

  static Sheet reactions(Position position) {
    List<Column> columns =
        List.of(
            Column.text("support"),
            Column.text("on"),
            new Column("push", "N", 1),
            new Column("along the surface", "N", 1),
            new Column("friction used", "% of what it gives", 1),
            new Column("forward", "N", 1),
            new Column("up", "N", 1),
            new Column("to the right", "N", 1),
            new Column("pressure point forward", "cm", 1),
            new Column("pressure point up", "cm", 1),
            new Column("pressure point right", "cm", 1));
    List<List<Object>> rows = new ArrayList<>();
    List<Reaction> all = new ArrayList<>(position.supportForces());
    all.addAll(position.pressed());
    for (Reaction reaction : all) {
      List<Object> row = new ArrayList<>();
      row.add(reaction.source());
      row.add(reaction.on());
      row.add(reaction.push());
      row.add(reaction.along());
      row.add(
          reaction.frictionUsed().isPresent() ? 100 * reaction.frictionUsed().getAsDouble() : null);
      row.add(reaction.force().getX());
      row.add(reaction.force().getY());
      row.add(reaction.force().getZ());
      row.add(CM * reaction.point().getX());
      row.add(CM * reaction.point().getY());
      row.add(CM * reaction.point().getZ());
      rows.add(row);
    }
    List<String> notes = new ArrayList<>();
    notes.add(
        position.held()
            ? "As the supports act on the lifter. The pressure point is the middle of the pushes,"
                + " weighed by their size."
            : position.holding().sentence());
    for (Reaction pressed : position.pressed()) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The %s presses the %s where that costs the joints the least effort; to say where, use"
                  + " .pressedAt(…).",
              pressed.source(),
              pressed.on()));
    }
    if (position.supports().stream().anyMatch(s -> s.leanedOn())) {
      notes.add(
          "A pad is relaxed onto as far as that lowers the summed squared effort of the joints; how"
              + " hard a lifter really leans is theirs to choose: see .bothEnds().");
    }
    notes.add(Caution.TEXT);
    return new Sheet("Reactions, " + position.name(), columns, rows, notes);
  }

  static Sheet contactForces(Position position) {
    List<Column> columns =
        List.of(
            Column.text("joint"),
            Column.text("side"),
            new Column("compression", "N", 0),
            new Column("shear forward", "N", 0),
            new Column("shear outward", "N", 0),
            new Column("whole", "N", 0));
    List<List<Object>> rows = new ArrayList<>();
    for (JointId joint : JointId.values()) {
      for (Side side : joint.sides()) {
        if (position.knows(joint, side)) {
          ContactForce force = position.contactForce(joint, side);
          rows.add(
              List.of(
                  joint.word(),
                  side.word(),
                  force.compression(),
                  force.forward(),
                  force.outward(),
                  force.size()));
        }
      }
    }
    return new Sheet(
        "Forces through the joints, " + position.name(),
        columns,
        rows,
        List.of(
            "Before muscles, which press the bones together much harder. Compression is along the"
                + " distal bone or normal to the disc, negative where the joint is drawn apart;"
                + " shear is how the resistance pushes the distal bone (of the spine: the upper"
                + " one). Outward of the midline is to the right; of the shoulder girdle, upward.",
            Caution.TEXT));
  }

  static Sheet bothEnds(Position untouched, Position relaxed) {
    List<Column> columns =
        List.of(
            Column.text("joint"),
            Column.text("side"),
            new Column("moment, pads untouched", "N·m", 1),
            new Column("moment, relaxed", "N·m", 1),
            new Column("taken by the pads", "N·m", 1));
    List<List<Object>> rows = new ArrayList<>();
    for (JointId joint : JointId.values()) {
      for (Side side : joint.sides()) {
        if (untouched.knows(joint, side) && relaxed.knows(joint, side)) {
          double from = untouched.moment(joint, side).signed();
          double to = relaxed.moment(joint, side).signed();
          rows.add(List.of(joint.word(), side.word(), from, to, from - to));
        }
      }
    }
    List<String> notes = new ArrayList<>();
    for (Position end : List.of(untouched, relaxed)) {
      notes.add((end == untouched ? "Untouched: " : "Relaxed: ") + pads(end));
    }
    notes.add("Moments are signed: positive where the resistance flexes.");
    notes.add(Caution.TEXT);
    return new Sheet("Both ends of leaning, " + relaxed.name(), columns, rows, notes);
  }

  private static String pads(Position position) {
    if (!position.held()) {
      return position.holding().sentence();
    }
    List<String> told = new ArrayList<>();
    for (Reaction reaction : position.supportForces()) {
      boolean pad =
          position.supports().stream()
              .anyMatch(s -> s.leanedOn() && s.source().equals(reaction.source()));
      if (pad) {
        told.add(reaction.text());
      }
    }
    return told.isEmpty() ? "no pad is touched." : String.join("; ", told) + ".";
  }
}
