package org.leverbook.lift;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;

/** A curl of dumbbells lying back on an inclined bench, the arms hanging. */
public final class InclineCurl extends Lift<InclineCurl>
    implements With.BenchAngle<InclineCurl>,
        Can.ElbowBend<InclineCurl>,
        With.HoldsDumbbells<InclineCurl> {

  private InclineCurl(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static InclineCurl of(Person lifter) {
    return new InclineCurl(nothingSaid(lifter));
  }

  @Override
  InclineCurl changed(Setup changed) {
    return new InclineCurl(changed);
  }

  @Override
  public String name() {
    return "incline curl";
  }

  @Override
  public String purpose() {
    return "Bend the elbows with the arms hanging behind the trunk: the " + "biceps at length.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.hands(p, "dumbbell", 0.12, List.of(Side.RIGHT, Side.LEFT));
    Rests.reclined(p, p.angle(Setting.BENCH_ANGLE, 55));
    p.exactlyRadians(
        JointId.ELBOW, "flexion", p.between(Math.toRadians(5), p.angle(Setting.ELBOW_BEND, 130)));
    p.exactly(JointId.FOREARM, "rotation", 10);
    Hands.upperArm(p, 0);
  }
}
