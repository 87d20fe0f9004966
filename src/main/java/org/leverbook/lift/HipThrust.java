package org.leverbook.lift;

import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;

/**
 * A hip thrust: upper back on a bench, a bar in the fold of the hips, from low hips to level ones.
 */
public final class HipThrust extends Lift<HipThrust>
    implements With.PadHeight<HipThrust>, With.HoldsBar<HipThrust> {

  private HipThrust(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static HipThrust of(Person lifter) {
    return new HipThrust(nothingSaid(lifter));
  }

  @Override
  HipThrust changed(Setup changed) {
    return new HipThrust(changed);
  }

  @Override
  public String name() {
    return "hip thrust";
  }

  @Override
  public String purpose() {
    return "Lift a bar with the hips, upper back on a bench: hip extensors "
        + "near their short end.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 1.0, Site.HIP_CREASE);
    double bench = p.value(Setting.PAD_HEIGHT, 0.40);
    double back = 0.74 * (p.links().pelvisUp() + p.links().spine());
    // So far ahead that the shins end upright.
    double ankles = 1.18 * p.links().thigh();
    // Upper back and feet stay where they are while the hips go up.
    for (Side side : p.sides()) {
      p.statements()
          .along(
              "the " + side.of("upper back low"),
              "the bench",
              p.place(Site.UPPER_BACK_LOW, side),
              new Vector3D(-back, bench, 0),
              List.of(Vector3D.PLUS_I, Vector3D.PLUS_J));
      double middle = ankles + Feet.midfootAhead(p);
      Feet.foot(p, side, new Vector3D(middle, 0, side.sign() * 0.18), Math.toRadians(15), 0);
    }
    p.on(Footing.feet(p.body()));
    p.against(
        new Pad(
            "bench",
            List.of(Site.UPPER_BACK_LOW),
            Vector3D.PLUS_J,
            Optional.empty(),
            0.3,
            1.2,
            Pad.CLOTH_FRICTION,
            false));
    p.roughly(0, bench + p.between(-0.15, 0.05), p.between(-60, -90));
    p.usually(JointId.HIP, "flexion", p.between(60, 0), Posture.EASY);
    p.usually(JointId.KNEE, "flexion", 90, Posture.EASY);
    p.spine(p.between(5, 0));
    if (p.isStart()) {
      p.atHeight(JointId.HIP, bench - 0.15, "low hips");
    } else if (p.isFinish()) {
      p.statements()
          .inclined(
              "the thigh",
              p.joint(JointId.KNEE, Side.RIGHT),
              p.joint(JointId.HIP, Side.RIGHT),
              -Math.PI / 2);
    }
  }
}
