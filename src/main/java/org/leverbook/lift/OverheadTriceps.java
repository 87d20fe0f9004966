package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.load.Cable;
import org.leverbook.load.Grasps;
import org.leverbook.solve.Feature;

/**
 * A seated extension of the elbows overhead, a weight in both hands or, where a stack or a pulley
 * is said, a cable from behind.
 */
public final class OverheadTriceps extends Lift<OverheadTriceps>
    implements Can.ElbowBend<OverheadTriceps>,
        Can.TrunkLean<OverheadTriceps>,
        With.HoldsDumbbells<OverheadTriceps>,
        With.Pulley<OverheadTriceps>,
        With.PullsCable<OverheadTriceps> {

  /** How far the upper arms lean ahead of upright, radians. */
  private static final double ARMS_AHEAD = Math.toRadians(10);

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
    boolean cable = atCable(p);
    if (cable) {
      Vector3D pulley =
          new Vector3D(p.value(Setting.PULLEY_AHEAD, -0.8), p.value(Setting.PULLEY_HEIGHT, 0.3), 0);
      Weights.cable(p, 0.12, pulley, Grasps.BOTH_HANDS);
    } else {
      Weights.hands(p, "dumbbell", 0.08, List.of(Side.RIGHT, Side.LEFT));
    }
    double lean = p.angle(Setting.TRUNK_LEAN, cable ? 15 : 0);
    Rests.seated(p, Rests.usualSeat(p), lean);
    p.spine();
    Hands.apart(p, 0.12, Grip.NEUTRAL);
    p.exactlyRadians(
        JointId.ELBOW, "flexion", p.between(p.angle(Setting.ELBOW_BEND, 125), Math.toRadians(10)));
    p.usually(JointId.SHOULDER, "flexion", 160, Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", 5, Posture.EASY);
    for (Side side : p.sides()) {
      Feature arm = p.direction(side.of("upper arm"), Vector3D.MINUS_J);
      p.statements()
          .leans(
              "the " + side.of("upper arm"),
              "its inclination",
              arm,
              Vector3D.PLUS_I,
              Math.sin(lean + ARMS_AHEAD));
    }
  }

  private static boolean atCable(Posture p) {
    return p.setup().main().filter(Cable.class::isInstance).isPresent()
        || p.isSet(Setting.PULLEY_HEIGHT)
        || p.isSet(Setting.PULLEY_AHEAD);
  }
}
