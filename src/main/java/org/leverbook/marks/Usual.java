package org.leverbook.marks;

import java.util.List;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.solve.Coordinates;
import org.leverbook.solve.Feature;
import org.leverbook.solve.Features;
import org.leverbook.solve.Statements;

/**
 * How lifters usually hold themselves, for what the marks leave open: above all how far limbs turn
 * sideways. Each joint has a usual angle and how far people commonly are from it (one standard
 * deviation); both are assumptions, no source. A mark doubted by a centimetre outweighs them
 * wherever it says anything.
 */
final class Usual {

  /** A joint's angle, and how far from it people commonly are, degrees. */
  private record Habit(String name, double degrees, double spread) {}

  /** The pelvis in space. */
  static final List<String> PELVIS =
      List.of(
          "pelvis forward",
          "pelvis up",
          "pelvis right",
          "pelvis lean",
          "pelvis side lean",
          "pelvis turn");

  private static final List<Habit> TRUNK =
      List.of(
          new Habit("pelvis lean", 0, 200),
          new Habit("pelvis side lean", 0, 40),
          new Habit("pelvis turn", 0, 30),
          new Habit("low back flexion", 0, 20),
          new Habit("upper back flexion", 0, 12),
          new Habit("side bend", 0, 5),
          new Habit("twist", 0, 5),
          new Habit("neck flexion", 0, 30),
          new Habit("neck side bend", 0, 5),
          new Habit("neck twist", 0, 5));

  private static final List<Habit> LIMBS =
      List.of(
          new Habit("hip flexion", 30, 90),
          new Habit("hip abduction", 10, 12),
          new Habit("hip rotation", 0, 20),
          new Habit("knee flexion", 30, 90),
          new Habit("ankle flexion", 0, 40),
          new Habit("ankle abduction", 0, 8),
          new Habit("ankle rotation", 0, 8),
          new Habit("ball of the foot flexion", 0, 20),
          new Habit("shoulder girdle flexion", 5, 15),
          new Habit("shoulder girdle abduction", 0, 8),
          new Habit("shoulder girdle rotation", 0, 10),
          new Habit("shoulder flexion", 20, 90),
          new Habit("shoulder abduction", 15, 25),
          new Habit("shoulder rotation", 0, 40),
          new Habit("elbow flexion", 20, 90),
          new Habit("forearm rotation", 120, 50),
          new Habit("wrist flexion", 0, 20),
          new Habit("wrist abduction", 0, 10));

  private static final double TURN_OUT = Math.toRadians(15);
  private static final double TURN_OUT_SPREAD = 0.2;
  private static final double STANCE_SPREAD = 0.12;

  private static final double GRIP_SPREAD = 0.25;

  /**
   * How far the line of a hand is from a bar that lies across, as a sine: most lifts hold a bar;
   * one that is known to be held may lie somewhat obliquely in the palm.
   */
  private static final double LINE_SPREAD = 0.5;

  private static final double BAR_SPREAD = 0.35;

  /** How far one side commonly is from the other where both are marked, radians. */
  private static final double BOTH_ALIKE = Math.toRadians(5);

  /** The same of bending forward and back, in which lifters step and split, radians. */
  private static final double BENT_ALIKE = Math.toRadians(25);

  private Usual() {}

  static void say(Statements said) {
    TRUNK.forEach(habit -> say(said, habit, habit.name()));
    for (Habit habit : LIMBS) {
      if (said.coordinates().bothAlike()) {
        say(said, habit, habit.name());
      } else {
        say(said, habit, "right " + habit.name());
        say(said, habit, "left " + habit.name());
        double alike = habit.name().endsWith("flexion") ? BENT_ALIKE : BOTH_ALIKE;
        said.proportion(MarkFit.WEIGHT / alike, "right " + habit.name(), 1, "left " + habit.name());
      }
    }
  }

