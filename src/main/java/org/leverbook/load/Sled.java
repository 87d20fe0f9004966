package org.leverbook.load;

import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;

/**
 * A plate on a sled that runs up a straight rail ahead of the lifter, pressed by both feet and held
 * still: F = m g sin a along the rail, down towards the lifter.
 *
 * <p>Symbols: m sled, plate and discs (kg), a slope of the rail (0 level, 90 degrees upright), g
 * standard gravity. The rail takes everything across it, without friction. Each foot takes half, at
 * the middle of its sole.
 *
 * @param kilograms m
 * @param slope a, radians
 */
public record Sled(double kilograms, double slope) implements Load {

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
        Ask.angle("slope of the rail", slope, 0, Math.PI / 2));
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
    return Grasps.at(Site.FOOT).sharing(source(), where, down.scalarMultiply(push()));
  }

  @Override
  public String toString() {
    return description();
  }
}
