package org.leverbook.lift;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Links;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Limbs;
import org.leverbook.pose.Pose;
import org.leverbook.pose.Ranges;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * Finds the pose of a hinge.
 *
 * <p>Shoulders ahead of the bar by d and straight arms give the shoulder; a trunk bent by f has a
 * known line from hip to shoulder; one thing the coach says (hip height, knee bend, trunk lean)
 * then gives the hip, and the legs close the figure. So d and f are the only free numbers. f is
 * zero unless the hips would leave their published range, and then the least that keeps it. d is a
 * wish: within its range the value that brings the balance nearest to the middle of the foot.
 */
final class HingeSolver {

  /**
   * Bar mass, in body masses, at which the shoulders stand straight over the bar: about the
   * heaviest lifts there are. Common practice, no source.
   */
  private static final double STRAIGHT_OVER = 4;

  private static final double ANGLE_ACCURACY = 1e-12;
  private static final int MOST_STEPS = 200;

  private final Hinge hinge;
  private final Body body;
  private final Links links;

  HingeSolver(Hinge hinge) {
    this.hinge = hinge;
    this.body = hinge.body();
    this.links = body.links();
  }

  /** A pose with the two free numbers that led to it. */
  private record Found(Pose pose, double ahead, double bend) {}

  Position start() {
    Found found;
    try {
      found = balanced();
      List<String> exceeded = Ranges.exceeded(found.pose());
      if (!exceeded.isEmpty()) {
        throw new Refused("Here " + String.join("; ", exceeded) + ".");
      }
    } catch (Refused e) {
      throw new Refused(e.getMessage() + " " + advice(), e);
    }
    HingeReport report =
        new HingeReport(
            hinge,
            found.pose(),
            found.ahead(),
            largestAhead(),
            found.bend(),
            offMiddle(found.pose()));
    List<org.leverbook.load.Load> loads = hinge.bar().mass() > 0 ? List.of(hinge.bar()) : List.of();
    return Position.standing(
        "hinge, start", body, found.pose(), loads, report.facts(), report.notes());
  }

  /**
   * The pose whose balance is nearest to the middle of the foot, within the wish for the shoulders.
   */
  private Found balanced() {
    double most = largestAhead();
    Found front = at(most);
    if (offMiddle(front.pose()) <= 0 || most == 0) {
      return front;
    }
    Optional<Found> over = attempt(0);
    if (over.isEmpty()) {
      return front;
    }
    if (offMiddle(over.get().pose()) >= 0) {
      return over.get();
    }
    return at(root(ahead -> offMiddle(at(ahead).pose()), 0, most));
  }

  private Optional<Found> attempt(double ahead) {
    try {
      return Optional.of(at(ahead));
    } catch (Refused e) {
      return Optional.empty();
    }
  }

  /**
   * The wish for the shoulders: up to a hand's breadth ahead of the bar, less the heavier the bar
   * is.
   */
  private double largestAhead() {
    double heavy = hinge.bar().mass() / (STRAIGHT_OVER * body.tree().mass());
    return HingeReport.handBreadth(body.person()) * Math.max(0, 1 - heavy);
  }

  /** How far the common centre of lifter and bar is ahead of the middle of the foot, metres. */
  private double offMiddle(Pose pose) {
    double person = body.tree().mass();
    double bar = hinge.bar().mass();
    return (person * pose.placed().centreOfMass().getX() + bar * hinge.barForward())
        / (person + bar);
  }

