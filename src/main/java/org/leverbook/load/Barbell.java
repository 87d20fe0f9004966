package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A barbell in both hands, held still: half its weight hangs on each grip.
 *
 * @param kilograms bar, collars and plates together
 * @param plateRadius of the largest plates, metres: the height of its axis when it lies on the
 *     floor
 */
public record Barbell(double kilograms, double plateRadius) implements Load {

  /**
   * Half of 0.450 m, the largest disc of competition (International Weightlifting Federation
   * technical rules, from memory).
   */
  public static final double STANDARD_PLATE_RADIUS = 0.225;

  /**
   * Half of 28 mm, the men's bar (International Weightlifting Federation technical rules, from
   * memory).
   */
  public static final double GRIP_RADIUS = 0.014;

  /**
   * A barbell with plates of the standard size.
   *
   * <p>{@code of(kg(140))} works; {@code of(kg(-5))} is refused: "The barbell's mass is -5 kg, but
   * must lie between 0 and 600 kg. A mass cannot be negative: is the minus a slip?"
   *
   * @param mass bar, collars and plates together, 0 to 600 kg
   * @return the barbell
   * @throws Refused if the mass is missing or outside
   */
  public static Barbell of(Quantity<Mass> mass) {
    return new Barbell(Ask.mass("barbell's mass", mass, 0, 600), STANDARD_PLATE_RADIUS);
  }

  /**
   * The same barbell with other plates.
   *
   * @param radius of the largest plate, 5 to 40 cm
   * @return the changed barbell
   * @throws Refused if the radius is missing or outside
   */
  public Barbell plateRadius(Quantity<Length> radius) {
    return new Barbell(kilograms, Ask.length("plate radius", radius, 0.05, 0.40));
  }

  @Override
  public String source() {
    return "bar";
  }

  @Override
  public String description() {
    return String.format(Locale.ROOT, "barbell %.1f kg", kilograms);
  }

  @Override
  public double mass() {
    return kilograms;
  }

  /** It hangs on the grips wherever they are. */
  @Override
  public boolean deadWeight() {
    return true;
  }

  @Override
  public List<Force> forces(Placement where) {
    List<Force> forces = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      int fingers = where.tree().distalOf(JointId.GRIP.on(side));
      Vector3D half = Gravity.VECTOR.scalarMultiply(kilograms / 2);
      forces.add(Force.ofLoad(source(), fingers, where.origin(fingers), half));
    }
    return forces;
  }

  @Override
  public String toString() {
    return description();
  }
}
