package org.leverbook.strength;

import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.data.DataTable;
import org.leverbook.pose.Placement;

/**
 * The shoulder girdle: forces of both arms together with straight elbows (Garner and Shim), half of
 * them at each shoulder, on the arm that the shoulder joint has about the girdle's axis there. The
 * forces are those at the strongest place; they fall as the girdle moves the way it pulls, but by
 * how much is not printed. Rotation of the collar bone was not measured.
 *
 * <p>In those tests nothing turned the shoulder joint itself. Muscles from trunk to arm (the large
 * chest muscle, latissimus) carry what turns it past the girdle, so of the moment at the girdle
 * only the part of the force through the shoulder joint is set against these strengths
 * (assumption).
 */
final class Girdle {

  private static final Map<String, String> MEASURED =
      Map.of(
          "elevate",
          "elevation",
          "depress",
          "depression",
          "protract",
          "protraction",
          "retract",
          "retraction");

  private static final DataTable TABLE = ArmStrengths.TABLE;

  private final Who who;
  private final SegmentTree tree;

  Girdle(Who who, SegmentTree tree) {
    this.who = who;
    this.tree = tree;
  }

  Optional<ToDoubleFunction<Placement>> most(String action, Side side, int angle) {
    String measured = MEASURED.get(action);
    if (measured == null) {
      return Optional.empty();
    }
    double both =
        TABLE
            .only(
                "the girdle's " + measured,
                r ->
                    r.is("source", "GARNER2008")
                        && r.is("action", measured)
                        && r.is("sex", who.letter()))
            .number("mean");
    double each = both / 2 * who.massRatio() * who.aged() * trained(action);
    int girdle = tree.distalOf(JointId.SHOULDER_GIRDLE.on(side));
    int arm = tree.distalOf(JointId.SHOULDER.on(side));
    return Optional.of(
        where -> {
          Vector3D reach = where.origin(arm).subtract(where.origin(girdle));
          return each * reach.crossProduct(where.axis(angle)).getNorm();
        });
  }

  /** The moment that the force through the shoulder joint asks of the girdle. */
  Ability.Asked asked(int sign, Side side, int angle) {
    int girdle = tree.distalOf(JointId.SHOULDER_GIRDLE.on(side));
    int arm = tree.distalOf(JointId.SHOULDER.on(side));
    return (loads, where) -> {
      Vector3D reach = where.origin(arm).subtract(where.origin(girdle));
      return -sign * reach.crossProduct(loads.force(arm)).dotProduct(where.axis(angle));
    };
  }

  private double trained(String action) {
    return who.trained("shoulder girdle", action, 0);
  }

  Evidence evidence(String action) {
    return MEASURED.containsKey(action)
        ? new Evidence(
            "Garner and Shim 2008" + who.trainedBy("shoulder girdle", action),
            "from memory",
            "found for men and women together, split 1.6 to 1; at its strongest place")
        : Evidence.NONE;
  }
}
