package org.leverbook.language;

import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.study.Comparison;
import org.leverbook.study.WayComparison;

/** The words for comparisons; {@link Vocabulary} hands them on. */
public abstract sealed class CompareWords extends PeopleWords permits DoubtWords {

  CompareWords() {}

  /**
   * Positions side by side, as in {@code compare(bent, padded).called("free", "on the pad")}.
   *
   * <p>{@code .atEqualLoad()}, {@code .atEqualEffort(percent(70))} and {@code
   * .atEqualShareOfLargest(percent(70))} set the loads; {@code compare(bent)} is refused: it takes
   * two or more.
   *
   * @param first what the others are set against
   * @param others one to eleven more
   * @return moments, arms, differences and ratios; {@code .picture()} draws them to one scale
   * @throws Refused if one is missing, or there are too few or too many
   */
  public static Comparison compare(Position first, Position... others) {
    return Comparison.of(first, others);
  }

  /**
   * Lifts side by side over the whole way, as in {@code compare(backSquat(lifter),
   * frontSquat(lifter))}.
   *
   * <p>{@code .at(percent(30))}, {@code .start()} and {@code .finish()} give positions side by
   * side; the loads are set as for positions.
   *
   * @param first what the others are set against
   * @param others one to eleven more
   * @return the largest moment at each joint and where it is; {@code .plot(HIP)} draws the way
   * @throws Refused if one is missing, or there are too few or too many
   */
  public static WayComparison compare(Lift<?> first, Lift<?>... others) {
    return WayComparison.of(first, others);
  }

  /**
   * Movements side by side over their whole time, as in {@code
   * compare(squat.moving(smooth(seconds(2))), squat.moving(smooth(seconds(0.8))))}.
   *
   * @param first what the others are set against
   * @param others one to eleven more
   * @return the largest moment at each joint and where it is; {@code .plot(HIP)} draws the way
   * @throws Refused if one is missing, or there are too few or too many
   */
  public static WayComparison compare(Movement first, Movement... others) {
    return WayComparison.of(first, others);
  }
}
