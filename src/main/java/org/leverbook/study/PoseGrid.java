package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.display.Caution;
import org.leverbook.display.Shown;
import org.leverbook.load.Load;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.Table;

/**
 * Two quantities varied against each other, a still pose given for each pair: up to some millions
 * of rows.
 *
 * <p>What it does not do: it solves for no pose and knows no supports. The pelvis is held, so only
 * joints whose distal side hangs free can be asked for: spine, neck and arms, and legs off the
 * floor. What a floor or a pad must give, whether someone stands, and which pairs cannot be held is
 * a matter of positions: {@link Grid}, the word {@code grid}.
 */
public final class PoseGrid implements Shown {

  private static final long MOST_ROWS = 20_000_000;

  /** From two values to a pose. */
  @FunctionalInterface
  public interface Poses {

    /**
     * The pose for one pair.
     *
     * @param first value of the first quantity, in its unit
     * @param second value of the second quantity, in its unit
     * @return the pose; always of the same tree
     */
    Pose at(double first, double second);
  }

  private final Span<?> first;
  private final Span<?> second;
  private final List<JointId> joints;
  private final double[] firsts;
  private final double[] seconds;
  private final double[][] moments;

  private PoseGrid(Span<?> first, Span<?> second, List<JointId> joints) {
    this.first = first;
    this.second = second;
    this.joints = joints;
    int rows = first.values() * second.values();
    firsts = new double[rows];
    seconds = new double[rows];
    moments = new double[joints.size()][rows];
  }

  /**
   * Computes a grid, on all processors.
   *
   * <p>{@code PoseGrid.over(Span.of("elbow", deg(0), deg(120), 1000), Span.of("lean", deg(0),
   * deg(90), 1000), (elbow, lean) -> ..., List.of(barbell(kg(40))), L5_S1, SHOULDER, ELBOW)} makes
   * a million rows.
   *
   * @param first varies slowest
   * @param second varies fastest
   * @param poses from a pair of values to a pose
   * @param loads what is held
   * @param joints whose moments are wanted, at least one
   * @return the grid, the same on any number of processors
   * @throws Refused if it is too large, a joint has no flexion axis, or a leg is asked for that
   *     stands on the floor
   */
  public static PoseGrid over(
      Span<?> first, Span<?> second, Poses poses, List<Load> loads, JointId... joints) {
    Ask.present("lambda", poses, "(elbow, lean) -> pose");
    if (joints.length == 0) {
      throw new Refused("A grid needs at least one joint, such as ELBOW.");
    }
    if ((long) first.values() * second.values() > MOST_ROWS) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A grid of %,d by %,d values is too large: at most %,d rows fit.",
              first.values(),
              second.values(),
              MOST_ROWS));
    }
    PoseGrid grid = new PoseGrid(first, second, List.of(joints));
    SegmentTree tree = poses.at(first.from(), second.from()).tree();
    IntStream.range(0, first.values())
        .parallel()
        .forEach(i -> grid.line(i, new GridLine(tree, loads, grid.joints), poses));
    return grid;
  }

  private void line(int i, GridLine line, Poses poses) {
    if (Thread.currentThread().isInterrupted()) {
      throw new Refused("Stopped before all poses were computed.");
    }
    double slow = first.value(i);
    for (int k = 0; k < second.values(); k++) {
      int row = i * second.values() + k;
      double fast = second.value(k);
      firsts[row] = slow;
      seconds[row] = fast;
      line.solve(poses.at(slow, fast));
      for (int j = 0; j < moments.length; j++) {
        moments[j][row] = line.signed(j);
      }
    }
  }

  /**
   * The grid as a table: a row for each pair, a column for each joint.
   *
   * @return a Tablesaw table, units in the column names; moments are about the flexion axis,
   *     positive where what acts flexes; of a paired joint, the side where it is greater
   */
  public Table table() {
    Table table = Table.create("Grid over " + first.heading() + " and " + second.heading());
    table.addColumns(
        DoubleColumn.create(first.heading(), firsts),
        DoubleColumn.create(second.heading(), seconds));
    for (int j = 0; j < moments.length; j++) {

      table.addColumns(DoubleColumn.create(joints.get(j).word() + " moment (N·m)", moments[j]));
    }
    return table;
  }

  /**
   * How many pairs there are.
   *
   * @return rows of the table
   */
  public int rows() {
    return firsts.length;
  }

  @Override
  public String text() {
    List<String> words = new ArrayList<>();
    joints.forEach(joint -> words.add(joint.word()));
    return String.format(
        Locale.ROOT,
        "grid of %,d still poses over %s and %s: moments at %s; the pelvis is held, the legs hang\n%s",
        rows(),
        first.heading(),
        second.heading(),
        String.join(", ", words),
        Caution.TEXT);
  }

  @Override
  public String toString() {
    return text();
  }
}
