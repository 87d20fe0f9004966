package org.leverbook.support;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A point at which a support can push.
 *
 * @param name as in "right heel, outer"
 * @param segment index of the segment that is pushed
 * @param point in the world, metres
 * @param normal unit vector in the world, the way it pushes
 */
public record Contact(String name, int segment, Vector3D point, Vector3D normal) {}
