package org.leverbook.lift;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.solve.Feature;
import org.leverbook.support.LimbRest;
import org.leverbook.support.Pad;

/** A seated wrist curl, the forearms on a level bench, palms up. */
public final class WristCurl extends Lift<WristCurl>
    implements With.GripWidth<WristCurl>,
        With.Grips<WristCurl>,
        With.PadHeight<WristCurl>,
        With.HoldsBar<WristCurl> {

  /** The bench's height above the seat, metres: common practice, no source. */
  private static final double BENCH_ABOVE_SEAT = 0.22;

  /** From a forearm's axis to its skin, metres: common practice, no source. */
  private static final double FLESH = 0.035;

  private WristCurl(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static WristCurl of(Person lifter) {
    return new WristCurl(nothingSaid(lifter));
  }

  @Override
  WristCurl changed(Setup changed) {
    return new WristCurl(changed);
  }

  @Override
  public String name() {
    return "wrist curl";
  }

  @Override
  public String purpose() {
    return "Bend the wrists with the forearms on a bench: the flexors of the " + "forearm.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    Weights.bar(p, 0.2, Site.HAND);
    Rests.seated(p, Rests.usualSeat(p), Math.toRadians(25));
    p.spine(15);
    Grip grip = p.grip(Grip.UNDERHAND);
    Arms.grasp(p, p.value(Setting.GRIP_WIDTH, 2 * p.links().shoulderHalfWidth()), grip);
    p.exactly(
        JointId.WRIST, "flexion", grip == Grip.OVERHAND ? p.between(55, -50) : p.between(-50, 55));
    double bench = p.value(Setting.PAD_HEIGHT, Rests.usualSeat(p) + BENCH_ABOVE_SEAT);
    p.atHeight(JointId.ELBOW, bench + FLESH, "the bench");
    List<LimbRest.Spot> spots = new ArrayList<>();
    for (Side side : p.sides()) {
      // Forearms level on the bench, pointing ahead.
      Feature forearm = p.direction(side.of("forearm"), Vector3D.MINUS_J);
      p.statements().leans("the " + side.of("forearm"), "the bench", forearm, Vector3D.PLUS_J, 0);
    }
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      spots.add(new LimbRest.Spot(Site.ELBOW, side));
      spots.add(new LimbRest.Spot(Site.FOREARM, side));
    }
    p.on(new LimbRest("bench under the forearms", spots, bench, FLESH, Pad.CLOTH_FRICTION));
    p.usually(JointId.SHOULDER, "flexion", 40, Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", 60, Posture.EASY);
  }
}
