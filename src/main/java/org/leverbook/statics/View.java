package org.leverbook.statics;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * From where a picture of a position is drawn: a direction around the lifter and a height over the
 * floor.
 *
 * <p>Worked case: of a lifter who faces x, {@code View.of(deg(0), deg(0))} looks from before,
 * {@code deg(90)} from the right, {@code deg(180)} from behind, {@code deg(270)} from the left; at
 * a height of 90 degrees it looks straight down.
 *
 * @param around radians from before the lifter towards the lifter's right, 0 to 2π
 * @param above radians over the level, 0 to π/2
 * @param called what a caption calls it, as in "side view"
 */
public record View(double around, double above, String called) {

  /** From the lifter's right: the sagittal plane, where most lifts do their work. */
  public static final View SIDE = new View(Math.PI / 2, 0, "side view");

  /** From before the lifter's pelvis: the frontal plane, for raises to the side and side bends. */
  public static final View FRONT = new View(0, 0, "front view");

  /** From behind the lifter's pelvis. */
  public static final View BACK = new View(Math.PI, 0, "back view");

  /** From straight above, what is ahead in the side view to the right of the page. */
  public static final View TOP = new View(Math.PI / 2, Math.PI / 2, "top view");

  /**
   * Any view.
   *
   * @param around from before the lifter towards the lifter's right: 0° front, 90° right side
   * @param above over the level: 0° to 90°
   * @return the view; one of the four that have names where it is the same
   * @throws Refused if an angle is missing, or looks from below the floor
   */
  public static View of(Quantity<Angle> around, Quantity<Angle> above) {
    double turn = Ask.angle("direction of the view", around, -2 * Math.PI, 2 * Math.PI);
    double height = Ask.angle("height of the view", above, -Math.PI / 2, Math.PI / 2);
    if (height < 0) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A view from %.0f° below the level looks through the floor; 0° is level, 90° looks"
                  + " straight down.",
              -Math.toDegrees(height)));
    }
    double full = 2 * Math.PI;
    double once = ((turn % full) + full) % full;
    for (View named : new View[] {SIDE, FRONT, BACK, TOP}) {
      boolean same = Math.abs(once - named.around) < 1e-9 || named == FRONT && full - once < 1e-9;
      if (same && Math.abs(height - named.above) < 1e-9) {
        return named;
      }
    }
    String called =
        String.format(
            Locale.ROOT,
            "view from %.0f° around, %.0f° above",
            Math.toDegrees(once),
            Math.toDegrees(height));
    return new View(once, height, called);
  }

  /**
   * Whether it looks along the floor.
   *
   * @return true if so
   */
  public boolean level() {
    return above == 0;
  }

  @Override
  public String toString() {
    return called;
  }
}
