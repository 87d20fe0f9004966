package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * The places that share one handle: the handle is midway between them, and each takes an equal part
 * of its pull.
 *
 * @param all at least one
 */
public record Grasps(List<Grasp> all) {

  /** Beyond this no pull is meant, newtons. */
  private static final double STRONGEST = 1e12;

  /** A point far away stands for a direction; beyond this none is meant, metres. */
  static final double FARTHEST = 1e12;

  /** Both hands on one handle. */
  public static final Grasps BOTH_HANDS =
      new Grasps(List.of(Grasp.at(Site.HAND, Side.RIGHT), Grasp.at(Site.HAND, Side.LEFT)));

  /**
   * Keeps its own copy of the list.
   *
   * @throws Refused if nothing holds it
   */
  public Grasps {
    if (all.isEmpty()) {
      throw new Refused("Nothing holds the handle: say which hand or cuff does.");
    }
    all = List.copyOf(all);
  }

  /**
   * One site.
   *
   * @param site which
   * @param side left or right; ignored for a site of the midline
   * @return the grasp alone
   */
  public static Grasps at(Site site, Side side) {
    return new Grasps(List.of(Grasp.at(site, side)));
  }

  /**
   * A site on both sides.
   *
   * @param site which
   * @return left and right, or the one on the midline
   */
  public static Grasps at(Site site) {
    Ask.present("site", site, "Site.HAND");
    return new Grasps(site.sides().stream().map(side -> Grasp.at(site, side)).toList());
  }

  /**
   * Where the handle is.
   *
   * @param where where the body is
   * @return the middle of the places, in the world, metres
   */
  public Vector3D handle(Placement where) {
    Vector3D sum = Vector3D.ZERO;
    for (Grasp grasp : all) {
      sum = sum.add(point(grasp, where));
    }
    return sum.scalarMultiply(1.0 / all.size());
  }

  /**
   * A pull on the handle, shared by the places.
   *
   * @param source what it comes from
   * @param where where the body is
   * @param pull in the world, newtons
   * @return one force for each place
   * @throws Refused if the pull is missing, or no amount that is meant
   */
  public List<Force> sharing(String source, Placement where, Vector3D pull) {
    List<Force> forces = new ArrayList<>();
    Ask.vector("pull on the handle", pull, STRONGEST, "N");
    Vector3D part = pull.scalarMultiply(1.0 / all.size());
    for (Grasp grasp : all) {
      int segment = grasp.on(where.tree()).segment();
      forces.add(Force.ofLoad(source, segment, point(grasp, where), part));
    }
    return forces;
  }

  /**
   * How fast the handle moves.
   *
   * @param moving how the body moves
   * @return in the world, m/s
   */
  Vector3D velocity(Accelerations moving) {
    return mean(moving, moving::velocity);
  }

  /**
   * How the handle speeds up.
   *
   * @param moving how the body moves
   * @return in the world, m/s2
   */
  Vector3D acceleration(Accelerations moving) {
    return mean(moving, moving::acceleration);
  }

  private Vector3D mean(Accelerations moving, BiFunction<Integer, Vector3D, Vector3D> of) {
    Vector3D sum = Vector3D.ZERO;
    for (Grasp grasp : all) {
      int segment = grasp.on(moving.where().tree()).segment();
      sum = sum.add(of.apply(segment, point(grasp, moving.where())));
    }
    return sum.scalarMultiply(1.0 / all.size());
  }

  /** A pull on the handle that comes from inertia, shared by the places. */
  List<Force> resisting(String source, Accelerations moving, Vector3D pull) {
    List<Force> forces = new ArrayList<>();
    for (Force force : sharing(source, moving.where(), pull)) {
      forces.add(Inertia.force(source, force.segment(), force.point(), force.force()));
    }
    return forces;
  }

  private static Vector3D point(Grasp grasp, Placement where) {
    return where.at(grasp.on(where.tree()));
  }

  @Override
  public String toString() {
    return all.stream().map(Grasp::toString).collect(Collectors.joining(" and "));
  }
}
