package org.leverbook.marks;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.solve.Statements;

/**
 * Where the search for a pose begins: pelvis, trunk and limbs as they would be if every part lay in
 * the plane in which the lifter faces.
 */
final class Start {

  /** How strongly the search keeps to its start at first, per radian. */
  private static final double KEEPS = 3 * MarkFit.WEIGHT;

  private static final double FAINT = 0.01 * MarkFit.WEIGHT;

  private final Body body;
  private final List<Sighting> sightings;
  private final Frame attitude;

  Start(Body body, List<Sighting> sightings, Frame attitude) {
    this.body = body;
    this.sightings = sightings;
    this.attitude = attitude;
  }

  /** Says it, turned about the vertical, the upper arms raised sideways. */
  void say(Statements rough, double turned, double armsOut) {
    Vector3D hip = seen(Landmark.HIP).orElseThrow();
    Vector3D shoulder = seen(Landmark.SHOULDER).orElseThrow();
    double lean = -forward(shoulder, hip);
    Frame pelvis = Frame.aboutVertical(turned).turning(attitude.turning(Frame.leanedForward(lean)));
    Pose pose = Pose.neutral(body.tree()).rootAt(hip, pelvis);
    double[] x = rough.coordinates().of(pose, attitude);
    for (String name : Usual.PELVIS) {
      rough.usually(name, x[rough.coordinates().indexOf(name)], MarkFit.WEIGHT);
    }
    limbs(rough, lean, armsOut);
  }

  /** Where the pelvis roughly is, hardly felt. */
  void place(Statements said) {
    Vector3D hip = seen(Landmark.HIP).orElseThrow();
    said.usually("pelvis forward", hip.getX(), FAINT);
    said.usually("pelvis up", hip.getY(), FAINT);
    said.usually("pelvis right", hip.getZ(), FAINT);
  }

  private void limbs(Statements rough, double lean, double armsOut) {
    Vector3D knee = seen(Landmark.KNEE).orElseThrow();
    Vector3D elbow = seen(Landmark.ELBOW).orElseThrow();
    Vector3D wrist = seen(Landmark.WRIST).or(() -> seen(Landmark.HAND)).orElseThrow();
    double thigh = forward(seen(Landmark.HIP).orElseThrow(), knee);
    double shank = forward(knee, seen(Landmark.ANKLE).orElseThrow());
    double upper = forward(seen(Landmark.SHOULDER).orElseThrow(), elbow);
    double fore = forward(elbow, wrist);
    bend(rough, "hip flexion", turn(thigh + lean));
    bend(rough, "knee flexion", turn(thigh - shank));
    bend(rough, "shoulder flexion", turn(upper + lean));
    bend(rough, "shoulder abduction", armsOut);
    bend(rough, "elbow flexion", turn(fore - upper));
  }

  private static void bend(Statements rough, String name, double radians) {
    for (String full :
        rough.coordinates().bothAlike()
            ? List.of(name)
            : List.of("right " + name, "left " + name)) {
      rough.usually(full, radians, KEEPS);
    }
  }

  /** How far the way down from one place to another points forward, radians. */
  private double forward(Vector3D from, Vector3D to) {
    Vector3D way = to.subtract(from);
    return Math.atan2(way.dotProduct(attitude.x()), -way.getY());
  }

  /** An angle between a quarter turn backward and three quarters forward. */
  private static double turn(double angle) {
    double whole = 2 * Math.PI;
    return angle - whole * Math.floor((angle + Math.PI / 2) / whole);
  }

  /** Where a landmark was seen, at the depth of the world's origin where that is open. */
  private Optional<Vector3D> seen(Landmark landmark) {
    return sightings.stream()
        .filter(s -> s.landmark() == landmark)
        .min(java.util.Comparator.comparing(s -> s.side() == Side.RIGHT ? 0 : 1))
        .map(Sighting::somewhere);
  }
}
