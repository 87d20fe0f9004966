package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.quantity.Si;

/** The tables of muscles that readers see. */
final class MuscleSheets {

  private static final double CENTIMETRE = 100;

  private MuscleSheets() {}

  /** What the muscles of a group can do together, direction by direction. */
  static Sheet together(MuscleGroup group) {
    Footnotes sources = new Footnotes();
    List<List<Object>> rows = new ArrayList<>();
    for (Action action : Actions.of(group.parts(), group.person().body())) {
      boolean all = action.parts().size() == group.parts().size();
      String who = all ? "" : Naming.together(action.parts());
      rows.add(row(who, action, group.parts(), sources));
    }
    return actions(
        "What the " + group.name() + " can do; one side of a " + who(group.person()),
        "only by",
        rows,
        group,
        sources);
  }

  /** What each muscle of a group can do alone. */
  static Sheet apart(MuscleGroup group) {
    Footnotes sources = new Footnotes();
    List<List<Object>> rows = new ArrayList<>();
    for (MuscleRow part : group.parts()) {
      for (Action action : Actions.of(List.of(part), group.person().body())) {
        rows.add(row(part.name(), action, List.of(part), sources));
      }
    }
    return actions(
        "What each part of the " + group.name() + " can do; one side of a " + who(group.person()),
        "muscle",
        rows,
        group,
        sources);
  }

  private static Sheet actions(
      String title, String first, List<List<Object>> rows, MuscleGroup group, Footnotes sources) {
    List<String> notes = new ArrayList<>(group.limits());
    notes.add(
        "Arms: where no angle stands, one value is known and held for all angles; several muscles"
            + " together: moment over force. Arms from memory are 10 to 30 % off, at the shoulder by"
            + " up to 12 mm.");
    notes.add(
        "Moments: cross-section times stress times arm, without what a muscle loses by its length"
            + " and speed; of the spine's levels the strongest.");
    if (rows.stream().anyMatch(row -> row.get(9).toString().endsWith("not in sums"))) {
      notes.add(
          "Not in sums: the shoulder blade's turning, since the body's shoulder girdle is one piece;"
              + " the forearm's rotation, since no arms of pronators are known.");
    }
    notes.addAll(sources.notes());
    notes.add(Caution.TEXT);
    return new Sheet(
        title,
        List.of(
            Column.text("joint"),
            Column.text("action"),
            new Column("arm standing", "cm", 1),
            new Column("shortest arm", "cm", 1),
            new Column("longest arm", "cm", 1),
            new Column("strongest at", "°", 0),
            new Column("greatest moment", "N·m", 1),
            Column.text("published limit"),
            Column.text(first),
            Column.text("arms are"),
            Column.text("source")),
        rows,
        notes);
  }

  private static List<Object> row(
      String who, Action action, List<MuscleRow> muscles, Footnotes sources) {
    return Arrays.asList(
        action.joint(),
        action.action(),
        action.standing() > 0 ? CENTIMETRE * action.standing() : null,
        CENTIMETRE * action.least(),
        CENTIMETRE * action.most(),
        action.at().isPresent() ? (Object) action.at().getAsDouble() : null,
        action.moment(),
        limitBeside(action, muscles),
        who,
        action.status() + (action.counted() ? "" : "; not in sums"),
        sources.numbers(action.sources()));
  }

  /** The published limit beside a row of the lumbar spine, if it is one of all that act there. */
  private static String limitBeside(Action action, List<MuscleRow> muscles) {
    boolean sagittal = action.action().equals("extend") || action.action().equals("flex");
    if (!sagittal || !action.joint().equals("lumbar spine")) {
      return "";
    }
    List<String> limits =
        muscles.stream()
            .filter(m -> action.parts().contains(m.name()))
            .map(SpineLimits::beside)
            .distinct()
            .toList();
    return limits.size() == 1 ? limits.get(0) : "";
  }

  /** All muscles by trade group. */
  static Sheet all(Person whose) {
    List<MuscleRow> muscles = MuscleTable.SHIPPED.all();
    List<String> groups = muscles.stream().map(MuscleRow::group).distinct().toList();
    Footnotes sources = new Footnotes();
    Scaling scaling = Scaling.of(whose);
    List<List<Object>> rows = new ArrayList<>();
    for (String group : groups) {
      for (MuscleRow muscle : muscles) {
        if (muscle.group().equals(group)) {
          double force = scaling.maxForce(muscle);
          rows.add(
              Arrays.asList(
                  group,
                  muscle.name(),
                  String.join("; ", muscle.actions()),
                  CENTIMETRE * CENTIMETRE * force / muscle.stress(),
                  force,
                  muscle.slowFibres().isPresent()
                      ? (Object) (100 * muscle.slowFibres().getAsDouble())
                      : null,
                  muscle.spine(),
                  muscle.status(),
                  sources.numbers(List.of(muscle.source()))));
        }
      }
    }
    List<String> notes = new ArrayList<>();
    notes.add(
        "Cross-sections are those recommended for use with the stress behind the pull; \"found\" and"
            + " \"from memory\" tell of the published number behind them. Slow fibres: Johnson et"
            + " al. 1973, from memory, rounded.");
    notes.add("muscle(\"lats\").actions() tells what one can do.");
    notes.addAll(sources.notes());
    notes.add(Caution.TEXT);
    return new Sheet(
        "Muscles by trade group; one side of a " + who(whose),
        List.of(
            Column.text("group"),
            Column.text("muscle"),
            Column.text("mainly"),
            new Column("cross-section", "cm²", 1),
            new Column("greatest pull", "N", 0),
            new Column("slow fibres", "%", 0),
            Column.text("can extend the spine"),
            Column.text("number is"),
            Column.text("source")),
        rows,
        notes);
  }

  /** The person in words, as in "man of 75 kg and 175 cm". */
  static String who(Person person) {
    return String.format(
        Locale.ROOT,
        "%s of %.0f kg and %.0f cm",
        person.sex() == Sex.MALE ? "man" : "woman",
        Si.kilograms(person.mass()),
        100 * Si.metres(person.stature()));
  }
}
