package org.leverbook.checks;

import static org.leverbook.checks.Levers.G;
import static org.leverbook.checks.Levers.G_980;
import static org.leverbook.checks.Levers.G_981;
import static org.leverbook.checks.Levers.at;
import static org.leverbook.checks.Levers.direction;
import static org.leverbook.checks.Levers.down;
import static org.leverbook.checks.Levers.hinge;
import static org.leverbook.checks.Levers.lever;
import static org.leverbook.checks.Levers.seatedShank;
import static org.leverbook.checks.Levers.weighing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;
import org.leverbook.body.Motion;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.lever.JointContact;
import org.leverbook.lever.LineOfPull;
import org.leverbook.lever.MusclePull;
import org.leverbook.load.Cable;
import org.leverbook.load.Grasp;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;

/** Hip, knee, ankle and the arm held out: A09, A11, A14, A15, A23, A26, A28, A37, A40. */
final class LegCases {

  /** Any weight: the answers are shares of it. */
  private static final double WEIGHT = 700;

  private LegCases() {}

  static Map<String, ToDoubleFunction<Rotation>> rows() {
    Map<String, ToDoubleFunction<Rotation>> rows = new LinkedHashMap<>();
    rows.put("A09a", turn -> cable(seatedShank(90, 0, 0, G_980, turn), turn).tension());
    rows.put("A09b", turn -> legExtension(turn).pull().force());
    rows.put("A11", LegCases::calf);
    rows.put("A14a", turn -> oneLeg(0.18, 0.10, turn).pull().force() / WEIGHT);
    rows.put("A14b", turn -> oneLeg(0.18, 0.10, turn).contact().size() / WEIGHT);
    rows.put(
        "A14c",
        turn -> oneLeg(0.18, 0.10, turn).contact().along(turn.applyTo(Scene.DOWN)) / WEIGHT);
    rows.put("A15", turn -> limping(0.07, 0.07, turn));
    rows.put("A23a", turn -> weightBoot(turn).pull().force());
    rows.put("A23b", turn -> weightBoot(turn).contact().size());
    rows.put("A23c", LegCases::angleToLevel);
    rows.put("A26", turn -> armHeldOut(turn).pull().force());
    rows.put("A28", LegCases::twoLegs);
    rows.put("A37a", turn -> seatedBoot(0, turn).pull().force());
    rows.put("A37b", turn -> seatedBoot(45, turn).pull().force());
    rows.put("A37c", turn -> seatedBoot(90, turn).pull().force());
    rows.put("A40a", turn -> coordinates(turn).moment().signed());
    rows.put("A40b", turn -> coordinates(turn).pull().force());
    rows.put("A40c", turn -> coordinates(turn).contact().along(turn.applyTo(direction(0))));
    rows.put("A40d", turn -> coordinates(turn).contact().along(turn.applyTo(Scene.UP)));
    return rows;
  }

  /** A cable that runs level and backward from a cuff 35 cm below the knee. */
  private static Cable cable(Scene scene, Rotation turn) {
    Placement where = scene.placed();
    Vector3D cuff = at(0, -0.35);
    Vector3D pulley = where.toWorld(1, cuff).add(turn.applyTo(at(-2, 0)));
    return new Cable(10, 1, pulley, List.of(Grasp.fixed(1, cuff)));
  }

  private static Scene.Held legExtension(Rotation turn) {
    Scene scene = seatedShank(90, 0, 0, G_980, turn);
    scene.load(cable(scene, turn));
    return scene.heldBy(
        "knee", scene.muscle("quadriceps", "shank", at(0.020, -0.05), "thigh", Scene.UP));
  }

  /** Two heads, 20 degrees either side of the tendon, 200 N each: how they press the ankle. */
  private static double calf(Rotation turn) {
    Joint ankle = hinge("ankle", "ankle", Motion.DORSIFLEXION, Vector3D.PLUS_K, Vector3D.ZERO);
    Scene scene = lever("shank", ankle, "foot", 0, Vector3D.ZERO, G, turn);
    Vector3D heel = at(-0.05, -0.03);
    double aside = Math.tan(Math.toRadians(20));
    LineOfPull inner = scene.muscle("inner", "foot", heel, "shank", new Vector3D(0, 1, -aside));
    LineOfPull outer = scene.muscle("outer", "foot", heel, "shank", new Vector3D(0, 1, aside));
    return JointContact.of(
            scene.moment("ankle", ""),
            scene.placed(),
            List.of(new MusclePull(inner, 200), new MusclePull(outer, 200)))
        .along(turn.applyTo(Scene.DOWN));
  }

  /**
   * The right leg seen from the front, freed at the hip. Level distances are from where the
   * abductors hold the thigh, 7 cm outside the joint; they pull up and inward at 71 degrees.
   */
  private static Scene.Held oneLeg(double floor, double legWeight, Rotation turn) {
    Joint hip = hinge("hip", "hip", Motion.ABDUCTION, Vector3D.MINUS_I, Vector3D.ZERO);
    double joint = 0.07;
    Vector3D com = new Vector3D(0, -0.35, joint - legWeight);
    Scene scene = lever("pelvis", hip, "leg", weighing(0.185 * WEIGHT), com, G, turn);
    scene.load("load", "leg", new Vector3D(0, -0.90, joint - floor), at(0, WEIGHT));
    double angle = Math.toRadians(71);
    Vector3D pull = new Vector3D(0, Math.sin(angle), -Math.cos(angle));
    return scene.heldBy(
        "hip", scene.muscle("abductors", "leg", new Vector3D(0, 0, joint), "pelvis", pull));
  }

