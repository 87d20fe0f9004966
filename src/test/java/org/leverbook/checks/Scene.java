package org.leverbook.checks;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.SegmentTree;
import org.leverbook.lever.JointContact;
import org.leverbook.lever.LineOfPull;
import org.leverbook.lever.MusclePull;
import org.leverbook.lever.Opposition;
import org.leverbook.load.Force;
import org.leverbook.load.Load;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;

/**
 * A textbook's drawing: tree, pose, weights and loads, told upright and then turned as a whole by
 * any rotation (gravity with it). It does no statics itself: it only hands the turned geometry to
 * Leverbook.
 */
final class Scene {

  static final Vector3D UP = Vector3D.PLUS_J;
  static final Vector3D DOWN = Vector3D.MINUS_J;

  /** What Leverbook found for a joint held by one muscle. */
  record Held(JointMoment moment, MusclePull pull, JointContact contact) {}

  private final Rotation turn;
  private final double gravity;
  private final Frame rootFrame;
  private Pose pose;
  private final List<Force> forces = new ArrayList<>();

  Scene(SegmentTree tree, Frame rootFrame, double gravity, Rotation turn) {
    this.turn = turn;
    this.gravity = gravity;
    this.rootFrame = rootFrame;
    pose = Pose.neutral(tree).rootAt(Vector3D.ZERO, turned(rootFrame));
  }

  Scene bend(String joint, double degrees) {
    pose = pose.with(joint, Math.toRadians(degrees));
    return this;
  }

  Placement placed() {
    return pose.placed();
  }

  /** A direction of the upright drawing, as it lies in the turned world. */
  Vector3D turned(Vector3D upright) {
    return turn.applyTo(upright);
  }

  /** A vector of the turned world, as the upright drawing shows it. */
  Vector3D upright(Vector3D turned) {
    return turn.applyInverseTo(turned);
  }

  private Frame turned(Frame frame) {
    return new Frame(turned(frame.x()), turned(frame.y()), turned(frame.z()));
  }

  /** A load at a place of a segment (own frame), its force as the upright drawing shows it. */
  Scene load(String source, String segment, Vector3D place, Vector3D force) {
    int index = pose.tree().indexOf(segment);
    forces.add(Force.ofLoad(source, index, placed().toWorld(index, place), turned(force)));
    return this;
  }

  Scene load(Load load) {
    forces.addAll(load.forces(placed()));
    return this;
  }

  /** A muscle by its distal end (own frame) and its direction in the upright drawing. */
  LineOfPull muscle(
      String name, String insertionSegment, Vector3D place, String originSegment, Vector3D toward) {
    return LineOfPull.towards(
        placed(), name, insertionSegment, place, originSegment, turned(toward));
  }

  NetLoads net() {
    return NetLoads.of(placed(), forces, turned(DOWN.scalarMultiply(gravity)));
  }

  JointMoment moment(String joint, String mainLoad) {
    return JointMoment.of(net(), joint, mainLoad);
  }

  Held heldBy(String joint, LineOfPull line) {
    JointMoment moment = moment(joint, "load");
    MusclePull pull = Opposition.alone(moment, placed(), line);
    return new Held(moment, pull, JointContact.of(moment, placed(), List.of(pull)));
  }

  /** A segment's own direction, as the upright drawing shows it. */
  Vector3D along(String segment, Vector3D own) {
    return upright(placed().frame(pose.tree().indexOf(segment)).toWorld(own));
  }
}
