package org.leverbook.lift;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;

/**
 * The turning point of a kettlebell swing, held still: from standing to the bell behind the knees.
 * What speed adds is left out.
 */
public final class SwingBottom extends Lift<SwingBottom>
    implements Can.KneeBend<SwingBottom>,
        Can.TrunkLean<SwingBottom>,
        Can.Stance<SwingBottom>,
        Can.SpineRounding<SwingBottom>,
        With.HoldsDumbbells<SwingBottom> {

  private SwingBottom(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static SwingBottom of(Person lifter) {
    return new SwingBottom(nothingSaid(lifter));
  }

  @Override
  SwingBottom changed(Setup changed) {
    return new SwingBottom(changed);
  }

  @Override
  public String name() {
    return "kettlebell swing, bottom";
  }

  @Override
  public String purpose() {
    return "Sit back with a kettlebell between the thighs, held still: the "
        + "turning point of a swing.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.inBothHands(p, "kettlebell", 0.2);
    Stands.feet(p, 0.42, 15);
    p.spine();
    Hands.straight(p);
    Hands.apart(p, 0.10, Grip.OVERHAND);
    double knees = p.angle(Setting.KNEE_BEND, 45);
    double lean = p.angle(Setting.TRUNK_LEAN, 55);
    if (p.isStart()) {
      Stands.tall(p);
      p.usually(JointId.SHOULDER, "flexion", 10, 0.5);
    } else if (p.isFinish()) {
      p.roughly(-0.25, 0.8 * p.links().standingHipHeight(), 55);
      p.usually(JointId.HIP, "flexion", 90, Posture.EASY);
      p.exactlyRadians(JointId.KNEE, "flexion", knees);
      p.trunkLeans(lean);
      for (Side side : p.sides()) {
        // Behind the ankles, below the seat.
        p.statements()
            .rather(p.place(Site.HAND, side), Vector3D.PLUS_I, -0.5 * p.links().footLength(), 2);
      }
    }
  }
}
