package org.leverbook.muscle;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;
import org.leverbook.data.Nearest;
import org.leverbook.quantity.Refused;

/** Finds muscles by any of their names: the gym's, the anatomical ones, groups and parts. */
final class MuscleNames {

  private static final Map<String, Set<String>> KNOWN =
      read(DataTable.read("muscle/names.csv"), MuscleTable.SHIPPED);

  private MuscleNames() {}

  /**
   * The muscles of a name.
   *
   * @param name as in "lats", "latissimus dorsi", "Gluteus Maximus"; capitals, hyphens and a final
   *     "s" do not matter; the first word of several, as in "vastus", means them all
   * @return at least one
   * @throws Refused if nothing is called so; offers the nearest names
   */
  static List<MuscleRow> find(String name) {
    String wanted = plain(name);
    for (String form : List.of(wanted, wanted + "s", wanted.replaceAll("s$", ""))) {
      if (KNOWN.containsKey(form)) {
        return KNOWN.get(form).stream().map(MuscleTable.SHIPPED::row).toList();
      }
    }
    Set<String> begin = new LinkedHashSet<>();
    if (!wanted.isEmpty()) {
      KNOWN.forEach(
          (known, keys) -> begin.addAll(known.startsWith(wanted + " ") ? keys : Set.of()));
    }
    if (!begin.isEmpty()) {
      return begin.stream().map(MuscleTable.SHIPPED::row).toList();
    }
    List<String> nearest = wanted.isEmpty() ? List.of() : Nearest.of(wanted, KNOWN.keySet());
    String hint =
        nearest.isEmpty()
            ? "muscles() lists all."
            : "Did you mean "
                + String.join(" or ", nearest.stream().map(n -> "\"" + n + "\"").toList())
                + "? muscles() lists all.";
    throw new Refused("There is no muscle called \"" + name + "\". " + hint);
  }

  /** All names there are, in small letters. */
  static List<String> all() {
    return KNOWN.keySet().stream().sorted().toList();
  }

  /** Small letters and single blanks only. */
  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ").strip();
  }

  private static Map<String, Set<String>> read(DataTable names, MuscleTable muscles) {
    Map<String, Set<String>> known = new LinkedHashMap<>();
    for (DataRow row : names.rows()) {
      for (String key : muscles.keys(row, "muscles")) {
        known.computeIfAbsent(plain(row.text("name")), k -> new LinkedHashSet<>()).add(key);
      }
    }
    // A trade group of the list of names stays as it is; the table's own groups fill up the rest.
    Map<String, Set<String>> groups = new LinkedHashMap<>();
    for (MuscleRow muscle : muscles.all()) {
      groups.computeIfAbsent(plain(muscle.group()), k -> new LinkedHashSet<>()).add(muscle.key());
      known.putIfAbsent(plain(muscle.key()), Set.of(muscle.key()));
    }
    groups.forEach(known::putIfAbsent);
    return known;
  }
}
