package org.leverbook.checks;

import static java.util.Map.entry;

import java.util.Map;

/** Rows that miss their band, each with the reason. A row that passes must not stand here. */
final class Disagreements {

  static final Map<String, String> REASONS =
      Map.ofEntries(
          entry(
              "B19",
              "The order is as printed, its size above the band: with the chest on the pad and the"
                  + " feet behind the hips our erectors fall to a twentieth of their mean stress. The"
                  + " row is electrical activity, which has a floor in people who brace, and a stress"
                  + " at its least has none."),
          entry(
              "B27b",
              "5.5 kN where 6 to 17.5 were found. The row gives no posture; our hinge starts with the"
                  + " hips low and the trunk steep, held still, with the least muscle force that"
                  + " holds: no bracing, no pull off the floor."),
          entry(
              "B41b",
              "With the usual lever machine, whose weight pulls straight down, and the patellar"
                  + " tendon's arm largest near 45 degrees, the knee is pressed hardest at 48 degrees of"
                  + " bend, 1060 N, against 740 N near straight. The machine's course is not printed; a"
                  + " cam that keeps its pull to the end would move the peak."),
          entry(
              "B45a",
              "The kneecap is pressed harder the deeper, up to 140 degrees: nothing here takes load off"
                  + " the tendon as it wraps round the thigh bone, and calf on thigh is no support."),
          entry(
              "A15",
              "The source prints two results but not the shifted arms. Set up as the row says, with"
                  + " the centre of mass straight over the hip, no muscle need pull and the hip"
                  + " carries 0.815 W, 0.34 of the normal force. With the floor's push still 0.03 m"
                  + " inside the hip and the leg's weight under it (arms inferred, not printed) the"
                  + " same set-up gives 1.25 W and 0.53, the printed answers."),
          entry(
              "B04g",
              "Printed are stance, turn-out and hand spacing, not knees or load. As the library's"
                  + " two lifts usually start, the sumo trunk is 15 degrees more upright, and its"
                  + " thigh 14 degrees nearer to level, as printed (B04h). With the same knee bend of"
                  + " 65 degrees in both styles it is the other way round: 7 and 8 degrees. The"
                  + " abstract contradicts itself on the thigh."),
          entry(
              "B04i",
              "Stance and hand spacing alone make the conventional bar path 8 to 9 per cent longer,"
                  + " as the second study prints (B05c, 0.9). The row lumps path with work measured"
                  + " on moving lifters, which no still position contains."),
          entry(
              "B05d",
              "The sign hangs on where the floor's push lies: with the balance near the middle of the"
                  + " foot it lies ahead of the ankle in both styles and the calf holds it (61 N m"
                  + " with 140 kg, 23 with 70). Dorsiflexors, as printed, need it behind the ankle,"
                  + " a quarter of the foot from the heel."),
          entry(
              "B12a",
              "The order is as printed, its size above the band: no posture is printed, and with"
                  + " thighs level, feet turned out and the balance over the middle of the foot the"
                  + " wide stance brings the hips so near that the trunk leans 13 degrees, against 33"
                  + " in the traditional squat. Lifters lean more than balance alone asks."),
          entry(
              "B12b",
              "Shins taken upright on the box (not printed) put the hips further back, so the trunk"
                  + " leans 37 degrees in balance against 13: a still lifter bears more at the spine,"
                  + " not less. The paper's peaks are of moving lifts, and its box carries a part."),
          entry(
              "B32d",
              "How low is not printed. With hands and shanks where they were and the shoulders 20 cm"
                  + " above the wrists, where the belly meets the floor, the hands bear 70 per cent; at"
                  + " 30 cm they bear 67, inside the band."),
          entry(
              "B34a",
              "On upright straps the share follows from lengths alone, as on the floor (B32a): 69 to"
                  + " 70 per cent with straight arms at handles 15 cm up. Half the body weight needs"
                  + " handles far higher or straps that slope; the row was seen on a secondary page,"
                  + " and how its angle is defined decides."),
          entry(
              "C05c",
              "0.38 MPa, a twentieth below the band: people who stand brace a little and sway, and a"
                  + " still body held with the least muscle force does neither."),
          entry(
              "C05j",
              "1.45 MPa with the weight at the chest, elbows bent 130 degrees; 1.74 with forearms"
                  + " level. How close it was held is not printed, and the pressure hangs on it."),
          entry(
              "C05l",
              "The lift itself is within its band (C05i); the standing it is divided by is too low"
                  + " (C05c)."),
          entry("C05m", "The hold comes out too high (C05j) and standing too low (C05c)."),
          entry(
              "C16b",
              "33 N m: at 135 degrees of bend our elbow flexors give 0.48 of what they give at 60, a"
                  + " course from memory. Were the table's angles those of bending, this row would give"
                  + " 66, inside, and C16d 33, outside."),
          entry(
              "C16g",
              "183 N m is what healthy women gave seated with the pelvis strapped down (J Korean Acad"
                  + " Rehabil Med 1997, abstract). How the table's women were held is not printed."),
          entry(
              "B29b",
              "Held still, the hips bear most at 65 degrees, but little changes: 269 N m there, 262"
                  + " at 80 and 250 at 90 (both hips, 120 kg). The paper's maximum is of a moving"
                  + " lift, near the turn at the bottom, where the bar is also sped up."));

  private Disagreements() {}
}
