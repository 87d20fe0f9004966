package org.leverbook.lift;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.leverbook.body.Body;
import org.leverbook.body.Links;
import org.leverbook.body.Person;
import org.leverbook.body.Site;
import org.leverbook.display.Shown;
import org.leverbook.load.Barbell;
import org.leverbook.load.NoLoad;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.statics.Position;

/**
 * The hip hinge with a bar in straight arms, held still where it leaves the floor.
 *
 * <p>The coach says how low: {@link #hipHeight}, {@link #kneeBend} or {@link #trunkLean}; the last
 * one said counts, and the other two follow from it. Hard conditions: both hands hold the bar with
 * straight arms, the bar is where the coach says, the feet are flat, every joint stays within its
 * range. Wishes, told in the result: the shoulders between straight over the bar and a hand's
 * breadth ahead of it, nearer to straight over the heavier the bar is (common practice, no source),
 * and within that the balance as near to the middle of the foot as it goes. A straight trunk where
 * the hips allow it; beyond the published range of hip flexion the spine takes up the rest, shared
 * over its levels by the published fractions.
 *
 * <p>{@code Hinge.of(lifter).holding(Barbell.of(kg(140))).hipHeight(cm(58)).start()} works; {@code
 * hipHeight(cm(20))} is refused: the hips would be below the knees.
 */
public final class Hinge implements Shown {

  /** Which of the three the posture follows from. */
  enum Given {
    HIP_HEIGHT,
    KNEE_BEND,
    TRUNK_LEAN
  }

  /** Foot spacing as a multiple of hip-joint spacing, and turn-out: common practice, no source. */
  private static final double USUAL_STANCE = 1.5;

  private static final double USUAL_TURN_OUT = Math.toRadians(10);

  /** Hands this much outside the shoulder joints, each, metres: common practice, no source. */
  private static final double USUAL_GRIP_OUTSIDE = 0.04;

  /** Knee bend where the coach says nothing: common practice, no source. */
  private static final double USUAL_KNEE_BEND = Math.toRadians(65);

  private final Body body;
  private final Barbell bar;
  private final Given given;
  private final double value;
  private final double barHeight;
  private final double barAhead;
  private final double gripHalfWidth;
  private final Stance stance;

  private Hinge(
      Body body,
      Barbell bar,
      Given given,
      double value,
      double barHeight,
      double barAhead,
      double gripHalfWidth,
      Stance stance) {
    this.body = body;
    this.bar = bar;
    this.given = given;
    this.value = value;
    this.barHeight = barHeight;
    this.barAhead = barAhead;
    this.gripHalfWidth = gripHalfWidth;
    this.stance = stance;
  }

  /**
   * A hinge of this person, hands empty, at the usual stance and grip.
   *
   * @param person who lifts
   * @return the hinge, with a knee bend of 65 degrees until the coach says otherwise
   */
  public static Hinge of(Person person) {
    Body body = Ask.present("lifter", person, "person(MALE, kg(85), cm(178))").body();
    Links links = body.links();
    return new Hinge(
        body,
        new Barbell(0, Barbell.STANDARD_PLATE_RADIUS),
        Given.KNEE_BEND,
        USUAL_KNEE_BEND,
        Barbell.STANDARD_PLATE_RADIUS,
        0,
        links.shoulderHalfWidth() + USUAL_GRIP_OUTSIDE,
        new Stance(USUAL_STANCE * links.hipHalfWidth(), USUAL_TURN_OUT));
  }

  /**
   * With this bar in the hands; its axis at the height of its plates' radius.
   *
   * @param load the bar
   * @return the changed hinge
   */
  public Hinge holding(Barbell load) {
    Ask.present("load", load, "barbell(kg(140))");
    if (load.site() != Site.HAND) {
      throw new Refused(
          "A hinge holds the bar in straight arms, but this one lies on the "
              + load.site().word()
              + ": give barbell(…) without .on(…).");
    }
    return new Hinge(body, load, given, value, load.plateRadius(), barAhead, gripHalfWidth, stance);
  }

  /**
   * With empty hands where the bar was.
   *
   * @param nothing as in {@code noLoad()}
   * @return the changed hinge
   */
  public Hinge holding(NoLoad nothing) {
    Ask.present("load", nothing, "noLoad()");
    return holding(new Barbell(0, bar.plateRadius()));
  }

