package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.leverbook.body.Joint;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;

/** Lays out as tables who pulls how hard. */
final class EffortSheets {

  private static final double CM = 100;

  /** A pull below this share of the greatest is called slack. */
  private static final double SLACK = 0.005;

  private static final String LEAST =
      "The least summed squared stress that holds the position, all joints together: an estimate,"
          + " not a measurement. People brace besides, muscle against muscle. Areas and most arms"
          + " come from memory, so a stress may be off by a third.";

  private static final String BESIDES =
      "Left out: what bone and ligament hold (the knee sideways and about its long axis), and"
          + " joints or axes for which the data hold no muscle (fingers, ball of the foot, ankle"
          + " sideways, wrist sideways, thorax and neck sideways and turned, the collar bone's own"
          + " turning).";

  private EffortSheets() {}

  static Sheet muscles(Effort effort, String what) {
    List<Column> columns =
        List.of(
            Column.text("muscle"),
            Column.text("trade group"),
            Column.text("side"),
            new Column("stress", "% of what it can give", 0),
            new Column("force", "N", 0),
            Column.text("status of its size"));
    List<List<Object>> rows = new ArrayList<>();
    effort.pulls().stream()
        .filter(pull -> pull.stress() >= SLACK)
        .sorted(Comparator.comparingDouble(Effort.Pull::stress).reversed())
        .forEach(
            pull ->
                rows.add(
                    List.of(
                        pull.strand().muscle().name(),
                        pull.strand().muscle().group(),
                        pull.strand().side().word(),
                        100 * pull.stress(),
                        pull.force(),
                        pull.strand().muscle().status())));
    List<String> notes = shortfalls(effort);
    notes.add(LEAST);
    notes.add(Caution.TEXT);
    return new Sheet("Muscles, " + what, columns, rows, notes);
  }

  static Sheet joints(Effort effort, String what) {
    List<Column> columns =
        List.of(
            Column.text("joint"),
            Column.text("side"),
            Column.text("axis"),
            new Column("asked", "N·m", 1),
            Column.text("tends to"),
            new Column("stretched tissue", "N·m", 1),
            new Column("muscles", "N·m", 1),
            new Column("uncovered", "N·m", 1),
            Column.text("not known, because"));
    List<List<Object>> rows = new ArrayList<>();
    for (Held held : effort.held()) {
      double sign = held.asked() < 0 ? 1 : -1;
      List<Object> row = new ArrayList<>();
      row.add(held.joint().name());
      row.add(held.joint().side().word());
      row.add(held.freedom().motion().axis());
      row.add(Math.abs(held.asked()));
      row.add(held.freedom().motion().verb(held.asked()));
      row.add(sign * held.tissue());
      row.add(sign * held.muscles());
      row.add(sign * held.uncovered());
      row.add(held.lacks() ? held.notKnown() : "");
      rows.add(row);
    }
    List<String> notes = shortfalls(effort);
    notes.add(
        "Tissue, muscles and what is uncovered count in the direction that opposes what is asked;"
            + " together they are as large as it. Muscles that give more than is asked do so"
            + " because another joint needs them.");
    notes.add(
        "Stretched tissue of the low back: Dolan, Mannion and Adams 1994 (abstract), 25 N·m in"
            + " lordosis to 120 (women 77) in full flexion; its course between is an assumption.");
    notes.add(BESIDES);
    notes.add(LEAST);
    notes.add(Caution.TEXT);
    return new Sheet("Joints held, " + what, columns, rows, notes);
  }

