package org.leverbook.lift;

import org.leverbook.body.Person;

/** A squat with one weight held in both hands at the chest. */
public final class GobletSquat extends Lift<GobletSquat>
    implements Can.Depth<GobletSquat>,
        Can.Stance<GobletSquat>,
        Can.HeelHeight<GobletSquat>,
        Can.SpineRounding<GobletSquat>,
        With.HoldsDumbbells<GobletSquat> {

  private GobletSquat(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static GobletSquat of(Person lifter) {
    return new GobletSquat(nothingSaid(lifter));
  }

  @Override
  GobletSquat changed(Setup changed) {
    return new GobletSquat(changed);
  }

  @Override
  public String name() {
    return "goblet squat";
  }

  @Override
  public String purpose() {
    return "Squat with a weight held at the chest: a squat that keeps " + "beginners upright.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.inBothHands(p, "dumbbell", 0.2);
    Squats.feet(p, 2 * p.links().shoulderHalfWidth(), 20);
    double below = p.angle(Setting.DEPTH, 0);
    if (p.isStart()) {
      Squats.up(p);
    } else if (p.isFinish()) {
      Squats.down(p, below, 20);
    }
    Racked.atChest(p);
  }
}
