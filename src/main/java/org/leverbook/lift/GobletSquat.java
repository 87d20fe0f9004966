package org.leverbook.lift;

import java.util.List;
import org.leverbook.body.Person;
import org.leverbook.body.Side;

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
    Weights.hands(p, "dumbbell", 0.12, List.of(Side.RIGHT, Side.LEFT));
    Squats.feet(p, 2 * p.links().shoulderHalfWidth(), 20);
    if (p.isStart()) {
      Squats.up(p);
    } else if (p.isFinish()) {
      Squats.down(p, p.angle(Setting.DEPTH, 0), 20);
    }
    Racked.atChest(p);
  }
}
