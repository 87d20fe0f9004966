/**
 * What holds the body up.
 *
 * <p>A {@link org.leverbook.support.Support} is a set of contact points that can only push, along
 * their normals. How hard each pushes is not known here: {@code statics} finds it from equilibrium.
 */
package org.leverbook.support;
