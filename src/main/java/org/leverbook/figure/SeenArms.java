package org.leverbook.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.HandWeights;
import org.leverbook.load.Load;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Position;

/**
 * The heaviest load's line of force and the arms to it.
 *
 * <p>In a flat view the arm is square to the line as both are seen; from elsewhere it is the arm in
 * space, seen aslant. Other than from the side two weights at both sides have two lines of force.
 * Then the right one is drawn, and only joints that carry that weight alone have an arm. Nor has a
 * leg that shares the load with the other: how much presses on each foot decides there, not the
 * arm.
 *
 * @param line the line; empty when nothing is held
 * @param arms the arms to it
 * @param gripping whether the hands hold something round
 */
record SeenArms(Optional<ForceLine> line, List<DrawnArm> arms, boolean gripping) {

  /** Two weights nearer to each other than this have one line of force, metres. */
  private static final double APART = 0.25;

  /** A share of a load that is told as the whole. */
  private static final double WHOLE = 0.999;

  private static final Set<JointId> LEG = EnumSet.of(JointId.HIP, JointId.KNEE, JointId.ANKLE);

  static SeenArms of(Position position, List<JointId> wished, Sight sight) {
    Optional<Load> load = heaviest(position, sight);
    boolean gripping =
        load.filter(l -> l instanceof Barbell || l instanceof HandWeights && !sight.fromSide())
            .isPresent();
    if (load.isEmpty()) {
      return new SeenArms(Optional.empty(), List.of(), gripping);
    }
    String source = load.get().source();
    boolean apart = !sight.fromSide() && apart(source, position, sight);
    List<Force> forces = apart ? on(Side.RIGHT, source, position) : position.forces();
    ForceLine line = ForceLine.of(source, forces, sight).orElseThrow();
    List<DrawnArm> arms = new ArrayList<>();
    for (JointId joint : wished) {
      arm(joint, line, position, sight, apart).ifPresent(arms::add);
    }
    return new SeenArms(Optional.of(line), arms, gripping);
  }

  private static Optional<Load> heaviest(Position position, Sight sight) {
    return position.loads().stream()
        .filter(l -> ForceLine.of(l.source(), position.forces(), sight).isPresent())
        .max(
            Comparator.comparingDouble(
                l -> ForceLine.of(l.source(), position.forces(), sight).orElseThrow().newtons()));
  }

  /** Two hands on one bar are not two weights. */
  private static boolean apart(String source, Position position, Sight sight) {
    boolean single =
        position.loads().stream()
            .anyMatch(l -> l.source().equals(source) && !(l instanceof HandWeights));
    Optional<Vector2D> right = seen(Side.RIGHT, source, position, sight);
    Optional<Vector2D> left = seen(Side.LEFT, source, position, sight);
    return !single
        && right.isPresent()
        && left.isPresent()
        && right.get().distance(left.get()) > APART;
  }

  private static Optional<Vector2D> seen(Side side, String source, Position position, Sight sight) {
    return ForceLine.of(source, on(side, source, position), sight).map(ForceLine::point);
  }

  private static List<Force> on(Side side, String source, Position position) {
    return position.forces().stream()
        .filter(f -> f.source().equals(source))
        .filter(
            f -> position.placement().tree().segment(f.segment()).name().startsWith(side.word()))
        .toList();
  }

  private static Optional<DrawnArm> arm(
      JointId id, ForceLine line, Position position, Sight sight, boolean apart) {
    Optional<JointMoment> asked = asked(id, position, sight, apart);
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    JointMoment moment = asked.get();
    if (!moment.mainLoad().equals(line.source()) || moment.arm3d() == 0) {
      return Optional.empty();
    }
    if (apart && !alone(moment, line.source(), position)) {
      return Optional.empty();
    }
    if (sight.frontal() && sharesWithOtherLeg(id, moment, line)) {
      return Optional.empty();
    }
    Vector2D joint = sight.seen(moment.centre());
    boolean beyond = beyond(moment, line, position);
    ForceLine own =
        sight.fromSide() || sight.frontal() || !beyond ? line : own(moment, line, sight);
    Vector2D foot = sight.flat() ? own.foot(joint) : sight.seen(own.foot(moment.centre()));
    // The part on the side of the load: what is distal to the joint, or all the rest.
    double turn = sight.depth(beyond ? moment.moment() : moment.moment().negate());
    return Optional.of(new DrawnArm(id, joint, foot, moment, own, turn, sight));
  }

  /** The line along which the joint's part of the load acts: one hand's of two, say. */
  private static ForceLine own(JointMoment moment, ForceLine line, Sight sight) {
    JointMoment.Part part = moment.parts().get(line.source());
    double square = part.force().getNormSq();
    if (square == 0) {
      return line;
    }
    Vector3D to = part.force().crossProduct(part.moment()).scalarMultiply(1 / square);
    Vector3D along =
        part.force().dotProduct(line.along()) < 0 ? part.force().negate() : part.force();
    return ForceLine.of(line.source(), moment.centre().add(to), along, sight);
  }

  /** Whether the load, or a part of it, acts on what is distal to the joint. */
  private static boolean beyond(JointMoment moment, ForceLine line, Position position) {
    SegmentTree tree = position.placement().tree();
    int distal = tree.distalOf(moment.joint().fullName());
    return position.forces().stream()
        .filter(f -> f.source().equals(line.source()))
        .anyMatch(f -> f.segment() == distal || tree.hangsOn(f.segment(), distal));
  }

  /** Of a paired joint the side that is asked more in the plane of view. */
  private static Optional<JointMoment> asked(
      JointId id, Position position, Sight sight, boolean apart) {
    List<JointMoment> sides =
        (apart && id.paired() ? List.of(Side.RIGHT) : id.sides())
            .stream()
                .filter(side -> position.knows(id, side))
                .map(side -> position.moment(id, side))
                .toList();
    if (sight.frontal()) {
      return sides.stream()
          .max(Comparator.comparingDouble(m -> Math.abs(m.moment().dotProduct(sight.towards()))));
    }
    if (apart) {
      return sides.stream().findFirst();
    }
    return sides.isEmpty() ? Optional.empty() : Optional.of(position.moment(id));
  }

  /**
   * Whether a leg bears a part of the load, seen from where its foot presses: then the arm to the
   * load's line of force, times the load, is not what the leg's joints carry to the side.
   */
  private static boolean sharesWithOtherLeg(JointId id, JointMoment moment, ForceLine line) {
    double borne = moment.parts().get(line.source()).force().getNorm();
    return LEG.contains(id) && borne < WHOLE * line.newtons();
  }

  /** Whether the joint carries this one weight alone, as the shoulder does that of its hand. */
  private static boolean alone(JointMoment moment, String source, Position position) {
    SegmentTree tree = position.placement().tree();
    int distal = tree.distalOf(moment.joint().fullName());
    long carried =
        position.forces().stream()
            .filter(f -> f.source().equals(source))
            .filter(f -> f.segment() == distal || tree.hangsOn(f.segment(), distal))
            .count();
    return carried == 1;
  }
}