  private static void say(Statements said, Habit habit, String name) {
    Coordinates all = said.coordinates();
    if (all.has(name)) {
      said.usually(
          name, Math.toRadians(habit.degrees()), MarkFit.WEIGHT / Math.toRadians(habit.spread()));
    }
  }

  /** Feet about shoulder width apart and somewhat turned out, unless the coach knows. */
  static void stance(Statements said, Known known, List<Side> sides) {
    var body = said.body();
    Feature right = Features.direction(body, "pelvis", Vector3D.PLUS_K);
    Feature between =
        new Feature.Way(Features.joint(body, "left ankle"), Features.joint(body, "right ankle"));
    known
        .stanceWidth()
        .ifPresentOrElse(
            w -> said.product("the stance", "its width", between, right, w),
            () ->
                said.ratherProduct(
                    between,
                    right,
                    2 * body.links().shoulderHalfWidth(),
                    MarkFit.WEIGHT / STANCE_SPREAD));
    for (Side side : sides) {
      Feature foot = Features.direction(body, side.of("foot"), Vector3D.PLUS_I);
      double out = side.sign() * Math.sin(known.turnOut().orElse(TURN_OUT));
      if (known.turnOut().isPresent()) {
        said.product("the " + side.of("foot"), "its turn-out", foot, right, out);
      } else {
        said.ratherProduct(foot, right, out, MarkFit.WEIGHT / TURN_OUT_SPREAD);
      }
    }
  }

  /** Hands somewhat more than shoulder width apart, as on a bar, unless the coach knows better. */
  static void grip(Statements said, Known known) {
    if (known.hands() == Known.Hands.APART) {
      return;
    }
    var body = said.body();
    Feature right = Features.direction(body, "pelvis", Vector3D.PLUS_K);
    Feature between =
        new Feature.Way(Features.joint(body, "left grip"), Features.joint(body, "right grip"));
    known
        .gripWidth()
        .ifPresentOrElse(
            w -> said.product("the grip", "its width", between, right, w),
            () ->
                said.ratherProduct(
                    between,
                    right,
                    2.6 * body.links().shoulderHalfWidth(),
                    MarkFit.WEIGHT / GRIP_SPREAD));
    double weight =
        MarkFit.WEIGHT / (known.hands() == Known.Hands.ON_BAR ? BAR_SPREAD : LINE_SPREAD);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      // Palms forward or backward alike: square to what points forward and to what points up.
      Feature line = Features.direction(body, side.of("hand"), Vector3D.PLUS_K);
      said.ratherProduct(line, Features.direction(body, "pelvis", Vector3D.PLUS_I), 0, weight);
      said.ratherProduct(line, Features.direction(body, "pelvis", Vector3D.PLUS_J), 0, weight);
      if (said.coordinates().bothAlike()) {
        return;
      }
    }
    if (known.hands() == Known.Hands.ON_BAR) {
      said.ratherTogether(
          Features.joint(body, "right grip"),
          Features.joint(body, "left grip"),
          Vector3D.PLUS_J,
          MarkFit.WEIGHT / BAR_SPREAD);
    }
  }

  /**
   * Whether landmarks hardly show a coordinate: from the side, whatever turns out of the picture;
   * anyhow, how a bend is shared among pelvis, low and upper back where the back is not marked, and
   * the shoulder girdle.
   *
   * @param name of the coordinate
   * @param inSpace whether landmarks are places in space
   * @param spine whether the back is marked
   */
  static boolean hardlySeen(String name, boolean inSpace, boolean spine) {
    boolean across =
        name.endsWith("abduction")
            || name.endsWith("rotation")
            || Set.of("pelvis side lean", "pelvis turn", "pelvis right", "side bend", "twist")
                .contains(name)
            || name.startsWith("neck side")
            || name.startsWith("neck twist");
    boolean back = name.endsWith("back flexion");
    return name.contains("girdle") || (back && !spine) || (across && !inSpace);
  }
}
