package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leverbook.body.Links;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;

/**
 * The sizes of a group, sorted. A percentile between two people is interpolated between them
 * (Hyndman and Fan 1996, definition 7, from memory).
 */
final class Sizes {

  /** So many people are looked at at most: eight bytes each for every size. */
  static final int MOST = 100_000;

  /** What stands below a shown group. */
  static final List<Part> USUAL =
      List.of(Part.SHANK, Part.THIGH, Part.TRUNK, Part.UPPER_ARM, Part.FOREARM);

  private static final double[] PERCENTILES = {0.05, 0.25, 0.50, 0.75, 0.95};

  private final Group group;
  private final List<Part> parts;

  /** Mass, stature, then the parts; each ascending. */
  private final double[][] sorted;

  private Sizes(Group group, List<Part> parts, double[][] sorted) {
    this.group = group;
    this.parts = parts;
    this.sorted = sorted;
  }

  /** The sizes of a group's first people. */
  static Sizes of(Group group, int most, List<Part> asked) {
    List<Part> parts = asked.isEmpty() ? List.of(Part.values()) : asked;
    int count = Math.min(most, group.size());
    double[][] sizes = new double[2 + parts.size()][count];
    int done =
        Many.each(
            "sizes of people",
            count,
            i -> sizes(group.get(i), parts),
            (i, person) -> {
              for (int k = 0; k < person.length; k++) {
                sizes[k][i] = person[k];
              }
            });
    if (done == 0) {
      throw new Refused("Stopped before anyone was measured.");
    }
    for (int k = 0; k < sizes.length; k++) {
      sizes[k] = Arrays.copyOf(sizes[k], done);
      Arrays.sort(sizes[k]);
    }
    return new Sizes(group, parts, sizes);
  }

  private static double[] sizes(Person person, List<Part> parts) {
    double[] sizes = new double[2 + parts.size()];
    sizes[0] = kilograms(person);
    sizes[1] = 100 * metres(person);
    Links links = Links.of(person);
    for (int k = 0; k < parts.size(); k++) {
      sizes[2 + k] = 100 * measured(links, parts.get(k));
    }
    return sizes;
  }

  /** Body mass as it results; without the detour over a quantity where nothing follows. */
  static double kilograms(Person person) {
    return person.massChanges() ? Si.kilograms(person.mass()) : person.kilograms();
  }

  /** Stature as it results, metres; without the detour over a quantity where nothing follows. */
  static double metres(Person person) {
    return person.statureChanges() ? Si.metres(person.stature()) : person.metres();
  }

  /** A part as a tape would measure it, metres: widths from joint to joint. */
  static double measured(Links links, Part part) {
    return width(part) ? 2 * links.lengthOf(part) : links.lengthOf(part);
  }

  /** Whether a part's own length is half of what is measured. */
  static boolean width(Part part) {
    return part == Part.SHOULDER_WIDTH || part == Part.HIP_WIDTH;
  }

  /** A part as a column is called. */
  static String name(Part part) {
    return part.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  Quantity<Length> length(Part part, double share) {
    return Units.cm(at(sorted[2 + parts.indexOf(part)], share));
  }

  Sheet sheet() {
    List<Column> columns = new ArrayList<>();
    columns.add(Column.text("size"));
    columns.add(Column.text("unit"));
    for (double percentile : PERCENTILES) {
      columns.add(new Column(Ordinals.of(100 * percentile), "", 1));
    }
    List<List<Object>> rows = new ArrayList<>();
    rows.add(row("mass", "kg", sorted[0]));
    rows.add(row("stature", "cm", sorted[1]));
    for (int k = 0; k < parts.size(); k++) {
      rows.add(row(name(parts.get(k)), "cm", sorted[2 + k]));
    }
    int seen = sorted[0].length;
    Stream<String> about =
        Stream.of(
            "Columns are percentiles"
                + (seen < group.size()
                    ? String.format(Locale.ROOT, " of the first %,d people; ", seen)
                    : "; ")
                + "lengths from joint to joint.");
    return new Sheet(
        "Sizes of " + group.title(),
        columns,
        rows,
        Stream.concat(about, group.notes().stream()).toList());
  }

  private static List<Object> row(String name, String unit, double[] sizes) {
    List<Object> row = new ArrayList<>(List.of(name, unit));
    for (double percentile : PERCENTILES) {
      row.add(at(sizes, percentile));
    }
    return row;
  }

  private static double at(double[] sizes, double share) {
    double place = share * (sizes.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(sizes.length - 1, below + 1);
    return sizes[below] + (place - below) * (sizes[above] - sizes[below]);
  }
}
