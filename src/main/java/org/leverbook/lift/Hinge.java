package org.leverbook.lift;

import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.leverbook.body.Links;
import org.leverbook.body.Person;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.load.NoLoad;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Notes;

/**
 * The hip hinge with a bar in straight arms, from where it leaves the floor to standing.
 *
 * <p>The coach says how low: {@link #hipHeight}, {@link #kneeBend} or {@link #trunkLean}; the last
 * one said counts, and the other two follow from it. Conditions: both hands hold the bar with
 * straight arms, the bar is as high as the coach says and goes up in a straight line, the feet are
 * flat, every joint stays within its range, the shoulders are over the bar or so little ahead of it
 * that they can hold it there. Wishes, told in the result: the balance over the middle of the foot,
 * the bar too, a straight trunk.
 *
 * <p>{@code Hinge.of(lifter).holding(Barbell.of(kg(140))).hipHeight(cm(58)).start()} works; {@code
 * hipHeight(cm(20))} is refused: the hips would be below the knees.
 */
public final class Hinge extends Lift<Hinge>
    implements Can.HipHeight<Hinge>,
        Can.KneeBend<Hinge>,
        Can.TrunkLean<Hinge>,
        Can.Stance<Hinge>,
        Can.SpineRounding<Hinge>,
        With.GripWidth<Hinge>,
        With.BarHeight<Hinge>,
        With.BarAhead<Hinge>,
        With.HoldsBar<Hinge> {

  private Hinge(Setup setup) {
    super(setup);
  }

  /**
   * A hinge of this person, hands empty, at the usual stance and grip.
   *
   * @param lifter who lifts
   * @return the hinge, with a knee bend of 65 degrees until the coach says otherwise
   */
  public static Hinge of(Person lifter) {
    return new Hinge(nothingSaid(lifter).lifting(new NoLoad()));
  }

  @Override
  Hinge changed(Setup changed) {
    return new Hinge(changed);
  }

  @Override
  public String name() {
    return "hinge";
  }

  @Override
  public String purpose() {
    return "Bend at the hips to a bar and stand up with it, as low as you say: hips and back.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  /**
   * With this bar in the hands.
   *
   * @param load the bar, as in {@code barbell(kg(140))}
   * @return the changed hinge
   * @throws Refused if it is missing or lies on the back or the hips
   */
  @Override
  public Hinge holding(Barbell load) {
    Ask.present("load", load, "barbell(kg(140))");
    if (load.site() != Site.HAND) {
      throw new Refused(
          "A hinge holds the bar in straight arms, but this one lies on the "
              + load.site().word()
              + ": give barbell(…) without .on(…).");
    }
    return changed(setup().lifting(load));
  }

  /**
   * With empty hands where the bar was.
   *
   * @param nothing as in {@code noLoad()}
   * @return the changed hinge
   */
  @Override
  public Hinge holding(NoLoad nothing) {
    return changed(setup().lifting(Ask.present("load", nothing, "noLoad()")));
  }

  /**
   * With the hips (the axis through both hip joints) at this height above the floor.
   *
   * @param height between knee height and standing
   * @return the changed hinge
   * @throws Refused if the height is missing or outside
   */
  @Override
  public Hinge hipHeight(Quantity<Length> height) {
    double knees = HingeWays.kneeHeight(body());
    double standing = standing();
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
    return lastSaid(Setting.HIP_HEIGHT, metres);
  }

  /** Height of the hips with straight legs in this stance, metres. */
  private double standing() {
    Links links = body().links();
    double legs = links.thigh() + links.shank();
    double half = setup().values().getOrDefault(Setting.STANCE_WIDTH, HingeWays.stance(links)) / 2;
    double sideways = Math.min(half - links.hipHalfWidth(), legs);
    return links.footHeight() + Math.sqrt(legs * legs - sideways * sideways);
  }

  /**
   * With the knees bent by this much.
   *
   * @param bend 0 straight, to 140 degrees
   * @return the changed hinge
   * @throws Refused if the angle is missing or outside
   */
  @Override
  public Hinge kneeBend(Quantity<Angle> bend) {
    return lastSaid(Setting.KNEE_BEND, Ask.angle("knee bend", bend, 0, Math.toRadians(140)));
  }

  /**
   * With the line from hip to shoulder leaning forward by this much.
   *
   * @param lean 0 upright, to 110 degrees (shoulders below the hips)
   * @return the changed hinge
   * @throws Refused if the angle is missing or outside
   */
  @Override
  public Hinge trunkLean(Quantity<Angle> lean) {
    return lastSaid(Setting.TRUNK_LEAN, Ask.angle("trunk lean", lean, 0, Math.toRadians(110)));
  }

  private Hinge lastSaid(Setting setting, double value) {
    return changed(
        setup()
            .without(Setting.HIP_HEIGHT, Setting.KNEE_BEND, Setting.TRUNK_LEAN)
            .said(setting, value));
  }

  /**
   * With the bar's axis at this height above the floor where it starts, as on blocks or in a rack.
   *
   * @param height 5 to 120 cm
   * @return the changed hinge
   * @throws Refused if the height is missing or outside
   */
  @Override
  public Hinge barHeight(Quantity<Length> height) {
    return changed(setup().said(Setting.BAR_HEIGHT, Ask.length("bar height", height, 0.05, 1.2)));
  }

  /**
   * With the bar this far ahead of the middle of the foot.
   *
   * @param distance up to 30 cm; negative towards the shins
   * @return the changed hinge
   * @throws Refused if the distance is missing or outside
   */
  @Override
  public Hinge barAhead(Quantity<Length> distance) {
    double metres = Ask.length("bar's distance ahead of midfoot", distance, -0.15, 0.3);
    return changed(setup().said(Setting.BAR_AHEAD, metres));
  }

  /**
   * With the feet this far apart and turned out this much.
   *
   * @param width between the ankle centres, 5 to 160 cm
   * @param turnOut each foot, -10 to 60 degrees
   * @return the changed hinge
   * @throws Refused if a value is missing or outside
   */
  public Hinge stance(Quantity<Length> width, Quantity<Angle> turnOut) {
    return stanceWidth(width).turnOut(turnOut);
  }

  @Override
  void say(Posture p) {
    HingeWays.say(p);
  }

  @Override
  List<Fact> facts(Posture p, Pose pose) {
    return new HingeReport(p, pose).facts();
  }

  @Override
  Notes notes(Posture p, Pose pose) {
    return new HingeReport(p, pose).notes();
  }

  @Override
  String wayOut() {
    return HingeWays.hipHeights(setup());
  }
}
