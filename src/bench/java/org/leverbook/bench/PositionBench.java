package org.leverbook.bench;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Kinematics;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Units;
import org.leverbook.statics.QuickMoments;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import us.ihmc.euclid.matrix.RotationMatrix;

/**
 * One whole-body position, as a grid of poses computes them by the thousand: 46 segments, 119
 * angles, all of them different each time, gravity and a force on each hand and each foot, all
 * moments read. The budget: at least ten times the baseline, without allocation.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class PositionBench {

  private static final int POSES = 256;

  private final Pose[] poses = new Pose[POSES];
  private final RotationMatrix[][] rotations = new RotationMatrix[POSES][];
  private final double[][] forces = {{0, -700, 0}, {0, -700, 0}, {10, 1100, 5}, {-10, 1100, -5}};
  private QuickMoments quick;
  private BallTree library;
  private int[] held;
  private int next;

  /** Makes the poses; both sides get the same. */
  @Setup
  public void setUp() {
    SegmentTree tree = Person.of(Sex.MALE, Units.kg(85), Units.cm(178)).body().tree();
    Random random = new Random(42);
    for (int n = 0; n < POSES; n++) {
      double[] angles = new double[tree.angles()];
      for (int i = 0; i < angles.length; i++) {
        angles[i] = 2 * random.nextDouble() - 1;
      }
      poses[n] = Pose.of(tree, angles, new Vector3D(0, 1, 0), Frame.leanedForward(0.3));
      rotations[n] = BallTree.rotations(poses[n].placed());
    }
    quick = new QuickMoments(tree);
    library = new BallTree(tree);
    held =
        new int[] {
          tree.distalOf(JointId.GRIP.on(Side.RIGHT)),
          tree.distalOf(JointId.GRIP.on(Side.LEFT)),
          tree.distalOf(JointId.ANKLE.on(Side.RIGHT)),
          tree.distalOf(JointId.ANKLE.on(Side.LEFT))
        };
    for (int n = 0; n < POSES; n++) {
      double ours = leverbook();
      next--;
      double theirs = library();
      if (Math.abs(ours - theirs) > 1e-9 * ours) {
        throw new IllegalStateException("The two sides disagree: " + ours + ", " + theirs);
      }
    }
  }

  /**
   * The general rigid-body library in its fastest form.
   *
   * @return the sum of the sizes of all moments
   */
  @Benchmark
  public double library() {
    int n = next++ & (POSES - 1);
    return library.solve(poses[n].rootPlace(), rotations[n], held, forces);
  }

  /**
   * Leverbook's kernel, from the joint angles on.
   *
   * @return the sum of the sizes of all moments
   */
  @Benchmark
  public double leverbook() {
    int n = next++ & (POSES - 1);
    quick.at(poses[n]);
    Kinematics where = quick.where();
    for (int k = 0; k < held.length; k++) {
      int segment = held[k];
      quick.push(
          segment,
          where.origin(segment, 0),
          where.origin(segment, 1),
          where.origin(segment, 2),
          forces[k][0],
          forces[k][1],
          forces[k][2]);
    }
    quick.gather();
    double sum = 0;
    int segments = where.tree().size();
    for (int i = 1; i < segments; i++) {
      double x = quick.moment(i, 0);
      double y = quick.moment(i, 1);
      double z = quick.moment(i, 2);
      sum += Math.sqrt(x * x + y * y + z * z);
    }
    return sum;
  }
}
