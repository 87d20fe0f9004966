package org.leverbook.strength;

import java.util.Map;

/**
 * How strong a shoulder is in any plane, from tests in the two planes that were tested.
 *
 * <p>Flexion and extension were measured with the arm in front of or behind the trunk, abduction
 * and adduction at its side. Between the planes both are mixed by the squares of sine and cosine
 * (assumption). Behind the trunk raising is extending; across the midline it is adducting. A moment
 * across a level arm meets the tests of horizontal adduction and abduction; the more the arm hangs
 * or is overhead, the more it becomes one of raising or lowering square to the plane, and is mixed
 * so, again by squares (assumption).
 */
final class ShoulderStrength {

  private final Map<String, Strength> of;

  ShoulderStrength(Map<String, Strength> strengths) {
    of = strengths;
  }

  double raise(RaisedArm arm) {
    return raise(arm.height(), arm.plane());
  }

  double lower(RaisedArm arm) {
    return lower(arm.height(), arm.plane());
  }

  /** Bringing the arm forward and inward at its height. */
  double across(RaisedArm arm) {
    return sideways(arm, "adduct horizontally", Math.PI / 2);
  }

  /** Taking it outward and back. */
  double apart(RaisedArm arm) {
    return sideways(arm, "abduct horizontally", -Math.PI / 2);
  }

  private double raise(double height, double plane) {
    double ahead = Math.sin(plane);
    double aside = Math.cos(plane);
    return ahead * ahead * (ahead >= 0 ? at("flex", height) : at("extend", -height))
        + aside * aside * (aside >= 0 ? at("abduct", height) : at("adduct", -height));
  }

  private double lower(double height, double plane) {
    double ahead = Math.sin(plane);
    double aside = Math.cos(plane);
    return ahead * ahead * (ahead >= 0 ? at("extend", height) : at("flex", -height))
        + aside * aside * (aside >= 0 ? at("adduct", height) : at("abduct", -height));
  }

  private double sideways(RaisedArm arm, String level, double turn) {
    double share = Math.sin(arm.height()) * Math.sin(arm.height());
    double plane = arm.plane() + turn;
    boolean hangs = arm.height() <= Math.PI / 2;
    double steep = hangs ? raise(0, plane) : lower(arm.height(), plane);
    return share * at(level, arm.plane()) + (1 - share) * steep;
  }

  private double at(String action, double angle) {
    return of.get("shoulder " + action).at(angle);
  }
}
