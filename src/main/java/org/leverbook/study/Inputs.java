package org.leverbook.study;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.leverbook.body.JointId;
import org.leverbook.body.LengthSpread;
import org.leverbook.body.Links;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Variation.Trait;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.lift.Setting;
import org.leverbook.load.Load;
import org.leverbook.muscle.MuscleRow;
import org.leverbook.muscle.MuscleTable;

/**
 * All inputs of one question, by {@code body/spreads.csv} and the survey of lengths.
 *
 * <p>Lengths a coach measured are off by what a tape is off; the others by what the survey leaves
 * open. Of shanks, thighs and trunk one must take what is left of stature: the trunk, unless it was
 * measured.
 *
 * @param all in the order in which they are put into a case
 * @param lengths which of them are lengths of the survey, drawn together
 * @param together how those go together; null where there are none
 */
record Inputs(List<Input> all, List<Integer> lengths, LengthSpread together) {

  private static final DataTable TABLE = DataTable.read("body/spreads.csv");

  private static final Set<Setting> EQUIPMENT =
      EnumSet.of(
          Setting.PAD_ANGLE,
          Setting.PAD_HEIGHT,
          Setting.BENCH_ANGLE,
          Setting.BENCH_HEIGHT,
          Setting.SEAT_HEIGHT,
          Setting.PULLEY_HEIGHT,
          Setting.PULLEY_AHEAD,
          Setting.STEP_HEIGHT,
          Setting.HEEL_HEIGHT,
          Setting.BAR_HEIGHT);

  /** The joints whose strength is known, by the first word of their names. */
  private static final List<String> STRONG =
      List.of(
          "trunk", "neck", "hip", "knee", "ankle", "shoulder", "elbow", "forearm", "wrist", "grip");

  /** Keeps its own copies of the lists. */
  Inputs {
    all = List.copyOf(all);
    lengths = List.copyOf(lengths);
  }

  /** What is not known of a person's build. */
  static Inputs ofBuild(Person person) {
    List<Input> all = new ArrayList<>();
    for (DataRow row : TABLE.rows()) {
      trait(row).ifPresent(trait -> all.add(of(row, body(trait, row.text("part")))));
    }
    DataRow mass = row("body", "mass");
    double kilograms = person.kilograms();
    all.add(of(mass, (changes, score, off) -> changes.heavier(1 + off / kilograms)));
    for (Part part : person.changes().keySet()) {
      all.add(measured(part, Links.of(person).lengthOf(part)));
    }
    List<Part> except = new ArrayList<>(person.changes().keySet());
    if (person.changes().containsKey(Part.TRUNK) && !person.statureChanges()) {
      except.add(except.contains(Part.SHANK) ? Part.THIGH : Part.SHANK);
    }
    LengthSpread together = LengthSpread.of(person.sex(), except);
    List<Integer> lengths = new ArrayList<>();
    for (int i = 0; i < together.parts().size(); i++) {
      lengths.add(all.size());
      all.add(
          new Input(
              singular(together.parts().get(i)) + length(together.parts().get(i)),
              "%",
              100,
              new Spread(Spread.Kind.NORMAL, together.deviation(i)),
              "Gordon et al. 2014, computed",
              factor(Trait.LENGTH, together.parts().get(i).word())));
    }
    return new Inputs(all, lengths, together);
  }

  /** And what each joint can give. */
  Inputs withStrength() {
    DataRow row = row("strength", "");
    List<Input> more = new ArrayList<>(all);
    for (String joint : STRONG) {
      more.add(named(row, joint + " strength", factor(Trait.STRENGTH, joint)));
    }
    more.add(
        named(
            row,
            "shoulder girdle strength",
            factor(Trait.STRENGTH, JointId.SHOULDER_GIRDLE.word())));
    return new Inputs(more, lengths, together);
  }

  /** And what each group of muscles can give. */
  Inputs withMuscles() {
    List<Input> more = new ArrayList<>(all);
    for (String group :
        MuscleTable.SHIPPED.all().stream().map(MuscleRow::group).distinct().toList()) {
      more.add(named(row("pull", ""), group + ", greatest pull", factor(Trait.PULL, group)));
      more.add(named(row("arm", ""), group + ", arms", factor(Trait.ARM, group)));
    }
    return new Inputs(more, lengths, together);
  }

