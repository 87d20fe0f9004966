package org.leverbook.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.load.Barbell;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.pose.Placement;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Position;

/**
 * What is to be seen of a position from its right side, in metres, x forward, y up.
 *
 * @param position what is shown
 * @param body its pieces, from back to front
 * @param spine the levels L5/S1 to C7/T1
 * @param joints centres of the near limbs' joints
 * @param line the load's line of force; when nothing is held, the body's own weight
 * @param arms the perpendicular arms to that line; none when nothing is held
 * @param without joints that were asked for but have no arm, as nothing beyond them is loaded
 * @param bar the bar, where one is held
 */
record SideView(
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

  private static final List<JointId> MARKED =
      List.of(
          JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.SHOULDER, JointId.ELBOW, JointId.WRIST);

  /**
   * A bar end-on.
   *
   * @param centre metres
   * @param plate radius of the largest plates, metres
   * @param grip radius of the bar itself, metres
   */
  record BarSeen(Vector2D centre, double plate, double grip) {}

  static SideView of(Position position, List<JointId> wished) {
    Placement where = position.placement();
    Optional<ForceLine> held = heaviest(position).flatMap(l -> lineOf(l, position));
    boolean gripping = heaviest(position).filter(Barbell.class::isInstance).isPresent();
    List<DrawnArm> arms = new ArrayList<>();
    held.ifPresent(
        line -> wished.forEach(joint -> arm(joint, line, position).ifPresent(arms::add)));
    return new SideView(
        position,
        new BodyOutline(position.body(), where, gripping).pieces(),
        JointId.spine().stream().map(j -> BodyOutline.seen(where.centre(j.word()))).toList(),
        MARKED.stream().map(j -> BodyOutline.seen(where.centre(j.on(Side.RIGHT)))).toList(),
        held.orElseGet(() -> bodyWeight(position)),
        arms,
        without(wished, arms),
        bar(position));
  }

  private static List<JointId> without(List<JointId> wished, List<DrawnArm> arms) {
    return wished.stream().filter(j -> arms.stream().noneMatch(a -> a.id() == j)).toList();
  }

  /** Whether the line is that of a load, so that arms can be drawn to it. */
  boolean holdsSomething() {
    return bar.isPresent() || !arms.isEmpty() || !line.source().equals("body weight");
  }

  private static Optional<Load> heaviest(Position position) {
    return position.loads().stream()
        .filter(l -> ForceLine.of(l.source(), position.forces()).isPresent())
        .max(
            Comparator.comparingDouble(
                l -> ForceLine.of(l.source(), position.forces()).orElseThrow().newtons()));
  }

  private static Optional<ForceLine> lineOf(Load load, Position position) {
    return ForceLine.of(load.source(), position.forces());
  }

  private static Optional<DrawnArm> arm(JointId id, ForceLine line, Position position) {
    if (!position.knows(id, Side.RIGHT) && !position.knows(id, Side.LEFT)) {
      return Optional.empty();
    }
    JointMoment moment = position.moment(id);
    if (!moment.mainLoad().equals(line.source()) || moment.arm3d() == 0) {
      return Optional.empty();
    }
    Vector2D joint = BodyOutline.seen(moment.centre());
    return Optional.of(new DrawnArm(id, joint, line.foot(joint), moment));
  }

  private static ForceLine bodyWeight(Position position) {
    Vector3D weight = Gravity.VECTOR.scalarMultiply(position.placement().tree().mass());
    return new ForceLine(
        "body weight",
        BodyOutline.seen(position.placement().centreOfMass()),
        BodyOutline.seen(weight).normalize(),
        weight.getNorm());
  }

  private static Optional<BarSeen> bar(Position position) {
    return position.loads().stream()
        .filter(Barbell.class::isInstance)
        .map(Barbell.class::cast)
        .filter(b -> b.kilograms() > 0)
        .findFirst()
        .flatMap(
            b ->
                ForceLine.of(b.source(), position.forces())
                    .map(l -> new BarSeen(l.point(), b.plateRadius(), Barbell.GRIP_RADIUS)));
  }
}
