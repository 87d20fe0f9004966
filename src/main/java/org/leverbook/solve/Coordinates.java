package org.leverbook.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.data.Recent;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;

/**
 * The few numbers that a pose is made of. Each drives one joint angle or several in fixed
 * proportion: both knees alike, or a bend of the low back shared over its levels by the published
 * fractions. The first six are the place of the pelvis (metres) and its turning (radians) from an
 * attitude that the lift starts from.
 *
 * <p>Names are as in "knee flexion" where both sides go alike, and "right knee flexion" where each
 * goes its own way; of the spine "low back flexion", "upper back flexion", "side bend", "twist",
 * "neck flexion".
 */
public final class Coordinates {

  /** Forward, up, right; then leaning forward, leaning to the right, turning to the left. */
  static final int ROOT = 6;

  private static final List<String> PELVIS =
      List.of(
          "pelvis forward",
          "pelvis up",
          "pelvis right",
          "pelvis lean",
          "pelvis side lean",
          "pelvis turn");

  /** How many sets are kept: the same lifter's lifts ask for the same again and again. */
  private static final int KEPT = 64;

  private static final Recent<SegmentTree, Coordinates> ALIKE =
      new Recent<>(KEPT, tree -> new Coordinates(tree, true, true));

  private static final Recent<SegmentTree, Coordinates> EACH_SIDE =
      new Recent<>(KEPT, tree -> new Coordinates(tree, false, false));

  private final SegmentTree tree;
  private final boolean alike;
  private final List<String> names = new ArrayList<>(PELVIS);
  private final Map<String, Integer> byName = new HashMap<>();
  private final List<double[]> ranges = new ArrayList<>();
  final int[] driver;
  final double[] gain;
  final Chains chains;

  /** Where left and right are alike in every way; otherwise null. */
  final Halves halves;

  private Coordinates(SegmentTree tree, boolean alike, boolean square) {
    this.tree = tree;
    this.alike = alike;
    driver = new int[tree.angles()];
    gain = new double[tree.angles()];
    Arrays.fill(driver, -1);
    double all = Double.POSITIVE_INFINITY;
    for (int i = 0; i < ROOT; i++) {
      boolean held = square && (i == 2 || i > 3);
      ranges.add(held ? new double[2] : new double[] {-all, all});
    }
    column();
    for (JointId joint : JointId.values()) {
      if (joint.paired() && joint != JointId.GRIP) {
        limb(joint);
      }
    }
    for (int i = 0; i < names.size(); i++) {
      byName.put(names.get(i), i);
    }
    chains = new Chains(tree.flat(), driver);
    halves = alike && square ? Halves.of(tree) : null;
  }

  /**
   * Left and right go alike; the pelvis stays square.
   *
   * @param body whose
   * @return about twenty-five coordinates
   */
  public static Coordinates alike(Body body) {
    return ALIKE.get(body.tree());
  }

  /**
   * Left and right go alike; the pelvis stands anywhere and turns anyhow, as a camera may see it.
   *
   * @param body whose
   * @return as many as {@link #alike}
   */
  public static Coordinates alikeAnywhere(Body body) {
    return new Coordinates(body.tree(), true, false);
  }

  /**
   * Left and right each go their own way.
   *
   * @param body whose
   * @return about fifty coordinates
   */
  public static Coordinates eachSide(Body body) {
    return EACH_SIDE.get(body.tree());
  }

  private void column() {
    List<JointId> all = List.of(JointId.values());
    List<JointId> lumbar = all.subList(JointId.L5_S1.ordinal(), JointId.L1_L2.ordinal() + 1);
    List<JointId> thoracic = all.subList(JointId.T12_L1.ordinal(), JointId.T1_T2.ordinal() + 1);
    List<JointId> neck = all.subList(JointId.C7_T1.ordinal(), JointId.HEAD.ordinal() + 1);
    List<JointId> trunk = all.subList(JointId.L5_S1.ordinal(), JointId.T1_T2.ordinal() + 1);
    shared("low back flexion", lumbar, "flexion");
    shared("upper back flexion", thoracic, "flexion");
    shared("neck flexion", neck, "flexion");
    shared("side bend", trunk, "abduction");
    shared("twist", trunk, "rotation");
    shared("neck side bend", neck, "abduction");
    shared("neck twist", neck, "rotation");
  }

