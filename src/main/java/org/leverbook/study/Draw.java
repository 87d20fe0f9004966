package org.leverbook.study;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.measure.Quantity;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/**
 * One case of a {@link Doubt}: where a script says which of its own quantities are unsure.
 *
 * <p>{@code doubt(lifter, (who, draw) -> hinge(who).holding(barbell(draw.around("bar", kg(140),
 * kg(2)))).start())} works; {@code draw.around("bar", kg(140), kg(-2))} is refused.
 */
public final class Draw {

  private final Map<String, Double> scores;
  private final Map<String, Own> asked = new LinkedHashMap<>();

  /** A quantity of the script's own: its spread, and the unit that it is told in. */
  record Own(Spread spread, String unit) {}

  Draw(Map<String, Double> scores) {
    this.scores = Map.copyOf(scores);
  }

  /**
   * A quantity that scatters normally about a value.
   *
   * @param <Q> what kind of quantity
   * @param name what it is, as in "bar"
   * @param usual its value where nothing is varied
   * @param deviation its standard deviation: 68 of 100 lie within it, 90 within 1.64 times
   * @return its value in this case
   * @throws Refused if the deviation is negative or something is missing
   */
  public <Q extends Quantity<Q>> Quantity<Q> around(
      String name, Quantity<Q> usual, Quantity<Q> deviation) {
    return asked(name, usual, deviation, Spread.Kind.NORMAL);
  }

  /**
   * A quantity that lies anywhere within limits about a value.
   *
   * @param <Q> what kind of quantity
   * @param name what it is, as in "hip height"
   * @param usual its value where nothing is varied
   * @param half how far it may be off either way
   * @return its value in this case
   * @throws Refused if the limit is negative or something is missing
   */
  public <Q extends Quantity<Q>> Quantity<Q> within(
      String name, Quantity<Q> usual, Quantity<Q> half) {
    return asked(name, usual, half, Spread.Kind.UNIFORM);
  }

  private <Q extends Quantity<Q>> Quantity<Q> asked(
      String name, Quantity<Q> usual, Quantity<Q> size, Spread.Kind kind) {
    Ask.present("name", name, "\"bar\"");
    Ask.present("usual value", usual, "kg(140)");
    Ask.present("spread", size, "kg(2)");
    double half = size.to(usual.getUnit()).getValue().doubleValue();
    if (!(half >= 0)) {
      throw new Refused(
          "The spread of \""
              + name
              + "\" is "
              + Units.text(size)
              + "; how far a value may be off is zero or more.");
    }
    Own own = new Own(new Spread(kind, half), Units.symbol(usual.getUnit()));
    Own before = asked.putIfAbsent(name, own);
    if (before != null && !before.equals(own)) {
      throw new Refused(
          "\"" + name + "\" is asked for twice with different spreads: give each its own name.");
    }
    double off = own.spread().at(scores.getOrDefault(name, 0.0));
    return Units.of(usual.getValue().doubleValue() + off, usual.getUnit());
  }

  /** What was asked for, in order. */
  Map<String, Own> asked() {
    return asked;
  }
}