  private Found at(double ahead) {
    Pose straight = pose(ahead, 0);
    double range = hipRange();
    if (hipFlexion(straight) <= range) {
      return new Found(holding(straight), ahead, 0);
    }
    double most = Body.largestTrunkFlexion();
    double left = hipFlexion(pose(ahead, most)) - range;
    if (left > 0) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The hips would have to flex by %.0f° with the spine already bent as far as it goes (%.0f°), but their"
                  + " published range ends at %.0f°.",
              Math.toDegrees(left + range),
              Math.toDegrees(most),
              Math.toDegrees(range)));
    }
    double bend = root(f -> hipFlexion(pose(ahead, f)) - range, 0, most);
    return new Found(holding(pose(ahead, bend)), ahead, bend);
  }

  private double hipRange() {
    int hip = body.tree().distalOf(JointId.HIP.on(Side.RIGHT));
    return body.tree().segment(hip).joint().freedom("flexion").orElseThrow().high();
  }

  private static double hipFlexion(Pose pose) {
    return pose.angle(JointId.HIP, Side.RIGHT, "flexion");
  }

  /** Pelvis, spine and legs in place; the arms still hang by the trunk. */
  private Pose pose(double ahead, double bend) {
    Pose bent = bent(bend);
    Vector3D trunk = trunk(bent);
    Vector3D shoulder = shoulder(ahead);
    Vector3D hip = hip(trunk, shoulder);
    Vector3D line = shoulder.subtract(hip);
    double lean = Math.atan2(line.getX(), line.getY()) - Math.atan2(trunk.getX(), trunk.getY());
    Pose placed = bent.rootAt(hip, Frame.leanedForward(lean));
    return hinge.feet().under(placed, body);
  }

  /** Lets both arms hang straight to the bar. */
  private Pose holding(Pose standing) {
    Pose holding = standing;
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D grip =
          new Vector3D(hinge.barForward(), hinge.barHeight(), side.sign() * hinge.gripHalfWidth());
      holding = Limbs.hang(holding, body, side, grip);
    }
    return holding;
  }

  /** The spine bent forward by an angle shared over its levels, everything else neutral. */
  private Pose bent(double bend) {
    double[] angles = new double[body.tree().angles()];
    for (JointId level : JointId.spine()) {
      double share = Body.flexionShare(level);
      if (share > 0) {
        angles[body.tree().angleOf(level.word(), "flexion")] = share * bend;
      }
    }
    return Pose.of(body.tree(), angles, Vector3D.ZERO, Frame.WORLD);
  }

  /** From the middle of the hips to the middle of the shoulders, in the pelvis frame. */
  private static Vector3D trunk(Pose bent) {
    Vector3D right = bent.placed().centre(JointId.SHOULDER.on(Side.RIGHT));
    return new Vector3D(right.getX(), right.getY(), 0);
  }

  /** The middle of the shoulders in the world: one arm's length from the bar. */
  private Vector3D shoulder(double ahead) {
    double outward = hinge.gripHalfWidth() - links.shoulderHalfWidth();
    double reach = links.reach();
    double up = reach * reach - outward * outward - ahead * ahead;
    if (up <= 0) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A grip of %.0f cm is wider than these arms (%.0f cm from shoulder to grip) can take. Grip narrower.",
              200 * hinge.gripHalfWidth(),
              100 * reach));
    }
    return new Vector3D(hinge.barForward() + ahead, hinge.barHeight() + Math.sqrt(up), 0);
  }

  private Vector3D hip(Vector3D trunk, Vector3D shoulder) {
    double length = trunk.getNorm();
    return switch (hinge.given()) {
      case HIP_HEIGHT -> hipAt(hinge.value(), length, shoulder);
      case TRUNK_LEAN ->
          shoulder.subtract(
              new Vector3D(length * Math.sin(hinge.value()), length * Math.cos(hinge.value()), 0));
      case KNEE_BEND -> hipForKnee(length, shoulder);
    };
  }

  /** The hip at a height, behind the shoulder by what the trunk's length leaves. */
  private Vector3D hipAt(double height, double trunk, Vector3D shoulder) {
    double rise = shoulder.getY() - height;
    if (Math.abs(rise) > trunk) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "With straight arms the shoulders are %.1f cm above the floor, but from hips at %.1f cm the trunk"
                  + " reaches only to %.1f cm: the hands stop %.1f cm %s the bar.",
              100 * shoulder.getY(),
              100 * height,
              100 * (height + Math.signum(rise) * trunk),
              100 * (Math.abs(rise) - trunk),
              rise > 0 ? "below" : "above"));
    }
    double back = Math.sqrt(trunk * trunk - rise * rise);
    return new Vector3D(shoulder.getX() - back, height, 0);
  }

  private Vector3D hipForKnee(double trunk, Vector3D shoulder) {
    double wanted =
        Math.sqrt(
            links.thigh() * links.thigh()
                + links.shank() * links.shank()
                + 2 * links.thigh() * links.shank() * Math.cos(hinge.value()));
    UnivariateFunction tooFar = h -> legDistance(hipAt(h, trunk, shoulder)) - wanted;
    double low = Math.max(links.footHeight(), shoulder.getY() - trunk);
    double high = Math.min(hinge.feet().standingHipHeight(body), shoulder.getY() + trunk);
    if (low >= high || tooFar.value(low) > 0 || tooFar.value(high) < 0) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "No hip height gives a knee bend of %.0f° with the bar at %.1f cm.",
              Math.toDegrees(hinge.value()),
              100 * hinge.barHeight()));
    }
    return hipAt(root(tooFar, low, high), trunk, shoulder);
  }

  private double legDistance(Vector3D midHip) {
    Vector3D hip = midHip.add(new Vector3D(0, 0, links.hipHalfWidth()));
    return hinge.feet().ankle(body, Side.RIGHT).subtract(hip).getNorm();
  }

  private static double root(UnivariateFunction function, double low, double high) {
    return new BracketingNthOrderBrentSolver(ANGLE_ACCURACY, 5)
        .solve(MOST_STEPS, function, low, high);
  }

  /** The range of hip heights that can be set up with everything else as it is. */
  private String advice() {
    double low = links.footHeight() + links.shank();
    double high = hinge.feet().standingHipHeight(body);
    double first = Double.NaN;
    double last = Double.NaN;
    int steps = 40;
    for (int i = 0; i <= steps; i++) {
      double height = low + (high - low) * i / steps;
      if (new HingeSolver(hinge.said(Hinge.Given.HIP_HEIGHT, height)).possible()) {
        first = Double.isNaN(first) ? height : first;
        last = height;
      }
    }
    if (Double.isNaN(first)) {
      return "No hip height works with this bar height and grip: change those first.";
    }
    return String.format(
        Locale.ROOT,
        "With this bar this lifter can be set up with the hips from about %.0f to %.0f cm above the floor.",
        Math.ceil(100 * first),
        Math.floor(100 * last));
  }

  private boolean possible() {
    return attempt(largestAhead())
        .filter(found -> Ranges.exceeded(found.pose()).isEmpty())
        .isPresent();
  }
}
