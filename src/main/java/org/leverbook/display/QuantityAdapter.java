package org.leverbook.display;

import java.util.Optional;
import javax.measure.Quantity;
import org.leverbook.quantity.Units;

/** Shows a quantity in the unit it was given in. */
public final class QuantityAdapter implements ShownAdapter {

  @Override
  public Optional<Shown> show(Object value) {
    return value instanceof Quantity<?> quantity
        ? Optional.of(() -> Units.text(quantity))
        : Optional.empty();
  }
}
