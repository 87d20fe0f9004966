package org.leverbook.pose;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.SegmentTree;
import org.leverbook.quantity.Refused;

/**
 * A pose and how it changes: first and second derivatives of every joint angle and of the root's
 * place and orientation.
 *
 * <p>The derivatives are with respect to time (rad/s, rad/s2, m/s, m/s2), or to whatever else runs
 * along a movement; {@link #paced} goes from the one to the other.
 */
public final class MovingPose {

  /**
   * How the root moves.
   *
   * @param velocity of its origin, in the world, m/s
   * @param acceleration of its origin, in the world, m/s2
   * @param turning its angular velocity, in the world, rad/s
   * @param turningUp its angular acceleration, in the world, rad/s2
   */
  public record Root(
      Vector3D velocity, Vector3D acceleration, Vector3D turning, Vector3D turningUp) {

    /** Neither moving nor about to. */
    public static final Root STILL =
        new Root(Vector3D.ZERO, Vector3D.ZERO, Vector3D.ZERO, Vector3D.ZERO);
  }

  private final Pose pose;
  private final double[] rates;
  private final double[] accelerations;
  private final Root root;

  private MovingPose(Pose pose, double[] rates, double[] accelerations, Root root) {
    this.pose = pose;
    this.rates = rates;
    this.accelerations = accelerations;
    this.root = root;
  }

  /**
   * A pose that moves as given.
   *
   * @param pose where everything is
   * @param rates first derivatives of the joint angles, in the tree's order, rad/s; copied
   * @param accelerations their second derivatives, rad/s2; copied
   * @param root how the root moves
   * @return the moving pose
   * @throws Refused if a number is missing or not finite
   */
  public static MovingPose of(Pose pose, double[] rates, double[] accelerations, Root root) {
    check("rates", rates, pose.tree());
    check("accelerations", accelerations, pose.tree());
    double all =
        root.velocity().getNorm1()
            + root.acceleration().getNorm1()
            + root.turning().getNorm1()
            + root.turningUp().getNorm1();
    if (!Double.isFinite(all)) {
      throw new Refused("The pelvis moves with " + all + ": give finite numbers.");
    }
    return new MovingPose(pose, rates.clone(), accelerations.clone(), root);
  }

  /**
   * A pose that keeps still.
   *
   * @param pose where everything is
   * @return the pose with all derivatives zero
   */
  public static MovingPose still(Pose pose) {
    int angles = pose.tree().angles();
    return new MovingPose(pose, new double[angles], new double[angles], Root.STILL);
  }

  private static void check(String what, double[] given, SegmentTree tree) {
    if (given.length != tree.angles()) {
      throw new Refused(
          "This body has "
              + tree.angles()
              + " joint angles, but "
              + given.length
              + " "
              + what
              + " were given.");
    }
    for (double value : given) {
      if (!Double.isFinite(value)) {
        throw new Refused(
            "Among the " + what + " of the joints is " + value + ": give a finite number.");
      }
    }
  }

  /**
   * The same path run through at another pace: with u the old variable and its first and second
   * derivative given, q' becomes q' u' and q'' becomes q'' u'² + q' u''.
   *
   * @param speed u', per second
   * @param acceleration u'', per second squared
   * @return the moving pose in the new variable
   */
  public MovingPose paced(double speed, double acceleration) {
    double[] first = new double[rates.length];
    double[] second = new double[rates.length];
    for (int i = 0; i < rates.length; i++) {
      first[i] = rates[i] * speed;
      second[i] = accelerations[i] * speed * speed + rates[i] * acceleration;
    }
    Root changed =
        new Root(
            root.velocity.scalarMultiply(speed),
            new Vector3D(speed * speed, root.acceleration, acceleration, root.velocity),
            root.turning.scalarMultiply(speed),
            new Vector3D(speed * speed, root.turningUp, acceleration, root.turning));
    return new MovingPose(pose, first, second, changed);
  }

  /**
   * Where everything is.
   *
   * @return the pose
   */
  public Pose pose() {
    return pose;
  }

  /**
   * How fast one joint angle changes.
   *
   * @param angle its place in the tree's order
   * @return rad/s
   */
  public double rate(int angle) {
    return rates[angle];
  }

  /**
   * How fast the rate of one joint angle changes.
   *
   * @param angle its place in the tree's order
   * @return rad/s2
   */
  public double acceleration(int angle) {
    return accelerations[angle];
  }

  /**
   * How the root moves.
   *
   * @return its derivatives
   */
  public Root root() {
    return root;
  }

  /**
   * What that does to every segment.
   *
   * @return velocities and accelerations in the world
   */
  public Accelerations accelerations() {
    return Accelerations.of(this);
  }
}
