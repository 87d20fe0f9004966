package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Sled;
import org.leverbook.quantity.Units;
import org.leverbook.support.Pad;

/** A leg press on a sloping rail, from nearly straight knees down. */
public final class LegPress extends Lift<LegPress>
    implements Can.KneeBend<LegPress>, With.PadAngle<LegPress>, With.PushesMass<LegPress> {

  /** Height of the hips, metres, and how the seat is made: common practice, no source. */
  private static final double SEAT = 0.35;

  private static final double RECLINED = Math.toRadians(20);

  /** The feet stand this share of the thigh's length above the hips along the plate. */
  private static final double HIGH = 0.33;

  private LegPress(Setup setup) {
    super(setup);
  }

  /**
   * The lift with its usual settings.
   *
   * @param lifter who
   * @return the lift
   */
  public static LegPress of(Person lifter) {
    return new LegPress(nothingSaid(lifter));
  }

  @Override
  LegPress changed(Setup changed) {
    return new LegPress(changed);
  }

  @Override
  public String name() {
    return "leg press";
  }

  @Override
  public String purpose() {
    return "Press a sled up its rail with the back on a pad: thighs and hips, "
        + "hardly any back.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    double slope = p.angle(Setting.PAD_ANGLE, 45);
    Vector3D rail = new Vector3D(Math.cos(slope), Math.sin(slope), 0);
    Vector3D across = new Vector3D(-Math.sin(slope), Math.cos(slope), 0);
    // The back rest leans back with the rail, so that bent hips keep room.
    double lean = -Math.min(Math.PI / 2, slope + RECLINED);
    p.roughly(0, SEAT, Math.toDegrees(lean));
    p.trunkLeans(lean);
    p.atForward(JointId.HIP, 0, "the seat");
    p.atHeight(JointId.HIP, SEAT, "the seat");
    Vector3D out = new Vector3D(Math.cos(lean), -Math.sin(lean), 0);
    p.stays("the back", p.place(Site.MID_BACK, Side.RIGHT), List.of(out));
    p.against(Pad.back(Units.deg(90 + Math.toDegrees(lean))));
    p.lifts(Sled.of(Units.kg(Weights.said(p, 1.5)), Units.deg(Math.toDegrees(slope))));
    Machines.handles(p, 0.05, SEAT, 3.2 * p.links().shoulderHalfWidth());
    p.spine(10);
    for (Side side : p.sides()) {
      Vector3D hip = new Vector3D(0, SEAT, side.sign() * 0.16);
      p.statements()
          .points(
              "the " + side.of("foot"),
              "the plate",
              p.direction(side.of("foot"), Vector3D.PLUS_J),
              rail.negate())
          .leans(
              "the " + side.of("foot"),
              "its direction",
              p.direction(side.of("foot"), Vector3D.PLUS_K),
              across,
              0)
          .along(
              "the " + side.of("foot"),
              "its place on the plate",
              p.place(Site.FOOT, side),
              hip.add(across.scalarMultiply(HIGH * p.links().thigh())),
              List.of(across, Vector3D.PLUS_K));
      p.statements().rather(p.direction(side.of("shank"), Vector3D.PLUS_K), across, 0, 1);
      p.exactly(JointId.BALL, side, "flexion", 0);
    }
    p.usually(JointId.HIP, "flexion", p.between(70, 110), Posture.EASY);
    double knees = p.angle(Setting.KNEE_BEND, 80);
    p.exactlyRadians(JointId.KNEE, "flexion", p.between(Math.toRadians(10), knees));
  }
}
