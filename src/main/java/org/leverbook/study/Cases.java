package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.leverbook.display.FailureWording;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * Many cases of one question, all inputs off at once. Seeded, and the same on any number of
 * processors: every input's scores are drawn before, by its name.
 */
final class Cases {

  private final List<double[]> scores = new ArrayList<>();
  private final List<Double> values = new ArrayList<>();
  private final Map<String, DoubtBand.Left> left = new LinkedHashMap<>();
  private final int asked;
  private int done;

  /**
   * What came of one case.
   *
   * @param value the answer; zero where there is none
   * @param reason why there is none; empty where there is
   */
  record Outcome(double value, String reason) {

    boolean held() {
      return reason.isEmpty();
    }
  }

  private Cases(int asked) {
    this.asked = asked;
  }

  /** One case. */
  static Outcome one(Subject subject, Changes changes, ToDoubleFunction<Position> value) {
    Attempt tried = Attempt.at(() -> subject.with(changes));
    if (!tried.held()) {
      return new Outcome(0, tried.reason());
    }
    try {
      double answer = value.applyAsDouble(tried.position());
      return Double.isFinite(answer)
          ? new Outcome(answer, "")
          : new Outcome(0, "The lambda gave no number.");
    } catch (Refused e) {
      return new Outcome(0, String.valueOf(e.getMessage()));
    } catch (RuntimeException e) {
      return new Outcome(0, "The lambda failed: " + FailureWording.of(e));
    }
  }

  /** All cases. */
  static Cases of(
      Subject subject, Inputs inputs, ToDoubleFunction<Position> value, int count, long seed) {
    double[][] drawn =
        inputs.all().stream()
            .map(input -> Strata.scores(input.name(), count, seed))
            .toArray(double[][]::new);
    Cases cases = new Cases(count);
    cases.done =
        Many.each(
            "how sure an answer is",
            count,
            i -> one(subject, changes(inputs, scores(inputs, drawn, i)), value),
            (i, outcome) -> cases.take(scores(inputs, drawn, i), outcome));
    return cases;
  }

  private static double[] scores(Inputs inputs, double[][] drawn, int i) {
    return inputs.correlated(
        IntStream.range(0, drawn.length).mapToDouble(k -> drawn[k][i]).toArray());
  }

  private static Changes changes(Inputs inputs, double[] scores) {
    Changes changes = new Changes();
    for (int k = 0; k < scores.length; k++) {
      inputs.all().get(k).set(changes, scores[k]);
    }
    return changes;
  }

  private void take(double[] at, Outcome outcome) {
    if (outcome.held()) {
      scores.add(at);
      values.add(outcome.value());
    } else {
      left.merge(
          Gap.wording(outcome.reason()),
          new DoubtBand.Left(1, outcome.reason()),
          (before, more) -> new DoubtBand.Left(before.cases() + 1, before.reason()));
    }
  }

  /** The scores of each held case, in order. */
  List<double[]> scores() {
    return scores;
  }

  /** The answer of each held case, in order. */
  double[] values() {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Those left out, the most frequent reason first. */
  List<DoubtBand.Left> left() {
    return left.values().stream()
        .sorted(Comparator.comparingInt(DoubtBand.Left::cases).reversed())
        .toList();
  }

  /** How many were asked for. */
  int asked() {
    return asked;
  }

  /** How many were computed: fewer than asked where the user stopped. */
  int done() {
    return done;
  }
}
