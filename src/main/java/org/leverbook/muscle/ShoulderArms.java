package org.leverbook.muscle;

import java.util.List;
import java.util.Optional;

/**
 * The arms of one muscle about the shoulder in any posture, from tables that know three planes.
 *
 * <p>The tables give the arm while the arm is raised forward, raised to the side, turned about
 * itself hanging, and swept level. Between them this is assumed (no source):
 *
 * <ul>
 *   <li>About the axis e in which the arm rises: near the hanging arm, and straight overhead, the
 *       arms of flexion and abduction are the two parts of one vector, so that nothing jumps where
 *       the plane changes; about the level arm they are blended by cos² and sin² of the plane. The
 *       two are mixed by cos² and sin² of the elevation.
 *   <li>About w = e x u: the other part of that vector times cos of the elevation, and the arm of
 *       the level sweep times its sin.
 *   <li>About the upper arm itself: the table of rotation, which knows the hanging arm only.
 *   <li>Behind the trunk and across the body the values at rest hold.
 * </ul>
 *
 * <p>On the three planes the tables come back exactly ({@code ShoulderArmsTest}).
 */
final class ShoulderArms {

  private static final ArmCurve NOTHING = ArmCurve.through(new double[1], new double[1]);
  private static final double QUARTER = Math.PI / 2;

  private final ArmCurve flexion;
  private final ArmCurve abduction;
  private final ArmCurve rotation;
  private final ArmCurve sweep;
  private final List<Optional<ArmSeries>> series;

  /**
   * Arms of a person.
   *
   * @param all the muscle's series; those of other joints are passed over
   * @param scale factor on every arm
   */
  ShoulderArms(List<ArmSeries> all, double scale) {
    series =
        List.of(
            about(all, "flexion_extension"),
            about(all, "abduction_adduction"),
            about(all, "internal_external_rotation"),
            about(all, "horizontal_adduction_abduction"));
    flexion = curve(0, scale);
    abduction = curve(1, scale);
    rotation = curve(2, scale);
    sweep = curve(3, scale);
  }

  /** Whether the muscle crosses the shoulder at all. */
  static boolean crosses(List<ArmSeries> all) {
    return all.stream().anyMatch(s -> s.joint().equals("shoulder"));
  }

  /** The series that matters most about flexion (0), abduction (1) or rotation (2). */
  ArmSeries series(int axis) {
    return series
        .get(axis)
        .orElseGet(() -> series.stream().flatMap(Optional::stream).findFirst().orElseThrow());
  }

  private static Optional<ArmSeries> about(List<ArmSeries> all, String axis) {
    return all.stream()
        .filter(s -> s.joint().equals("shoulder") && s.axis().equals(axis))
        .findFirst();
  }

  private ArmCurve curve(int which, double scale) {
    return series.get(which).map(s -> s.curve().times(scale)).orElse(NOTHING);
  }

  /**
   * The arms in one posture.
   *
   * @param frame how the upper arm stands
   * @param into metres about flexion (square to the other two), abduction and inward rotation
   */
  void in(ShoulderFrame frame, double[] into) {
    double cosine = frame.cosPhi;
    double sine = frame.sinPhi;
    double forward = flexion.at(reach(frame.theta, cosine));
    double aside = abduction.at(reach(frame.theta, sine));
    double hanging = cosine * forward + sine * aside;
    double across = cosine * aside - sine * forward;
    double level =
        cosine * cosine * (cosine >= 0 ? flexion.at(frame.theta) : -flexion.at(0))
            + sine * sine * (sine >= 0 ? abduction.at(frame.theta) : -abduction.at(0));
    double upright = frame.cosTheta * frame.cosTheta;
    double aboutE = upright * hanging + (1 - upright) * level;
    double aboutW = -frame.cosTheta * across + frame.sinTheta * swept(frame);
    frame.project(aboutE, aboutW, rotation.at(0), into);
  }

  /**
   * The angle at which a plane's table is read while the arm rises in another: its own part of the
   * elevation, growing to the whole between 60 and 120 degrees, so that overhead the plane no
   * longer matters.
   */
  private static double reach(double theta, double towards) {
    double own = towards > 0 ? towards * towards : 0;
    double t = Math.max(0, Math.min(1, (Math.toDegrees(theta) - 60) / 60));
    double whole = t * t * (3 - 2 * t);
    return theta * (own + (1 - own) * whole);
  }

  /** The arm of the level sweep; its table counts from the side (0) to the front. */
  private double swept(ShoulderFrame frame) {
    if (frame.cosPhi < 0 && frame.sinPhi < 0) {
      double behind = frame.cosPhi * frame.cosPhi;
      return behind * sweep.at(0) + (1 - behind) * sweep.at(QUARTER);
    }
    return sweep.at(QUARTER - frame.phi);
  }
}
