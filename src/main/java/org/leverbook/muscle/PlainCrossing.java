package org.leverbook.muscle;

import org.leverbook.pose.Pose;

/**
 * A muscle whose arm about one axis follows one angle, perhaps shortened by another.
 *
 * @param axis the axis it turns
 * @param share the part of the pull that crosses
 * @param curve the person's arm over the coordinate, metres, positive in the axis' positive
 *     direction
 * @param coordinate the angle it follows
 * @param shortened a factor on the arm
 * @param bend the angle the factor follows
 * @param series the values behind it
 */
record PlainCrossing(
    int axis,
    double share,
    ArmCurve curve,
    Coordinate coordinate,
    ArmCurve shortened,
    Coordinate bend,
    ArmSeries series)
    implements Crossing {

  private static final ArmCurve ONE = ArmCurve.through(new double[1], new double[] {1});

  /** A crossing whose arm follows one angle only. */
  static PlainCrossing of(
      int axis, double share, ArmCurve curve, Coordinate coordinate, ArmSeries series) {
    return new PlainCrossing(axis, share, curve, coordinate, ONE, coordinate, series);
  }

  /** The same, its arm times a factor that follows a bend. */
  PlainCrossing shortenedBy(ArmCurve factor, Coordinate by) {
    return new PlainCrossing(axis, share, curve, coordinate, factor, by, series);
  }

  /** Whether the arm changes with the pose. */
  boolean moves() {
    return !curve.single() || !shortened.single();
  }

  @Override
  public double arm(Pose pose) {
    double arm = curve.single() ? curve.at(0) : curve.at(coordinate.in(pose));
    return shortened.single() ? arm : arm * shortened.at(bend.in(pose));
  }
}
