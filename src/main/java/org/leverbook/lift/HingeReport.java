package org.leverbook.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.data.DataTable;
import org.leverbook.load.Barbell;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Notes;

/**
 * Tells how a hinge came out: the numbers of its posture, and what was wished, relaxed or assumed.
 *
 * @param hinge what was asked
 * @param pose what was found
 * @param ahead shoulders ahead of the bar, metres
 * @param largestAhead the most the wish allows, metres
 * @param bend trunk flexion taken up by the spine, radians
 * @param offMiddle how far the common centre of lifter and bar is ahead of the middle of the foot,
 *     metres
 */
record HingeReport(
    Hinge hinge, Pose pose, double ahead, double largestAhead, double bend, double offMiddle) {

  /** Below this share of the foot a standing lifter feels the heels: common practice, no source. */
  private static final double ON_THE_HEELS = 0.35;

  private static final DataTable SURVEY = DataTable.read("body/population_anthropometry.csv");

  /** From the knee-ankle line to the front of the shin, metres: assumption, no source. */
  private static final double SHIN_FRONT = 0.035;

  /**
   * Below this knee bend the hamstrings limit the hips first, at about the second angle; from
   * memory, degrees.
   */
  private static final double STRAIGHT_KNEE = 45;

  private static final double STRAIGHT_KNEE_HIP = 90;

  /**
   * Hand breadth at the knuckles, as the survey's mean share of stature (ANSUR II, Gordon et al.
   * 2014), metres.
   */
  static double handBreadth(Person person) {
    String sex = person.sex().word();
    return person.metres()
        * SURVEY
            .only("hand breadth", r -> r.is("sex", sex) && r.is("dimension", "handbreadth"))
            .number("mean_frac_stature");
  }

  List<Fact> facts() {
    Placement where = pose.placed();
    Vector3D shoulder = where.centre(JointId.SHOULDER.on(Side.RIGHT));
    Vector3D hip = where.centre(JointId.HIP.on(Side.RIGHT));
    double lean = Math.atan2(shoulder.getX() - hip.getX(), shoulder.getY() - hip.getY());
    double shin = pose.angle(JointId.ANKLE, Side.RIGHT, "flexion");
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("hip height", 100 * pose.rootPlace().getY(), "cm"));
    facts.add(degrees("knee bend", pose.angle(JointId.KNEE, Side.RIGHT, "flexion")));
    facts.add(degrees("hip flexion", pose.angle(JointId.HIP, Side.RIGHT, "flexion")));
    facts.add(degrees("ankle flexion", shin));
    facts.add(degrees("trunk lean", lean));
    facts.add(degrees("spine flexion", bend));
    facts.add(new Fact("shoulders ahead of the bar", 100 * ahead, "cm"));
    return facts;
  }

  Notes notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        String.format(
            Locale.ROOT,
            "Shoulders %.1f cm ahead of %s 0 to %.1f cm were allowed (common practice, no source),"
                + " and the value that brings the balance nearest to the middle of the foot was taken.",
            100 * ahead,
            hinge.bar().mass() > 0 ? "the bar; for this load" : "the empty hands;",
            100 * largestAhead));
    if (bend > 0) {
      notes.add(
          String.format(
              Locale.ROOT,
              "The hips end at their published flexion of %.0f°; the spine takes up the rest: %.0f° of flexion, shared"
                  + " over its levels.",
              Math.toDegrees(pose.angle(JointId.HIP, Side.RIGHT, "flexion")),
              Math.toDegrees(bend)));
    } else {
      notes.add("The spine keeps its standing shape.");
    }
    double knee = Math.toDegrees(pose.angle(JointId.KNEE, Side.RIGHT, "flexion"));
    double hip = Math.toDegrees(pose.angle(JointId.HIP, Side.RIGHT, "flexion"));
    if (knee < STRAIGHT_KNEE && hip > STRAIGHT_KNEE_HIP) {
      notes.add(
          String.format(
              Locale.ROOT,
              "With knees this straight (%.0f°) most people's hips flex only 80 to 90° (from memory), here %.0f°: expect"
                  + " more bend in the spine than shown.",
              knee,
              hip));
    }
    Set<String> ofLoads = balanceNotes();
    notes.addAll(ofLoads);
    double overlap = shinBeyondBar();
    if (overlap > 0 && hinge.bar().mass() > 0) {
      notes.add(
          String.format(
              Locale.ROOT,
              "At the bar's height the shins would stand %.1f cm further forward than the bar lets them: a real lifter"
                  + " rolls the bar that much ahead or raises the hips.",
              100 * overlap));
    }
    notes.add("The head keeps in line with the trunk; the shoulder girdle hangs at rest.");
    return new Notes(notes, ofLoads);
  }

  /** What is true with this bar only: not with other loads in the same posture. */
  private Set<String> balanceNotes() {
    double foot = hinge.body().links().footLength() * Math.cos(hinge.feet().turnOut());
    double share = 0.5 + offMiddle / foot;
    if (share < ON_THE_HEELS) {
      return Set.of(
          String.format(
              Locale.ROOT,
              "The balance is near the heels (%.0f %% of the foot): with %s over the middle of the foot and the"
                  + " shoulders near above it, the lifter's own weight is behind. A real lifter leans further over a"
                  + " light bar, or lets it hang further ahead.",
              100 * share,
              hinge.bar().mass() > 0 ? "the bar" : "the hands"));
    }
    return Set.of();
  }

  /**
   * How far the front of the shin would reach past the back of the bar, metres; negative where
   * there is room.
   */
  double shinBeyondBar() {
    Placement where = pose.placed();
    Vector3D knee = where.centre(JointId.KNEE.on(Side.RIGHT));
    Vector3D ankle = where.centre(JointId.ANKLE.on(Side.RIGHT));
    double up = (hinge.barHeight() - ankle.getY()) / (knee.getY() - ankle.getY());
    if (up < 0 || up > 1) {
      return -1;
    }
    double shin = ankle.getX() + up * (knee.getX() - ankle.getX());
    return shin + SHIN_FRONT - (hinge.barForward() - Barbell.GRIP_RADIUS);
  }

  private static Fact degrees(String name, double radians) {
    return new Fact(name, Math.toDegrees(radians), "°");
  }
}
