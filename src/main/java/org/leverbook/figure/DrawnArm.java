package org.leverbook.figure;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.statics.JointMoment;

/**
 * A perpendicular arm as it is seen.
 *
 * <p>From the side its numbers are about the joint's own axis; from front and back, where several
 * axes lie aslant, about the line of sight: what is drawn is what is told. From elsewhere the arm
 * is told as it is in space, the moment as the whole of it, about no axis in particular.
 *
 * @param id which joint
 * @param joint its centre, metres
 * @param foot where the perpendicular meets the line of force, metres
 * @param moment what the resistance asks of the joint
 * @param line the line of force it runs to: that of the load, or of the joint's part of it
 * @param turn how the resistance tends to turn the part on the load's side of the joint, about the
 *     line of sight, newton metres, counter-clockwise positive
 * @param sight from where
 */
record DrawnArm(
    JointId id,
    Vector2D joint,
    Vector2D foot,
    JointMoment moment,
    ForceLine line,
    double turn,
    Sight sight) {

  /** Two lines of force nearer to each other than this are drawn as one, metres. */
  private static final double APART = 0.015;

  /** A view that hides less than this of an arm needs no second number, metres. */
  private static final double TOLD = 0.005;

  /** An arm that is drawn shorter than this share of its length points at the reader. */
  private static final double POINT = 0.1;

  /** A turning about an axis that lies in the page, or none at all, has no arc. */
  private static final double TURNS = 0.1;

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
    return sight.fromSide() && Math.abs(moment.arm() - length()) > SAME;
  }

  /** The arm that is told, metres: about the joint's axis, from the front as drawn, or in space. */
  double told() {
    if (sight.frontal()) {
      return length();
    }
    return sight.fromSide() ? moment.arm() : moment.arm3d();
  }

  /** Whether it is seen as little more than a point although it is an arm. */
  boolean pointsAtReader() {
    return moment.arm3d() > 0.02 && length() < POINT * moment.arm3d();
  }

  /** Whether the joint's part of the load acts along another line than the whole, as in a hand. */
  boolean onLineOfItsOwn(ForceLine whole) {
    return whole.foot(line.place()).distance(line.place()) > APART;
  }

  /** Whether an arc shows which way the resistance tends to turn. */
  boolean turns() {
    return Math.abs(turn) >= 0.5 && Math.abs(turn) >= TURNS * moment.moment().getNorm();
  }

  /** A second number where the view does not show the arm that is told, or not all of it. */
  private String besides() {
    if (sight.frontal()) {
      return hidden() > TOLD
          ? String.format(Locale.ROOT, " (in space %.1f)", 100 * moment.arm3d())
          : "";
    }
    return Math.abs(told() - length()) > TOLD
        ? String.format(Locale.ROOT, " (drawn %.1f)", 100 * length())
        : "";
  }

  /** The moment about the axis the arm is told of, newton metres, zero or more. */
  double newtonMetres() {
    return sight.fromSide() ? moment.size() : Math.abs(moment.moment().dotProduct(about()));
  }

  /**
   * What the moment is told about where that is not the joint's own axis: the line of sight, or
   * from elsewhere the moment's own axis, so that its whole size in space is told.
   */
  private Vector3D about() {
    boolean space = !sight.frontal() && moment.moment().getNorm() > 0;
    return space ? moment.moment().normalize() : sight.towards();
  }

  /** What a coach calls it; from elsewhere than the side one side is meant. */
  String name() {
    return !sight.fromSide() && id.paired() ? moment.joint().fullName() : JointNames.of(id);
  }

  /** Arm and moment. */
  String size() {
    return String.format(
        Locale.ROOT,
        "%.1f cm%s, %.0f N·m%s",
        100 * told(),
        besides(),
        newtonMetres(),
        newtonMetres() >= 0.5 && tells() ? tendsTo().map(", tends to "::concat).orElse("") : "");
  }

  /** From the side what a load usually does needs no word; from the front nothing is usual. */
  private boolean tells() {
    return !sight.fromSide() || moment.signed() < 0;
  }

  /**
   * What the moment tends to do; from elsewhere than the side only where it is told about nearly a
   * joint's own axis.
   */
  Optional<String> tendsTo() {
    if (sight.fromSide()) {
      return Optional.of(moment.tendsTo());
    }
    JointMoment.Axis nearest =
        moment.axes().stream().max(Comparator.comparingDouble(this::along)).orElseThrow();
    return along(nearest) < ALONG
        ? Optional.empty()
        : Optional.of(nearest.motion().verb(moment.moment().dotProduct(nearest.direction())));
  }

  private double along(JointMoment.Axis axis) {
    return Math.abs(axis.direction().dotProduct(about()));
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
    if (sight.fromSide()) {
      return moment.from(source);
    }
    double whole = moment.moment().dotProduct(about());
    double part = moment.parts().get(source).moment().dotProduct(about());
    return whole < 0 ? -part : part;
  }
}
