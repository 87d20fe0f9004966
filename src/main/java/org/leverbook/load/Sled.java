package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Place;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A plate on a sled that runs up a straight rail ahead of the lifter, pressed by both feet: F = m
 * (g sin a + s'') along the rail, down towards the lifter.
 *
 * <p>Symbols: m sled, plate and discs (kg), a slope of the rail (0 level, 90 degrees upright), g
 * standard gravity, s'' how the soles speed up along the rail (m/s2, the mean of both; zero held
 * still). The rail takes everything across it, without friction. The plate lies along the soles,
 * whatever their tilt.
 *
 * <p>Where along the soles it presses, and how the feet share it, comes out with the least effort:
 * heel, ball and toe tip of each foot can take any part ({@link SharedPush}). {@link #pressedAt}
 * says it instead; each foot then takes half.
 *
 * @param kilograms m
 * @param slope a, radians
 * @param along where on the soles it presses: 0 the back of the heel, 1 the tip of the toes; empty
 *     to find it
 * @param gained s'', m/s2
 */
public record Sled(double kilograms, double slope, Optional<Double> along, double gained)
    implements Load {

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
   * @throws Refused if a value is missing or outside
   */
  public static Sled of(Quantity<Mass> mass, Quantity<Angle> slope) {
    return new Sled(
        Ask.mass("sled's mass", mass, 0, 1000),
        Ask.angle("slope of the rail", slope, 0, Math.PI / 2),
        Optional.empty(),
        0);
  }

  /**
   * Pressed at a point of the soles that is said, half with each foot: more with the heels, or more
   * with the balls.
   *
   * @param share of the foot's length from the back of the heel, 5 to 75 %
   * @return the changed load
   * @throws Refused if the share is missing or outside
   */
  public Sled pressedAt(Quantity<Dimensionless> share) {
    double said = Ask.share("pressure point of the soles", share, 0.05, 0.75);
    return new Sled(kilograms, slope, Optional.of(said), gained);
  }

  /**
   * How hard its weight presses, both feet together.
   *
   * @return newtons
   */
  public double push() {
    return kilograms * Gravity.STANDARD * Math.sin(slope);
  }

  private Vector3D down() {
    return new Vector3D(-Math.cos(slope), -Math.sin(slope), 0);
  }

  @Override
  public String source() {
    return "sled";
  }

  @Override
  public String law() {
    return "It presses down along its rail with its weight's share along the slope; "
        + "the rail takes what acts across, without friction.";
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
    return grasps(where.tree()).sharing(source(), where, down().scalarMultiply(push()));
  }

  @Override
  public Optional<SharedPush> shared(Placement where) {
    if (along.isPresent() || push() == 0 && gained == 0) {
      return Optional.empty();
    }
    List<Place> places = new ArrayList<>();
    for (Site site : List.of(Site.HEEL, Site.BALL_OF_FOOT, Site.TOE_TIP)) {
      site.sides().forEach(side -> places.add(where.tree().place(site, side)));
    }
    List<SharedPush.Part> parts = new ArrayList<>();
    parts.add(new SharedPush.Part(source(), Force.Kind.LOAD, push()));
    if (gained != 0) {
      parts.add(Inertia.part(source(), kilograms * gained));
    }
    return Optional.of(new SharedPush(down(), places, parts));
  }

  /**
   * The sled while the soles speed it up or slow it down.
   *
   * @throws Refused if it would leave the soles
   */
  @Override
  public Load moving(Accelerations moving) {
    double speedsUp = -grasps(moving.where().tree()).acceleration(moving).dotProduct(down());
    if (push() + kilograms * speedsUp < 0) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The sled leaves the feet: they slow down by %.1f m/s² along the rail, but it slows"
                  + " by no more than %.1f m/s². Take more time.",
              -speedsUp,
              Gravity.STANDARD * Math.sin(slope)));
    }
    return new Sled(kilograms, slope, along, speedsUp);
  }

  /** Where the pressure point is said; elsewhere it is shared with the push itself. */
  @Override
  public List<Force> inertia(Accelerations moving) {
    if (along.isEmpty() || kilograms == 0) {
      return List.of();
    }
    double speedsUp = ((Sled) moving(moving)).gained;
    return grasps(moving.where().tree())
        .resisting(source(), moving, down().scalarMultiply(kilograms * speedsUp));
  }

  private Grasps grasps(SegmentTree tree) {
    return new Grasps(Site.FOOT.sides().stream().map(side -> sole(tree, side)).toList());
  }

  private Grasp sole(SegmentTree tree, Side side) {
    Vector3D heel = tree.place(Site.HEEL, side).local();
    Vector3D ball = tree.place(Site.BALL_OF_FOOT, side).local();
    double length = (ball.getX() - heel.getX()) / HEEL_TO_BALL;
    Place middle = tree.place(Site.FOOT, side);
    double ahead = (along.orElse(MIDDLE) - MIDDLE) * length;
    return new Grasp.Fixed(middle.movedBy(new Vector3D(ahead, 0, 0)));
  }

  @Override
  public Optional<Load> times(double factor) {
    Ask.factor(factor);
    return Optional.of(new Sled(factor * kilograms, slope, along, gained));
  }

  @Override
  public OptionalDouble counted() {
    return OptionalDouble.of(kilograms);
  }

  @Override
  public String toString() {
    return description();
  }
}
