package org.leverbook.marks;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.leverbook.quantity.Refused;

/**
 * Which axis of a table points up. Turned into ours (x as it is, y up, z towards the viewer of a
 * lifter seen from the right) so that right-handed axes stay right-handed: with z up our z is the
 * table's -y.
 */
enum UpAxis {
  Y("y"),
  MINUS_Y("-y"),
  Z("z"),
  MINUS_Z("-z");

  private final String word;

  UpAxis(String word) {
    this.word = word;
  }

  static UpAxis asked(String word) {
    String tidy = word == null ? "" : word.strip().toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(a -> a.word.equals(tidy))
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "The axis that points up can be "
                        + Arrays.stream(values())
                            .map(a -> "\"" + a.word + "\"")
                            .collect(Collectors.joining(", "))
                        + ", not \""
                        + word
                        + "\": \"-y\" where y runs down, \"z\" where z runs up. x runs to the right"
                        + " or forward."));
  }

  /** Whether it is the third axis. */
  boolean third() {
    return this == Z || this == MINUS_Z;
  }

  /** Places of the table as ours: two numbers of a view from the side, or three. */
  double[] turned(double... p) {
    if (p.length == 2) {
      return new double[] {p[0], this == Y || this == Z ? p[1] : -p[1]};
    }
    return switch (this) {
      case Y -> p.clone();
      case MINUS_Y -> new double[] {p[0], -p[1], -p[2]};
      case Z -> new double[] {p[0], p[2], -p[1]};
      case MINUS_Z -> new double[] {p[0], -p[2], p[1]};
    };
  }

  /**
   * Refuses a lifter who should stand but whose ankles are above the hips, or beside them.
   *
   * @param name of the table
   * @param tracks with hip and ankle, in our axes as this says
   */
  void check(String name, List<Track> tracks) {
    double[] up = between(tracks, Landmark.ANKLE, Landmark.HIP);
    double[] size = Arrays.stream(up).map(Math::abs).toArray();
    double longest = Arrays.stream(size).max().orElse(0);
    if (up[1] > 0 && size[1] >= 0.5 * longest) {
      return;
    }
    String advice =
        size[1] >= 0.5 * longest
            ? opposite().word
            : up.length > 2 && size[2] == longest ? besides(up[2]) : "";
    throw new Refused(
        String.format(
            Locale.ROOT,
            "%s: with %s up, the hip is on average %.0f cm %s the ankle%s, so a standing lifter would"
                + " be upside down or lie. %s If the lifter does not stand, add .offTheFloor().",
            name,
            word,
            100 * size[1],
            up[1] > 0 ? "above" : "below",
            size[1] >= 0.5 * longest
                ? ""
                : String.format(Locale.ROOT, " and %.0f cm beside it", 100 * longest),
            advice.isEmpty()
                ? "Check which columns are x and y."
                : "Add .up(\"" + advice + "\") if that axis points up."));
  }

  private UpAxis opposite() {
    return switch (this) {
      case Y -> MINUS_Y;
      case MINUS_Y -> Y;
      case Z -> MINUS_Z;
      case MINUS_Z -> Z;
    };
  }

  /** The axis that runs from the ankles to the hips where our z does. */
  private String besides(double along) {
    boolean same =
        switch (this) {
          case Y, MINUS_Z -> along > 0;
          case MINUS_Y, Z -> along < 0;
        };
    String axis = third() ? "y" : "z";
    return same ? axis : "-" + axis;
  }

  /** Mean way from one landmark to another over all frames and sides. */
  private static double[] between(List<Track> tracks, Landmark from, Landmark to) {
    double[] one = mean(tracks, from);
    double[] other = mean(tracks, to);
    for (int k = 0; k < one.length; k++) {
      other[k] -= one[k];
    }
    return other;
  }

  private static double[] mean(List<Track> tracks, Landmark landmark) {
    List<Track> all = tracks.stream().filter(t -> t.landmark() == landmark).toList();
    double[] sum = new double[all.get(0).places().length];
    for (Track track : all) {
      for (int k = 0; k < sum.length; k++) {
        sum[k] += Arrays.stream(track.places()[k]).average().orElse(0) / all.size();
      }
    }
    return sum;
  }

  @Override
  public String toString() {
    return word;
  }
}
