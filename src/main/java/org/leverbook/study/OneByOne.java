package org.leverbook.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.leverbook.statics.Position;

/** Each input alone, at both ends of its spread, beside its share of the scatter of all cases. */
final class OneByOne {

  /** An input that moves the answer by less than this part of it is no part of the fit. */
  private static final double STILL = 1e-9;

  private final Subject subject;
  private final Inputs inputs;
  private final ToDoubleFunction<Position> value;
  private final double plain;
  private final List<Cases.Outcome> ends = new ArrayList<>();
  private final List<Integer> moving;
  private final Optional<VarianceShares> shares;

  OneByOne(
      Subject subject, Inputs inputs, ToDoubleFunction<Position> value, double plain, Cases cases) {
    this.subject = subject;
    this.inputs = inputs;
    this.value = value;
    this.plain = plain;
    Many.each(
        "each input alone",
        2 * inputs.all().size(),
        i -> Cases.one(subject, changes(i / 2, i % 2 == 0 ? -1 : 1), value),
        (i, outcome) -> ends.add(outcome));
    moving = IntStream.range(0, ends.size() / 2).filter(this::moves).boxed().toList();
    List<double[]> scores =
        cases.scores().stream()
            .map(all -> moving.stream().mapToDouble(k -> all[k]).toArray())
            .toList();
    shares = VarianceShares.of(scores, cases.values());
  }

  /** A row an input, the strongest first. */
  List<Sensitivity.Row> rows() {
    List<Sensitivity.Row> rows = new ArrayList<>();
    for (int k = 0; k < ends.size() / 2; k++) {
      Input input = inputs.all().get(k);
      rows.add(
          new Sensitivity.Row(
              input.name(),
              input.told(-Spread.HIGH),
              input.told(Spread.HIGH),
              answer(low(k)),
              answer(high(k)),
              swing(k),
              share(k),
              input.source()));
    }
    rows.sort(Comparator.comparingDouble(Sensitivity.Row::swing).reversed());
    return rows;
  }

  /** The part of the scatter that a straight line in all inputs explains. */
  Optional<Double> explained() {
    return shares.map(VarianceShares::explained);
  }

  private Double share(int input) {
    int place = moving.indexOf(input);
    return shares.map(s -> place < 0 ? 0 : s.shares()[place]).orElse(null);
  }

  private Changes changes(int input, double end) {
    Changes changes = new Changes();
    inputs.all().get(input).set(changes, end * Spread.HIGH);
    return changes;
  }

  private Cases.Outcome low(int input) {
    return ends.get(2 * input);
  }

  private Cases.Outcome high(int input) {
    return ends.get(2 * input + 1);
  }

  private boolean moves(int input) {
    return !low(input).held()
        || !high(input).held()
        || swing(input) > STILL * Math.max(1, Math.abs(plain));
  }

  private static Double answer(Cases.Outcome outcome) {
    return outcome.held() ? outcome.value() : null;
  }

  /** From the one end to the other, the plain answer counted too: an answer may turn back. */
  private double swing(int input) {
    double a = low(input).held() ? low(input).value() : plain;
    double b = high(input).held() ? high(input).value() : plain;
    return Math.max(plain, Math.max(a, b)) - Math.min(plain, Math.min(a, b));
  }
}
