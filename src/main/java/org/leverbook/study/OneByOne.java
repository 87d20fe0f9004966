package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.leverbook.statics.Position;

/** Each input alone, at both ends of its spread. */
final class OneByOne {

  private final Subject subject;
  private final Inputs inputs;
  private final ToDoubleFunction<Position> value;
  private final double plain;

  OneByOne(Subject subject, Inputs inputs, ToDoubleFunction<Position> value, double plain) {
    this.subject = subject;
    this.inputs = inputs;
    this.value = value;
    this.plain = plain;
  }

  /** A row an input, the strongest first; with its share of the scatter of the cases. */
  List<Sensitivity.Row> rows(Cases cases) {
    Optional<VarianceShares> shares = VarianceShares.of(cases.scores(), cases.values());
    int count = inputs.all().size();
    List<Cases.Outcome> ends = new ArrayList<>();
    Many.each(
        "each input alone",
        2 * count,
        i -> Cases.one(subject, changes(i / 2, i % 2 == 0 ? -1 : 1), value),
        (i, outcome) -> ends.add(outcome));
    List<Sensitivity.Row> rows = new ArrayList<>();
    for (int k = 0; 2 * k + 1 < ends.size(); k++) {
      int place = k;
      Input input = inputs.all().get(k);
      rows.add(
          new Sensitivity.Row(
              input.name(),
              input.told(-Spread.HIGH),
              input.told(Spread.HIGH),
              answer(ends.get(2 * k)),
              answer(ends.get(2 * k + 1)),
              swing(ends.get(2 * k), ends.get(2 * k + 1)),
              shares.map(s -> s.shares()[place]).orElse(null),
              input.source()));
    }
    rows.sort(Comparator.comparingDouble(Sensitivity.Row::swing).reversed());
    return rows;
  }

  private Changes changes(int input, double end) {
    Changes changes = new Changes();
    inputs.all().get(input).set(changes, end * Spread.HIGH);
    return changes;
  }

  private static Double answer(Cases.Outcome outcome) {
    return outcome.held() ? outcome.value() : null;
  }

  /** From the one end to the other, the plain answer counted too: an answer may turn back. */
  private double swing(Cases.Outcome low, Cases.Outcome high) {
    double a = low.held() ? low.value() : plain;
    double b = high.held() ? high.value() : plain;
    return Math.max(plain, Math.max(a, b)) - Math.min(plain, Math.min(a, b));
  }
}