  /** Hip force with the floor's push and the leg's weight shifted, over the force of A14. */
  static double limping(double floor, double legWeight, Rotation turn) {
    return oneLeg(floor, legWeight, turn).contact().size()
        / oneLeg(0.18, 0.10, turn).contact().size();
  }

  private static Scene.Held weightBoot(Rotation turn) {
    Scene scene = seatedShank(45, weighing(150), 0.22, G, turn);
    scene.load("load", "shank", at(0, -0.50), down(100));
    Vector3D pull = scene.along("shank", direction(90 - 15));
    return scene.heldBy(
        "knee", scene.muscle("patellar tendon", "shank", at(0, -0.12), "thigh", pull));
  }

  private static double angleToLevel(Rotation turn) {
    JointContact contact = weightBoot(turn).contact();
    double level = contact.along(turn.applyTo(direction(0)));
    return Math.toDegrees(Math.atan2(contact.along(turn.applyTo(Scene.DOWN)), level));
  }

  /** The right arm level to the side; the deltoid runs along it, 3 cm above the joint. */
  private static Scene.Held armHeldOut(Rotation turn) {
    Joint shoulder =
        hinge("shoulder", "shoulder", Motion.ABDUCTION, Vector3D.MINUS_I, Vector3D.ZERO);
    Scene scene =
        lever("trunk", shoulder, "arm", weighing(33), at(0, -0.30), G, turn).bend("shoulder", 90);
    Vector3D insertion = new Vector3D(0, -0.15, 0.03);
    return scene.heldBy(
        "shoulder",
        scene.muscle("deltoid", "arm", insertion, "trunk", scene.along("arm", Scene.UP)));
  }

  /**
   * The pelvis on one thigh: 250 N of weight, and 600 N of abductors, 20 degrees aside of it (160
   * in the triangle of forces). Places are chosen so that the moments cancel; they change no force.
   */
  private static double twoLegs(Rotation turn) {
    Joint hip = hinge("hip", "hip", Motion.ABDUCTION, Vector3D.PLUS_I, Vector3D.ZERO);
    Scene scene = lever("thigh", hip, "pelvis", 0, Vector3D.ZERO, G, turn);
    scene.load("load", "pelvis", new Vector3D(0, 0, -0.12), down(250));
    double angle = Math.toRadians(20);
    Vector3D pull = new Vector3D(0, -Math.cos(angle), Math.sin(angle));
    Vector3D crest = new Vector3D(0, 0, 0.05 / Math.cos(angle));
    LineOfPull abductors = scene.muscle("abductors", "pelvis", crest, "thigh", pull);
    JointContact contact =
        JointContact.of(
            scene.moment("hip", "load"), scene.placed(), List.of(new MusclePull(abductors, 600)));
    return contact.size();
  }

  private static Scene.Held seatedBoot(double bend, Rotation turn) {
    Scene scene = seatedShank(bend, 4, 0.20, G_980, turn);
    scene.load("load", "shank", at(0, -0.40), down(200));
    Vector3D pull = scene.along("shank", direction(90 - 30));
    return scene.heldBy("knee", scene.muscle("quadriceps", "shank", at(0, -0.05), "thigh", pull));
  }

  /**
   * A leg by coordinates. Ankle and knee are not printed, and where they are changes nothing at the
   * hip.
   */
  private static Scene.Held coordinates(Rotation turn) {
    Vector3D hip = at(-0.30, 0.90);
    Vector3D knee = at(-0.10, 0.48);
    Vector3D ankle = at(0, 0.02);
    SegmentTree tree =
        SegmentTree.root("pelvis", 0, Vector3D.ZERO)
            .segment("pelvis", flexing("hip", hip), "thigh", 5, at(-0.20, 0.70).subtract(hip))
            .segment(
                "thigh",
                flexing("knee", knee.subtract(hip)),
                "shank",
                4,
                at(-0.06, 0.25).subtract(knee))
            .segment(
                "shank",
                flexing("ankle", ankle.subtract(knee)),
                "foot",
                2,
                at(0.05, -0.06).subtract(ankle))
            .build();
    Scene scene = new Scene(tree, Frame.WORLD, G_981, turn);
    scene.load("load", "foot", at(-0.02, -0.12).subtract(ankle), at(-100, 600));
    Vector3D insertion = at(-0.30, 0.70).subtract(hip);
    return scene.heldBy("hip", scene.muscle("extensor", "thigh", insertion, "pelvis", at(-2, 5)));
  }

  private static Joint flexing(String name, Vector3D centre) {
    Freedom freedom = new Freedom(Motion.FLEXION, Vector3D.PLUS_K, -7, 7);
    return new Joint(name, Side.MIDLINE, name, centre, List.of(freedom));
  }
}
