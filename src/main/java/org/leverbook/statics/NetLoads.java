package org.leverbook.statics;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.load.Force;
import org.leverbook.pose.ForceSums;
import org.leverbook.pose.Placement;

/**
 * What acts on everything distal to each joint, source by source.
 *
 * <p>One pass from the tips to the root adds up forces, and moments about the world's origin;
 * moving the reference to a joint's centre c is then one step: M(c) = M(0) - c x F.
 */
public final class NetLoads {

  /** The name of the source that collects the weights of the segments. */
  public static final String BODY_WEIGHT = "body weight";

  private static final int STRIDE = 6;

  private final Placement where;
  private final List<String> sources;
  private final double[][] sums;

  private NetLoads(Placement where, List<String> sources) {
    this.where = where;
    this.sources = sources;
    sums = new double[sources.size()][STRIDE * where.tree().size()];
  }

  /**
   * Adds up everything.
   *
   * @param where where the tree is
   * @param forces all forces besides the segments' weights
   * @param gravity the acceleration of gravity in the world, m/s2
   * @return the sums for every joint
   */
  public static NetLoads of(Placement where, List<Force> forces, Vector3D gravity) {
    Set<String> names = new LinkedHashSet<>();
    forces.forEach(force -> names.add(force.source()));
    names.remove(BODY_WEIGHT);
    names.add(BODY_WEIGHT);
    NetLoads loads = new NetLoads(where, List.copyOf(new ArrayList<>(names)));
    where.addWeights(gravity, loads.sums[loads.sources.indexOf(BODY_WEIGHT)]);
    for (Force force : forces) {
      add(loads.sums[loads.sources.indexOf(force.source())], force);
    }
    for (double[] sum : loads.sums) {
      ForceSums.gather(where.tree().flat(), sum);
    }
    return loads;
  }

  private static void add(double[] sums, Force force) {
    Vector3D at = force.point();
    Vector3D push = force.force();
    ForceSums.add(
        sums,
        force.segment(),
        at.getX(),
        at.getY(),
        at.getZ(),
        push.getX(),
        push.getY(),
        push.getZ());
    int i = STRIDE * force.segment();
    sums[i + 3] += force.moment().getX();
    sums[i + 4] += force.moment().getY();
    sums[i + 5] += force.moment().getZ();
  }

  /**
   * Where the tree is.
   *
   * @return the placement the sums were made in
   */
  public Placement where() {
    return where;
  }

  /**
   * All sources: loads and supports in the order they were given, body weight last.
   *
   * @return an unmodifiable list
   */
  public List<String> sources() {
    return sources;
  }

  /**
   * The force of one source on everything distal to a joint.
   *
   * @param source one of {@link #sources()}
   * @param distal index of the segment that hangs on the joint; the root stands for the whole tree
   * @return in the world, newtons
   */
  public Vector3D force(String source, int distal) {
    double[] sum = sums[sources.indexOf(source)];
    int i = STRIDE * distal;
    return new Vector3D(sum[i], sum[i + 1], sum[i + 2]);
  }

  /**
   * The moment of one source on everything distal to a joint.
   *
   * @param source one of {@link #sources()}
   * @param distal index of the segment that hangs on the joint; the root stands for the whole tree
   * @param about the point to take it about, in the world, metres
   * @return in the world, newton metres
   */
  public Vector3D moment(String source, int distal, Vector3D about) {
    double[] sum = sums[sources.indexOf(source)];
    int i = STRIDE * distal;
    Vector3D aboutOrigin = new Vector3D(sum[i + 3], sum[i + 4], sum[i + 5]);
    return aboutOrigin.subtract(about.crossProduct(force(source, distal)));
  }

  /**
   * The force of all sources on everything distal to a joint.
   *
   * @param distal index of the segment that hangs on the joint
   * @return in the world, newtons
   */
  public Vector3D force(int distal) {
    Vector3D sum = Vector3D.ZERO;
    for (String source : sources) {
      sum = sum.add(force(source, distal));
    }
    return sum;
  }

  /**
   * The moment of all sources on everything distal to a joint, about the joint's centre.
   *
   * @param distal index of the segment that hangs on the joint
   * @return in the world, newton metres
   */
  public Vector3D moment(int distal) {
    Vector3D sum = Vector3D.ZERO;
    for (String source : sources) {
      sum = sum.add(moment(source, distal, where.origin(distal)));
    }
    return sum;
  }
}
