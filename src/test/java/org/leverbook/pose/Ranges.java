package org.leverbook.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leverbook.body.Freedom;
import org.leverbook.body.Joint;
import org.leverbook.body.SegmentTree;

/** Compares the angles of a pose with the ranges of its joints. */
public final class Ranges {

  /** A solver's rounding counts as inside, radians. */
  private static final double ROUNDING = 1e-6;

  private Ranges() {}

  /**
   * The joints that would have to go beyond their range.
   *
   * @param pose any pose
   * @return one sentence for each, as in "right ankle: 38° of flexion, the range ends at 35°";
   *     empty where all fit
   */
  public static List<String> exceeded(Pose pose) {
    List<String> sentences = new ArrayList<>();
    SegmentTree tree = pose.tree();
    for (int i = 1; i < tree.size(); i++) {
      Joint joint = tree.segment(i).joint();
      for (int k = 0; k < joint.freedoms().size(); k++) {
        Freedom freedom = joint.freedoms().get(k);
        double angle = pose.angle(tree.firstAngle(i) + k);
        if (angle > freedom.high() + ROUNDING || angle < freedom.low() - ROUNDING) {
          double end = angle > freedom.high() ? freedom.high() : freedom.low();
          sentences.add(
              String.format(
                  Locale.ROOT,
                  "the %s would have to %s by %.0f°, but its range ends at %.0f°",
                  joint.fullName(),
                  freedom.motion().verb(angle),
                  Math.abs(Math.toDegrees(angle)),
                  Math.abs(Math.toDegrees(end))));
        }
      }
    }
    return sentences;
  }
}
