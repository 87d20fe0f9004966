package org.leverbook.study;

import javax.measure.Quantity;
import org.leverbook.statics.Position;

/**
 * From three values to a position, as in {@code (h, m, d) -> ...}.
 *
 * @param <A> what kind of quantity the first is
 * @param <B> what kind of quantity the second is
 * @param <C> what kind of quantity the third is
 */
@FunctionalInterface
public interface ThreeWay<A extends Quantity<A>, B extends Quantity<B>, C extends Quantity<C>> {

  /**
   * The position.
   *
   * @param first value of the first quantity
   * @param second value of the second quantity
   * @param third value of the third quantity
   * @return what these three give
   */
  Position at(Quantity<A> first, Quantity<B> second, Quantity<C> third);
}
