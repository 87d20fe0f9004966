package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;

/**
 * A plate on a sled that runs up a straight rail ahead of the lifter, pressed by both feet and held
 * still: F = m g sin a along the rail, down towards the lifter.
 *
 * <p>Symbols: m sled, plate and discs (kg), a slope of the rail (0 level, 90 degrees upright), g
 * standard gravity. The rail takes everything across it, without friction. Each foot takes half.
 * Where along the sole is the lifter's choice: the middle of the foot unless said otherwise.
 *
 * @param kilograms m
 * @param slope a, radians
 * @param along where on the sole it presses: 0 the back of the heel, 1 the tip of the toes
 */
public record Sled(double kilograms, double slope, double along) implements Load {

  /** The middle of the foot. */
  private static final double MIDDLE = 0.5;

  /** From the centre of heel pressure to the ball, shares of foot length (joint_centres.csv). */
  private static final double HEEL_TO_BALL = 0.595;

  /**
   * A sled on a rail.
   *
   * @param mass sled, plate and discs together, 0 to 1000 kg
   * @param slope of the rail, 0 to 90 degrees
   * @return the load
   * @throws org.leverbook.quantity.Refused if a value is missing or outside
   */
  public static Sled of(Quantity<Mass> mass, Quantity<Angle> slope) {
    return new Sled(
        Ask.mass("sled's mass", mass, 0, 1000),
        Ask.angle("slope of the rail", slope, 0, Math.PI / 2),
        MIDDLE);
  }

  /**
   * Pressed at another point of the soles: more with the heels, or more with the balls.
   *
   * @param share of the foot's length from the back of the heel, 5 to 75 %
   * @return the changed load
   * @throws org.leverbook.quantity.Refused if the share is missing or outside
   */
  public Sled pressedAt(Quantity<Dimensionless> share) {
    return new Sled(kilograms, slope, Ask.share("pressure point of the soles", share, 0.05, 0.75));
  }

  /**
   * How hard it presses, both feet together.
   *
   * @return newtons
   */
  public double push() {
    return kilograms * Gravity.STANDARD * Math.sin(slope);
  }

  @Override
  public String source() {
    return "sled";
  }

  @Override
  public String description() {
    return String.format(
        Locale.ROOT, "sled %.1f kg on a rail of %.0f°", kilograms, Math.toDegrees(slope));
  }

  /** None of it rests on the body: what it gives is a push. */
  @Override
  public double mass() {
    return 0;
  }

  @Override
  public List<Force> forces(Placement where) {
    Vector3D down = new Vector3D(-Math.cos(slope), -Math.sin(slope), 0);
    return new Grasps(Site.FOOT.sides().stream().map(side -> sole(where.tree(), side)).toList())
        .sharing(source(), where, down.scalarMultiply(push()));
  }

  private Grasp sole(SegmentTree tree, Side side) {
    Vector3D heel = tree.place(Site.HEEL, side).local();
    Vector3D ball = tree.place(Site.BALL_OF_FOOT, side).local();
    double length = (ball.getX() - heel.getX()) / HEEL_TO_BALL;
    Place middle = tree.place(Site.FOOT, side);
    return new Grasp.Fixed(middle.movedBy(new Vector3D((along - MIDDLE) * length, 0, 0)));
  }

  @Override
  public String toString() {
    return description();
  }
}
