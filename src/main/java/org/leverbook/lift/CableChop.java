package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Grasps;
import org.leverbook.statics.View;

/** A turn of the trunk against a cable from the side, straight arms, from high to low. */
public final class CableChop extends Lift<CableChop>
    implements Can.Turn<CableChop>,
        Can.KneeBend<CableChop>,
        Can.Stance<CableChop>,
        With.Pulley<CableChop>,
        With.PullsCable<CableChop>,
        Can.OneSided<CableChop> {

  private CableChop(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static CableChop of(Person lifter) {
    return new CableChop(nothingSaid(lifter));
  }

  @Override
  CableChop changed(Setup changed) {
    return new CableChop(changed);
  }

  @Override
  public String name() {
    return "cable chop";
  }

  @Override
  public String purpose() {
    return "Pull a cable from beside and above across the body, straight arms: the turning muscles of trunk and hips.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  boolean bothSidesAlike() {
    return false;
  }

  @Override
  View view() {
    return View.FRONT;
  }

  @Override
  void say(Posture p) {
    Side from = setup().side().orElse(Side.RIGHT);
    Vector3D pulley =
        new Vector3D(
            p.value(Setting.PULLEY_AHEAD, 0.2),
            p.value(Setting.PULLEY_HEIGHT, 1.15 * p.links().stature()),
            from.sign() * 1.2);
    Weights.cable(p, 0.1, pulley, Grasps.BOTH_HANDS);
    Stands.feet(p, 0.35 * p.links().stature(), 15);
    p.roughly(-0.1, 0.97 * p.links().standingHipHeight(), 0);
    p.spine();
    Bodies.kneesBent(p, p.angle(Setting.KNEE_BEND, 20));
    p.ratherTrunkLeans(Math.toRadians(p.between(0, 12)), 1);
    double away = p.angle(Setting.TURN, from.sign() * 35);
    double turn = p.between(-0.8 * away, away);
    Bodies.turned(p, turn);
    Pulls.handsAhead(p, turn);
    // From the height of the pulley, as far as the arms reach, to as far on the other side of the
    // middle: a high pulley is chopped down, a low one lifted up.
    double low = p.links().standingHipHeight();
    double high = low + 0.9 * p.links().spine() + 0.35;
    double begins = Math.max(low, Math.min(high, pulley.getY()));
    double height = p.between(begins, low + high - begins);
    p.statements()
        .along(
            "the right hand",
            "its height",
            p.place(Site.HAND, Side.RIGHT),
            new Vector3D(0, height, 0),
            List.of(Vector3D.PLUS_J));
  }
}
