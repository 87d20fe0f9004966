/**
 * What pulls or presses on the body, besides its own weight.
 *
 * <p>A {@link org.leverbook.load.Load} is a force law: given where the body is, it tells the {@link
 * org.leverbook.load.Force}s on it. Loads know nothing of one another.
 */
package org.leverbook.load;
