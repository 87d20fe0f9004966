package org.leverbook.body;

import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

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
    String name, int parent, Joint joint, double mass, Vector3D centreOfMass, Vector3D radii) {

  /** No part of a body is larger, metres. */
  private static final double LARGEST = 1_000;

  /** No part of a body is heavier, kilograms. */
  private static final double HEAVIEST = 1e6;

  /**
   * Checks what it is made of.
   *
   * @throws Refused if a part but the joint is missing, or a number beyond sense
   */
  public Segment {
    Ask.present("name of the segment", name, "\"right thigh\"");
    Ask.number("mass of the " + name + " in kilograms", mass, 0, HEAVIEST);
    Ask.vector("centre of mass of the " + name, centreOfMass, LARGEST, "m");
    Ask.vector("radii of gyration of the " + name, radii, LARGEST, "m");
  }
}
