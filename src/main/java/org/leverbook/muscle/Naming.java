package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Several muscles in few words. */
final class Naming {

  private Naming() {}

  /**
   * The names, parts of one muscle drawn together.
   *
   * @param names as in "biceps, long head"
   * @return as in "biceps; brachialis" where both heads are meant, else "biceps (long head)"
   */
  static String together(List<String> names) {
    Map<String, List<String>> parts = new LinkedHashMap<>();
    for (String name : names) {
      parts.computeIfAbsent(head(name), k -> new ArrayList<>()).add(name);
    }
    List<String> words = new ArrayList<>();
    parts.forEach(
        (head, own) -> {
          long all =
              MuscleTable.SHIPPED.all().stream().filter(m -> head(m.name()).equals(head)).count();
          if (own.size() == all) {
            words.add(head);
          } else {
            List<String> tails =
                own.stream().map(n -> n.substring(head.length()).replaceFirst("^, ", "")).toList();
            words.add(head + " (" + String.join(", ", tails) + ")");
          }
        });
    return String.join("; ", words);
  }

  private static String head(String name) {
    int comma = name.indexOf(',');
    return comma < 0 ? name : name.substring(0, comma);
  }
}
