package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.solve.Feature;

/** A seated extension of the elbows overhead, one weight in both hands. */
public final class OverheadTriceps extends Lift<OverheadTriceps>
    implements Can.ElbowBend<OverheadTriceps>, With.HoldsDumbbells<OverheadTriceps> {

  private OverheadTriceps(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static OverheadTriceps of(Person lifter) {
    return new OverheadTriceps(nothingSaid(lifter));
  }

  @Override
  OverheadTriceps changed(Setup changed) {
    return new OverheadTriceps(changed);
  }

  @Override
  public String name() {
    return "overhead triceps extension";
  }

  @Override
  public String purpose() {
    return "Straighten the elbows overhead with a weight: the long head of "
        + "the triceps at length.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.hands(p, "dumbbell", 0.08, List.of(Side.RIGHT, Side.LEFT));
    Rests.seated(p, Rests.usualSeat(p), 0);
    p.spine();
    Hands.apart(p, 0.12, Grip.NEUTRAL);
    p.exactlyRadians(
        JointId.ELBOW, "flexion", p.between(p.angle(Setting.ELBOW_BEND, 110), Math.toRadians(10)));
    p.usually(JointId.SHOULDER, "flexion", 160, Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", 5, Posture.EASY);
    for (Side side : p.sides()) {
      Feature arm = p.direction(side.of("upper arm"), Vector3D.MINUS_J);
      p.statements()
          .leans("the " + side.of("upper arm"), "its inclination", arm, Vector3D.PLUS_I, 0.2);
    }
  }
}
