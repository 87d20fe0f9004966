package org.leverbook.quantity;

import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * Checks what the user gave against what makes sense, and words the refusal: the value as it was
 * written, the allowed range, and the likely slip (centimetres read as metres, pounds as
 * kilograms).
 */
public final class Ask {

  private static final double POUND = 0.45359237;

  private Ask() {}

  /**
   * A mass within a range.
   *
   * @param what what the mass is of, as in "body mass"
   * @param mass what the user gave
   * @param low lowest kilograms allowed
   * @param high highest kilograms allowed
   * @return kilograms
   * @throws Refused if it is missing or outside
   */
  public static double mass(String what, Quantity<Mass> mass, double low, double high) {
    double kilograms = Si.kilograms(present(what, mass, "kg(85)"));
    return within(
        what,
        () -> besides(Units.text(mass), "lb", kilograms, " kg"),
        kilograms,
        low,
        high,
        1,
        " kg",
        kilograms < 0
            ? "A mass cannot be negative: is the minus a slip?"
            : kilograms > high && kilograms * POUND <= high && kilograms * POUND >= low
                ? "Is it in pounds? Then write lb(" + number(kilograms) + ")."
                : "");
  }

  /**
   * A length within a range.
   *
   * @param what what the length is of, as in "stature"
   * @param length what the user gave
   * @param low lowest metres allowed
   * @param high highest metres allowed
   * @return metres
   * @throws Refused if it is missing or outside
   */
  public static double length(String what, Quantity<Length> length, double low, double high) {
    double metres = Si.metres(present(what, length, "cm(178)"));
    return within(
        what,
        () -> besides(Units.text(length), "in", 100 * metres, " cm"),
        metres,
        low,
        high,
        100,
        " cm",
        lengthSlip(metres, low, high));
  }

  /**
   * A force within a range.
   *
   * @param what what the force is of, as in "band's pull"
   * @param force what the user gave
   * @param low lowest newtons allowed
   * @param high highest newtons allowed
   * @return newtons
   * @throws Refused if it is missing or outside
   */
  public static double force(String what, Quantity<Force> force, double low, double high) {
    double newtons = Si.newtons(present(what, force, "newton(200)"));
    return within(
        what,
        () -> Units.text(force),
        newtons,
        low,
        high,
        1,
        " N",
        newtons < 0 ? "A force has no sign here: say which way by where it pulls." : "");
  }

  /**
   * An angle within a range.
   *
   * @param what what the angle is of, as in "trunk lean"
   * @param angle what the user gave
   * @param low lowest radians allowed
   * @param high highest radians allowed
   * @return radians
   * @throws Refused if it is missing or outside
   */
  public static double angle(String what, Quantity<Angle> angle, double low, double high) {
    double radians = Si.radians(present(what, angle, "deg(35)"));
    return within(what, () -> Units.text(angle), radians, low, high, 180 / Math.PI, "°", "");
  }

  /**
   * A share as a fraction.
   *
   * @param what what it is the share of, as in "leaning"
   * @param share what the user gave
   * @param low least fraction allowed
   * @param high greatest fraction allowed
   * @return the fraction
   * @throws Refused if the share is missing or outside
   */
  public static double share(String what, Quantity<Dimensionless> share, double low, double high) {
    double fraction = Si.fraction(present(what, share, "percent(50)"));
    return within(what, () -> Units.text(share), fraction, low, high, 100, " %", "");
  }

  /**
   * A time within a range.
   *
   * @param what what the time is of, as in "duration"
   * @param time what the user gave
   * @param low lowest seconds allowed
   * @param high highest seconds allowed
   * @return seconds
   * @throws Refused if it is missing or outside
   */
  public static double time(String what, Quantity<Time> time, double low, double high) {
    double seconds = Si.seconds(present(what, time, "seconds(1.5)"));
    return within(what, () -> Units.text(time), seconds, low, high, 1, " s", "");
  }

