package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/** A squat with a bar on the upper back, high or low, from standing down to a depth. */
public final class BackSquat extends Lift<BackSquat>
    implements Can.Depth<BackSquat>,
        Can.Stance<BackSquat>,
        Can.HeelHeight<BackSquat>,
        Can.SpineRounding<BackSquat>,
        With.HoldsBar<BackSquat> {

  private BackSquat(Setup setup) {
    super(setup);
  }

  /**
   * A squat of this person.
   *
   * @param lifter who
   * @return the squat, the bar high
   */
  public static BackSquat of(Person lifter) {
    return new BackSquat(nothingSaid(lifter));
  }

  /**
   * With the bar elsewhere on the upper back.
   *
   * @param place {@code UPPER_BACK_HIGH} or {@code UPPER_BACK_LOW}
   * @return the changed squat
   * @throws Refused if it is neither
   */
  public BackSquat bar(Site place) {
    Ask.present("place of the bar", place, "UPPER_BACK_LOW");
    if (place != Site.UPPER_BACK_HIGH && place != Site.UPPER_BACK_LOW) {
      throw new Refused(
          "In a back squat the bar lies UPPER_BACK_HIGH or UPPER_BACK_LOW, not on the "
              + place.word()
              + ".");
    }
    return changed(setup().resting(place));
  }

  @Override
  BackSquat changed(Setup changed) {
    return new BackSquat(changed);
  }

  @Override
  public String name() {
    return "back squat";
  }

  @Override
  public String purpose() {
    return "Sit down and stand up with a bar on the back: knees, hips and trunk at once.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Site place = setup().barPlace().orElse(Site.UPPER_BACK_HIGH);
    Weights.bar(p, 0.75, place);
    Squats.feet(p, 2 * p.links().shoulderHalfWidth(), 20);
    double below = p.angle(Setting.DEPTH, -8);
    if (p.isStart()) {
      Squats.up(p);
    } else if (p.isFinish()) {
      Squats.down(p, below, place == Site.UPPER_BACK_LOW ? 45 : 35);
    }
    Racked.onBack(p, place);
  }
}
