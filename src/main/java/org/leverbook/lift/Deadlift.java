package org.leverbook.lift;

import org.leverbook.body.Person;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;

/** A conventional deadlift: a bar pulled from the floor to standing, hands outside the knees. */
public final class Deadlift extends Lift<Deadlift>
    implements Can.HipHeight<Deadlift>,
        Can.Stance<Deadlift>,
        Can.SpineRounding<Deadlift>,
        With.GripWidth<Deadlift>,
        With.BarHeight<Deadlift>,
        With.BarAhead<Deadlift>,
        With.HoldsBar<Deadlift> {

  private Deadlift(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static Deadlift of(Person lifter) {
    return new Deadlift(nothingSaid(lifter));
  }

  @Override
  Deadlift changed(Setup changed) {
    return new Deadlift(changed);
  }

  @Override
  public String name() {
    return "conventional deadlift";
  }

  @Override
  public String purpose() {
    return "Pull a bar from the floor to standing, hands outside the knees: "
        + "hips, back, thighs.";
  }

  @Override
  public String source() {
    return "stance, turn-out and hand spacing: Escamilla et al. 2000, Med Sci "
        + "Sports Exerc 32:1265-1275, Table 1";
  }

  @Override
  void say(Posture p) {
    Barbell bar = Weights.bar(p, 1.2, Site.HAND);
    Feet.stand(p, p.value(Setting.STANCE_WIDTH, 0.32) / 2, p.angle(Setting.TURN_OUT, 14));
    FromFloor.hands(p, 0.55, Grip.OVERHAND);
    if (p.isStart()) {
      FromFloor.barAt(p, p.value(Setting.BAR_HEIGHT, bar.plateRadius()));
      FromFloor.down(p, 65, 60);
    } else if (p.isFinish()) {
      Stands.tall(p);
      p.balancedOver(0);
    }
  }
}
