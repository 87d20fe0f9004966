package org.leverbook.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leverbook.study.ClaimOutcome.Kind;

/**
 * The numbers that came of a claim's cases, and nothing else: 18 numbers of four bytes a person, 17
 * bytes a case. Of reasons the first {@value #KEPT_REASONS} stand word for word; of the others only
 * their wording without its numbers.
 */
final class ClaimLedger {

  private static final int KEPT_REASONS = 2_000;
  private static final Kind[] KINDS = Kind.values();

  /**
   * Cases that were not tested for one reason, but for its numbers.
   *
   * @param kind whether nobody holds it or the test gave no answer
   * @param first the first such case
   * @param sentence that of the first such case
   * @param cases how many
   */
  record Reason(Kind kind, int first, String sentence, int cases) {}

  private final byte[] kinds;
  private final double[] margins;
  private final float[] loads;
  private final int[] reasonOf;
  private final float[][] measures;
  private final Map<Integer, String> verbatim = new LinkedHashMap<>();
  private final Map<String, Integer> wordings = new LinkedHashMap<>();
  private final List<Reason> reasons = new ArrayList<>();
  private final int[] counts = new int[KINDS.length];
  private int done;

  ClaimLedger(int cases, int people) {
    kinds = new byte[cases];
    margins = new double[cases];
    loads = new float[cases];
    reasonOf = new int[cases];
    measures = new float[people][];
  }

  /** Writes down the next case. */
  void take(int number, int person, ClaimOutcome outcome) {
    kinds[number] = (byte) outcome.kind().ordinal();
    margins[number] = outcome.margin();
    loads[number] = outcome.load();
    if (outcome.person() != null) {
      measures[person] = outcome.person();
    }
    counts[outcome.kind().ordinal()]++;
    reasonOf[number] = outcome.reason().isEmpty() ? -1 : noted(number, outcome);
    done = number + 1;
  }

  private int noted(int number, ClaimOutcome outcome) {
    if (verbatim.size() < KEPT_REASONS) {
      verbatim.put(number, outcome.reason());
    }
    String wording = outcome.kind() + Gap.wording(outcome.reason());
    Integer known = wordings.get(wording);
    if (known == null && wordings.size() < KEPT_REASONS) {
      known = reasons.size();
      wordings.put(wording, known);
      reasons.add(new Reason(outcome.kind(), number, outcome.reason(), 0));
    }
    if (known == null) {
      return -1;
    }
    Reason reason = reasons.get(known);
    reasons.set(
        known, new Reason(reason.kind(), reason.first(), reason.sentence(), reason.cases() + 1));
    return known;
  }

  int done() {
    return done;
  }

  int count(Kind kind) {
    return counts[kind.ordinal()];
  }

  int tested() {
    return count(Kind.HOLDS) + count(Kind.FAILS);
  }

  Kind kind(int number) {
    return KINDS[kinds[number]];
  }

  double margin(int number) {
    return margins[number];
  }

  float load(int number) {
    return loads[number];
  }

  /** One of a person's numbers; 0 where that person could not even be made. */
  float measure(int person, int which) {
    return measures[person] == null ? 0 : measures[person][which];
  }

  boolean measured(int person) {
    return measures[person] != null;
  }

  /** Why a case was not tested; empty where it was. */
  String reason(int number) {
    String own = verbatim.get(number);
    if (own != null) {
      return own;
    }
    if (kind(number).tested()) {
      return "";
    }
    return reasonOf[number] < 0
        ? "Not kept: there are too many different reasons."
        : "As case " + (reasons.get(reasonOf[number]).first() + 1) + ", but for its numbers.";
  }

  /** The most frequent reason of a kind; of equals the first. Null where there is none. */
  Reason most(Kind kind) {
    Reason most = null;
    for (Reason reason : reasons) {
      if (reason.kind() == kind && (most == null || reason.cases() > most.cases())) {
        most = reason;
      }
    }
    return most;
  }
}
