/**
 * Joint angles put a tree of segments into space.
 *
 * <p>A {@link org.leverbook.pose.Pose} holds the angles and where the root is; {@link
 * org.leverbook.pose.Placement} holds what follows from them: for every segment its frame in the
 * world, for every joint its centre and axes. World axes: X forward, Y up, Z to the person's right;
 * the floor is Y = 0. Rotations are right-handed; a matrix turns the components of a vector from
 * the segment's frame into the world's.
 *
 * <p>Worked case: turning a hip by +30 degrees of flexion moves the knee forward; turning L5/S1 by
 * +30 degrees moves the head forward. {@code PlacementTest} holds it and its fellows.
 */
package org.leverbook.pose;
