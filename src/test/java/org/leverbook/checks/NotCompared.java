package org.leverbook.checks;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Published rows that Leverbook is not asked, each with the reason. */
final class NotCompared {

  private static final Map<String, List<String>> BY_REASON = new LinkedHashMap<>();

  static {
    BY_REASON.put(
        "What is printed goes into the set-up of other rows; comparing it would compare it with"
            + " itself.",
        List.of(
            "B04a", "B04c", "B04e", "B05a", "B05b", "B10a", "B10b", "B23d", "B23e", "B37", "B39b",
            "B43a"));
    BY_REASON.put(
        "Peaks of moving lifts; neither the motion nor its speed is printed.",
        List.of("B17", "B22", "B23a", "B23b", "B23c", "B24", "B25"));
    BY_REASON.put(
        "What is printed comes out of the paper's own muscles, and the file says not to fail on it.",
        List.of("B15c"));
    BY_REASON.put(
        "Loads or effort are counted in parts of each lifter's own best, which is not printed.",
        List.of("B41c", "B42a", "B42b", "B42c"));
    BY_REASON.put("Loads beyond what the muscles of Leverbook's people can hold.", List.of("B28"));
    BY_REASON.put(
        "Constants of other methods for judging loads; Leverbook has no such judgement.",
        List.of("C01", "C02", "C04", "C14", "C15"));
    BY_REASON.put(
        "Lying, sitting slack and leaning back: what the ground, a back rest or slack tissue take is"
            + " not in a lift's supports.",
        List.of("C05a", "C05b", "C05e", "C05f", "C05g", "C06a", "C06b"));
    BY_REASON.put(
        "An implant shares its load with bone and rods by a part that is not printed.",
        List.of("C08"));
    BY_REASON.put("Which activity it was is not printed.", List.of("C13a"));
    BY_REASON.put(
        "A maker's catalogue; a coach tells the pull of the own band.", List.of("D13a", "D13b"));
  }

  private NotCompared() {}

  /** Why a row, or the whole case that it is part of, is not compared. */
  static String why(String id) {
    return reason(id)
        .orElseThrow(() -> new AssertionError(id + " is neither set up nor listed with a reason"));
  }

  static boolean lists(String id) {
    return reason(id).isPresent();
  }

  private static Optional<String> reason(String id) {
    for (Map.Entry<String, List<String>> reason : BY_REASON.entrySet()) {
      if (reason.getValue().contains(id) || reason.getValue().contains(id.substring(0, 3))) {
        return Optional.of(reason.getKey());
      }
    }
    return Optional.empty();
  }
}
