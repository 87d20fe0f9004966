package org.leverbook.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * A rigid piece of the body.
 *
 * @param name with its side, as in "right thigh"
 * @param parent index of the segment that holds it, lower than its own; -1 for the root
 * @param joint what holds it; null for the root
 * @param mass kilograms, zero or more
 * @param centreOfMass in its own frame, metres
 * @param radii of gyration about the lines through the centre of mass along its own x, y and z,
 *     metres, zero or more; these three are taken as its principal axes
 */
public record Segment(
    String name, int parent, Joint joint, double mass, Vector3D centreOfMass, Vector3D radii) {}
