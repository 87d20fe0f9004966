package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.SegmentTree;
import org.leverbook.load.Force;
import org.leverbook.load.SharedPush;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.support.Contact;

/**
 * The unknown reactions as numbers: x ≥ 0 along the edges of each contact's friction pyramid, in
 * body weights.
 *
 * <p>A contact that pushes with N and holds sideways with at most μN is replaced by a pyramid
 * inside that cone: four edges n ± μt (eight on request; four lose up to 29 % of the friction on
 * the diagonal, eight 8 %). A grip takes six edges, two along each axis. Column j of W is the
 * wrench of edge j about the middle of all contacts; W x = b balances weights and loads. A push
 * that the body shares out has a column for each of its places and a row of its own, by which they
 * add up to the push.
 */
final class ContactProblem {

  /** One contact and whose it is. */
  record Touch(String source, boolean leanedOn, Contact contact) {}

  /** A push of known size, and the places among which it is shared out. */
  record Press(SharedPush push, List<Touch> places) {

    static Press of(SharedPush push, Placement where) {
      String source = push.parts().get(0).source();
      return new Press(
          push,
          push.places().stream()
              .map(p -> Contact.smooth(p.name(), p.segment(), where.at(p), push.way()))
              .map(contact -> new Touch(source, false, contact))
              .toList());
    }
  }

  /**
   * Weight of the pushes' own squares beside the efforts: a push of a body weight counts as an
   * effort of 17 %. It makes the answer unique and even, and keeps a lifter from wedging himself
   * between two supports with several body weights only to ease a hip: without it the thighs under
   * the pad of a pulldown of 40 kg would press with 3 kN each. Assumption, no source.
   */
  private static final double LITTLE = 3e-2;

  /** Forces and moments along three axes. */
  private static final int ROWS = 6;

  private final List<Touch> touches;
  private final List<Press> presses;
  private final double unit;
  private final Vector3D middle;
  private final List<Vector3D> edges = new ArrayList<>();
  private final List<Touch> owners = new ArrayList<>();
  private final double[][] columns;
  private final double[] target;

  /**
   * Lays the problem out.
   *
   * @param touches all contacts
   * @param presses what is shared out
   * @param unit what one unit of x is, newtons
   * @param force sum of all known forces on the body, newtons
   * @param moment sum of their moments about the world's origin, newton metres
   * @param sides edges of a friction pyramid
   * @param person the pelvis's axes in the world, by which the pyramids are laid out
   */
  ContactProblem(
      List<Touch> touches,
      List<Press> presses,
      double unit,
      Vector3D force,
      Vector3D moment,
      int sides,
      Frame person) {
    this.touches = List.copyOf(touches);
    this.presses = List.copyOf(presses);
    this.unit = unit;
    Vector3D sum = Vector3D.ZERO;
    for (Touch touch : touches) {
      sum = sum.add(touch.contact().point());
      for (Vector3D edge : edges(touch.contact(), sides, person)) {
        edges.add(edge);
        owners.add(touch);
      }
    }
    for (Press press : presses) {
      for (Touch place : press.places()) {
        edges.add(press.push().way());
        owners.add(place);
      }
    }
    middle = touches.isEmpty() ? sum : sum.scalarMultiply(1.0 / touches.size());
    columns = new double[edges.size()][];
    for (int j = 0; j < columns.length; j++) {
      Vector3D arm = owners.get(j).contact().point().subtract(middle);
      columns[j] = wrench(edges.get(j), arm.crossProduct(edges.get(j)));
      for (int k = 0; k < presses.size(); k++) {
        columns[j][ROWS + k] = presses.get(k).places().contains(owners.get(j)) ? 1 : 0;
      }
    }
    Vector3D about = moment.subtract(middle.crossProduct(force));
    target = wrench(force.scalarMultiply(-1 / unit), about.scalarMultiply(-1 / unit));
    for (int k = 0; k < presses.size(); k++) {
      target[ROWS + k] = presses.get(k).push().newtons() / unit;
    }
  }

  private double[] wrench(Vector3D force, Vector3D moment) {
    double[] all = new double[ROWS + presses.size()];
    System.arraycopy(force.toArray(), 0, all, 0, 3);
    System.arraycopy(moment.toArray(), 0, all, 3, 3);
    return all;
  }