  /** Who can hold against what is asked about one axis. */
  static Sheet opposing(Effort effort, int axis, String what) {
    SegmentTree tree = effort.muscles().tree();
    int row = effort.muscles().row(axis);
    Held held = effort.held().get(row);
    double direction = held.asked() > 0 ? -1 : 1;
    List<Column> columns =
        List.of(
            Column.text("muscle"),
            Column.text("trade group"),
            new Column("arm", "cm", 1),
            new Column("could give", "N·m", 1),
            new Column("force", "N", 0),
            new Column("stress", "% of what it can give", 0),
            new Column("part", "N·m", 1),
            new Column("part of the moment", "%", 0),
            Column.text("does elsewhere"),
            Column.text("status of the arm"));
    List<List<Object>> rows = new ArrayList<>();
    Set<String> sources = new LinkedHashSet<>();
    for (Integer i : able(effort, row, direction)) {
      Strand strand = effort.muscles().strands().get(i);
      double part = direction * effort.arm(row, i) * effort.force(i);
      List<Object> cells = new ArrayList<>();
      cells.add(strand.side().of(strand.muscle().name()));
      cells.add(strand.muscle().group());
      cells.add(CM * Math.abs(effort.arm(row, i)));
      cells.add(Math.abs(effort.arm(row, i)) * strand.maxForce());
      cells.add(effort.force(i));
      cells.add(100 * effort.stress(i));
      cells.add(part);
      cells.add(held.asked() == 0 ? 0.0 : 100 * part / Math.abs(held.asked()));
      cells.add(elsewhere(effort, i, tree.segment(Held.segment(tree, axis)).joint()));
      cells.add(series(strand, axis).map(ArmSeries::status).orElse(""));
      series(strand, axis).ifPresent(one -> sources.addAll(one.sources()));
      rows.add(cells);
    }
    List<String> notes = new ArrayList<>();
    notes.add(asked(held, direction));
    if (held.lacks()) {
      notes.add(held.sentence() + ".");
    }
    notes.addAll(FullPull.note(effort, held.joint()));
    notes.add(
        "The arm counts the part of the pull that crosses the joint. What a muscle does elsewhere"
            + " another has to undo where it is not wanted.");
    notes.add("Arms: " + String.join("; ", sources) + ".");
    notes.add(LEAST);
    notes.add(Caution.TEXT);
    return new Sheet("Who opposes, " + what, columns, rows, notes);
  }

  /** The muscles that turn an axis in a direction, the greatest part first. */
  private static List<Integer> able(Effort effort, int row, double direction) {
    List<Integer> able = new ArrayList<>();
    List<Strand> strands = effort.muscles().strands();
    for (int i = 0; i < strands.size(); i++) {
      if (direction * effort.arm(row, i) > 0) {
        able.add(i);
      }
    }
    able.sort(
        Comparator.<Integer>comparingDouble(
                i -> -Math.rint(1e6 * Math.abs(effort.arm(row, i)) * effort.force(i)))
            .thenComparing(i -> -Math.abs(effort.arm(row, i)) * strands.get(i).maxForce()));
    return able;
  }

  private static String asked(Held held, double direction) {
    String asked =
        String.format(
            Locale.ROOT,
            "The resistance tends to %s the %s with %.1f N·m",
            held.freedom().motion().verb(held.asked()),
            held.joint().fullName(),
            Math.abs(held.asked()));
    double tissue = direction * held.tissue();
    return tissue > 0.05
        ? String.format(Locale.ROOT, "%s; stretched tissue holds %.1f of them.", asked, tissue)
        : asked + ".";
  }

  /** Its moments at other joints; of the levels of the spine only the greatest. */
  private static String elsewhere(Effort effort, int strand, Joint here) {
    List<String> told = new ArrayList<>();
    Held spine = null;
    double most = 0;
    for (int row = 0; row < effort.held().size(); row++) {
      Held other = effort.held().get(row);
      double moment = effort.arm(row, strand) * effort.force(strand);
      if (other.joint().fullName().equals(here.fullName()) || Math.abs(moment) < 0.5) {
        continue;
      }
      if (isColumn(other.joint())) {
        if (!isColumn(here) && Math.abs(moment) > Math.abs(most)) {
          most = moment;
          spine = other;
        }
      } else {
        told.add(told(other, moment));
      }
    }
    if (spine != null) {
      told.add(told(spine, most));
    }
    return String.join("; ", told);
  }

  private static String told(Held other, double moment) {
    return String.format(
        Locale.ROOT,
        "%s %s %.0f N·m",
        other.joint().name(),
        other.freedom().motion().noun(moment),
        Math.abs(moment));
  }

  private static boolean isColumn(Joint joint) {
    for (JointId id : JointId.values()) {
      if (id.word().equals(joint.name())) {
        return !id.paired();
      }
    }
    return false;
  }

  private static Optional<ArmSeries> series(Strand strand, int axis) {
    return strand.crossings().stream()
        .filter(crossing -> crossing.axis() == axis)
        .map(Crossing::series)
        .findFirst();
  }

  /** What nobody holds, and who gives all there is. */
  private static List<String> shortfalls(Effort effort) {
    List<String> notes = new ArrayList<>();
    effort.uncovered().stream()
        .filter(held -> held.notKnown().isEmpty())
        .forEach(held -> notes.add(held.sentence() + "."));
    notes.addAll(FullPull.note(effort));
    return notes;
  }
}
