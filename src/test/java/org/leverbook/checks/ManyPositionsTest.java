package org.leverbook.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.Segment;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.lift.Library;
import org.leverbook.lift.Lift;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;
import org.leverbook.statics.Position;
import org.leverbook.support.Floor;
import org.leverbook.support.Support;

/**
 * What must hold in any position, over very many. Of a thousand, 900 are any pose in space under
 * any forces, 99 stand on a floor that must be found to push, and one is a lift of the library.
 *
 * <p>{@code -Dleverbook.positions=1000000} makes it a million; every block has its own seed, so
 * that the same positions come on every machine. Worst leftovers go to {@code
 * target/many-positions.csv}.
 */
class ManyPositionsTest {

  private static final int POSITIONS = Integer.getInteger("leverbook.positions", 5000);

  /** Positions of one body, and of one seed. */
  private static final int BLOCK = 100;

  /**
   * What a reader is promised, N and N·m; rounding leaves far less, in solved lifts 1e-7 at most.
   */
  private static final double PROMISED = 1e-6;

  private static final List<String> LINES = new ArrayList<>();

  @Test
  void any_pose_under_any_forces_balances_adds_up_mirrors_and_turns() throws IOException {
    Worst worst = blocks(POSITIONS * 9 / 10, BLOCK, ManyPositionsTest::free);
    assertThat(worst.positions()).isEqualTo(POSITIONS * 9 / 10 / BLOCK * BLOCK);
    told("any pose in space", worst);
    for (Worst.Of what : Worst.Of.values()) {
      assertThat(worst.of(what)).as(what.toString()).isLessThan(PROMISED);
      assertThat(worst.compared(what)).isGreaterThanOrEqualTo(worst.positions());
    }
  }

  @Test
  void whoever_stands_is_held_by_the_floor_to_a_millionth_of_a_newton() throws IOException {
    int wanted = POSITIONS / 1000 * 99;
    Worst worst = blocks(wanted, 11, ManyPositionsTest::standing);
    assertThat(worst.positions()).isEqualTo(wanted / 11 * 11);
    told("standing on a floor", worst);
    solved(worst, Worst.Of.FORCE, Worst.Of.MOMENT, Worst.Of.PARTS, Worst.Of.MIRROR, Worst.Of.TURN);
  }

  @Test
  void every_lift_of_the_library_is_held_to_a_millionth_of_a_newton() throws IOException {
    Worst worst = blocks(Math.max(1, POSITIONS / 1000), 1, ManyPositionsTest::lifted);
    told("lifts of the library", worst);
    solved(worst, Worst.Of.FORCE, Worst.Of.MOMENT, Worst.Of.PARTS);
  }

  private static void solved(Worst worst, Worst.Of... promised) {
    for (Worst.Of what : promised) {
      assertThat(worst.of(what)).as(what.toString()).isLessThan(PROMISED);
      assertThat(worst.compared(what)).isGreaterThanOrEqualTo(worst.positions());
    }
  }

  private static Worst blocks(int positions, int block, IntFunction<Worst> one) {
    return IntStream.range(0, positions / block)
        .parallel()
        .mapToObj(one)
        .reduce(new Worst(), Worst::and);
  }

  private static void told(String kind, Worst worst) {
    synchronized (LINES) {
      LINES.add(worst.table(kind));
    }
  }

  @AfterAll
  static void writes_what_was_left_over() throws IOException {
    Path file = Path.of("target", "many-positions.csv");
    Files.writeString(file, "kind,positions,what,compared,worst,unit\n" + String.join("", LINES));
  }

  private static Worst free(int seed) {
    RandomScenes random = new RandomScenes(1_000_000L + seed);
    SegmentTree tree = random.body().tree();
    Worst worst = new Worst();
    for (int i = 0; i < BLOCK; i++) {
      Pose pose = random.pose(tree);
      Placement where = pose.placed();
      List<Force> forces = new ArrayList<>(random.forces(where));
      NetLoads loose = NetLoads.of(where, forces, Gravity.VECTOR);
      forces.add(
          new Force(
              "hold",
              Force.Kind.SUPPORT,
              0,
              where.origin(0),
              loose.force(0).negate(),
              loose.moment(0).negate()));
      NetLoads net = NetLoads.of(where, forces, Gravity.VECTOR);
      worst.position();
      balanced(worst, where, forces, random.vector(3));
      worst.left(
          Worst.Of.WHOLE,
          Math.abs(
              tree.segments().stream().mapToDouble(Segment::mass).sum() * Gravity.STANDARD
                  - net.force(NetLoads.BODY_WEIGHT, 0).getNorm()));
      addedUp(worst, net);
      pieces(worst, where, forces, net, 1 + (i * 7 + seed) % (tree.size() - 1));
      mirrored(worst, pose, forces, net);
      turned(worst, pose, forces, net, random.rotation());
    }
    return worst;
  }

  /** Every weight and every force once, by hand. */
  private static void balanced(
      Worst worst, Placement where, List<Force> forces, Vector3D anywhere) {
    Vector3D force = Vector3D.ZERO;
    Vector3D moment = Vector3D.ZERO;
    for (int i = 0; i < where.tree().size(); i++) {
      Vector3D weight = Gravity.VECTOR.scalarMultiply(where.tree().segment(i).mass());
      force = force.add(weight);
      moment = moment.add(where.centreOfMass(i).subtract(anywhere).crossProduct(weight));
    }
    for (Force one : forces) {
      force = force.add(one.force());
      moment = moment.add(one.momentAbout(anywhere));
    }
    worst.left(Worst.Of.FORCE, force.getNorm());
    worst.left(Worst.Of.MOMENT, moment.getNorm());
  }

