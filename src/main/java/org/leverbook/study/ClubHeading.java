package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leverbook.body.Part;
import org.leverbook.data.Nearest;
import org.leverbook.quantity.Refused;

/**
 * One column of a club's list that is understood.
 *
 * @param column where it stands, from 0
 * @param text the heading as written
 * @param kind what it holds, one of the names of {@link #KINDS}
 * @param factor from its numbers to kilograms or metres; 1 where they have no unit
 */
record ClubHeading(int column, String text, String kind, double factor) {

  static final String LABEL = "label";
  static final String SEX = "sex";
  static final String MASS = "mass";
  static final String STATURE = "stature";
  static final String AGE = "age";
  static final String TRAINING = "training";

  static final double POUND = 0.45359237;

  private static final Map<String, Double> MASSES =
      units("kg", 1.0, "kgs", 1.0, "lb", POUND, "lbs", POUND);

  private static final Map<String, Double> LENGTHS =
      units("cm", 0.01, "m", 1.0, "mm", 0.001, "in", 0.0254, "inch", 0.0254, "ft", 0.3048);

  private static final Map<String, Double> YEARS = units("years", 1.0, "y", 1.0, "yr", 1.0);

  private static final Map<String, Double> NONE = Map.of();

  /** Written by tables of ours, read past. */
  private static final String NOTE = "note";

  /** Each known column with the units it may have, in the order of the layout. */
  private static final Map<String, Map<String, Double>> KINDS = kinds();

  /** Other usual names. */
  private static final Map<String, String> ALSO =
      Map.of("name", LABEL, "lifter", LABEL, "height", STATURE, "body mass", MASS, "weight", MASS);

  private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*[(\\[]\\s*(.*?)\\s*[)\\]]");

  /** What the headings of a list say. */
  record Header(List<ClubHeading> headings, List<String> notes) {

    Optional<ClubHeading> of(String kind) {
      return headings.stream().filter(h -> h.kind.equals(kind)).findFirst();
    }
  }

  private static Map<String, Double> units(Object... pairs) {
    Map<String, Double> units = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      units.put((String) pairs[i], (Double) pairs[i + 1]);
    }
    return units;
  }

  private static Map<String, Map<String, Double>> kinds() {
    Map<String, Map<String, Double>> kinds = new LinkedHashMap<>();
    kinds.put(LABEL, NONE);
    kinds.put(SEX, NONE);
    kinds.put(MASS, MASSES);
    kinds.put(STATURE, LENGTHS);
    kinds.put(AGE, YEARS);
    kinds.put(TRAINING, NONE);
    Arrays.stream(Part.values()).forEach(part -> kinds.put(Sizes.name(part), LENGTHS));
    return kinds;
  }

  /**
   * Understands a header.
   *
   * @throws Refused if a needed column is missing, one stands twice, or one has no known unit
   */
  static Header of(String file, List<String> cells) {
    List<ClubHeading> headings = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    for (int column = 0; column < cells.size(); column++) {
      String text = cells.get(column);
      Matcher split = WITH_UNIT.matcher(text);
      boolean united = split.matches();
      String name = united ? split.group(1) : text;
      Optional<String> kind = kind(name);
      if (kind.isPresent()) {
        String unit = united ? split.group(2).toLowerCase(Locale.ROOT) : "";
        double factor = factor(file, text, kind.get(), unit);
        headings.add(new ClubHeading(column, text, kind.get(), factor));
      } else if (!text.isEmpty() && !name.equalsIgnoreCase(NOTE)) {
        notes.add(unknown(text, name));
      }
    }
    once(file, headings);
    Header header = new Header(List.copyOf(headings), notes);
    for (String needed : List.of(SEX, MASS, STATURE)) {
      if (header.of(needed).isEmpty()) {
        throw new Refused(
            String.format(
                "%s has no column for the %s; it has %s. A list has columns such as %s.",
                file, needed, String.join(", ", cells), Club.LAYOUT));
      }
    }
    return header;
  }

  private static Optional<String> kind(String name) {
    String plain = name.strip().toLowerCase(Locale.ROOT).replace('_', ' ');
    String ours = ALSO.getOrDefault(plain, plain);
    return KINDS.keySet().stream()
        .filter(kind -> kind.equals(ours) || plural(kind).filter(ours::equals).isPresent())
        .findFirst();
  }

  private static Optional<String> plural(String kind) {
    return Arrays.stream(Part.values())
        .filter(p -> Sizes.name(p).equals(kind))
        .map(Part::word)
        .findFirst();
  }

  private static double factor(String file, String text, String kind, String unit) {
    Map<String, Double> units = KINDS.get(kind);
    if (units.isEmpty() || units == YEARS && unit.isEmpty()) {
      return 1;
    }
    Double factor = units.get(unit);
    if (factor == null) {
      throw new Refused(
          String.format(
              "%s, column \"%s\": %s. Write one of %s in the heading, as in %s (%s).",
              file,
              text,
              unit.isEmpty() ? "its unit is missing" : "the unit \"" + unit + "\" is not known",
              String.join(", ", units.keySet()),
              kind,
              units.keySet().iterator().next()));
    }
    return factor;
  }

  private static void once(String file, List<ClubHeading> headings) {
    Map<String, ClubHeading> first = new LinkedHashMap<>();
    for (ClubHeading heading : headings) {
      ClubHeading other = first.putIfAbsent(heading.kind, heading);
      if (other != null) {
        throw new Refused(
            String.format(
                "%s has two columns for the %s: \"%s\" and \"%s\". Leave one out.",
                file, heading.kind, other.text, heading.text));
      }
    }
  }

  private static String unknown(String text, String name) {
    List<String> near = name.isBlank() ? List.of() : Nearest.of(name.strip(), KINDS.keySet());
    return String.format(
        "The column \"%s\" is not known and was left out; %s",
        text,
        near.isEmpty()
            ? "known are " + String.join(", ", KINDS.keySet()) + "."
            : "did you mean " + String.join(" or ", near) + "?");
  }
}
