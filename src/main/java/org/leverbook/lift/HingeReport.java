package org.leverbook.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Barbell;
import org.leverbook.load.Load;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Notes;

/**
 * Tells how a hinge came out: the numbers of its posture, and what was wished, relaxed or assumed.
 *
 * @param posture what was asked
 * @param pose what was found
 */
record HingeReport(Posture posture, Pose pose) {

  /** Below this share of the foot a standing lifter feels the heels: common practice, no source. */
  private static final double ON_THE_HEELS = 0.35;

  /** A spine bent by less than this keeps its standing shape, and a bar no further off is there. */
  private static final double HARDLY_BENT = Math.toRadians(1);

  private static final double HARDLY_OFF = 0.005;

  /**
   * Below this knee bend the hamstrings limit the hips first, at about the second angle; from
   * memory, degrees.
   */
  private static final double STRAIGHT_KNEE = 45;

  private static final double STRAIGHT_KNEE_HIP = 90;

  List<Fact> facts() {
    Fact hips = new Fact("hip height", 100 * pose.placed().centre("right hip").getY(), "cm");
    Fact ahead = new Fact("shoulders ahead of the bar", 100 * ahead(), "cm");
    Fact bar = new Fact("bar ahead", 100 * bar().getX(), "cm");
    return posture.isStart() ? List.of(hips, ahead, bar) : List.of(hips, bar);
  }

  Notes notes() {
    if (!posture.isStart()) {
      return Notes.ofPosture(List.of());
    }
    List<String> notes = new ArrayList<>(List.of(shoulders()));
    if (!posture.isSet(Setting.BAR_AHEAD)) {
      notes.add(
          Math.abs(bar().getX()) < HARDLY_OFF
              ? "The hands are over the middle of the foot."
              : told(
                  "The hands are %.1f cm %s the middle of the foot: balance and shins want them there.",
                  100 * Math.abs(bar().getX()), bar().getX() > 0 ? "ahead of" : "behind"));
    }
    notes.add(spine());
    double knee = Math.toDegrees(angle(JointId.KNEE));
    double hip = Math.toDegrees(angle(JointId.HIP));
    if (knee < STRAIGHT_KNEE && hip > STRAIGHT_KNEE_HIP) {
      notes.add(
          told(
              "With knees this straight (%.0f°) most people's hips flex only 80 to 90° (from memory), here %.0f°: expect"
                  + " more bend in the spine than shown.",
              knee, hip));
    }
    Set<String> ofLoads = balance();
    notes.addAll(ofLoads);
    double overlap = FromFloor.inside(posture, Side.RIGHT, pose.placed());
    if (overlap > HARDLY_OFF && mass() > 0) {
      notes.add(
          told(
              "At the bar's height the legs would stand %.1f cm further forward than the bar lets them: a real lifter"
                  + " rolls the bar that much ahead or raises the hips.",
              100 * overlap));
    }
    return new Notes(notes, ofLoads);
  }

  private String shoulders() {
    return told(
        "Shoulders %.1f cm ahead of %s 0 to %.1f cm were allowed (common practice, no source), and"
            + " what brings the balance near the middle of the foot was taken.",
        100 * ahead(),
        mass() > 0 ? "the bar; for this load" : "the empty hands;",
        100 * HingeWays.mostAhead(posture.body(), new Barbell(mass(), 0.2)));
  }

  private String spine() {
    double bend = Way.spineFlexion(pose);
    if (posture.isSet(Setting.SPINE_ROUNDING)) {
      return told("The spine is bent by %.0f°, as asked for.", Math.toDegrees(bend));
    }
    if (Math.abs(bend) < HARDLY_BENT) {
      return "The spine keeps its standing shape.";
    }
    int thigh = pose.tree().distalOf(JointId.HIP.on(Side.RIGHT));
    double end = pose.tree().segment(thigh).joint().freedom("flexion").orElseThrow().high();
    if (angle(JointId.HIP) > end - 1e-6) {
      return told(
          "The hips end at their published flexion of %.0f°; the spine takes up the rest: %.0f° of flexion, shared"
              + " over its levels.",
          Math.toDegrees(end), Math.toDegrees(bend));
    }
    return told(
        "The spine gives way by %.0f° of %s, shared over its levels: so balance and bar come nearer"
            + " to where they should be.",
        Math.toDegrees(Math.abs(bend)), bend > 0 ? "flexion" : "extension");
  }

  /** What is true with this bar only: not with other loads in the same posture. */
  private Set<String> balance() {
    double off = HingeWays.balance(posture, new Barbell(mass(), 0.2), pose.placed());
    double turnOut = posture.used().get(Setting.TURN_OUT);
    double share = 0.5 + off / (posture.links().footLength() * Math.cos(turnOut));
    if (share < ON_THE_HEELS) {
      return Set.of(
          told(
              "The balance is near the heels (%.0f %% of the foot): with the hands where they are and the shoulders"
                  + " near above them, the lifter's own weight is behind. A real lifter lets the bar hang further"
                  + " ahead.",
              100 * share));
    }
    return Set.of();
  }

  /** Of the bar in the hands. */
  private double mass() {
    return posture.setup().own(posture.loads()).stream()
        .filter(Barbell.class::isInstance)
        .mapToDouble(Load::mass)
        .findFirst()
        .orElse(0);
  }

  private Vector3D bar() {
    return pose.placed().at(posture.body().place(Site.HAND, Side.RIGHT));
  }

  private double ahead() {
    Placement where = pose.placed();
    return where.centre(JointId.SHOULDER.on(Side.RIGHT)).getX() - bar().getX();
  }

  private double angle(JointId joint) {
    return pose.angle(joint, Side.RIGHT, "flexion");
  }

  private static String told(String sentence, Object... values) {
    return String.format(Locale.ROOT, sentence, values);
  }
}
