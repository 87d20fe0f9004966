/**
 * Units at the border.
 *
 * <p>A coach writes {@code kg(85)}, {@code lb(315)}, {@code cm(58)} or {@code deg(35)} and gets a
 * JSR 385 quantity; the rooms below turn it into a plain SI double once, on entry, through {@link
 * org.leverbook.quantity.Si}. Start at {@link org.leverbook.quantity.Units}. This room also holds
 * {@link org.leverbook.quantity.Refused}, the one exception by which every room says no in words.
 */
package org.leverbook.quantity;
