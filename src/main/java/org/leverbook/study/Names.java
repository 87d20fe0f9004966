package org.leverbook.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.measure.Quantity;
import org.leverbook.display.Shown;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/** What tables and plots call the things that are tried one after another. */
final class Names {

  private static final int LONGEST = 60;

  private Names() {}

  /**
   * Whether there is something to try.
   *
   * @param name what they are
   * @param things what is tried
   * @return the same things
   * @throws Refused if the list is missing or empty, or one of the things is missing
   */
  static <T> List<T> checked(String name, List<? extends T> things) {
    Ask.present("name of what is tried", name, "\"grip\"");
    Ask.present("list of what is tried", things, "List.of(Grip.OVERHAND, Grip.UNDERHAND)");
    if (things.isEmpty()) {
      throw new Refused(
          "The list of what is tried for \"" + name + "\" is empty: give one thing or more.");
    }
    for (int i = 0; i < things.size(); i++) {
      if (things.get(i) == null) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "The %s number %d of %d is missing (null): leave it out, or give it.",
                name,
                i + 1,
                things.size()));
      }
    }
    return List.copyOf(things);
  }

  /** A name for each; things that call themselves alike are numbered. */
  static List<String> of(List<?> things) {
    return numbered(things.stream().map(Names::nameOf).toList());
  }

  /** Names that are alike get numbers, from the second on. */
  static List<String> numbered(List<String> names) {
    Map<String, Integer> seen = new HashMap<>();
    List<String> told = new ArrayList<>();
    for (String name : names) {
      int nth = seen.merge(name, 1, Integer::sum);
      told.add(nth == 1 ? name : name + " (" + nth + ")");
    }
    return told;
  }

  private static String nameOf(Object thing) {
    String name;
    if (thing instanceof Enum<?> constant) {
      name = constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    } else if (thing instanceof Quantity<?> quantity) {
      name = Units.text(quantity);
    } else if (thing instanceof Lift<?> lift) {
      name = lift.name();
    } else if (thing instanceof Position position) {
      name = position.name();
    } else if (thing instanceof Shown shown) {
      name = shown.text().lines().findFirst().orElse("");
    } else {
      String own = String.valueOf(thing);
      // A class that does not say how it is written would show its address.
      boolean address =
          own.equals(thing.getClass().getName() + "@" + Integer.toHexString(thing.hashCode()));
      name = address ? thing.getClass().getSimpleName() : own;
    }
    String line = name.strip().replaceAll("\\s+", " ");
    if (line.isEmpty()) {
      return "(no name)";
    }
    if (line.length() <= LONGEST) {
      return line;
    }
    // What stands in brackets or after a semicolon tells more than a name must.
    int end = Math.max(line.lastIndexOf(" (", LONGEST), line.lastIndexOf("; ", LONGEST));
    return end > 0 ? line.substring(0, end) : line.substring(0, LONGEST - 1).strip() + "…";
  }
}
