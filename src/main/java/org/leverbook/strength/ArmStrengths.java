package org.leverbook.strength;

import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Predicate;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;

/**
 * Shoulder, elbow and wrist. Peaks are mostly found; nearly all shapes are from memory (types after
 * Kulig, Andrews and Hay 1984). Angles in degrees inside.
 */
final class ArmStrengths {

  static final DataTable TABLE = DataTable.read("strength/torque_angle_shoulder_elbow.csv");

  private static final DataTable LEVELS = DataTable.read("strength/strength_levels.csv");

  private final Map<String, Strength> strengths;
  private final Who who;

  private ArmStrengths(Map<String, Strength> strengths, Who who) {
    this.strengths = strengths;
    this.who = who;
  }

  static void into(Map<String, Strength> strengths, Who who) {
    ArmStrengths arm = new ArmStrengths(strengths, who);
    arm.shoulder();
    arm.elbow();
    arm.wrist();
  }

  private void shoulder() {
    Shape flexion = shape("shoulder", "flexion");
    Shape extension = shape("shoulder", "extension");
    double women = ratio("KOSKI1994", "flexion");
    double flex =
        value(r -> r.is("source", "KOSKI1994") && r.is("unit", "N m") && r.is("angle_deg", "0"));
    flex *= who.letter().equals("F") ? women : 1;
    double extend = flex * ratio("IVEY1985", "extension to flexion");
    String shapes = "shape from memory";
    add("flex", "Koski and McGill 1994", "found, shape from memory", shapes, flex, flexion);
    add(
        "extend",
        "flexion of Koski and McGill 1994 times the ratio of Ivey et al. 1985",
        "found, shape from memory",
        shapes,
        extend,
        extension);
    for (String action : List.of("abduction", "adduction")) {
      Shape shape = shape("shoulder", action);
      stobbe(action.replace("ion", ""), action, shape, shape.at(90));
    }
    for (String action : List.of("horizontal adduction", "horizontal abduction")) {
      Shape shape = shape("shoulder", action);
      String way = action.contains("add") ? "adduct horizontally" : "abduct horizontally";
      stobbe(way, action, shape, shape.at(0));
    }
    Shape level = null;
    stobbe("rotate inward", "internal rotation", level, 1);
    stobbe("rotate outward", "external rotation", level, 1);
  }

  /** A value at one place of a shape gives its peak. */
  private void stobbe(String way, String action, Shape shape, double there) {
    double value =
        value(
            r ->
                r.is("source", "STOBBE1982")
                    && r.is("joint", "shoulder")
                    && r.is("action", action)
                    && r.is("sex", who.letter()));
    String note = shape == null ? "measured at one angle only" : "shape from memory";
    add(way, "Stobbe 1982", "from memory", note, value / there, shape);
  }

  private void add(
      String action, String authors, String status, String note, double peak, Shape shape) {
    double most = peak * who.size() * who.aged() * who.trained("shoulder", action, 0);
    put(
        "shoulder",
        action,
        shape == null ? a -> most : a -> most * shape.at(a),
        shape == null ? 0 : shape.low(),
        shape == null ? 0 : shape.high(),
        new Evidence(authors + who.trainedBy("shoulder", action), status, note));
  }

  private void put(
      String joint,
      String action,
      DoubleUnaryOperator degrees,
      double low,
      double high,
      Evidence evidence) {
    strengths.put(
        joint + " " + action,
        new Strength(
            (angle, speed) -> degrees.applyAsDouble(Math.toDegrees(angle)),
            false,
            Math.toRadians(low),
            Math.toRadians(high),
            evidence));
  }

  private void elbow() {
    double scale = who.size() * who.aged();
    Shape bend = shape("elbow", "flexion");
    Shape straighten = shape("elbow", "extension");
    double flex =
        value(
            r ->
                r.is("source", "TSUNODA1993")
                    && r.is("unit", "N m")
                    && r.is("sex", who.letter())
                    && r.text("group").equals("young untrained"));
    double flexed = flex * scale * who.trained("elbow", "flex", 0);
    boolean woman = who.letter().equals("F");
    put(
        "elbow",
        "flex",
        a -> flexed * (woman ? womans(bend, a) : bend.at(a)),
        bend.low(),
        bend.high(),
        new Evidence(
            "Tsunoda et al. 1993" + who.trainedBy("elbow", "flex"),
            "found, shape from memory",
            woman
                ? "as strong at 105° as at 60°, as found"
                : "shape tied to the found 0.8 at 105°"));
    double backward =
        value(r -> r.is("source", "LATEGAN2003") && r.is("action", "extension"))
            / value(r -> r.is("source", "LATEGAN2003") && r.is("action", "flexion"));
    double extended = flex * backward * scale * who.trained("elbow", "extend", 0);
    put(
        "elbow",
        "extend",
        a -> extended * straighten.at(a),
        straighten.low(),
        straighten.high(),
        new Evidence(
            "flexion of Tsunoda et al. 1993 times the ratio of Lategan and Kruger 2003"
                + who.trainedBy("elbow", "extend"),
            "found, shape from memory",
            "ratio of moving efforts"));
  }

  /** Women keep their strength from 60 to 105 degrees (Tsunoda et al. 1993), men do not. */
  private static double womans(Shape man, double degrees) {
    double bent = Math.max(105, degrees);
    return degrees <= 60 ? man.at(degrees) : man.at(bent) / man.at(105);
  }

  private void wrist() {
    double women =
        1
            / LEVELS
                .only("men to women", r -> r.is("kind", "joint scaling") && r.is("sex", "M/F"))
                .number("value");
    String[][] ways = {
      {"flex", "flexion"},
      {"extend", "extension"},
      {"deviate radially", "radial deviation"},
      {"deviate ulnarly", "ulnar deviation"}
    };
    for (String[] way : ways) {
      double men =
          value(
              r -> r.is("source", "DELP1996") && r.is("joint", "wrist") && r.is("action", way[1]));
      boolean woman = who.letter().equals("F");
      double most =
          men * (woman ? women : 1) * who.size() * who.aged() * who.trained("wrist", way[0], 0);
      put(
          "wrist",
          way[0],
          a -> most,
          0,
          0,
          new Evidence(
              "Delp, Grierson and Buchanan 1996" + who.trainedBy("wrist", way[0]),
              "found",
              (woman ? "men's, over the ratio of Danneskiold-Samsøe et al. 2009; " : "")
                  + "the greatest of all angles"));
    }
  }

  private static Shape shape(String joint, String action) {
    List<DataRow> points =
        TABLE.rows().stream()
            .filter(r -> r.is("joint", joint) && r.is("action", action))
            .filter(r -> r.is("unit", "fraction of peak"))
            .toList();
    return Shape.of(points, "angle_deg", "mean");
  }

  private static double value(Predicate<DataRow> fits) {
    return TABLE.only("this strength", fits).number("mean");
  }

  private static double ratio(String source, String action) {
    return TABLE
        .only(
            "this ratio",
            r ->
                r.is("source", source)
                    && r.is("action", action)
                    && r.text("unit").contains("ratio"))
        .number("mean");
  }
}