  private static void addedUp(Worst worst, NetLoads net) {
    for (int joint = 1; joint < net.where().tree().size(); joint++) {
      Vector3D sum = Vector3D.ZERO;
      for (String source : net.sources()) {
        sum = sum.add(net.moment(source, joint, net.where().origin(joint)));
      }
      worst.apart(Worst.Of.PARTS, sum, net.moment(joint));
    }
  }

  /** Everything beyond one joint, summed here. */
  private static void pieces(
      Worst worst, Placement where, List<Force> forces, NetLoads net, int joint) {
    SegmentTree tree = where.tree();
    Vector3D centre = where.origin(joint);
    Vector3D moment = Vector3D.ZERO;
    for (int i = 0; i < tree.size(); i++) {
      if (tree.hangsOn(i, joint)) {
        Vector3D weight = Gravity.VECTOR.scalarMultiply(tree.segment(i).mass());
        moment = moment.add(where.centreOfMass(i).subtract(centre).crossProduct(weight));
      }
    }
    for (Force one : forces) {
      if (tree.hangsOn(one.segment(), joint)) {
        moment = moment.add(one.momentAbout(centre));
      }
    }
    worst.apart(Worst.Of.PIECES, moment, net.moment(joint));
  }

  private static void mirrored(Worst worst, Pose pose, List<Force> forces, NetLoads net) {
    SegmentTree tree = pose.tree();
    NetLoads across =
        NetLoads.of(
            Images.mirrored(pose).placed(),
            forces.stream().map(force -> Images.mirrored(tree, force)).toList(),
            Gravity.VECTOR);
    for (int joint = 1; joint < tree.size(); joint++) {
      int other = tree.indexOf(Images.otherSide(tree.segment(joint).name()));
      // A moment is an axial vector: its mirror image turns the other way.
      Vector3D image = Images.mirrored(net.moment(joint)).negate();
      worst.apart(Worst.Of.MIRROR, image, across.moment(other));
    }
  }

  private static void turned(
      Worst worst, Pose pose, List<Force> forces, NetLoads net, Rotation turn) {
    NetLoads moved =
        NetLoads.of(
            Images.turned(turn, pose).placed(),
            forces.stream().map(force -> Images.turned(turn, force)).toList(),
            turn.applyTo(Gravity.VECTOR));
    for (int joint = 1; joint < pose.tree().size(); joint++) {
      worst.apart(Worst.Of.TURN, turn.applyTo(net.moment(joint)), moved.moment(joint));
    }
  }

  private static Worst standing(int seed) {
    RandomScenes random = new RandomScenes(2_000_000L + seed);
    Worst worst = new Worst();
    for (Position position : random.positions(11)) {
      found(worst, position, random.vector(3));
      foundAgain(worst, position, random.between(-Math.PI, Math.PI));
    }
    return worst;
  }

  /** The same in a mirror, and turned about the vertical: the floor's push is found anew. */
  private static void foundAgain(Worst worst, Position position, double angle) {
    Body body = position.body();
    Pose pose = position.placement().pose();
    List<Load> swapped =
        position.loads().stream()
            .map(
                load ->
                    load instanceof RandomScenes.OneHand bell
                        ? new RandomScenes.OneHand(
                            bell.side() == Side.RIGHT ? Side.LEFT : Side.RIGHT, bell.kilograms())
                        : load)
            .toList();
    Position across = on(body, Images.mirrored(pose), swapped);
    Rotation turn = new Rotation(Vector3D.PLUS_J, angle, RotationConvention.VECTOR_OPERATOR);
    Position turned = on(body, Images.turned(turn, pose), position.loads());
    for (JointMoment joint : position.all()) {
      String name = joint.joint().fullName();
      Vector3D image = Images.mirrored(joint.moment()).negate();
      worst.apart(Worst.Of.MIRROR, image, of(across, Images.otherSide(name)));
      worst.apart(Worst.Of.TURN, turn.applyTo(joint.moment()), of(turned, name));
    }
  }

  private static Position on(Body body, Pose pose, List<Load> loads) {
    List<Support> floor = List.of(new Floor(body));
    return Position.of("again", body, pose, loads, floor, List.of(), List.of());
  }

  private static Vector3D of(Position position, String joint) {
    return position.all().stream()
        .filter(moment -> moment.joint().fullName().equals(joint))
        .findFirst()
        .orElseThrow()
        .moment();
  }

  private static Worst lifted(int seed) {
    RandomScenes random = new RandomScenes(3_000_000L + seed);
    Worst worst = new Worst();
    while (worst.positions() == 0) {
      Body body = random.body();
      List<Lift<?>> lifts = Library.of(body.person()).lifts();
      // One lift after the other, so that many blocks meet them all.
      Lift<?> lift = lifts.get(seed % lifts.size());
      try {
        Position position = lift.at(Units.percent(random.between(0, 100)));
        if (position.held()) {
          found(worst, position, random.vector(3));
        }
      } catch (Refused cannot) {
        // Somebody of that build cannot get there; the next one may.
        continue;
      }
    }
    return worst;
  }

  private static void found(Worst worst, Position position, Vector3D anywhere) {
    worst.position();
    balanced(worst, position.placement(), position.forces(), anywhere);
    for (JointMoment joint : position.all()) {
      Vector3D sum = Vector3D.ZERO;
      for (JointMoment.Part part : joint.parts().values()) {
        sum = sum.add(part.moment());
      }
      worst.apart(Worst.Of.PARTS, sum, joint.moment());
    }
  }
}
