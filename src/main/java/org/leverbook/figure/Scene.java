package org.leverbook.figure;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Placement;
import org.leverbook.statics.Position;

/**
 * What is to be seen of a position, in metres; y up, x forward from the side and to the lifter's
 * left from the front; see {@link Sight} for other views.
 *
 * @param sight from where
 * @param position what is shown
 * @param body its pieces, from back to front
 * @param spine the levels L5/S1 to C7/T1
 * @param joints centres of the limbs' joints that are seen
 * @param line the load's line of force; when nothing is held, the body's own weight
 * @param arms the perpendicular arms to that line; none when nothing is held
 * @param without joints that were asked for but have no arm, as nothing beyond them is loaded
 * @param bar the bar, where one is held
 */
record Scene(
    Sight sight,
    Position position,
    List<Silhouette> body,
    List<Vector2D> spine,
    List<Vector2D> joints,
    ForceLine line,
    List<DrawnArm> arms,
    List<JointId> without,
    Optional<BarSeen> bar) {

  /** Hip, low back, mid back and shoulder: what a lesson on lifting speaks of first. */
  static final List<JointId> USUAL =
      List.of(JointId.HIP, JointId.L5_S1, JointId.T7_T8, JointId.SHOULDER);

  /** What a load on the legs alone has arms to. */
  private static final List<JointId> OF_LEGS = List.of(JointId.KNEE, JointId.HIP);

  private static final List<String> LEG = List.of("shank", "foot", "toes");

  private static final List<JointId> MARKED =
      List.of(
          JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.SHOULDER, JointId.ELBOW, JointId.WRIST);

  /**
   * A bar, end-on from the side.
   *
   * @param centre metres
   * @param rod the way it runs; no length where it is seen end-on
   * @param plate radius of the largest plates, metres
   * @param grip radius of the bar itself, metres
   * @param middle its centre in the world
   */
  record BarSeen(Vector2D centre, Vector2D rod, double plate, double grip, Vector3D middle) {

    /** Half of a long bar of 2.2 m. Common practice, no source. */
    static final double HALF_LENGTH = 1.1;

    /** Half of the 1.31 m between its collars. Common practice, no source. */
    static final double HALF_BETWEEN_COLLARS = 0.655;

    /** The least box around it, as two corners, metres. */
    List<Vector2D> corners() {
      Vector2D half = new Vector2D(reach(rod.getX()), reach(rod.getY()));
      return List.of(centre.subtract(half), centre.add(half));
    }

    /** Both ends of the rod as it is seen, metres. */
    List<Vector2D> ends() {
      Vector2D half = rod.scalarMultiply(HALF_LENGTH);
      return List.of(centre.subtract(half), centre.add(half));
    }

    /** The rod's own reach along an axis of the page, and that of plates square to it. */
    private double reach(double share) {
      double rest = Math.sqrt(Math.max(0, 1 - share * share));
      return HALF_LENGTH * Math.abs(share) + plate * rest;
    }
  }

  /** The joints that a picture shows arms to when nobody asks for others. */
  static List<JointId> usual(Position position) {
    List<Force> loads =
        position.forces().stream().filter(f -> f.kind() == Force.Kind.LOAD).toList();
    SegmentTree tree = position.placement().tree();
    boolean legs =
        !loads.isEmpty()
            && loads.stream()
                .allMatch(f -> LEG.stream().anyMatch(tree.segment(f.segment()).name()::endsWith));
    return legs ? OF_LEGS : USUAL;
  }

  static Scene of(Position position, List<JointId> wished) {
    return of(position, wished, Sight.of(position.view(), position.placement()));
  }

  static Scene of(Position position, List<JointId> wished, Sight sight) {
    Placement where = position.placement();
    SeenArms seen = SeenArms.of(position, wished, sight);
    return new Scene(
        sight,
        position,
        new BodyOutline(position.body(), where, seen.gripping(), sight).pieces(),
        JointId.spine().stream().map(j -> sight.seen(where.centre(j.word()))).toList(),
        joints(where, sight),
        seen.line().orElseGet(() -> bodyWeight(position, sight)),
        seen.arms(),
        without(wished, seen.arms()),
        bar(position, sight));
  }

  /** From the side those of the near limbs, from elsewhere all. */
  private static List<Vector2D> joints(Placement where, Sight sight) {
    List<Side> sides = !sight.fromSide() ? List.of(Side.RIGHT, Side.LEFT) : List.of(Side.RIGHT);
    return sides.stream()
        .flatMap(side -> MARKED.stream().map(j -> sight.seen(where.centre(j.on(side)))))
        .toList();
  }

  /** A point, or a direction, of the world on the plane of view. */
  Vector2D seen(Vector3D point) {
    return sight.seen(point);
  }

  private static List<JointId> without(List<JointId> wished, List<DrawnArm> arms) {
    return wished.stream().filter(j -> arms.stream().noneMatch(a -> a.id() == j)).toList();
  }

  /** Whether the line is that of a load, so that arms can be drawn to it. */
  boolean holdsSomething() {
    return bar.isPresent() || !arms.isEmpty() || !line.source().equals("body weight");
  }

  private static ForceLine bodyWeight(Position position, Sight sight) {
    Vector3D weight = Gravity.VECTOR.scalarMultiply(position.placement().tree().mass());
    return ForceLine.of("body weight", position.placement().centreOfMass(), weight, sight);
  }

  private static Optional<BarSeen> bar(Position position, Sight sight) {
    return position.loads().stream()
        .filter(Barbell.class::isInstance)
        .map(Barbell.class::cast)
        .filter(b -> b.kilograms() > 0)
        .findFirst()
        .flatMap(
            b ->
                ForceLine.of(b.source(), position.forces(), sight)
                    .map(
                        l ->
                            new BarSeen(
                                l.point(),
                                rod(sight),
                                b.plateRadius(),
                                Barbell.GRIP_RADIUS,
                                l.place())));
  }

  /** The way a bar runs that lies across the lifter: no length where it is seen end-on. */
  private static Vector2D rod(Sight sight) {
    return sight.seen(Vector3D.PLUS_K);
  }
}
