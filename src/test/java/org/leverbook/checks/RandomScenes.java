package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Freedom;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.load.Barbell;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Limbs;
import org.leverbook.pose.MovingPose;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Notes;
import org.leverbook.statics.Position;
import org.leverbook.statics.Standing;

/** Random people, poses and forces from a seed: the same numbers on every machine. */
final class RandomScenes {

  private final Random random;

  RandomScenes(long seed) {
    random = new Random(seed);
  }

  double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  Body body() {
    Sex sex = random.nextBoolean() ? Sex.MALE : Sex.FEMALE;
    return Body.of(Person.of(sex, kg(between(45, 140)), cm(between(150, 205))));
  }

  /** Any angles within a right angle either way, the root anywhere and turned anyhow. */
  Pose pose(SegmentTree tree) {
    double[] angles = new double[tree.angles()];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = between(-Math.PI / 2, Math.PI / 2);
    }
    Rotation turn = rotation();
    Frame frame =
        new Frame(
            turn.applyTo(Vector3D.PLUS_I),
            turn.applyTo(Vector3D.PLUS_J),
            turn.applyTo(Vector3D.PLUS_K));
    return Pose.of(tree, angles, vector(2), frame);
  }

  /** That pose, moving anyhow: joints up to 8 rad/s and 60 rad/s2, the root 3 m/s and 15 m/s2. */
  MovingPose moving(Pose pose) {
    double[] rates = new double[pose.tree().angles()];
    double[] accelerations = new double[rates.length];
    for (int i = 0; i < rates.length; i++) {
      rates[i] = between(-8, 8);
      accelerations[i] = between(-60, 60);
    }
    return MovingPose.of(
        pose,
        rates,
        accelerations,
        new MovingPose.Root(vector(3), vector(15), vector(6), vector(30)));
  }

  /**
   * Somebody standing on two flat feet of different place and turn-out, hips a little low, spine
   * and arms anywhere within a third of their ranges: one-sided in every way. It may tip.
   */
  Pose standing(Body body) {
    SegmentTree tree = body.tree();
    double[] angles = new double[tree.angles()];
    for (int i = 1; i < tree.size(); i++) {
      List<Freedom> freedoms = tree.segment(i).joint().freedoms();
      for (int k = 0; k < freedoms.size(); k++) {
        Freedom freedom = freedoms.get(k);
        angles[tree.firstAngle(i) + k] = between(freedom.low(), freedom.high()) / 3;
      }
    }
    double height = between(0.75, 0.93) * body.links().standingHipHeight();
    Frame pelvis = Frame.leanedForward(between(-0.1, 0.3));
    Pose pose = Pose.of(tree, angles, new Vector3D(0, height, 0), pelvis);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D ankle =
          new Vector3D(
              between(-0.2, 0.05), body.links().footHeight(), side.sign() * between(0.08, 0.22));
      pose = Limbs.stand(pose, body, side, ankle, between(0, 0.5));
      pose = pose.with(JointId.BALL.on(side), 0);
    }
    return pose;
  }

  /** A weight that hangs on one hand alone. */
  record OneHand(Side side, double kilograms) implements Load {

    @Override
    public String source() {
      return "bell";
    }

    @Override
    public String description() {
      return kilograms + " kg in the " + side.word() + " hand";
    }

    @Override
    public double mass() {
      return kilograms;
    }

    @Override
    public List<Force> forces(Placement where) {
      int fingers = where.tree().distalOf(JointId.GRIP.on(side));
      Vector3D weight = Gravity.VECTOR.scalarMultiply(kilograms);
      return List.of(Force.ofLoad(source(), fingers, where.origin(fingers), weight));
    }
  }

  /** So many standing positions that hold, with a bar in both hands and a bell in one. */
  List<Position> positions(int wanted) {
    List<Position> held = new ArrayList<>();
    for (int tries = 0; held.size() < wanted; tries++) {
      Body body = body();
      Pose pose = standing(body);
      Side side = random.nextBoolean() ? Side.RIGHT : Side.LEFT;
      List<Load> loads =
          List.of(
              new Barbell(between(0, 60), Barbell.STANDARD_PLATE_RADIUS),
              new OneHand(side, between(0, 30)));
      try {
        held.add(
            Standing.position("random", body, pose, loads, List.of(), Notes.ofPosture(List.of())));
      } catch (Refused tips) {
        if (tries > 20 * wanted) {
          throw tips;
        }
      }
    }
    return held;
  }

  /** Three to eight forces of up to 1000 N a direction, each with a free moment. */
  List<Force> forces(Placement where) {
    List<Force> forces = new ArrayList<>();
    int count = 3 + random.nextInt(6);
    for (int i = 0; i < count; i++) {
      int segment = random.nextInt(where.tree().size());
      Vector3D point = where.toWorld(segment, vector(0.3));
      forces.add(
          new Force("load " + i % 3, Force.Kind.LOAD, segment, point, vector(1000), vector(50)));
    }
    return forces;
  }

  Rotation rotation() {
    return new Rotation(
        random.nextGaussian(),
        random.nextGaussian(),
        random.nextGaussian(),
        random.nextGaussian(),
        true);
  }

  Vector3D vector(double size) {
    return new Vector3D(between(-size, size), between(-size, size), between(-size, size));
  }
}