  /**
   * With the hips (the axis through both hip joints) at this height above the floor.
   *
   * @param height between knee height and standing
   * @return the changed hinge
   * @throws Refused if the height is missing or outside
   */
  public Hinge hipHeight(Quantity<Length> height) {
    double knees = body.links().footHeight() + body.links().shank();
    double standing = stance.standingHipHeight(body);
    double metres = Si.metres(Ask.present("hip height", height, "cm(58)"));
    if (metres < knees || metres > standing) {
      String slip = Ask.lengthSlip(metres, knees, standing);
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A hip height of %.1f cm would put the hips %s: between %.1f cm (knee height) and %.1f cm (standing)"
                  + " can be asked of this lifter.%s",
              100 * metres,
              metres < knees ? "below the knees" : "above standing",
              100 * knees,
              100 * standing,
              slip.isEmpty() ? "" : " " + slip));
    }
    return said(Given.HIP_HEIGHT, metres);
  }

  /**
   * With the knees bent by this much.
   *
   * @param bend 0 straight, to 140 degrees
   * @return the changed hinge
   * @throws Refused if the angle is missing or outside
   */
  public Hinge kneeBend(Quantity<Angle> bend) {
    return said(Given.KNEE_BEND, Ask.angle("knee bend", bend, 0, Math.toRadians(140)));
  }

  /**
   * With the line from hip to shoulder leaning forward by this much.
   *
   * @param lean 0 upright, to 110 degrees (shoulders below the hips)
   * @return the changed hinge
   * @throws Refused if the angle is missing or outside
   */
  public Hinge trunkLean(Quantity<Angle> lean) {
    return said(Given.TRUNK_LEAN, Ask.angle("trunk lean", lean, 0, Math.toRadians(110)));
  }

  /**
   * With the bar's axis at this height above the floor, as on blocks or in a rack.
   *
   * @param height 5 to 120 cm
   * @return the changed hinge
   * @throws Refused if the height is missing or outside
   */
  public Hinge barHeight(Quantity<Length> height) {
    double metres = Ask.length("bar height", height, 0.05, 1.2);
    return new Hinge(body, bar, given, value, metres, barAhead, gripHalfWidth, stance);
  }

  /**
   * With the bar this far ahead of the middle of the foot.
   *
   * @param distance up to 30 cm; negative towards the shins
   * @return the changed hinge
   * @throws Refused if the distance is missing or outside
   */
  public Hinge barAhead(Quantity<Length> distance) {
    double metres = Ask.length("bar's distance ahead of midfoot", distance, -0.15, 0.3);
    return new Hinge(body, bar, given, value, barHeight, metres, gripHalfWidth, stance);
  }

  /**
   * With the hands this far apart, centre to centre.
   *
   * @param width 20 to 131 cm, the length between a bar's inner collars (International
   *     Weightlifting Federation technical rules, from memory)
   * @return the changed hinge
   * @throws Refused if the width is missing or outside
   */
  public Hinge gripWidth(Quantity<Length> width) {
    double metres = Ask.length("grip width", width, 0.2, 1.31);
    return new Hinge(body, bar, given, value, barHeight, barAhead, metres / 2, stance);
  }

  /**
   * With the feet this far apart and turned out this much.
   *
   * @param width between the ankle centres, 10 to 100 cm
   * @param turnOut each foot, 0 to 45 degrees
   * @return the changed hinge
   * @throws Refused if a value is missing or outside
   */
  public Hinge stance(Quantity<Length> width, Quantity<Angle> turnOut) {
    Stance changed =
        new Stance(
            Ask.length("stance width", width, 0.1, 1.0) / 2,
            Ask.angle("turn-out", turnOut, 0, Math.toRadians(45)));
    return new Hinge(body, bar, given, value, barHeight, barAhead, gripHalfWidth, changed);
  }

  /**
   * The position in which the bar leaves the floor.
   *
   * @return the position, its pose solved and its moments computed
   * @throws Refused if it cannot be reached or would tip; says by how much and what to change
   */
  public Position start() {
    return new HingeSolver(this).start();
  }

  Body body() {
    return body;
  }

  Barbell bar() {
    return bar;
  }

  Given given() {
    return given;
  }

  double value() {
    return value;
  }

  double barHeight() {
    return barHeight;
  }

  double barForward() {
    return barAhead;
  }

  double gripHalfWidth() {
    return gripHalfWidth;
  }

  Stance feet() {
    return stance;
  }

  Hinge said(Given what, double said) {
    return new Hinge(body, bar, what, said, barHeight, barAhead, gripHalfWidth, stance);
  }

  @Override
  public String text() {
    String said =
        switch (given) {
          case HIP_HEIGHT -> String.format(Locale.ROOT, "hip height %.1f cm", 100 * value);
          case KNEE_BEND -> String.format(Locale.ROOT, "knee bend %.1f°", Math.toDegrees(value));
          case TRUNK_LEAN -> String.format(Locale.ROOT, "trunk lean %.1f°", Math.toDegrees(value));
        };
    return "hinge: "
        + body.person().text()
        + "\n"
        + (bar.mass() > 0 ? bar.description() : "empty hands")
        + ", "
        + said
        + "\nstart() gives the position in which the bar leaves the floor";
  }

  @Override
  public String toString() {
    return text();
  }
}
