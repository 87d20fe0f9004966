/**
 * What holds the body up, or is leaned on.
 *
 * <p>A {@link org.leverbook.support.Support} tells, for where the body is, the points at which it
 * touches ({@link org.leverbook.support.Contact}): each pushes along its normal and holds sideways
 * by friction; a grip may also pull. How hard each pushes is not known here: {@code statics} finds
 * it from equilibrium and least effort. {@link org.leverbook.support.Pad} is every flat cushion,
 * {@link org.leverbook.support.Footing} feet in any way, {@link org.leverbook.support.FixedBar} and
 * {@link org.leverbook.support.Rings} what hands hang from. Supports know nothing of one another.
 */
package org.leverbook.support;
