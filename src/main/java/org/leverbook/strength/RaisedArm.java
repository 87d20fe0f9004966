package org.leverbook.strength;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;

/**
 * An upper arm as the tests of strength see it: how high it is raised, and in which plane.
 *
 * <p>The joint's own angles cannot be used: with the arm level at the side, the axes of flexion and
 * of rotation fall into one, and none is left for the moment that brings the arm forward. Here the
 * moment is split about three axes square to one another: the one about which the arm is raised in
 * the upright plane it is in, the one about which it moves across at the height it has, and its
 * own.
 *
 * @param height between the arm and the hanging arm, radians, 0 to π
 * @param plane where it points, seen from above: 0 straight out to the side, π/2 straight ahead
 * @param raise unit vector in the world; a positive moment raises the arm
 * @param across unit vector in the world; a positive moment brings it forward and inward
 * @param inward unit vector in the world; a positive moment rotates it inward
 */
record RaisedArm(double height, double plane, Vector3D raise, Vector3D across, Vector3D inward) {

  /** Nearer than this to straight down or up there is no plane; the frontal one is taken. */
  private static final double NO_PLANE = 1e-6;

  static RaisedArm of(Placement where, Side side) {
    SegmentTree tree = where.tree();
    Frame trunk = where.frame(tree.indexOf("T1"));
    int arm = tree.distalOf(JointId.SHOULDER.on(side));
    Vector3D along = where.frame(arm).y().negate();
    Vector3D out = trunk.z().scalarMultiply(side.sign());
    double ahead = along.dotProduct(trunk.x());
    double aside = along.dotProduct(out);
    double level = Math.hypot(ahead, aside);
    double plane = level < NO_PLANE ? 0 : Math.atan2(ahead, aside);
    Vector3D forward =
        trunk.x().scalarMultiply(Math.cos(plane)).subtract(out.scalarMultiply(Math.sin(plane)));
    Vector3D outward =
        out.scalarMultiply(Math.cos(plane)).add(trunk.x().scalarMultiply(Math.sin(plane)));
    double height = Math.atan2(level, -along.dotProduct(trunk.y()));
    Vector3D upward =
        outward.scalarMultiply(Math.cos(height)).add(trunk.y().scalarMultiply(Math.sin(height)));
    return new RaisedArm(
        height,
        plane,
        along.crossProduct(upward),
        along.crossProduct(forward),
        along.scalarMultiply(-side.sign()));
  }
}
