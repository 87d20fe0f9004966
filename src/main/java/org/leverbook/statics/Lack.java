package org.leverbook.statics;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.load.Force;
import org.leverbook.pose.Placement;
import org.leverbook.support.Contact;

/**
 * Says why supports cannot hold: slips where more friction would do, and how much more; otherwise
 * what turning or force is lacking.
 *
 * <p>The needed friction is the least coefficient m such that the position could be held if every
 * contact had at least m; found by halving an interval, as what can be held with m can be held with
 * more. What is lacking besides friction is the smallest moment (and, only where moments do not
 * help, force) that would have to be added.
 */
final class Lack {

  /**
   * Rougher than any sole or cushion: what slips even so does not lack friction. Common practice,
   * no source.
   */
  private static final double ROUGHEST = 2;

  private static final int HALVINGS = 45;

  /** Forces count so much more than moments over a metre when the smallest lack is sought. */
  private static final double FORCES_FIRST = 1e3;

  /** A push that is shared out is there in full, whatever is lacking elsewhere. */
  private static final double PUSHES_FIRST = 1e5;

  private static final double NOTHING = 1e-6;

  private final Placement where;
  private final List<ContactProblem.Touch> touches;
  private final List<ContactProblem.Press> presses;
  private final double unit;
  private final Vector3D force;
  private final Vector3D moment;
  private final int sides;

  Lack(
      Placement where,
      List<ContactProblem.Touch> touches,
      List<ContactProblem.Press> presses,
      double unit,
      Vector3D force,
      Vector3D moment,
      int sides) {
    this.where = where;
    this.touches = touches;
    this.presses = presses;
    this.unit = unit;
    this.force = force;
    this.moment = moment;
    this.sides = sides;
  }

  Holding told() {
    return with(ROUGHEST).possible().held() ? slips() : lacks();
  }

  private ContactProblem with(double friction) {
    List<ContactProblem.Touch> rougher = new ArrayList<>();
    for (ContactProblem.Touch touch : touches) {
      Contact c = touch.contact();
      rougher.add(
          new ContactProblem.Touch(
              touch.source(),
              touch.leanedOn(),
              new Contact(
                  c.name(),
                  c.segment(),
                  c.point(),
                  c.normal(),
                  Math.max(friction, c.friction()),
                  c.grips())));
    }
    return new ContactProblem(rougher, presses, unit, force, moment, sides, where.frame(0));
  }

  private Holding slips() {
    double low = 0;
    double high = ROUGHEST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (with(middle).possible().held()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    ContactProblem enough = with(high);
    List<Force> forces = enough.forces(enough.possible().x(), where);
    Set<String> places = new LinkedHashSet<>();
    String source = "";
    double given = 0;
    for (ContactProblem.Touch touch : touches) {
      Contact contact = touch.contact();
      if (contact.grips() || contact.friction() >= high) {
        continue;
      }
      for (Force one : forces) {
        if (one.point().equals(contact.point()) && one.segment() == contact.segment()) {
          double push = one.force().dotProduct(contact.normal());
          Vector3D side = one.force().subtract(contact.normal().scalarMultiply(push));
          if (side.getNorm() > contact.friction() * push * (1 + NOTHING)) {
            places.add(part(contact));
            source = touch.source();
            given = contact.friction();
          }
        }
      }
    }
    String sentence =
        String.format(
            Locale.ROOT,
            "Slips at the %s: needs friction %.2f, the %s gives %.2f.",
            joined(places),
            high,
            source,
            given);
    return new Holding(Holding.Verdict.SLIPS, sentence, Vector3D.ZERO, Vector3D.ZERO, high);
  }

  private String part(Contact contact) {
    return Reaction.part(where.tree(), contact.segment());
  }

  private static String joined(Set<String> places) {
    if (places.contains("right foot") && places.contains("left foot") && places.size() == 2) {
      return "feet";
    }
    return String.join(" and the ", places);
  }

  private Holding lacks() {
    ContactProblem problem = with(0);
    double[][] columns = problem.columns().clone();
    double[] target = weighed(problem.target());
    for (int j = 0; j < columns.length; j++) {
      columns[j] = weighed(columns[j]);
    }
    double[] rest = NonNegative.of(columns, target).remainder();
    Vector3D lackingForce =
        new Vector3D(rest[0], rest[1], rest[2]).scalarMultiply(unit / FORCES_FIRST);
    Vector3D lackingMoment = new Vector3D(rest[3], rest[4], rest[5]).scalarMultiply(unit);
    // Below a thousandth of the weight the force is what the weighing has left.
    if (lackingForce.getNorm() > 1e-3 * unit) {
      return new Holding(
          Holding.Verdict.NOT_HELD, pushed(lackingForce), lackingForce, lackingMoment, 0);
    }
    return new Holding(
        Holding.Verdict.TIPS, turned(lackingMoment), Vector3D.ZERO, lackingMoment, 0);
  }

  private static double[] weighed(double[] wrench) {
    double[] all = wrench.clone();
    for (int r = 0; r < 3; r++) {
      all[r] *= FORCES_FIRST;
    }
    for (int r = 6; r < all.length; r++) {
      all[r] *= PUSHES_FIRST;
    }
    return all;
  }

  private static String pushed(Vector3D force) {
    double[] parts = {force.getX(), force.getY(), force.getZ()};
    String[][] words = {
      {"forward", "backward"}, {"upward", "downward"}, {"to the right", "to the left"}
    };
    int most = largest(parts);
    return String.format(
        Locale.ROOT,
        "Cannot be held: nothing gives the %.0f N %s that are lacking. Add a support or a grip that"
            + " does, or take the pull away.",
        Math.abs(parts[most]),
        words[most][parts[most] > 0 ? 0 : 1]);
  }

  private static String turned(Vector3D moment) {
    double[] parts = {moment.getX(), moment.getY(), moment.getZ()};
    String[] axes = {"front–back", "vertical", "left–right"};
    String[][] ways = {
      {"tips to the left", "tips to the right"},
      {"turns to the right", "turns to the left"},
      {"tips forward", "tips backward"}
    };
    int most = largest(parts);
    return String.format(
        Locale.ROOT,
        "Cannot be held: %.0f N·m are lacking about the %s axis, so the lifter %s. Move the load"
            + " nearer to what carries the lifter, or the supports further apart.",
        Math.abs(parts[most]),
        axes[most],
        ways[most][parts[most] > 0 ? 0 : 1]);
  }

  private static int largest(double[] parts) {
    int most = 0;
    for (int i = 1; i < parts.length; i++) {
      most = Math.abs(parts[i]) > Math.abs(parts[most]) ? i : most;
    }
    return most;
  }
}
