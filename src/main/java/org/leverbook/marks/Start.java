package org.leverbook.marks;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.solve.Feature;
import org.leverbook.solve.Statements;

/**
 * Where the search for a pose begins: pelvis, trunk and limbs as they would be if every part lay in
 * the plane in which the lifter faces; parts that look shorter than they are turned out of the
 * picture by acos(seen / true), to the one side or the other as a {@link Guess} says.
 */
final class Start {

  /** How strongly the search keeps to its start at first, per radian. */
  private static final double KEEPS = 3 * MarkFit.WEIGHT;

  private static final double FAINT = 0.01 * MarkFit.WEIGHT;

  /** How strongly the search keeps at first to a guessed depth, per metre. */
  private static final double DEEP = MarkFit.WEIGHT / 0.03;

  /** Parts turned out by less need no guess, radians. */
  private static final double FLAT = Math.toRadians(8);

  private final Body body;
  private final List<Sighting> sightings;
  private final Frame attitude;
  private final Vector3D viewer;

  /**
   * For one picture.
   *
   * @param viewer unit vector from the lifter to the camera
   */
  Start(Body body, List<Sighting> sightings, Frame attitude, Vector3D viewer) {
    this.body = body;
    this.sightings = sightings;
    this.attitude = attitude;
    this.viewer = viewer;
  }

  /** All guesses that the near limbs' lengths in the picture leave open. */
  List<Guess> guesses(double... turns) {
    return Guess.every(
        turns, out(Stretch.THIGH) > 0, out(Stretch.UPPER_ARM) > 0, out(Stretch.FOREARM) > 0);
  }

  /** How much deeper one end of a part lies than the other, metres; zero where hardly. */
  private double out(Stretch stretch) {
    Optional<Vector3D> from = seen(stretch.from);
    Optional<Vector3D> to = seen(stretch.to);
    if (from.isEmpty() || to.isEmpty() || sightings.get(0).normals().size() > 2) {
      return 0;
    }
    double length = stretch.length(body.links());
    double across = Math.min(length, from.get().distance(to.get()));
    double deep = Math.sqrt(length * length - across * across);
    return deep < length * Math.sin(FLAT) ? 0 : deep;
  }

  /** Says a guess. */
  void say(Statements rough, Guess guess) {
    double turned = guess.turned();
    Vector3D hip = seen(Landmark.HIP).orElseThrow();
    Vector3D shoulder = seen(Landmark.SHOULDER).orElseThrow();
    double lean = -forward(shoulder, hip);
    Frame pelvis = Frame.aboutVertical(turned).turning(attitude.turning(Frame.leanedForward(lean)));
    Pose pose = Pose.neutral(body.tree()).rootAt(hip, pelvis);
    double[] x = rough.coordinates().of(pose, attitude);
    for (String name : Usual.PELVIS) {
      rough.usually(name, x[rough.coordinates().indexOf(name)], MarkFit.WEIGHT);
    }
    limbs(rough, lean, guess);
    deep(rough, Stretch.THIGH, guess.knee());
    deep(rough, Stretch.SHANK, -guess.knee());
    deep(rough, Stretch.UPPER_ARM, guess.elbow());
    deep(rough, Stretch.FOREARM, guess.wrist());
  }

  private void deep(Statements rough, Stretch stretch, int sign) {
    if (sign != 0) {
      Side side = first(stretch.from).orElseThrow().side();
      Feature part = stretch.on(body, side);
      rough.rather(part, viewer, sign * out(stretch), DEEP);
    }
  }

  /** Where the pelvis roughly is, hardly felt. */
  void place(Statements said) {
    Vector3D hip = seen(Landmark.HIP).orElseThrow();
    said.usually("pelvis forward", hip.getX(), FAINT);
    said.usually("pelvis up", hip.getY(), FAINT);
    said.usually("pelvis right", hip.getZ(), FAINT);
  }

  private void limbs(Statements rough, double lean, Guess guess) {
    Vector3D knee = seen(Landmark.KNEE).orElseThrow();
    Vector3D elbow = seen(Landmark.ELBOW).orElseThrow();
    Landmark end = seen(Landmark.WRIST).isPresent() ? Landmark.WRIST : Landmark.HAND;
    double thigh = forward(seen(Landmark.HIP).orElseThrow(), knee);
    double shank = forward(knee, seen(Landmark.ANKLE).orElseThrow());
    double upper = forward(seen(Landmark.SHOULDER).orElseThrow(), elbow);
    double fore = forward(elbow, seen(end).orElseThrow());
    double kneeBent = between(way(Stretch.THIGH, guess.knee()), way(Stretch.SHANK, -guess.knee()));
    double elbowBent =
        end == Landmark.HAND
            ? turn(fore - upper)
            : between(way(Stretch.UPPER_ARM, guess.elbow()), way(Stretch.FOREARM, guess.wrist()));
    bend(rough, "hip flexion", turn(thigh + lean));
    bend(rough, "knee flexion", guess.knee() == 0 ? turn(thigh - shank) : kneeBent);
    bend(rough, "shoulder flexion", turn(upper + lean));
    bend(rough, "shoulder abduction", guess.armsOut());
    bend(rough, "elbow flexion", elbowBent);
  }

  /** A part in space by its marks and the side of the picture that its lower end is guessed on. */
  private Vector3D way(Stretch stretch, int sign) {
    Vector3D flat = seen(stretch.to).orElseThrow().subtract(seen(stretch.from).orElseThrow());
    return flat.add(viewer.scalarMultiply(sign * out(stretch)));
  }

  private static double between(Vector3D one, Vector3D other) {
    double product = one.getNorm() * other.getNorm();
    return product < 1e-12 ? 0 : Vector3D.angle(one, other);
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
    return first(landmark).map(Sighting::somewhere);
  }

  private Optional<Sighting> first(Landmark landmark) {
    return sightings.stream()
        .filter(s -> s.landmark() == landmark)
        .min(java.util.Comparator.comparing(s -> s.side() == Side.RIGHT ? 0 : 1));
  }
}
