package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Grasps;
import org.leverbook.support.Pad;

/** A pulldown at a high pulley, seated under a thigh pad, from straight arms to the chest. */
public final class LatPulldown extends Lift<LatPulldown>
    implements With.GripWidth<LatPulldown>,
        With.Grips<LatPulldown>,
        With.Pulley<LatPulldown>,
        With.SeatHeight<LatPulldown>,
        With.PullsCable<LatPulldown>,
        Can.TrunkLean<LatPulldown> {

  private LatPulldown(Setup setup) {
    super(setup);
  }

  /**
   * A pulldown of this person.
   *
   * @param lifter who
   * @return the pulldown
   */
  public static LatPulldown of(Person lifter) {
    return new LatPulldown(nothingSaid(lifter));
  }

  @Override
  LatPulldown changed(Setup changed) {
    return new LatPulldown(changed);
  }

  @Override
  public String name() {
    return "lat pulldown";
  }

  @Override
  public String purpose() {
    return "Pull a bar down from overhead, thighs held by a pad: lats and elbow flexors.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    double seat = p.value(Setting.SEAT_HEIGHT, Rests.usualSeat(p));
    double lean = p.angle(Setting.TRUNK_LEAN, -15);
    Rests.seated(p, seat, lean);
    p.spine(-5);
    p.against(Pad.thighs());
    p.stays("the thigh", p.place(Site.THIGH, Side.RIGHT), List.of(Vector3D.PLUS_J));
    Grip grip = p.grip(Grip.OVERHAND);
    double width = Pulls.width(p, grip, 3 * p.links().shoulderHalfWidth());
    Hands.apart(p, width, grip, p.between(-Hands.askew(p, width), 0));
    Vector3D pulley =
        new Vector3D(p.value(Setting.PULLEY_AHEAD, 0.10), p.value(Setting.PULLEY_HEIGHT, 2.2), 0);
    Weights.cable(p, 0.5, pulley, Grasps.BOTH_HANDS);
    p.usually(JointId.SHOULDER, "flexion", p.between(150, 20), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(20, 45), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(5, 120), Posture.EASY);
    p.usually(JointId.SHOULDER, "rotation", p.between(10, -20), Posture.EASY);
    if (p.isStart()) {
      p.exactly(JointId.ELBOW, "flexion", 5);
      // The handle hangs under the pulley.
      for (Side side : p.sides()) {
        p.statements()
            .along(
                "the " + side.of("hand"),
                "under the pulley",
                p.place(Site.HAND, side),
                pulley,
                List.of(Vector3D.PLUS_I));
      }
    } else if (p.isFinish()) {
      p.statements()
          .together(
              "the bar",
              "the upper chest",
              p.place(Site.HAND, Side.RIGHT),
              p.place(Site.UPPER_CHEST, Side.RIGHT),
              new Vector3D(0.05, 0.10, 0),
              List.of(Vector3D.PLUS_I, Vector3D.PLUS_J));
    }
    Hands.straightWay(p);
  }
}