  private static List<Vector3D> edges(Contact contact, int sides, Frame person) {
    if (contact.grips()) {
      return List.of(
          Vector3D.PLUS_I,
          Vector3D.MINUS_I,
          Vector3D.PLUS_J,
          Vector3D.MINUS_J,
          Vector3D.PLUS_K,
          Vector3D.MINUS_K);
    }
    Vector3D normal = contact.normal();
    if (contact.friction() == 0) {
      return List.of(normal);
    }
    // Across the person where that is along the pad, so that left and right are treated alike and
    // turning person and supports together changes nothing.
    Vector3D side = Math.abs(normal.dotProduct(person.z())) < 0.9 ? person.z() : person.x();
    Vector3D across = side.subtract(normal.scalarMultiply(side.dotProduct(normal))).normalize();
    Vector3D along = across.crossProduct(normal);
    List<Vector3D> all = new ArrayList<>();
    for (int k = 0; k < sides; k++) {
      double angle = 2 * Math.PI * k / sides;
      double size = contact.friction();
      all.add(
          new Vector3D(1, normal, size * Math.cos(angle), along, size * Math.sin(angle), across));
    }
    return all;
  }

  double[][] columns() {
    return columns;
  }

  double[] target() {
    return target;
  }

  Vector3D middle() {
    return middle;
  }

  List<Touch> touches() {
    return touches;
  }

  /** An answer of the problem without pads, among all edges; those of pads are zero. */
  double[] spread(double[] withoutPads) {
    double[] all = new double[columns.length];
    int next = 0;
    for (int j = 0; j < all.length; j++) {
      all[j] = owners.get(j).leanedOn() ? 0 : withoutPads[next++];
    }
    return all;
  }

  /** Whether pushes, grips and friction can balance at all, and how. */
  NonNegative.Answer possible() {
    return NonNegative.of(columns, target);
  }

  /**
   * The reactions of least effort.
   *
   * @param start any that balance
   * @param where where the body is
   * @param known weights and loads
   * @param avoid extra cost of a push of a body weight by what is leaned on; zero to relax
   */
  double[] leastEffort(double[] start, Placement where, NetLoads known, double avoid) {
    int n = columns.length;
    double[][] h = new double[n][n];
    double[] g = new double[n];
    for (int j = 0; j < n; j++) {
      h[j][j] = LITTLE + (owners.get(j).leanedOn() ? avoid : 0);
    }
    SegmentTree tree = where.tree();
    double[] costs = Capacities.costs(tree);
    int[] distal = new int[n];
    double[] row = new double[n];
    for (int i = 1; i < tree.size(); i++) {
      int count = 0;
      for (int j = 0; j < n; j++) {
        if (tree.hangsOn(owners.get(j).contact().segment(), i)) {
          distal[count++] = j;
        }
      }
      if (count == 0) {
        continue;
      }
      Vector3D centre = where.origin(i);
      Vector3D moment = known.moment(i);
      for (int a = tree.firstAngle(i); a < tree.firstAngle(i + 1); a++) {
        if (costs[a] == 0) {
          continue;
        }
        Vector3D axis = where.axis(a);
        double own = costs[a] * moment.dotProduct(axis);
        for (int k = 0; k < count; k++) {
          int j = distal[k];
          Vector3D arm = owners.get(j).contact().point().subtract(centre);
          row[k] = costs[a] * unit * arm.crossProduct(edges.get(j)).dotProduct(axis);
        }
        add(h, g, distal, row, count, own);
      }
    }
    return LeastEffort.of(h, g, columns, target, start);
  }

  private static void add(
      double[][] h, double[] g, int[] distal, double[] row, int count, double own) {
    for (int k = 0; k < count; k++) {
      g[distal[k]] -= row[k] * own;
      double[] line = h[distal[k]];
      for (int m = 0; m < count; m++) {
        line[distal[m]] += row[k] * row[m];
      }
    }
  }

  /**
   * The forces that belong to x: pushes shared out first, then one for each contact that does
   * anything.
   */
  List<Force> forces(double[] x, Placement where) {
    List<Force> forces = new ArrayList<>();
    int next = x.length - presses.stream().mapToInt(p -> p.places().size()).sum();
    for (Press press : presses) {
      double[] shares = new double[press.places().size()];
      double all = press.push().newtons() / unit;
      for (int k = 0; k < shares.length; k++) {
        shares[k] = all > 0 ? x[next + k] / all : 0;
      }
      next += shares.length;
      forces.addAll(press.push().forces(where, shares));
    }
    int j = 0;
    for (Touch touch : touches) {
      Vector3D sum = Vector3D.ZERO;
      for (; j < x.length && owners.get(j) == touch; j++) {
        sum = sum.add(edges.get(j).scalarMultiply(unit * x[j]));
      }
      if (sum.getNorm() > 0) {
        Contact contact = touch.contact();
        forces.add(Force.ofSupport(touch.source(), contact.segment(), contact.point(), sum));
      }
    }
    return forces;
  }
}
