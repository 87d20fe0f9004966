package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;

/** A deadlift with a bar that the lifter stands in, hands at the sides. */
public final class TrapBarDeadlift extends Lift<TrapBarDeadlift>
    implements Can.HipHeight<TrapBarDeadlift>,
        Can.Stance<TrapBarDeadlift>,
        Can.SpineRounding<TrapBarDeadlift>,
        With.GripWidth<TrapBarDeadlift>,
        With.BarHeight<TrapBarDeadlift>,
        With.BarAhead<TrapBarDeadlift>,
        With.HoldsBar<TrapBarDeadlift> {

  private TrapBarDeadlift(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static TrapBarDeadlift of(Person lifter) {
    return new TrapBarDeadlift(nothingSaid(lifter));
  }

  @Override
  TrapBarDeadlift changed(Setup changed) {
    return new TrapBarDeadlift(changed);
  }

  @Override
  public String name() {
    return "trap-bar deadlift";
  }

  @Override
  public String purpose() {
    return "Stand inside the bar and pull it up at the sides: more knee, less " + "back.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Barbell bar = Weights.bar(p, 1.2, Site.HAND);
    Feet.stand(p, p.value(Setting.STANCE_WIDTH, 0.32) / 2, p.angle(Setting.TURN_OUT, 8));
    FromFloor.handles(p, 0.60);
    if (p.isStart()) {
      FromFloor.barAt(p, p.value(Setting.BAR_HEIGHT, bar.plateRadius()));
      FromFloor.down(p, 85, 50, 0.03);
      p.ratherTrunkLeans(Math.toRadians(50), 100);
    } else if (p.isFinish()) {
      Stands.tall(p);
      p.balancedOver(0);
    }
  }
}
