package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.solve.Feature;
import org.leverbook.solve.Statements;

/**
 * What bodies do unless a recipe says otherwise: joints near a comfortable middle, the shoulder
 * girdle following the arm, knees over the toes, no joint locked beyond straight.
 *
 * <p>The collar bone follows the raised arm by what was measured on a full raise (Ludewig et al.
 * 2004, J Orthop Sports Phys Ther 34:140-149, abstract: elevation 11 to 15°, retraction 15 to 29°,
 * backward rotation 15 to 31°; the middles are used), spread over the raise as (1 - cos) / 2 of the
 * angle between arm and trunk: a smooth course, assumption. How strongly joints keep to their
 * middle: assumption.
 */
final class Habits {

  private static final double ELEVATION = Math.toRadians(13);
  private static final double RETRACTION = Math.toRadians(22);
  private static final double BACKWARD = Math.toRadians(23);
  private static final double FOLLOWS = 1;

  private Habits() {}

  static void of(Posture p) {
    Statements s = p.statements();
    p.usually(JointId.HIP, "flexion", 20, Posture.EASY);
    p.usually(JointId.HIP, "abduction", 0, 0.2);
    p.usually(JointId.HIP, "rotation", 0, 0.2);
    p.usually(JointId.KNEE, "flexion", 20, Posture.EASY);
    p.usually(JointId.ANKLE, "flexion", 0, 0.1);
    p.usually(JointId.ANKLE, "abduction", 0, 0.3);
    p.usually(JointId.ANKLE, "rotation", 0, 0.3);
    p.usually(JointId.BALL, "flexion", 0, Posture.FIRM);
    p.usually(JointId.SHOULDER, "flexion", 10, Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", 5, Posture.EASY);
    p.usually(JointId.SHOULDER, "rotation", 0, Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", 5, Posture.EASY);
    p.usually(JointId.FOREARM, "rotation", 80, Posture.EASY);
    p.usually(JointId.WRIST, "flexion", 0, 0.5);
    p.usually(JointId.WRIST, "abduction", 0, 0.5);
    for (String knee : p.names(JointId.KNEE, "flexion")) {
      s.within(knee, 0, Math.PI);
    }
    for (String elbow : p.names(JointId.ELBOW, "flexion")) {
      s.within(elbow, 0, Math.PI);
    }
    s.usually("neck flexion", 0, Posture.FIRM);
    for (String name : List.of("low back flexion", "upper back flexion")) {
      s.usually(name, 0, Posture.FIRM);
    }
    for (String name : List.of("side bend", "twist", "neck side bend", "neck twist")) {
      s.usually(name, 0, Posture.FIRM);
    }
    for (Side side : p.sides()) {
      girdle(p, side);
    }
  }

  private static void girdle(Posture p, Side side) {
    Feature arm = p.direction(side.of("upper arm"), Vector3D.PLUS_J);
    Feature trunk = p.direction("T4", Vector3D.PLUS_J);
    follow(p, arm, trunk, ELEVATION, p.name(JointId.SHOULDER_GIRDLE, side, "abduction"));
    follow(p, arm, trunk, -RETRACTION, p.name(JointId.SHOULDER_GIRDLE, side, "rotation"));
    follow(p, arm, trunk, BACKWARD, p.name(JointId.SHOULDER_GIRDLE, side, "flexion"));
  }

  private static void follow(Posture p, Feature arm, Feature trunk, double whole, String name) {
    p.statements().follows(FOLLOWS, whole / 2, arm, trunk, -whole / 2, name);
  }
}
