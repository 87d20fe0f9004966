package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;

/** A deadlift from pins, at knee height unless said otherwise. */
public final class RackPull extends Lift<RackPull>
    implements Can.HipHeight<RackPull>,
        Can.Stance<RackPull>,
        Can.SpineRounding<RackPull>,
        With.GripWidth<RackPull>,
        With.BarHeight<RackPull>,
        With.BarAhead<RackPull>,
        With.HoldsBar<RackPull> {

  private RackPull(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static RackPull of(Person lifter) {
    return new RackPull(nothingSaid(lifter));
  }

  @Override
  RackPull changed(Setup changed) {
    return new RackPull(changed);
  }

  @Override
  public String name() {
    return "rack pull";
  }

  @Override
  public String purpose() {
    return "Pull a bar from pins at knee height to standing: the upper part " + "of a deadlift.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 1.5, Site.HAND);
    Feet.stand(p, p.value(Setting.STANCE_WIDTH, 0.32) / 2, p.angle(Setting.TURN_OUT, 14));
    FromFloor.bar(p, 0.55);
    if (p.isStart()) {
      double height = p.value(Setting.BAR_HEIGHT, p.links().footHeight() + p.links().shank());
      FromFloor.barAt(p, height);
      FromFloor.shinsAtBar(p, height);
      FromFloor.down(p, 35, 50, FromFloor.SHOULDERS_AHEAD);
    } else if (p.isFinish()) {
      FromFloor.lockedOut(p);
    }
  }
}
