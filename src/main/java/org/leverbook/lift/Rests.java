package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.quantity.Units;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;

/** Benches and seats in a posture, and how the body lies or sits on them. */
final class Rests {

  /** Height of a flat bench, metres: 42 to 45 cm is usual in competition rules, from memory. */
  static final double BENCH_HEIGHT = 0.44;

  /** From this tilt on a bench press is one for the upper chest, radians: common practice. */
  private static final double INCLINED = Math.toRadians(30);

  private Rests() {}

  /**
   * Lies on the back on a bench, head towards -x, the hips at x = 0; feet on the floor where the
   * legs reach it.
   *
   * @param p the posture
   * @param tilt of the bench, radians: 0 flat, head up
   */
  static void supine(Posture p, double tilt) {
    Vector3D out = new Vector3D(Math.sin(tilt), Math.cos(tilt), 0);
    p.roughly(0, BENCH_HEIGHT + 0.1, Math.toDegrees(tilt) - 90);
    Vector3D on = new Vector3D(0, BENCH_HEIGHT, 0);
    for (Side side : p.sides()) {
      for (Site site : List.of(Site.UPPER_BACK_LOW, Site.BUTTOCK)) {
        p.statements()
            .along("the " + site.on(side), "the bench", p.place(site, side), on, List.of(out));
      }
    }
    p.statements()
        .along(
            "the hips",
            "their place on the bench",
            p.joint(JointId.HIP, Side.RIGHT),
            new Vector3D(0, 0, 0),
            List.of(Vector3D.PLUS_I));
    p.statements().rather(p.place(Site.BACK_OF_HEAD, Side.MIDLINE), out, on.dotProduct(out), 3);
    p.usually(JointId.HIP, "flexion", 20 + Math.toDegrees(tilt), Posture.EASY);
    p.usually(JointId.HIP, "abduction", 20, 0.2);
    p.usually(JointId.KNEE, "flexion", 80, Posture.EASY);
    p.against(Pad.bench(Units.deg(Math.toDegrees(tilt))), Site.UPPER_BACK_LOW, Site.BUTTOCK);
    feet(p, 0.42, 0.24, 10);
  }

  /**
   * Where a bar comes down to the chest of a lifter on a bench: to the lower chest on a flat one,
   * to the upper chest from {@link #INCLINED} on, between them on the way there. Common practice,
   * no source.
   *
   * @param tilt of the bench, radians
   * @return 0 for the lower chest, 1 for the upper one
   */
  static double shareOfUpperChest(double tilt) {
    return Math.min(1, tilt / INCLINED);
  }

  /**
   * Feet flat on the floor, as near to a place as the legs like.
   *
   * @param p the posture
   * @param forward where the ankles would rather be, metres
   * @param halfWidth midline to ankle, metres
   * @param turnOut degrees
   */
  static void feet(Posture p, double forward, double halfWidth, double turnOut) {
    double angle = Math.toRadians(turnOut);
    for (Side side : p.sides()) {
      Vector3D ahead = new Vector3D(Math.cos(angle), 0, side.sign() * Math.sin(angle));
      Vector3D across = ahead.crossProduct(Vector3D.PLUS_J);
      String foot = "the " + side.of("foot");
      p.statements()
          .along(
              "the " + side.of("ankle"),
              "its height over the floor",
              p.joint(JointId.ANKLE, side),
              new Vector3D(0, p.links().footHeight(), side.sign() * halfWidth),
              List.of(Vector3D.PLUS_J, Vector3D.PLUS_K));
      p.statements().rather(p.joint(JointId.ANKLE, side), Vector3D.PLUS_I, forward, 1);
      p.statements()
          .leans(foot, "the floor", p.direction(side.of("foot"), Vector3D.PLUS_J), ahead, 0);
      p.statements()
          .leans(foot, "the floor", p.direction(side.of("foot"), Vector3D.PLUS_J), across, 0);
      p.statements()
          .leans(foot, "its direction", p.direction(side.of("foot"), Vector3D.PLUS_I), across, 0);
      p.exactly(JointId.BALL, side, "flexion", 0);
    }
    p.on(Footing.feet(p.body()));
  }

  /**
   * Sits on a level seat, the hips at x = 0, feet flat on the floor ahead.
   *
   * @param p the posture
   * @param height of the seat, metres
   * @param lean of the trunk, radians, forward
   */
  static void seated(Posture p, double height, double lean) {
    p.roughly(0, height + 0.1, Math.toDegrees(lean));
    p.atHeight(Site.SITTING_BONE, height, "the seat");
    p.atForward(JointId.HIP, 0, "their place on the seat");
    p.trunkLeans(lean);
    p.usually(JointId.HIP, "flexion", 80, Posture.EASY);
    p.usually(JointId.KNEE, "flexion", 90, Posture.EASY);
    p.usually(JointId.HIP, "abduction", 10, 0.2);
    p.against(Pad.seat(), Site.SITTING_BONE);
    feet(p, p.links().thigh(), 0.14, 10);
  }

  /**
   * Sits back on an inclined bench: a level seat and a back rest.
   *
   * @param p the posture
   * @param tilt of the back rest, radians: 90 degrees is upright
   */
  static void reclined(Posture p, double tilt) {
    double height = usualSeat(p);
    double lean = tilt - Math.PI / 2;
    p.roughly(0, height + 0.1, Math.toDegrees(lean));
    p.atHeight(Site.SITTING_BONE, height, "the seat");
    p.atForward(JointId.HIP, 0, "their place on the seat");
    p.trunkLeans(lean);
    p.spine();
    p.usually(JointId.HIP, "flexion", 70, Posture.EASY);
    p.usually(JointId.KNEE, "flexion", 85, Posture.EASY);
    p.usually(JointId.HIP, "abduction", 15, 0.2);
    p.against(Pad.seat(), Site.SITTING_BONE);
    p.against(Pad.back(Units.deg(Math.toDegrees(tilt))));
    feet(p, p.links().thigh(), 0.18, 15);
  }

  /** The seat height at which thighs are level and feet flat. */
  static double usualSeat(Posture p) {
    return p.links().footHeight() + p.links().shank() - 0.07;
  }
}
