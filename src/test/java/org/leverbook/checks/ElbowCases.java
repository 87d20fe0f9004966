package org.leverbook.checks;

import static org.leverbook.checks.Levers.G;
import static org.leverbook.checks.Levers.G_980;
import static org.leverbook.checks.Levers.G_981;
import static org.leverbook.checks.Levers.at;
import static org.leverbook.checks.Levers.down;
import static org.leverbook.checks.Levers.forearm;
import static org.leverbook.checks.Levers.weighing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.lever.LineOfPull;
import org.leverbook.lever.Muscle;
import org.leverbook.lever.Opposition;
import org.leverbook.load.Band;
import org.leverbook.load.Force;
import org.leverbook.load.Grasp;
import org.leverbook.load.Grasps;
import org.leverbook.load.Stretch;
import org.leverbook.pose.Placement;

/** The elbow examples: A01, A12, A18, A25, A31, A32, A36, A38, A39, A41. */
final class ElbowCases {

  private ElbowCases() {}

  static Map<String, ToDoubleFunction<Rotation>> rows() {
    Map<String, ToDoubleFunction<Rotation>> rows = new LinkedHashMap<>();
    rows.put("A01a", turn -> bookInHand(turn).pull().force());
    rows.put("A01b", turn -> downOnForearm(bookInHand(turn), turn));
    // The book counts forearm and book together as the weight that the muscle supports.
    rows.put(
        "A01c",
        turn -> bookInHand(turn).pull().force() / bookInHand(turn).moment().force().getNorm());
    rows.put("A12", ElbowCases::ropeInPlaceOfBook);
    rows.put("A18a", turn -> eighty(turn).pull().force());
    rows.put("A18b", turn -> downOnForearm(eighty(turn), turn));
    rows.put("A25a", turn -> single(80, 0.30, 60, turn).pull().force());
    rows.put("A25b", turn -> single(200, 0.25, 90, turn).pull().force());
    rows.put("A25c", turn -> single(70, 0.30, 90, turn).pull().force());
    rows.put("A31a", turn -> tenKilograms(turn).moment("elbow", "load").size());
    rows.put("A31b", turn -> tenKilograms(turn).moment("elbow", "load").force().getNorm());
    rows.put("A32a", turn -> ball(90, turn).pull().force());
    rows.put("A32b", turn -> ball(45, turn).pull().force());
    rows.put("A36a", turn -> dumbbell(turn).pull().force());
    rows.put("A36b", turn -> downOnForearm(dumbbell(turn), turn));
    rows.put("A38a", turn -> curl(turn).moment().size());
    rows.put("A38b", turn -> curl(turn).pull().force());
    rows.put("A39a", turn -> tenAlone(turn).pull().force());
    rows.put("A39b", turn -> downOnForearm(tenAlone(turn), turn));
    rows.put("A41a", turn -> twoFlexors(turn).pulls().get(0).force());
    rows.put("A41b", turn -> twoFlexors(turn).pulls().get(1).force());
    return rows;
  }

  private static double downOnForearm(Scene.Held held, Rotation turn) {
    return held.contact().along(turn.applyTo(Scene.DOWN));
  }

  /** A biceps that pulls straight up on a bent forearm. */
  private static Scene.Held upright(Scene scene, double insertion) {
    return scene.heldBy(
        "elbow", scene.muscle("biceps", "forearm", at(0, -insertion), "upper arm", Scene.UP));
  }

  private static Scene.Held bookInHand(Rotation turn) {
    Scene scene = forearm(90, 2.50, 0.160, G_980, turn);
    return upright(scene.load("load", "forearm", at(0, -0.380), down(4.00 * G_980)), 0.040);
  }

  /** The stretch at which the rope pulls with the book's 39.2 N, checked against its own law. */
  private static double ropeInPlaceOfBook(Rotation turn) {
    Placement where = forearm(90, 2.50, 0.160, G_980, turn).placed();
    Vector3D hand = at(0, -0.380);
    int forearm = where.tree().indexOf("forearm");
    double rest = 0.50;
    double stretch = Stretch.linear(600).metres(39.2);
    Vector3D below =
        where.toWorld(forearm, hand).add(turn.applyTo(Scene.DOWN).scalarMultiply(rest + stretch));
    Band rope =
        new Band(below, rest, Stretch.linear(600), new Grasps(List.of(Grasp.fixed(forearm, hand))));
    Force pull = rope.forces(where).get(0);
    if (Math.abs(pull.force().getNorm() - 39.2) > 1e-9) {
      throw new AssertionError("stretched so far, the rope pulls with " + pull.force().getNorm());
    }
    return rope.stretch(where);
  }

  private static Scene.Held eighty(Rotation turn) {
    Scene scene = forearm(90, weighing(20), 0.15, G, turn);
    return upright(scene.load("load", "forearm", at(0, -0.35), down(80)), 0.04);
  }

  /** A weight alone on a level forearm; the biceps 3 cm from the elbow at an angle to it. */
  private static Scene.Held single(double weight, double reach, double degrees, Rotation turn) {
    Scene scene = forearm(90, 0, 0, G, turn);
    scene.load("load", "forearm", at(0, -reach), down(weight));
    Vector3D pull = Levers.direction(180 - degrees);
    return scene.heldBy(
        "elbow", scene.muscle("biceps", "forearm", at(0, -0.03), "upper arm", pull));
  }

  private static Scene tenKilograms(Rotation turn) {
    Scene scene = forearm(90, weighing(15.8), 0.172, G, turn);
    return scene.load("load", "forearm", at(0, -0.355), down(49));
  }

  private static Scene.Held ball(double bend, Rotation turn) {
    Scene scene = forearm(bend, 2.0, 0.15, G_980, turn);
    return upright(scene.load("load", "forearm", at(0, -0.35), down(5.0 * G_980)), 0.05);
  }

  private static Scene.Held dumbbell(Rotation turn) {
    Scene scene = forearm(90, weighing(50), 0.25, G, turn);
    return upright(scene.load("load", "forearm", at(0, -0.50), down(50)), 0.05);
  }

  private static Scene.Held curl(Rotation turn) {
    Scene scene = forearm(90, 0, 0, G, turn);
    return upright(scene.load("load", "forearm", at(0, -0.27), down(320)), 0.043);
  }

  private static Scene.Held tenAlone(Rotation turn) {
    Scene scene = forearm(90, 0, 0, G_981, turn);
    return upright(scene.load("load", "forearm", at(0, -0.30), down(10 * G_981)), 0.05);
  }

  /** Two flexors straight up at 5 and 4 cm against 25 N·m. */
  private static Opposition.Shared twoFlexors(Rotation turn) {
    Scene scene = forearm(90, 0, 0, G, turn);
    scene.load("load", "forearm", at(0, -0.25), down(100));
    LineOfPull strong = scene.muscle("flexor 1", "forearm", at(0, -0.050), "upper arm", Scene.UP);
    LineOfPull weak = scene.muscle("flexor 2", "forearm", at(0, -0.040), "upper arm", Scene.UP);
    return Opposition.shared(
        scene.moment("elbow", "load"),
        scene.placed(),
        List.of(new Muscle(strong, 1000), new Muscle(weak, 500)));
  }
}
