package org.leverbook.lift;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.support.FixedBar;

/** A dip between parallel bars, from straight arms until the upper arms are level. */
public final class Dip extends Lift<Dip>
    implements With.GripWidth<Dip>, Can.TrunkLean<Dip>, Can.Raise<Dip>, Can.ElbowsOut<Dip> {

  private Dip(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static Dip of(Person lifter) {
    return new Dip(nothingSaid(lifter));
  }

  @Override
  Dip changed(Setup changed) {
    return new Dip(changed);
  }

  @Override
  public String name() {
    return "dip";
  }

  @Override
  public String purpose() {
    return "Lower and press the body between two bars: chest, triceps, front "
        + "of the shoulders.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    double width = p.value(Setting.GRIP_WIDTH, 2.5 * p.links().shoulderHalfWidth());
    p.roughly(0, 1.3, 10);
    p.balancedOver(0).spine();
    for (Side side : p.sides()) {
      p.statements()
          .at(
              "the " + side.of("hand"),
              "the bar",
              p.place(Site.HAND, side),
              new Vector3D(0, 1.3, side.sign() * width / 2))
          .points(
              "the " + side.of("hand"),
              "the line of the bar",
              p.direction(side.of("hand"), Vector3D.PLUS_K),
              Vector3D.PLUS_I.scalarMultiply(side.sign()));
    }
    p.on(new FixedBar());
    p.usually(JointId.KNEE, "flexion", 80, 0.5);
    p.usually(JointId.HIP, "flexion", 5, 0.1);
    p.usually(JointId.WRIST, "flexion", -20, 0.2);
    p.usually(JointId.SHOULDER, "flexion", p.between(0, -50), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(0, 90), Posture.EASY);
    double lean = p.angle(Setting.TRUNK_LEAN, 25);
    double raise = p.angle(Setting.RAISE, 80);
    if (p.isStart()) {
      Hands.straight(p);
      p.ratherTrunkLeans(0.3 * lean, 0.5);
    } else if (p.isFinish()) {
      p.trunkLeans(lean);
      Hands.armsRaised(p, raise);
      Hands.elbowsOut(p, p.angle(Setting.ELBOWS_OUT, 40), 1);
    }
  }
}
