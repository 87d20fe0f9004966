/**
 * What each joint can give: the greatest moment of a person in each direction, against the joint's
 * angle and speed.
 *
 * <p>Start at {@link org.leverbook.strength.Capacity}. The recipe: a published curve ({@link
 * org.leverbook.strength.Strength}), scaled by body mass and stature, lowered by age, raised by
 * training; set against what loads ask ({@link org.leverbook.strength.Demand}). Where nothing was
 * measured the answer is "not known", never zero. Every value carries its source and whether it was
 * found or is from memory ({@link org.leverbook.strength.Evidence}).
 */
package org.leverbook.strength;
