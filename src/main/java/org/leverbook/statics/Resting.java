package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;
import org.leverbook.support.Contact;
import org.leverbook.support.Floor;
import org.leverbook.support.Support;

/**
 * What the supports of a setting give.
 *
 * @param forces loads first, then supports
 * @param holding whether they hold
 * @param balance on the floor; null where nobody stands on it
 */
record Resting(List<Force> forces, Holding holding, Balance balance) {

  static Resting of(Setting setting, Placement where) {
    List<Force> forces = new ArrayList<>();
    setting.loads().forEach(load -> forces.addAll(load.forces(where)));
    NetLoads known = NetLoads.of(where, forces, Gravity.VECTOR);
    Vector3D force = known.force(0);
    Vector3D moment = Vector3D.ZERO;
    for (String source : known.sources()) {
      moment = moment.add(known.moment(source, 0, Vector3D.ZERO));
    }
    if (setting.supports().size() != 1 || !(setting.supports().get(0) instanceof Floor)) {
      throw new Refused("Only the floor is computed so far.");
    }
    Support floor = setting.supports().get(0);
    List<Contact> contacts = floor.contacts(where);
    Vector3D pressure =
        new Vector3D(moment.getZ() / force.getY(), 0, -moment.getX() / force.getY());
    double[] foot = footSpan(setting.body(), where);
    Balance balance = Balance.of(contacts, pressure, foot[0], foot[1]);
    if (!balance.held()) {
      return new Resting(
          forces,
          new Holding(
              Holding.Verdict.TIPS, tips(balance, contacts), Vector3D.ZERO, Vector3D.ZERO, 0),
          balance);
    }
    forces.addAll(Reactions.levelFloor(floor.source(), contacts, force, moment));
    return new Resting(List.copyOf(forces), Holding.FIRM, balance);
  }

  /** Back of the heels and toe tips, forward places averaged over both feet. */
  private static double[] footSpan(Body body, Placement where) {
    double heel = 0;
    double toe = 0;
    double length = body.links().footLength();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Body.SolePoint tip =
          body.soles().stream()
              .filter(p -> p.name().equals(side.of("toe tip")))
              .findFirst()
              .orElseThrow();
      Vector3D point = where.toWorld(tip.segment(), tip.place());
      toe += point.getX() / 2;
      Vector3D forward = where.frame(where.tree().indexOf(side.of("foot"))).x();
      heel += (point.getX() - length * forward.getX()) / 2;
    }
    return new double[] {heel, toe};
  }

  private static String tips(Balance balance, List<Contact> contacts) {
    double x = balance.centreOfPressure().getX();
    double front = contacts.stream().mapToDouble(c -> c.point().getX()).max().orElseThrow();
    double back = contacts.stream().mapToDouble(c -> c.point().getX()).min().orElseThrow();
    if (x > front) {
      return String.format(
          Locale.ROOT,
          "Tips forward: the weight of lifter and load together falls %.1f cm ahead of the toes."
              + " Bring the load or the hips back.",
          100 * (x - front));
    }
    if (x < back) {
      return String.format(
          Locale.ROOT,
          "Tips backward: the weight of lifter and load together falls %.1f cm behind the heels'"
              + " support. Bring the load or the shoulders forward.",
          100 * (back - x));
    }
    return String.format(
        Locale.ROOT,
        "Tips sideways: the weight of lifter and load together falls %.1f cm outside the feet."
            + " Widen the stance or centre the load.",
        100 * -balance.margin());
  }
}
