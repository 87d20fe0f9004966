package org.leverbook.checks;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Freedom;
import org.leverbook.body.Segment;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.load.Force;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;

/** Poses and forces turned as a whole, or seen in a mirror that swaps right and left. */
final class Images {

  private Images() {}

  static Pose turned(Rotation turn, Pose pose) {
    return pose.rootAt(turn.applyTo(pose.rootPlace()), turned(turn, pose.rootFrame()));
  }

  static Frame turned(Rotation turn, Frame frame) {
    return new Frame(turn.applyTo(frame.x()), turn.applyTo(frame.y()), turn.applyTo(frame.z()));
  }

  static Force turned(Rotation turn, Force force) {
    return new Force(
        force.source(),
        force.kind(),
        force.segment(),
        turn.applyTo(force.point()),
        turn.applyTo(force.force()),
        turn.applyTo(force.moment()));
  }

  static String otherSide(String name) {
    return name.startsWith("right ")
        ? "left " + name.substring(6)
        : name.startsWith("left ") ? "right " + name.substring(5) : name;
  }

  static Pose mirrored(Pose pose) {
    SegmentTree tree = pose.tree();
    double[] angles = new double[tree.angles()];
    for (int i = 1; i < tree.size(); i++) {
      Segment segment = tree.segment(i);
      int from = tree.firstAngle(tree.indexOf(otherSide(segment.name())));
      List<Freedom> freedoms = segment.joint().freedoms();
      for (int k = 0; k < freedoms.size(); k++) {
        boolean flips =
            segment.joint().side() == Side.MIDLINE
                && !freedoms.get(k).motion().axis().equals("flexion");
        angles[tree.firstAngle(i) + k] = (flips ? -1 : 1) * pose.angle(from + k);
      }
    }
    Frame frame = pose.rootFrame();
    Frame across =
        new Frame(mirrored(frame.x()), mirrored(frame.y()), mirrored(frame.z()).negate());
    return Pose.of(tree, angles, mirrored(pose.rootPlace()), across);
  }

  static Vector3D mirrored(Vector3D v) {
    return new Vector3D(v.getX(), v.getY(), -v.getZ());
  }

  /** A moment is an axial vector: its mirror image turns the other way. */
  static Force mirrored(SegmentTree tree, Force force) {
    return new Force(
        force.source(),
        force.kind(),
        tree.indexOf(otherSide(tree.segment(force.segment()).name())),
        mirrored(force.point()),
        mirrored(force.force()),
        mirrored(force.moment()).negate());
  }
}
