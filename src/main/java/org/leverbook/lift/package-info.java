/**
 * Ready-made lifts: each a short recipe from what a coach says (hip height, load, stance) to a
 * position.
 *
 * <p>A lift is an immutable value with words that change one setting each and give a new value:
 * {@code hinge(lifter).holding(barbell(kg(140))).hipHeight(cm(58))}. {@code start()} solves for the
 * pose and computes the position; what cannot be done is refused with the amount by which it misses
 * and what to change. Start at {@link org.leverbook.lift.Hinge}.
 */
package org.leverbook.lift;
