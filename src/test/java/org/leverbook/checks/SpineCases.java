package org.leverbook.checks;

import static org.leverbook.checks.Levers.G_980;
import static org.leverbook.checks.Levers.at;
import static org.leverbook.checks.Levers.direction;
import static org.leverbook.checks.Levers.down;
import static org.leverbook.checks.Levers.hinge;
import static org.leverbook.checks.Levers.lever;
import static org.leverbook.checks.Levers.trunk;
import static org.leverbook.checks.Levers.weighing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Joint;
import org.leverbook.body.Motion;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.LineOfForce;

/** Back, neck and jaw: A05, A07, A16, A20, A21, A29, A34. */
final class SpineCases {

  /** Any length: the answers are forces, and only ratios of lengths are printed. */
  private static final double LENGTH = 0.60;

  /** Any stature and weight: the answers are shares of body weight. */
  private static final double STATURE = 1.80;

  private static final double WEIGHT = 800;

  private SpineCases() {}

  static Map<String, ToDoubleFunction<Rotation>> rows() {
    Map<String, ToDoubleFunction<Rotation>> rows = new LinkedHashMap<>();
    rows.put("A05a", turn -> erectHead(turn).pull().force());
    rows.put("A05b", turn -> erectHead(turn).contact().along(turn.applyTo(Scene.UP)));
    rows.put("A07a", SpineCases::bite);
    rows.put("A07b", SpineCases::jawJoint);
    rows.put("A16a", turn -> bentBack(60, 320, 160, turn).pull().force());
    rows.put("A16b", turn -> bentBack(60, 320, 160, turn).contact().size());
    rows.put("A16c", turn -> bentBack(60, 320, 160 + 20 * G_980, turn).pull().force());
    rows.put("A16d", turn -> bentBack(60, 320, 160 + 20 * G_980, turn).contact().size());
    rows.put("A20a", turn -> flexedHead(turn).pull().force());
    rows.put("A20b", turn -> flexedHead(turn).contact().along(turn.applyTo(direction(60))));
    rows.put("A21a", turn -> weightLifter(turn).pull().force() / WEIGHT);
    rows.put(
        "A21b", turn -> weightLifter(turn).contact().along(turn.applyTo(direction(45))) / WEIGHT);
    rows.put(
        "A21c", turn -> weightLifter(turn).contact().across(turn.applyTo(direction(45))) / WEIGHT);
    rows.put("A29a", turn -> holding(0.30, 0.02, turn).size());
    rows.put("A29b", turn -> holding(0.40, 0.02, turn).size());
    rows.put("A29c", turn -> holding(0.40, 0.25, turn).size());
    rows.put("A34a", turn -> bentBack(90, 350, 200, turn).pull().force());
    rows.put(
        "A34b", turn -> bentBack(90, 350, 200, turn).contact().along(turn.applyTo(direction(0))));
    rows.put("A34c", turn -> bentBack(90, 350, 200, turn).contact().along(turn.applyTo(Scene.UP)));
    return rows;
  }

  private static Joint atlas() {
    return hinge("C0/C1", "neck", Motion.FLEXION, Vector3D.MINUS_K, Vector3D.ZERO);
  }

  private static Scene.Held erectHead(Rotation turn) {
    Scene scene = lever("neck", atlas(), "head", weighing(50), at(0.025, 0.05), Levers.G, turn);
    return scene.heldBy(
        "C0/C1", scene.muscle("neck extensor", "head", at(-0.050, 0), "neck", Scene.DOWN));
  }

  private static Scene jaw(Rotation turn) {
    Joint joint = hinge("jaw", "jaw", Motion.FLEXION, Vector3D.PLUS_K, Vector3D.ZERO);
    Scene scene = lever("skull", joint, "lower jaw", 0, Vector3D.ZERO, Levers.G, turn);
    return scene.load("masseter", "lower jaw", at(0.029, 0), at(0, 200));
  }

  /** The object between the teeth presses the lower jaw down, 5 cm ahead of its joint. */
  private static double bite(Rotation turn) {
    Scene scene = jaw(turn);
    Vector3D teeth = scene.placed().toWorld(1, at(0.050, 0));
    LineOfForce object = new LineOfForce(1, teeth, turn.applyTo(Scene.DOWN));
    return object.sizeAgainst(scene.moment("jaw", "masseter"));
  }

  private static double jawJoint(Rotation turn) {
    Scene scene = jaw(turn);
    scene.load("object", "lower jaw", at(0.050, 0), down(bite(turn)));
    return scene.moment("jaw", "masseter").force().dotProduct(turn.applyTo(Scene.UP));
  }

  /**
   * A straight back: trunk weight at mid-length, head, arms and load at the top, one muscle from
   * two thirds of the length at 12 degrees to the spine, on its back.
   */
  private static Scene.Held bentBack(double bend, double trunk, double top, Rotation turn) {
    Scene scene = trunk(bend, weighing(trunk), LENGTH / 2, turn);
    scene.load("load", "trunk", at(0, LENGTH), down(top));
    Vector3D pull = scene.along("trunk", direction(-90 - 12));
    return scene.heldBy(
        "L5/S1", scene.muscle("back extensor", "trunk", at(0, 2 * LENGTH / 3), "pelvis", pull));
  }

  /**
   * Three forces through one point: the head's weight straight below it, the muscle through it at
   * 30 degrees, the joint on the line through it at 60 degrees. How far the joint is from that
   * point changes no force.
   */
  private static Scene.Held flexedHead(Rotation turn) {
    Vector3D meeting = direction(60).scalarMultiply(0.05);
    Scene scene =
        lever("neck", atlas(), "head", weighing(50), at(meeting.getX(), 0.02), Levers.G, turn);
    Vector3D nape = meeting.subtract(direction(30).scalarMultiply(0.06));
    return scene.heldBy(
        "C0/C1", scene.muscle("neck extensor", "head", nape, "neck", direction(180 + 30)));
  }

  /** Trunk at 45 degrees; the erector runs along it, 0.02 of stature behind the joint. */
  private static Scene.Held weightLifter(Rotation turn) {
    double slope = Math.sin(Math.toRadians(45));
    Scene scene = trunk(45, weighing(0.4 * WEIGHT), 0.08 * STATURE / slope, turn);
    scene.load("load", "trunk", at(0, 0.12 * STATURE / slope), down(WEIGHT));
    Vector3D pull = scene.along("trunk", Scene.DOWN);
    return scene.heldBy(
        "L5/S1", scene.muscle("erector", "trunk", at(-0.02 * STATURE, 0.20), "pelvis", pull));
  }

  /** 200 N in the hands and 450 N of upper body at level distances ahead of the joint. */
  private static JointMoment holding(double object, double upperBody, Rotation turn) {
    Joint low = hinge("L5/S1", "trunk", Motion.FLEXION, Vector3D.MINUS_K, Vector3D.ZERO);
    Scene scene = lever("pelvis", low, "trunk", weighing(450), at(upperBody, 0.25), Levers.G, turn);
    scene.load("load", "trunk", at(object, 0.20), down(200));
    return scene.moment("L5/S1", "load");
  }
}
