package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;

/** A squat with the bar on the front of the shoulders. */
public final class FrontSquat extends Lift<FrontSquat>
    implements Can.Depth<FrontSquat>,
        Can.Stance<FrontSquat>,
        Can.HeelHeight<FrontSquat>,
        Can.SpineRounding<FrontSquat>,
        With.HoldsBar<FrontSquat> {

  private FrontSquat(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static FrontSquat of(Person lifter) {
    return new FrontSquat(nothingSaid(lifter));
  }

  @Override
  FrontSquat changed(Setup changed) {
    return new FrontSquat(changed);
  }

  @Override
  public String name() {
    return "front squat";
  }

  @Override
  public String purpose() {
    return "Sit down and stand up with a bar on the front of the shoulders: "
        + "upright trunk, more knee.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.6, Site.FRONT_OF_SHOULDER);
    Squats.feet(p, 2 * p.links().shoulderHalfWidth(), 20);
    double below = p.angle(Setting.DEPTH, 0);
    if (p.isStart()) {
      Squats.up(p);
    } else if (p.isFinish()) {
      Squats.down(p, below, 20);
    }
    Racked.inFront(p);
  }
}
