package org.leverbook.lift;

import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Site;

/** A sit-up with the feet held, arms crossed on the chest, from lying to sitting. */
public final class SitUp extends Lift<SitUp>
    implements Can.TrunkLean<SitUp>, Can.KneeBend<SitUp>, Can.SpineRounding<SitUp> {

  private SitUp(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static SitUp of(Person lifter) {
    return new SitUp(nothingSaid(lifter));
  }

  @Override
  SitUp changed(Setup changed) {
    return new SitUp(changed);
  }

  @Override
  public String name() {
    return "sit-up";
  }

  @Override
  public String purpose() {
    return "Curl and sit up from the floor, feet held: front of the trunk and hip flexors.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {

    p.roughly(0, 0.1, p.between(-90, -20));
    p.on(
        Props.floor(
            "floor under the back",
            Site.UPPER_BACK_LOW,
            Site.MID_BACK,
            Site.LOW_BACK,
            Site.BUTTOCK,
            Site.SITTING_BONE));
    Bodies.feetHeld(p);
    p.atForward(JointId.HIP, 0, "their place on the floor");
    p.usually(JointId.HIP, "flexion", p.between(45, 110), Posture.EASY);
    Pulls.armsCrossed(p);
    double knees = p.angle(Setting.KNEE_BEND, 90);
    double lean = p.angle(Setting.TRUNK_LEAN, -15);
    double round = p.angle(Setting.SPINE_ROUNDING, 25);
    if (p.isStart()) {
      p.exactlyRadians(JointId.KNEE, "flexion", knees);
      p.atHeight(Site.BUTTOCK, 0, "the floor").atHeight(Site.UPPER_BACK_LOW, 0, "the floor");
    } else if (p.isFinish()) {
      // Leaning back more than half-way the weight is on the back of the seat.
      Site seat = lean < -Math.PI / 4 ? Site.BUTTOCK : Site.SITTING_BONE;
      p.atHeight(seat, 0, "the floor").trunkLeans(lean);
    }
    // The spine curls before the hips do most of the way.
    p.rounded(round * Math.sin(p.share() * Math.PI / 2));
    Bodies.hipsStraight(p);
  }
}
