package org.leverbook.lift;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Force;
import org.leverbook.load.Grasps;
import org.leverbook.load.LeverMachine;
import org.leverbook.load.Load;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Placement;
import org.leverbook.support.FixedBar;

/** Machines whose lever turns about a joint of the lifter. */
final class Machines {

  /** The plates' arm, metres: common practice, no source. */
  private static final double ARM = 0.35;

  private Machines() {}

  /**
   * A lever about the knees, its plates half a right angle ahead of the shank, so that it is
   * hardest half-way.
   *
   * @param p the posture
   * @param kilograms plates
   * @param site where the roller touches
   */
  static void atKnee(Posture p, double kilograms, Site site) {
    p.lifts(new AtKnee(kilograms, site));
  }

  /**
   * Both hands hold the handles of a machine, which may be pulled and pushed any way.
   *
   * @param p the posture
   * @param forward place of the handles, metres
   * @param up their height, metres
   * @param apart between them, metres
   */
  static void handles(Posture p, double forward, double up, double apart) {
    for (Side side : p.sides()) {
      p.statements()
          .at(
              "the " + side.of("hand"),
              "its handle",
              p.place(Site.HAND, side),
              new Vector3D(forward, up, side.sign() * apart / 2));
    }
    p.on(new FixedBar());
  }

  /** A lever machine that is set so that its pivot is at the knees. */
  private record AtKnee(double kilograms, Site site) implements Load {

    private LeverMachine set(Placement where) {
      Vector3D knee = where.centre(JointId.KNEE.on(Side.RIGHT));
      return new LeverMachine(
          new Vector3D(knee.getX(), knee.getY(), 0),
          kilograms,
          ARM,
          Math.PI / 4,
          Optional.empty(),
          Grasps.at(site));
    }

    @Override
    public Load setTo(Placement where) {
      return set(where);
    }

    @Override
    public String source() {
      return "machine";
    }

    @Override
    public String description() {
      return new LeverMachine(Vector3D.ZERO, kilograms, ARM, 0, Optional.empty(), Grasps.at(site))
          .description();
    }

    @Override
    public double mass() {
      return 0;
    }

    @Override
    public Optional<Load> times(double factor) {
      return Optional.of(new AtKnee(factor * kilograms, site));
    }

    @Override
    public OptionalDouble counted() {
      return OptionalDouble.of(kilograms);
    }

    @Override
    public List<Force> forces(Placement where) {
      return set(where).forces(where);
    }

    @Override
    public List<Force> inertia(Accelerations moving) {
      return set(moving.where()).inertia(moving);
    }
  }
}
