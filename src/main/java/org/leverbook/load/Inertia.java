package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Placement;

/**
 * What moving masses set against their acceleration at one instant, as forces on the body: with
 * them the sums of a moving body are those of a still one (d'Alembert's principle).
 *
 * <p>They have sources of their own, so that a table tells what is weight and what is movement.
 *
 * @param source as in "body inertia" or "bar inertia"
 * @param fixed the forces at this instant
 */
public record Inertia(String source, List<Force> fixed) implements Load {

  private static final String SUFFIX = " inertia";

  /** Keeps its own copy of the list. */
  public Inertia {
    fixed = List.copyOf(fixed);
  }

  /**
   * The inertia of all segments.
   *
   * @param moving how they move
   * @return a force at each centre of mass, with the moment that a spread mass sets against turning
   */
  public static Inertia ofBody(Accelerations moving) {
    List<Force> forces = new ArrayList<>();
    Placement where = moving.where();
    for (int i = 0; i < where.tree().size(); i++) {
      if (where.tree().segment(i).mass() > 0) {
        forces.add(
            new Force(
                "body" + SUFFIX,
                Force.Kind.INERTIA,
                i,
                where.centreOfMass(i),
                moving.inertiaForce(i),
                moving.inertiaMoment(i)));
      }
    }
    return new Inertia("body" + SUFFIX, forces);
  }

  /**
   * The inertia of a load.
   *
   * @param load which
   * @param moving how the body moves it
   * @return its forces; none where it has no mass
   */
  public static Inertia of(Load load, Accelerations moving) {
    return new Inertia(load.source() + SUFFIX, load.inertia(moving));
  }

  /**
   * One force of a load that is moved.
   *
   * @param load the load's source, as in "bar"
   * @param segment index of the segment it acts on
   * @param point where, in the world, metres
   * @param force -m a, in the world, newtons
   * @return the force
   */
  public static Force force(String load, int segment, Vector3D point, Vector3D force) {
    return new Force(load + SUFFIX, Force.Kind.INERTIA, segment, point, force, Vector3D.ZERO);
  }

  /**
   * The inertia of a load whose push is shared out.
   *
   * @param load the load's source, as in "sled"
   * @param newtons along the way of its push
   * @return the part
   */
  static SharedPush.Part part(String load, double newtons) {
    return new SharedPush.Part(load + SUFFIX, Force.Kind.INERTIA, newtons);
  }

  @Override
  public String law() {
    return "Masses times their acceleration at this instant, turned round "
        + "(d'Alembert's principle).";
  }

  @Override
  public String description() {
    return source + " at this instant";
  }

  /** No mass besides that of the body and the loads it comes from. */
  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    return fixed;
  }

  /** Inertia has none of its own. */
  @Override
  public List<Force> inertia(Accelerations moving) {
    return List.of();
  }
}
