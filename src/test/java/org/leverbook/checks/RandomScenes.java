package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.body.Segment;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.load.Force;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;

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

  /** Angles of either sign within the joints' ranges. */
  Pose humanPose(SegmentTree tree) {
    double[] angles = new double[tree.angles()];
    for (int i = 1; i < tree.size(); i++) {
      Segment segment = tree.segment(i);
      for (int k = 0; k < segment.joint().freedoms().size(); k++) {
        var freedom = segment.joint().freedoms().get(k);
        angles[tree.firstAngle(i) + k] = between(freedom.low(), freedom.high());
      }
    }
    return Pose.of(tree, angles, vector(1), Frame.WORLD);
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