  /** And what is lifted. */
  Inputs withLoads(List<Load> loads) {
    DataRow row = row("load", "mass");
    List<Input> more = new ArrayList<>(all);
    Map<String, Integer> seen = new LinkedHashMap<>();
    for (Load load : loads) {
      int times = seen.merge(load.source(), 1, Integer::sum);
      String name = load.source() + " mass" + (times == 1 ? "" : " " + times);
      more.add(named(row, name, (changes, score, off) -> changes.load(load, 1 + off)));
    }
    return new Inputs(more, lengths, together);
  }

  /** And how the lift is set up. */
  Inputs withSettings(Set<Setting> settings) {
    List<Input> more = new ArrayList<>(all);
    for (Setting setting : settings) {
      DataRow row =
          row(EQUIPMENT.contains(setting) ? "set" : "held", setting.isAngle() ? "angle" : "length");
      more.add(
          named(
              row,
              setting.word(),
              (changes, score, off) ->
                  changes.setting(setting, setting.isAngle() ? Math.toRadians(off) : off)));
    }
    return new Inputs(more, lengths, together);
  }

  /** And what a script says of its own quantities. */
  Inputs withOwn(Map<String, Draw.Own> own) {
    List<Input> more = new ArrayList<>(all);
    own.forEach(
        (name, one) ->
            more.add(
                new Input(
                    name,
                    one.unit(),
                    1,
                    one.spread(),
                    "as told by the script",
                    (changes, score, off) -> changes.own(name, score))));
    return new Inputs(more, lengths, together);
  }

  /** Only some of them, each drawn as before. */
  Inputs that(Predicate<Input> fits) {
    List<Input> kept = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      if (fits.test(all.get(i))) {
        if (lengths.contains(i)) {
          places.add(kept.size());
        }
        kept.add(all.get(i));
      }
    }
    // Lengths are drawn together; with some of them gone, the others stand alone.
    boolean whole = places.size() == lengths.size();
    return new Inputs(kept, whole ? places : List.of(), whole ? together : null);
  }

  /** Scores as they are put in: those of lengths go together. */
  double[] correlated(double[] scores) {
    if (lengths.isEmpty()) {
      return scores;
    }
    double[] some = lengths.stream().mapToDouble(i -> scores[i]).toArray();
    double[] mixed = together.together(some);
    double[] all = scores.clone();
    for (int i = 0; i < mixed.length; i++) {
      all[lengths.get(i)] = mixed[i];
    }
    return all;
  }

  private static Input measured(Part part, double metres) {
    return named(
        row("measured", "length"),
        singular(part) + length(part) + " as measured",
        (changes, score, off) -> changes.body(Trait.LENGTH, part.word(), 1 + off / metres));
  }

  private static String singular(Part part) {
    return switch (part) {
      case FOOT -> "foot";
      case HAND -> "hand";
      case TRUNK, NECK, SHOULDER_WIDTH, HIP_WIDTH -> part.word();
      default -> part.word().substring(0, part.word().length() - 1);
    };
  }

  private static String length(Part part) {
    return part == Part.SHOULDER_WIDTH || part == Part.HIP_WIDTH ? "" : " length";
  }

  private static Input.Setter factor(Trait trait, String part) {
    return (changes, score, off) -> changes.body(trait, part, Math.max(0.05, 1 + off));
  }

  private static Input.Setter body(Trait trait, String part) {
    return trait == Trait.MASS
        ? factor(trait, part)
        : (changes, score, off) -> changes.body(trait, part, off);
  }

  private static Optional<Trait> trait(DataRow row) {
    return switch (row.text("trait")) {
      case "mass" -> Optional.of(Trait.MASS);
      case "centre" -> Optional.of(Trait.CENTRE);
      case "joint_forward" -> Optional.of(Trait.JOINT_FORWARD);
      case "joint_up" -> Optional.of(Trait.JOINT_UP);
      default -> Optional.empty();
    };
  }

  private static DataRow row(String trait, String part) {
    return TABLE.only(trait + " " + part, r -> r.is("trait", trait) && r.is("part", part));
  }

  private static Input of(DataRow row, Input.Setter setter) {
    return named(row, row.text("label"), setter);
  }

  private static Input named(DataRow row, String name, Input.Setter setter) {
    String unit = row.text("unit");
    String shown =
        switch (unit) {
          case "share" -> "%";
          case "length" -> "% of length";
          case "m" -> "cm";
          case "deg" -> "°";
          default -> unit;
        };
    String source = row.text("source");
    return new Input(
        name,
        shown,
        unit.equals("share") || unit.equals("length") || unit.equals("m") ? 100 : 1,
        Spread.of(row.text("kind"), row.number("size")),
        (source.isEmpty() ? "" : source + ", ") + row.text("status"),
        setter);
  }
}