  /** One angle over several levels, each in proportion to its own range. */
  private void shared(String name, List<JointId> levels, String axis) {
    double sum = 0;
    for (JointId level : levels) {
      sum += freedom(level, axis).high();
    }
    int index = names.size();
    double low = Double.NEGATIVE_INFINITY;
    double high = Double.POSITIVE_INFINITY;
    for (JointId level : levels) {
      Freedom freedom = freedom(level, axis);
      double part = freedom.high() / sum;
      if (part > 0) {
        int angle = tree.angleOf(level.word(), axis);
        driver[angle] = index;
        gain[angle] = part;
        low = Math.max(low, freedom.low() / part);
        high = Math.min(high, freedom.high() / part);
      }
    }
    boolean held = alike && !axis.equals("flexion");
    names.add(name);
    ranges.add(held ? new double[2] : new double[] {low, high});
  }

  private Freedom freedom(JointId level, String axis) {
    return tree.segment(tree.distalOf(level.word())).joint().freedom(axis).orElseThrow();
  }

  private void limb(JointId id) {
    Joint right = tree.segment(tree.distalOf(id.on(Side.RIGHT))).joint();
    for (Freedom freedom : right.freedoms()) {
      if (freedom.low() == freedom.high()) {
        continue;
      }
      String axis = freedom.motion().axis();
      for (Side side : alike ? List.of(Side.MIDLINE) : id.sides()) {
        int index = names.size();
        names.add((alike ? id.word() : id.on(side)) + " " + axis);
        ranges.add(new double[] {freedom.low(), freedom.high()});
        for (Side driven : alike ? id.sides() : List.of(side)) {
          int angle = tree.angleOf(id.on(driven), axis);
          driver[angle] = index;
          gain[angle] = 1;
        }
      }
    }
  }

  /**
   * How many there are.
   *
   * @return the six of the pelvis and one for each way the body bends
   */
  public int count() {
    return names.size();
  }

  /**
   * The name of one.
   *
   * @param index its place
   * @return as in "knee flexion"
   */
  public String name(int index) {
    return names.get(index);
  }

  /**
   * Whether there is one of this name.
   *
   * @param name as in "knee flexion"
   * @return true if so
   */
  public boolean has(String name) {
    return byName.containsKey(name);
  }

  /**
   * The place of one.
   *
   * @param name as in "knee flexion"
   * @return its index
   * @throws Refused if there is none of that name; names those that exist
   */
  public int indexOf(String name) {
    Integer index = byName.get(name);
    if (index == null) {
      throw new Refused(
          "There is no coordinate \"" + name + "\"; there are " + String.join(", ", names) + ".");
    }
    return index;
  }

  /**
   * The lowest value a healthy adult reaches.
   *
   * @param index its place
   * @return radians or metres
   */
  public double low(int index) {
    return ranges.get(index)[0];
  }

  /**
   * The highest value a healthy adult reaches.
   *
   * @param index its place
   * @return radians or metres
   */
  public double high(int index) {
    return ranges.get(index)[1];
  }

  /**
   * Whether left and right go alike.
   *
   * @return true if so
   */
  public boolean bothAlike() {
    return alike;
  }

  /**
   * Whose they are.
   *
   * @return the tree
   */
  public SegmentTree tree() {
    return tree;
  }

  /** Writes the joint angles that given coordinates drive. */
  void angles(double[] x, double[] into) {
    for (int i = 0; i < driver.length; i++) {
      into[i] = driver[i] < 0 ? 0 : gain[i] * x[driver[i]];
    }
  }

  /**
   * The coordinates of a pose: of several angles that one coordinate drives, their sum or mean.
   *
   * @param pose of the same tree
   * @param attitude what the pelvis turns from
   * @return one value each
   */
  public double[] of(Pose pose, Frame attitude) {
    double[] x = new double[count()];
    double[] parts = new double[count()];
    for (int i = 0; i < driver.length; i++) {
      if (driver[i] >= 0) {
        x[driver[i]] += gain[i] * pose.angle(i);
        parts[driver[i]] += gain[i] * gain[i];
      }
    }
    for (int k = ROOT; k < x.length; k++) {
      x[k] = parts[k] == 0 ? 0 : x[k] / parts[k];
    }
    Vector3D place = pose.rootPlace();
    Frame turned = pose.rootFrame().relativeTo(attitude);
    x[0] = place.getX();
    x[1] = place.getY();
    x[2] = place.getZ();
    // As for joints: lean about -z, then sideways about x, then the turn about y.
    x[3] = Math.atan2(turned.y().getX(), turned.y().getY());
    x[4] = Math.asin(Math.max(-1, Math.min(1, turned.y().getZ())));
    x[5] = Math.atan2(-turned.x().getZ(), turned.z().getZ());
    return x;
  }
}
