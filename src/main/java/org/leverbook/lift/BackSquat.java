package org.leverbook.lift;

import org.leverbook.body.JointId;
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
    Feet.stand(
        p,
        0,
        p.value(Setting.STANCE_WIDTH, 2 * p.links().shoulderHalfWidth()) / 2,
        p.angle(Setting.TURN_OUT, 20),
        p.value(Setting.HEEL_HEIGHT, 0));
    p.balancedOver(0).spine();
    double bottom = p.angle(Setting.DEPTH, 0);
    p.roughly(-0.15 * p.share(), p.links().standingHipHeight() - 0.4 * p.share(), 35 * p.share());
    p.usually(JointId.KNEE, "flexion", p.between(5, 110), Posture.EASY);
    p.usually(JointId.HIP, "flexion", p.between(5, 110), Posture.EASY);
    p.usually(JointId.ANKLE, "flexion", p.between(2, 22), 0.3);
    if (p.isStart()) {
      p.exactly(JointId.KNEE, "flexion", 5);
    } else if (p.isFinish()) {
      Legs.thighs(p, bottom);
    }
    Racked.onBack(p, place);
  }
}
