package org.leverbook.checks;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;
import org.leverbook.body.Motion;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Frame;

/**
 * The one-joint levers of the textbooks as trees: a limb that hangs along -Y from its joint (the
 * trunk and head stand along +Y), in the plane z = 0, at its zero angle.
 */
final class Levers {

  static final double G = Gravity.STANDARD;

  /** OpenStax, Giancoli and Duarte print 9.80; Nigg and Herzog 9.81. */
  static final double G_980 = 9.80;

  static final double G_981 = 9.81;

  private Levers() {}

  /** The mass whose weight, at standard gravity, is so many newtons. */
  static double weighing(double newtons) {
    return newtons / G;
  }

  static Vector3D down(double newtons) {
    return new Vector3D(0, -newtons, 0);
  }

  static Vector3D at(double x, double y) {
    return new Vector3D(x, y, 0);
  }

  /** A unit direction in the plane, degrees from forward towards up. */
  static Vector3D direction(double degrees) {
    return at(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)));
  }

  static Joint hinge(String name, String muscles, Motion motion, Vector3D axis, Vector3D centre) {
    return new Joint(
        name, Side.MIDLINE, muscles, centre, List.of(new Freedom(motion, axis, -7, 7)));
  }

  static Scene lever(
      String base, Joint joint, String limb, double mass, Vector3D com, double g, Rotation turn) {
    SegmentTree tree =
        SegmentTree.root(base, 0, Vector3D.ZERO).segment(base, joint, limb, mass, com).build();
    return new Scene(tree, Frame.WORLD, g, turn);
  }

  /** A forearm bent so many degrees from hanging; 90 is level, pointing forward. */
  static Scene forearm(double bend, double mass, double com, double g, Rotation turn) {
    Joint elbow = hinge("elbow", "elbow", Motion.FLEXION, Vector3D.PLUS_K, Vector3D.ZERO);
    return lever("upper arm", elbow, "forearm", mass, at(0, -com), g, turn).bend("elbow", bend);
  }

  /** A trunk bent forward so many degrees from upright, its centre of mass on its axis. */
  static Scene trunk(double bend, double mass, double com, Rotation turn) {
    Joint low = hinge("L5/S1", "trunk", Motion.FLEXION, Vector3D.MINUS_K, Vector3D.ZERO);
    return lever("pelvis", low, "trunk", mass, at(0, com), G, turn).bend("L5/S1", bend);
  }

  /** A shank on a level thigh (seated), the knee bent so many degrees; 90 hangs. */
  static Scene seatedShank(double bend, double mass, double com, double g, Rotation turn) {
    Joint knee = hinge("knee", "knee", Motion.FLEXION, Vector3D.MINUS_K, Vector3D.ZERO);
    SegmentTree tree =
        SegmentTree.root("thigh", 0, Vector3D.ZERO)
            .segment("thigh", knee, "shank", mass, at(0, -com))
            .build();
    return new Scene(tree, Frame.leanedForward(-Math.PI / 2), g, turn).bend("knee", bend);
  }
}
