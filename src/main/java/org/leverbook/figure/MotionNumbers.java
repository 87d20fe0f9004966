package org.leverbook.figure;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.load.Load;
import org.leverbook.statics.Position;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

/**
 * The numbers of a moving picture, one row a frame, as they are told.
 *
 * @param sweep whose rows are the frames
 * @param joints which joints are told
 */
record MotionNumbers(Sweep sweep, List<JointId> joints) {

  private static final double CM = 100;

  /** Keeps its own copy of the list. */
  MotionNumbers {
    joints = List.copyOf(joints);
  }

  int frames() {
    return sweep.rows().size();
  }

  SweepRow row(int frame) {
    return sweep.rows().get(frame);
  }

  /** What is varied, with its unit, as in "hip height (cm)". */
  String varied() {
    return sweep.unit().isEmpty() ? sweep.name() : sweep.name() + " (" + sweep.unit() + ")";
  }

  /** The value of a frame without its unit; of named things the name. */
  String value(int frame) {
    SweepRow row = row(frame);
    return row.name().isEmpty() ? signed(row.value(), decimals()) : row.name();
  }

  /** Where a frame is, as in "hip height 52.5 cm". */
  String place(int frame) {
    String gap = sweep.unit().isEmpty() || sweep.unit().equals("°") ? "" : " ";
    String value = value(frame) + (row(frame).name().isEmpty() ? gap + sweep.unit() : "");
    return sweep.name() + " " + value;
  }

  /** As many as tell neighbours apart, at least one unless all are whole. */
  private int decimals() {
    double least = Double.POSITIVE_INFINITY;
    boolean whole = true;
    for (int i = 0; i < frames(); i++) {
      double value = row(i).value();
      whole &= Math.abs(value - Math.rint(value)) < 1e-9;
      double step = i == 0 ? least : Math.abs(value - row(i - 1).value());
      least = step > 0 ? Math.min(least, step) : least;
    }
    return whole ? 0 : least < 0.1 ? 2 : 1;
  }

  /** Newton metres as told, one decimal; a dash where nothing is held. */
  String moment(int frame, JointId joint) {
    return row(frame).held() ? signed(row(frame).moment(joint), 1) : "–";
  }

  /** Centimetres as told, one decimal; a dash where nothing is held. */
  String arm(int frame, JointId joint) {
    return row(frame).held() ? signed(CM * row(frame).arm(joint), 1) : "–";
  }

  /** The numbers of a frame in a sentence; or why there are none. */
  String told(int frame) {
    if (!row(frame).held()) {
      return row(frame).reason();
    }
    return joints.stream()
            .map(j -> JointNames.of(j) + " " + moment(frame, j) + " N·m")
            .collect(Collectors.joining(", "))
        + ".";
  }

  static String signed(double value, int decimals) {
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    // No minus before what is rounded to zero.
    return text.matches("-0(\\.0*)?") ? text.substring(1) : text.replace('-', '−');
  }

  /** The first frame that holds; there must be one. */
  int poster() {
    int frame = 0;
    while (!row(frame).held()) {
      frame++;
    }
    return frame;
  }

  /** The position of the first frame that holds. */
  Position first() {
    return row(poster()).position();
  }

  /** What all that is shown has in common: the position's name, or the lift's. */
  String name() {
    List<String> names = held(Position::name);
    String common = names.get(0);
    for (String name : names) {
      int same = 0;
      while (same < Math.min(common.length(), name.length())
          && common.charAt(same) == name.charAt(same)) {
        same++;
      }
      common = same == common.length() && same == name.length() ? common : name.substring(0, same);
    }
    if (names.stream().anyMatch(n -> !n.equals(names.get(0)))) {
      int cut = common.lastIndexOf(',');
      common = cut < 0 ? "" : common.substring(0, cut);
    }
    return Caption.capital(common.isBlank() ? sweep.title() : common);
  }

  /** The lifter, where all frames have the same; empty where they differ. */
  String lifter() {
    return common(MotionNumbers::lifter);
  }

  /** The loads, where all frames have the same; empty where they differ. */
  String loads() {
    return common(MotionNumbers::loads);
  }

  /** What a frame has that others have not: its lifter, its loads. */
  String own(int frame) {
    if (!row(frame).held()) {
      return "";
    }
    Position position = row(frame).position();
    String lifter = lifter().isEmpty() ? Caption.capital(lifter(position)) : "";
    // A lifter among things that are tried one after another is named already.
    String name = row(frame).name().toLowerCase(Locale.ROOT);
    boolean named = !name.isEmpty() && lifter.toLowerCase(Locale.ROOT).startsWith(name);
    lifter = named ? "" : lifter;
    String loads = loads().isEmpty() ? Caption.capital(loads(position)) : "";
    return lifter + (lifter.isEmpty() || loads.isEmpty() ? "" : "; ") + loads;
  }

  private static String lifter(Position position) {
    return position.body().person().text();
  }

  private static String loads(Position position) {
    String loads =
        position.loads().stream()
            .filter(l -> l.mass() > 0 || !l.forces(position.placement()).isEmpty())
            .filter(l -> !(l instanceof org.leverbook.load.Inertia))
            .map(Load::description)
            .distinct()
            .collect(Collectors.joining(", "));
    return loads.isEmpty() ? "nothing held" : loads;
  }

  private String common(Function<Position, String> told) {
    List<String> all = held(told);
    return all.stream().allMatch(all.get(0)::equals) ? all.get(0) : "";
  }

  private List<String> held(Function<Position, String> told) {
    return sweep.rows().stream().filter(SweepRow::held).map(r -> told.apply(r.position())).toList();
  }
}
