package org.leverbook.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * One way in which a joint turns.
 *
 * @param motion what the movement is called
 * @param axis unit vector in the proximal segment's frame when all earlier freedoms of the joint
 *     are zero; a positive angle turns the distal segment right-handedly about it
 * @param low lowest angle a healthy adult reaches, radians
 * @param high highest angle a healthy adult reaches, radians
 */
public record Freedom(Motion motion, Vector3D axis, double low, double high) {}
