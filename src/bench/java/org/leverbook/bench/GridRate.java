package org.leverbook.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Sex;
import org.leverbook.load.Barbell;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Units;
import org.leverbook.study.PoseGrid;
import org.leverbook.study.Span;

/**
 * A million still positions into a table: trunk lean against elbow flexion with a bar in the hands,
 * on one core (the baseline) and on two. The best of several rounds each, taken in turn, so that
 * another program's load falls on both.
 */
final class GridRate {

  private static final int ROUNDS = 6;

  private GridRate() {}

  static void measure(ObjectNode root) {
    double one = Double.POSITIVE_INFINITY;
    double two = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      one = Math.min(one, seconds(1));
      two = Math.min(two, seconds(2));
    }
    root.put("a million positions on one core (s)", one);
    root.put("a million positions on two cores (s)", two);
    root.put("two cores, times one core's rate", Math.round(100 * one / two) / 100.0);
  }

  private static double seconds(int cores) {
    ForkJoinPool pool = new ForkJoinPool(cores);
    try {
      long start = System.nanoTime();
      int rows = pool.submit(GridRate::grid).join();
      double seconds = (System.nanoTime() - start) / 1e9;
      if (rows != 1_000_000) {
        throw new IllegalStateException("There are " + rows + " rows.");
      }
      return seconds;
    } finally {
      pool.shutdown();
    }
  }

  private static int grid() {
    SegmentTree tree = Person.of(Sex.MALE, Units.kg(85), Units.cm(178)).body().tree();
    Pose upright = Pose.neutral(tree);
    Vector3D hips = new Vector3D(0, 0.9, 0);
    return PoseGrid.over(
            Span.of("lean", Units.deg(0), Units.deg(90), 1000),
            Span.of("elbow flexion", Units.deg(0), Units.deg(120), 1000),
            (lean, elbow) -> {
              double bent = Math.toRadians(elbow);
              return upright
                  .rootAt(hips, Frame.leanedForward(Math.toRadians(lean)))
                  .with("right elbow", bent, 0)
                  .with("left elbow", bent, 0);
            },
            List.of(Barbell.of(Units.kg(40))),
            JointId.L5_S1,
            JointId.T7_T8,
            JointId.SHOULDER,
            JointId.ELBOW)
        .table()
        .rowCount();
  }
}
