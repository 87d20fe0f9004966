package org.leverbook.lift;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.leverbook.quantity.Ask;

/** What a coach can set about lifts, with the widest range that makes sense for any of them. */
public enum Setting {
  /** Height of the axis through both hip joints above the floor. */
  HIP_HEIGHT("hip height", 0.05, 1.4, false),
  /** How far the knees are bent; 0 straight. */
  KNEE_BEND("knee bend", 0, 150, true),
  /** How far the line from hip to shoulder leans forward; 0 upright, negative leaning back. */
  TRUNK_LEAN("trunk lean", -100, 120, true),
  /** How far the trunk is bent in itself, over all levels; negative is arched. */
  SPINE_ROUNDING("spine rounding", -35, 70, true),
  /** Between the ankle centres. */
  STANCE_WIDTH("stance width", 0.05, 1.6, false),
  /** How far each foot points outward. */
  TURN_OUT("turn-out", -10, 60, true),
  /** How far the front foot stands ahead of the rear one. */
  STEP_LENGTH("step length", 0.1, 1.4, false),
  /** Height of a step or box. */
  STEP_HEIGHT("step height", 0.02, 0.8, false),
  /** Height of plates or of a shoe's heel under the heels. */
  HEEL_HEIGHT("heel height", 0, 0.1, false),
  /** How far the thighs are below level at the bottom; negative stays above. */
  DEPTH("depth", -80, 35, true),
  /** Between the middles of the hands. */
  GRIP_WIDTH("grip width", 0.1, 1.31, false),
  /** Height of the bar's axis where it starts. */
  BAR_HEIGHT("bar height", 0.02, 2.6, false),
  /** How far the bar is ahead of the middle of the foot. */
  BAR_AHEAD("bar ahead", -0.2, 0.6, false),
  /** Tilt of a pad's face: 0 lies level, 90 degrees stands upright. */
  PAD_ANGLE("pad angle", 0, 100, true),
  /** Height of the middle of a pad. */
  PAD_HEIGHT("pad height", 0, 2, false),
  /** Tilt of a bench: 0 flat, 90 degrees upright. */
  BENCH_ANGLE("bench angle", 0, 95, true),
  /** Height of a bench that a hand rests on. */
  BENCH_HEIGHT("bench height", 0.2, 1, false),
  /** Height of the seat. */
  SEAT_HEIGHT("seat height", 0.1, 1.1, false),
  /** Height of the last pulley. */
  PULLEY_HEIGHT("pulley height", -0.1, 3, false),
  /** How far the last pulley is ahead. */
  PULLEY_AHEAD("pulley ahead", -2, 4, false),
  /** How far the upper arms stand off the sides of the trunk. */
  ELBOWS_OUT("elbows out", 0, 110, true),
  /** How far the arm is raised at the end of a raise; 0 hangs, 90 degrees is level. */
  RAISE("raise", 0, 180, true),
  /** How far the elbows are bent at the end. */
  ELBOW_BEND("elbow bend", 0, 150, true),
  /** How far the shoulders sit raised or hang at the end of a shrug. */
  SHRUG("shrug", -10, 40, true),
  /** How far the trunk is turned. */
  TURN("turn", -60, 60, true);

  private final String word;
  private final double low;
  private final double high;
  private final boolean angle;

  Setting(String word, double low, double high, boolean angle) {
    this.word = word;
    this.low = angle ? Math.toRadians(low) : low;
    this.high = angle ? Math.toRadians(high) : high;
    this.angle = angle;
  }

  /**
   * What a coach calls it.
   *
   * @return as in "hip height"
   */
  public String word() {
    return word;
  }

  /**
   * Whether it is an angle rather than a length.
   *
   * @return true for an angle
   */
  public boolean isAngle() {
    return angle;
  }

  /** A length within the range, metres. */
  double ofLength(Quantity<Length> given) {
    return Ask.length(word, given, low, high);
  }

  /** An angle within the range, radians. */
  double ofAngle(Quantity<Angle> given) {
    return Ask.angle(word, given, low, high);
  }

  /** The value as a coach reads it. */
  double shown(double value) {
    return angle ? Math.toDegrees(value) : 100 * value;
  }

  String unit() {
    return angle ? "°" : "cm";
  }

  String text(double value) {
    return String.format(Locale.ROOT, angle ? "%s %.0f°" : "%s %.1f cm", word, shown(value));
  }
}
