package org.leverbook.checks;

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
import org.leverbook.load.Cable;
import org.leverbook.load.Force;
import org.leverbook.load.Grasp;
import org.leverbook.pose.Frame;
import org.leverbook.statics.JointMoment;

/** Cable machines (D08), and a force in space (E13). */
final class GearCases {

  private static final Vector3D FORCE = new Vector3D(10, -50, 20);

  private GearCases() {}

  static Map<String, ToDoubleFunction<Rotation>> rows() {
    Map<String, ToDoubleFunction<Rotation>> rows = new LinkedHashMap<>();
    rows.put("D08a", turn -> hands(1, turn).get(0));
    rows.put("D08b", turn -> hands(2, turn).get(0));
    rows.put("D08c", turn -> oneHand(2, turn).handleTravel(0.30) / 0.30);
    rows.put("D08d", turn -> twoHands(turn).get(1).force().getNorm());
    rows.put("D08e", GearCases::thighPad);
    rows.put("E13a", turn -> moment(turn).getX());
    rows.put("E13b", turn -> moment(turn).getY());
    rows.put("E13c", turn -> moment(turn).getZ());
    rows.put("E13d", turn -> inSpace(turn).moment("joint", "load").arm3d());
    rows.put("E13e", turn -> inSpace(turn).moment("joint", "load").signed());
    return rows;
  }

  /** A trunk with two arms as one body; the hands are points of it. */
  private static Scene lifter(double mass, Rotation turn) {
    SegmentTree tree = SegmentTree.root("lifter", mass, new Vector3D(0, 0.2, 0)).build();
    return new Scene(tree, Frame.WORLD, Levers.G, turn);
  }

  private static Cable cable(double kilograms, double ratio, Rotation turn, Vector3D... hands) {
    return new Cable(
        kilograms,
        ratio,
        turn.applyTo(new Vector3D(0, 2.2, 0)),
        List.of(hands).stream().map(hand -> Grasp.fixed(0, hand)).toList());
  }

  private static Cable oneHand(double ratio, Rotation turn) {
    return cable(50, ratio, turn, new Vector3D(0.1, 1.2, 0.2));
  }

  private static List<Double> hands(double ratio, Rotation turn) {
    return oneHand(ratio, turn).forces(lifter(80, turn).placed()).stream()
        .map(force -> force.force().getNorm())
        .toList();
  }

  private static List<Force> twoHands(Rotation turn) {
    return cable(50, 1, turn, new Vector3D(0, 1.2, 0.3), new Vector3D(0, 1.2, -0.3))
        .forces(lifter(80, turn).placed());
  }

  /** What is left of cable and lifter's weight must press up against the pad. */
  private static double thighPad(Rotation turn) {
    Scene scene = lifter(80, turn);
    scene.load(cable(100, 1, turn, new Vector3D(0, 1.2, 0.3), new Vector3D(0, 1.2, -0.3)));
    return scene.net().force(0).dotProduct(turn.applyTo(Scene.UP));
  }

  private static Scene inSpace(Rotation turn) {
    Vector3D axis = new Vector3D(1, 1, 0).normalize();
    Joint joint =
        new Joint(
            "joint",
            Side.MIDLINE,
            "joint",
            Vector3D.ZERO,
            List.of(new Freedom(Motion.FLEXION, axis, -7, 7)));
    SegmentTree tree =
        SegmentTree.root("base", 0, Vector3D.ZERO)
            .segment("base", joint, "limb", 0, Vector3D.ZERO)
            .build();
    Scene scene = new Scene(tree, Frame.WORLD, Levers.G, turn);
    return scene.load("load", "limb", new Vector3D(0.3, 0.2, 0.1), FORCE);
  }

  private static Vector3D moment(Rotation turn) {
    JointMoment moment = inSpace(turn).moment("joint", "load");
    return turn.applyInverseTo(moment.moment());
  }
}
