package org.leverbook.figure;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.statics.JointMoment;

/**
 * A perpendicular arm as it is seen.
 *
 * <p>From the side its numbers are about the joint's own axis; from the front, where several axes
 * lie aslant, about the line of sight: what is drawn is what is told.
 *
 * @param id which joint
 * @param joint its centre, metres
 * @param foot where the perpendicular meets the line of force, metres
 * @param moment what the resistance asks of the joint
 * @param sight from where
 */
record DrawnArm(JointId id, Vector2D joint, Vector2D foot, JointMoment moment, Sight sight) {

  /** Half a millimetre: below this a drawn length and a true one are told as one. */
  private static final double SAME = 0.0005;

  /** The cosine of 45 degrees: an axis nearer to the line of sight than this is seen end-on. */
  private static final double ALONG = Math.sqrt(0.5);

  /** The drawn length, metres. */
  double length() {
    return joint.distance(foot);
  }

  /**
   * How much longer the arm is in space than it is drawn, metres; zero where the view is square.
   */
  double hidden() {
    double more = moment.arm3d() - length();
    return more > SAME ? more : 0;
  }

  /** Whether the arm that counts about the joint's own axis has another length than the drawn. */
  boolean axisOblique() {
    return !sight.fromFront() && Math.abs(moment.arm() - length()) > SAME;
  }

  /** The arm that counts, metres: about the joint's axis, or from the front as drawn. */
  double told() {
    return sight.fromFront() ? length() : moment.arm();
  }

  /** The moment about the axis the arm is told of, newton metres, zero or more. */
  double newtonMetres() {
    return sight.fromFront()
        ? Math.abs(moment.moment().dotProduct(sight.towards()))
        : moment.size();
  }

  /** What a coach calls it; from the front one side is meant. */
  String name() {
    return sight.fromFront() && id.paired() ? moment.joint().fullName() : JointNames.of(id);
  }

  /** Arm and moment. */
  String size() {
    return String.format(
        Locale.ROOT,
        "%.1f cm, %.0f N·m%s",
        100 * told(),
        newtonMetres(),
        newtonMetres() >= 0.5 && tells() ? tendsTo().map(", tends to "::concat).orElse("") : "");
  }

  /** From the side what a load usually does needs no word; from the front nothing is usual. */
  private boolean tells() {
    return sight.fromFront() || moment.signed() < 0;
  }

  /** What the moment tends to do; from the front only where a joint's axis points to the eye. */
  Optional<String> tendsTo() {
    if (!sight.fromFront()) {
      return Optional.of(moment.tendsTo());
    }
    JointMoment.Axis nearest =
        moment.axes().stream().max(Comparator.comparingDouble(this::along)).orElseThrow();
    return along(nearest) < ALONG
        ? Optional.empty()
        : Optional.of(nearest.motion().verb(moment.moment().dotProduct(nearest.direction())));
  }

  private double along(JointMoment.Axis axis) {
    return Math.abs(axis.direction().dotProduct(sight.towards()));
  }

  /** How the moment is made up. */
  String share() {
    StringBuilder share = new StringBuilder();
    for (String source : moment.parts().keySet()) {
      double from = from(source);
      if (Math.abs(from) >= 0.5) {
        share.append(share.isEmpty() ? "" : ", ");
        share.append(
            String.format(Locale.ROOT, "%s %s%.0f", source, from < 0 ? "−" : "", Math.abs(from)));
      }
    }
    return share.isEmpty() ? "" : share + " N·m";
  }

  private double from(String source) {
    if (!sight.fromFront()) {
      return moment.from(source);
    }
    double whole = moment.moment().dotProduct(sight.towards());
    double part = moment.parts().get(source).moment().dotProduct(sight.towards());
    return whole < 0 ? -part : part;
  }
}
