package org.leverbook.marks;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Camera;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.solve.Answer;

/**
 * One solution of a photo, with camera and lifter brought into the usual world: the lifter faces x,
 * the lowest sole is on the floor, the middle of the feet at x = 0.
 */
record Solved(
    Photo photo,
    List<Mark> marks,
    Side shown,
    Body body,
    Camera seenBy,
    Answer answer,
    MarkFit fit) {

  /** The same photo, another pose. */
  Solved with(Answer other) {
    return new Solved(photo, marks, shown, body, seenBy, other, fit);
  }

  double cost() {
    return fit.cost(answer);
  }

  /** How far the lifter's front is turned towards the camera from square on, radians. */
  double turned() {
    Vector3D front = Frame.aboutVertical(heading()).x();
    Vector3D viewer = seenBy.frame().z();
    Vector3D level = new Vector3D(viewer.getX(), 0, viewer.getZ()).normalize();
    return Math.asin(Math.max(-1, Math.min(1, front.dotProduct(level))));
  }

  /** How far the lifter's right is turned about the vertical from z. */
  private double heading() {
    Vector3D right = answer.pose().rootFrame().z();
    return Math.atan2(right.getX(), right.getZ());
  }

  private Frame turn() {
    return Frame.aboutVertical(-heading());
  }

  private Vector3D shift() {
    Placement turned = turnedPose().placed();
    double lowest =
        body.soles().stream()
            .mapToDouble(s -> turned.toWorld(s.segment(), s.place()).getY())
            .min()
            .orElseThrow();
    Vector3D right = turned.at(body.place(Site.FOOT, Side.RIGHT));
    Vector3D left = turned.at(body.place(Site.FOOT, Side.LEFT));
    return new Vector3D(-(right.getX() + left.getX()) / 2, -lowest, -turned.origin(0).getZ());
  }

  private Pose turnedPose() {
    Pose pose = answer.pose();
    Frame turn = turn();
    return pose.rootAt(turn.toWorld(pose.rootPlace()), turn.turning(pose.rootFrame()));
  }

  Pose pose() {
    Pose turned = turnedPose();
    return turned.rootAt(turned.rootPlace().add(shift()), turned.rootFrame());
  }

  Camera camera() {
    return seenBy.moved(turn(), shift());
  }
}
