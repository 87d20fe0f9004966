package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leverbook.load.Barbell;
import org.leverbook.load.Inertia;
import org.leverbook.load.Load;
import org.leverbook.load.NoLoad;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Position;
import org.leverbook.support.Support;

/**
 * Names for those compared, from what differs between them: positions of one name are told apart by
 * who they are of, supports, settings, loads, or how they came out, in this order.
 */
final class ComparedNames {

  /**
   * Settings stand first among the facts; with one of these begins what most lifts find and are not
   * told. That follows the load, so the load is told before it.
   */
  private static final Set<String> FOUND =
      Set.of(
          "knee bend", "hip flexion", "ankle flexion", "trunk lean", "spine flexion", "elbow bend");

  private static final String NOTHING = "nothing held";

  private ComparedNames() {}

  /** One name for each, no two alike. */
  static List<String> of(List<String> names, List<Position> positions) {
    List<String> told = new ArrayList<>(names);
    List<BiFunction<Position, List<Position>, String>> ways =
        List.of(
            ComparedNames::build,
            ComparedNames::supports,
            (one, alike) -> facts(one, alike, false),
            ComparedNames::loads,
            (one, alike) -> facts(one, alike, true));
    for (BiFunction<Position, List<Position>, String> way : ways) {
      List<String> before = List.copyOf(told);
      for (int i = 0; i < told.size(); i++) {
        List<Position> alike = alike(before, i, positions);
        String words = way.apply(positions.get(i), alike);
        boolean differs = alike.stream().map(p -> way.apply(p, alike)).distinct().count() > 1;
        if (differs && !words.isEmpty()) {
          told.set(i, before.get(i) + ", " + words);
        }
      }
    }
    return Names.numbered(told);
  }

  /** Those that have the same name so far, itself among them. */
  private static List<Position> alike(List<String> names, int which, List<Position> positions) {
    List<Position> alike = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equals(names.get(which))) {
        alike.add(positions.get(i));
      }
    }
    return alike;
  }

  /** Sex and size where they differ, else what is unusual. */
  private static String build(Position one, List<Position> alike) {
    List<String> sizes =
        alike.stream().map(p -> who(p).replaceAll(" \\(.*", "")).distinct().toList();
    if (sizes.size() > 1) {
      return who(one);
    }
    String changes = one.body().person().changesInWords();
    return changes.isEmpty() ? "usual build" : changes.replaceAll(", (stature|mass) kept", "");
  }

  /** What this one lifts and not all do. */
  private static String loads(Position one, List<Position> alike) {
    String own =
        lifted(one)
            .filter(load -> alike.stream().anyMatch(p -> lifted(p).noneMatch(load::equals)))
            .collect(Collectors.joining(", "));
    return lifted(one).findAny().isEmpty() ? NOTHING : own;
  }

  private static Stream<String> lifted(Position position) {
    return position.loads().stream().filter(ComparedNames::isThere).map(Load::description);
  }

  /** What holds this one up and not all. */
  private static String supports(Position one, List<Position> alike) {
    return one.supports().stream()
        .map(Support::source)
        .distinct()
        .filter(
            source ->
                alike.stream()
                    .anyMatch(p -> p.supports().stream().noneMatch(s -> s.source().equals(source))))
        .collect(Collectors.joining(", "));
  }

  /** The first thing that came out otherwise. */
  private static String facts(Position one, List<Position> alike, boolean found) {
    for (Fact fact : one.facts()) {
      boolean same =
          alike.stream()
              .allMatch(
                  p -> p.facts().stream().anyMatch(f -> f.toString().equals(fact.toString())));
      if (!found && FOUND.contains(fact.name())) {
        return "";
      }
      if (!same) {
        return fact.toString();
      }
    }
    return "";
  }

  /** The lifter without where the masses come from. */
  static String who(Position position) {
    return position.body().person().text().split("; masses:")[0];
  }

  /** What is lifted; what masses set against being moved is no thing of its own. */
  static String loads(Position position) {
    String lifted = lifted(position).collect(Collectors.joining(", "));
    return lifted.isEmpty() ? NOTHING : lifted;
  }

  /** How much is lifted, wherever it is held: counted kilograms, else what it is. */
  static List<String> sizes(Position position) {
    return position.loads().stream()
        .filter(ComparedNames::isThere)
        .map(
            l ->
                l.counted().isPresent()
                    ? String.format(Locale.ROOT, "%.2f kg", l.counted().getAsDouble())
                    : l.description())
        .sorted()
        .toList();
  }

  private static boolean isThere(Load load) {
    return !(load instanceof Inertia)
        && !(load instanceof NoLoad)
        && !(load instanceof Barbell bar && bar.kilograms() == 0);
  }
}
