package org.leverbook.lift;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.solve.Feature;
import org.leverbook.support.Floor;
import org.leverbook.support.LimbRest;

/** Straight bodies held on forearms and feet. */
final class Holds {

  /** From the middle of a forearm's bones to its skin, metres: by eye, no source. */
  private static final double FOREARM_FLESH = 0.04;

  /** Half of the breadth of a foot on its edge, metres: by eye, no source. */
  private static final double FOOT_EDGE = 0.05;

  private Holds() {}

  /**
   * Knees and body straight, or the hips at a height of their own.
   *
   * @param p the posture
   * @param sideways whether the hips sag or rise to the side, not by bending
   */
  static void straightOrHips(Posture p, boolean sideways) {
    p.exactly(JointId.KNEE, "flexion", 0);
    p.spine();
    if (p.isSet(Setting.HIP_HEIGHT)) {
      p.statements()
          .along(
              "the middle of the hips",
              "its height",
              new Feature.Point(p.body().tree().indexOf("pelvis"), Vector3D.ZERO),
              new Vector3D(0, p.value(Setting.HIP_HEIGHT, 0.4), 0),
              List.of(Vector3D.PLUS_J));
    }
    if (sideways || !p.isSet(Setting.HIP_HEIGHT)) {
      p.exactly(JointId.HIP, "flexion", 0);
    }
  }

  /**
   * Forearms flat on the floor, elbows under the shoulders.
   *
   * @param p the posture
   * @param sides which
   */
  static void forearmsDown(Posture p, List<Side> sides) {
    List<LimbRest.Spot> spots = new ArrayList<>();
    for (Side side : sides) {
      for (Site site : List.of(Site.ELBOW, Site.FOREARM)) {
        p.statements()
            .along(
                "the " + site.on(side),
                "the floor",
                p.place(site, side),
                new Vector3D(0, FOREARM_FLESH, 0),
                List.of(Vector3D.PLUS_J));
      }
      p.statements()
          .together(
              "the " + side.of("elbow"),
              "under the shoulder",
              p.joint(JointId.ELBOW, side),
              p.joint(JointId.SHOULDER, side),
              Vector3D.ZERO,
              List.of(Vector3D.PLUS_I));
      p.usually(JointId.ELBOW, side, "flexion", 90, Posture.EASY);
      for (Side each : both(p, side)) {
        spots.add(new LimbRest.Spot(Site.ELBOW, each));
        spots.add(new LimbRest.Spot(Site.FOREARM, each));
      }
    }
    p.on(new LimbRest("floor under the forearm", spots, 0, FOREARM_FLESH, Floor.SHOE_FRICTION));
  }

  /**
   * Lies on one side on the edge of that foot, the other foot stacked on it, head towards +x.
   *
   * @param p the posture
   * @param down the side below
   */
  static void onEdgeOfFoot(Posture p, Side down) {
    Side up = down == Side.RIGHT ? Side.LEFT : Side.RIGHT;
    p.roughly(0.85, 0.35, 75);
    p.statements().usually("pelvis turn", down.sign() * Math.PI / 2, 0.003);
    Vector3D facing = Vector3D.PLUS_J;
    p.statements()
        .leans(
            "the trunk", "square to the floor", p.direction("pelvis", Vector3D.PLUS_I), facing, 0)
        .along(
            "the " + down.of("foot"),
            "its place on the floor",
            p.place(Site.FOOT, down),
            Vector3D.ZERO,
            List.of(Vector3D.PLUS_I, Vector3D.PLUS_K))
        .together(
            "the " + up.of("foot"),
            "the other foot",
            p.place(Site.FOOT, up),
            p.place(Site.FOOT, down),
            new Vector3D(0, 2 * FOOT_EDGE, 0),
            List.of(Vector3D.PLUS_I, Vector3D.PLUS_J, Vector3D.PLUS_K));
    for (Site site : List.of(Site.HEEL, Site.BALL_OF_FOOT)) {
      p.statements()
          .along(
              "the edge of the " + down.of("foot"),
              "the floor",
              p.place(site, down),
              new Vector3D(0, FOOT_EDGE, 0),
              List.of(Vector3D.PLUS_J));
    }
    if (p.isSet(Setting.HIP_HEIGHT)) {
      p.statements().usually("side bend", 0, 0.1);
    } else {
      p.statements().exactly("side bend", 0);
    }
    // The weight is a little behind the middle of the foot, the forearm points ahead.
    p.balancedSideways(down.sign() * 0.03);
    p.statements()
        .proportion(
            5, p.name(JointId.HIP, down, "abduction"), 1, p.name(JointId.HIP, up, "abduction"));
    p.on(
        new LimbRest(
            "floor under the foot",
            List.of(new LimbRest.Spot(Site.HEEL, down), new LimbRest.Spot(Site.BALL_OF_FOOT, down)),
            0,
            FOOT_EDGE,
            Floor.SHOE_FRICTION));
  }

  /** One side, and the other as well where both go alike. */
  private static List<Side> both(Posture p, Side side) {
    return p.sides().size() == 1 ? List.of(Side.RIGHT, Side.LEFT) : List.of(side);
  }
}
