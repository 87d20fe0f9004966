package org.leverbook.lift;

import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Site;

/** A hinge with the bar on the upper back, from standing to a trunk lean. */
public final class GoodMorning extends Lift<GoodMorning>
    implements Can.KneeBend<GoodMorning>,
        Can.TrunkLean<GoodMorning>,
        Can.Stance<GoodMorning>,
        Can.SpineRounding<GoodMorning>,
        With.HoldsBar<GoodMorning> {

  private GoodMorning(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static GoodMorning of(Person lifter) {
    return new GoodMorning(nothingSaid(lifter));
  }

  @Override
  GoodMorning changed(Setup changed) {
    return new GoodMorning(changed);
  }

  @Override
  public String name() {
    return "good morning";
  }

  @Override
  public String purpose() {
    return "Bend forward from the hips with a bar on the back: hip extensors "
        + "and spinal erectors.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.4, Site.UPPER_BACK_LOW);
    Stands.feet(p, 0.32, 10);
    p.spine();
    double knees = p.angle(Setting.KNEE_BEND, 20);
    double lean = p.angle(Setting.TRUNK_LEAN, 70);
    if (p.isStart()) {
      Stands.tall(p);
    } else if (p.isFinish()) {
      p.roughly(-0.25, 0.9 * p.links().standingHipHeight(), 70);
      p.usually(JointId.HIP, "flexion", 90, Posture.EASY);
      p.exactlyRadians(JointId.KNEE, "flexion", knees);
      p.trunkLeans(lean);
    }
    Racked.onBack(p, Site.UPPER_BACK_LOW);
  }
}