  /**
   * A plain number within a range.
   *
   * @param what what it is, as in "friction"
   * @param value what the user gave
   * @param low lowest allowed
   * @param high highest allowed
   * @return the same
   * @throws Refused if it is outside, or no number
   */
  public static double number(String what, double value, double low, double high) {
    return within(what, () -> String.valueOf(value), value, low, high, 1, "", "");
  }

  /**
   * A place or an arrow in space.
   *
   * @param what what it is, as in "point it pulls to"
   * @param vector what the user gave
   * @param most of any part, either way
   * @param unit of the parts, as in "m"
   * @return the same
   * @throws Refused if it is missing, or a part is beyond that or no number
   */
  public static Vector3D vector(String what, Vector3D vector, double most, String unit) {
    present(what, vector, "new Vector3D(0.3, 1, 0)");
    for (double part : vector.toArray()) {
      if (!(Math.abs(part) <= most)) {
        throw new Refused(
            "A part of the "
                + what
                + " is "
                + part
                + ", but must lie between "
                + number(-most)
                + " and "
                + number(most)
                + " "
                + unit
                + ".");
      }
    }
    return vector;
  }

  /**
   * How many times as large something is made.
   *
   * @param factor what the user gave
   * @return the same
   * @throws Refused if it is negative, above a million or no number
   */
  public static double factor(double factor) {
    if (!(factor >= 0 && factor <= 1e6)) {
      throw new Refused(
          "A load can be made 0 to 1,000,000 times as large, not " + factor + " times.");
    }
    return factor;
  }

  /**
   * A value that must be there.
   *
   * @param <T> its type
   * @param what what it is
   * @param value what the user gave
   * @param example how to write it
   * @return the value
   * @throws Refused if it is null
   */
  public static <T> T present(String what, T value, String example) {
    if (value == null) {
      throw new Refused("The " + what + " is missing (null): give one, such as " + example + ".");
    }
    return value;
  }

  /**
   * The likely slip behind a length outside its range.
   *
   * @param metres what was given
   * @param low lowest metres allowed
   * @param high highest metres allowed
   * @return a question with the repaired value, or empty where no usual slip explains it
   */
  public static String lengthSlip(double metres, double low, double high) {
    if (metres < 0) {
      return "A length cannot be negative: is the minus a slip?";
    }
    // Each likely slip: the factor that repairs the value and the words for it.
    double[] factors = {0.01, 100, 0.1, 10, 2.54, 1 / 2.54};
    String[] slips = {
      "Were centimetres read as metres? Then write cm(%s).",
      "Were metres read as centimetres? Then write m(%s).",
      "Is a decimal point one place off?",
      "Is a decimal point one place off?",
      "Were inches read as centimetres? Then write inch(%s).",
      "Were centimetres read as inches? Then write cm(%s)."
    };
    double[] shown = {1, 100, 0, 0, 100, 100 / 2.54};
    for (int i = 0; i < factors.length; i++) {
      double repaired = metres * factors[i];
      if (repaired >= low && repaired <= high) {
        return String.format(slips[i], number(metres * shown[i]));
      }
    }
    return "";
  }

  private static double within(
      String what,
      Supplier<String> given,
      double value,
      double low,
      double high,
      double scale,
      String unit,
      String slip) {
    if (value >= low && value <= high) {
      return value;
    }
    throw new Refused(
        "The "
            + what
            + " is "
            + given.get()
            + ", but must lie between "
            + number(low * scale)
            + " and "
            + number(high * scale)
            + unit
            + "."
            + (slip.isEmpty() ? "" : " " + slip));
  }

  /** An amount in a unit other than that of the limits, told in theirs as well. */
  private static String besides(String text, String unit, double amount, String limits) {
    return text.endsWith(" " + unit) ? text + " (" + number(amount) + limits + ")" : text;
  }

  private static String number(double value) {
    String text = String.format(java.util.Locale.ROOT, "%.4g", value);
    if (text.contains("e")) {
      return text;
    }
    return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
  }
}
