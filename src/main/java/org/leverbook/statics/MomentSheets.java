package org.leverbook.statics;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;

/** Lays the moments of a position out as tables. */
final class MomentSheets {

  private static final double CM = 100;

  private MomentSheets() {}

  static Sheet all(Position position) {
    List<String> sources = sources(position);
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("joint"));
    columns.add(Column.text("side"));
    columns.add(new Column("arm", "cm", 1));
    columns.add(new Column("arm in 3D", "cm", 1));
    columns.add(new Column("moment", "N·m", 1));
    columns.add(Column.text("tends to"));
    columns.add(Column.text("opposed by"));
    sources.forEach(source -> columns.add(new Column("from " + source, "N·m", 1)));
    columns.add(new Column("moment about flexion", "N·m", 1));
    columns.add(new Column("moment about abduction", "N·m", 1));
    columns.add(new Column("moment about rotation", "N·m", 1));
    columns.add(new Column("force", "N", 0));
    List<List<Object>> rows = new ArrayList<>();
    for (JointId joint : JointId.values()) {
      for (Side side : joint.sides()) {
        if (position.knows(joint, side)) {
          rows.add(row(position.moment(joint, side), sources));
        }
      }
    }
    List<String> notes = new ArrayList<>(elsewhere(position));
    notes.addAll(notes(position));
    return new Sheet("Moments, " + position.name(), columns, rows, notes);
  }

  /** Where the axis that is told first is not the one that asks most. */
  private static List<String> elsewhere(Position position) {
    List<String> told = new ArrayList<>();
    for (JointId joint : JointId.values()) {
      for (Side side : joint.sides()) {
        if (position.knows(joint, side)) {
          position.moment(joint, side).elsewhere().ifPresent(other -> told.add(about(other)));
        }
      }
    }
    return told.isEmpty()
        ? List.of()
        : List.of(
            "More is asked about another axis than the one told first: "
                + String.join("; ", told)
                + ".");
  }

  private static String about(JointMoment other) {
    return String.format(
        Locale.ROOT,
        "%s, %s %.1f N·m, tends to %s it, opposed by the %s",
        other.joint().fullName(),
        other.motion().axis(),
        other.size(),
        other.tendsTo(),
        other.opposedBy());
  }

  private static List<Object> row(JointMoment moment, List<String> sources) {
    List<Object> row = new ArrayList<>();
    row.add(moment.joint().name());
    row.add(moment.joint().side().word());
    row.add(CM * moment.arm());
    row.add(CM * moment.arm3d());
    row.add(moment.size());
    row.add(moment.tendsTo());
    row.add(moment.opposedBy());
    sources.forEach(source -> row.add(moment.from(source)));
    row.add(moment.about("flexion"));
    row.add(moment.about("abduction"));
    row.add(moment.about("rotation"));
    row.add(moment.force().getNorm());
    return row;
  }

  static Sheet spine(Position position) {
    List<String> sources = sources(position);
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("level"));
    columns.add(new Column("height", "cm", 1));
    columns.add(new Column("arm", "cm", 1));
    columns.add(new Column("moment", "N·m", 1));
    columns.add(Column.text("tends to"));
    columns.add(Column.text("opposed by"));
    sources.forEach(source -> columns.add(new Column("from " + source, "N·m", 1)));
    columns.add(new Column("bend from standing", "°", 1));
    columns.add(new Column("force", "N", 0));
    List<List<Object>> rows = new ArrayList<>();
    for (JointId level : JointId.spine()) {
      if (!position.knows(level, Side.MIDLINE)) {
        continue;
      }
      JointMoment moment = position.moment(level);
      List<Object> row = new ArrayList<>();
      row.add(level.word());
      row.add(CM * moment.centre().getY());
      row.add(CM * moment.signedArm());
      row.add(moment.size());
      row.add(moment.tendsTo());
      row.add(moment.opposedBy());
      sources.forEach(source -> row.add(moment.from(source)));
      row.add(Math.toDegrees(position.placement().pose().angle(level, Side.MIDLINE, "flexion")));
      row.add(moment.force().getNorm());
      rows.add(row);
    }
    List<String> notes = new ArrayList<>();
    notes.add(
        "An arm is negative where the load's line passes behind the joint, so that the load tends to extend it. The arms"
            + " hang from T1.");
    notes.addAll(notes(position));
    return new Sheet("Spine, " + position.name(), columns, rows, notes);
  }

  /** Loads, body weight, then supports: the order in which a coach asks. */
  private static List<String> sources(Position position) {
    Set<String> sources = new LinkedHashSet<>();
    position.loads().forEach(load -> sources.add(load.source()));
    sources.add(NetLoads.BODY_WEIGHT);
    position.forces().forEach(force -> sources.add(force.source()));
    return List.copyOf(sources);
  }

  private static List<String> notes(Position position) {
    List<String> notes = new ArrayList<>();
    if (!position.held()) {
      notes.add(position.holding().sentence() + " " + KnownMoments.LEFT_OUT);
    }
    notes.add(
        "Moments of paired joints are of one side. The floor's push is told as what it carries, the loads and the body's"
            + " weight; \"from floor\" is what it holds sideways. What each source gives counts in the direction of the whole: a negative part works against it.");
    notes.add("Masses: " + position.body().person().table().source() + ".");
    notes.add(Caution.TEXT);
    return notes;
  }
}
