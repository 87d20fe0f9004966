package org.leverbook.support;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * Feet on level ground in any way: one foot, feet at different heights, heels raised, plates under
 * the heels. A point of a sole pushes where it touches; a foot of which no point touches is
 * refused.
 *
 * @param body whose soles
 * @param heights for each foot that stands, the height of its ground, metres
 * @param underHeels height of a plate under the heels, metres; zero without
 * @param friction between sole and ground, zero or more
 */
public record Footing(Body body, Map<Side, Double> heights, double underHeels, double friction)
    implements Support {

  /** How far a sole may be from its ground and still touch it: what a sole yields, metres. */
  private static final double TOUCHES = 0.002;

  /**
   * How far a ball of a foot whose heel stands on a plate may seem to be above the floor, metres:
   * the little toe's lies behind the big toe's, so a stiff sole would lift it where a foot bends.
   */
  private static final double BENDS = 0.02;

  /**
   * Keeps its own copy.
   *
   * @throws Refused if the friction is below zero, beyond 10 or no number
   */
  public Footing {
    Floor.checked(friction);
    Ask.present("body that stands", body, "person(MALE, kg(85), cm(178)).body()");
    heights = Map.copyOf(heights);
  }

  /**
   * Both feet on the floor, each with as much of its sole as touches.
   *
   * @param body whose
   * @return the support
   */
  public static Footing feet(Body body) {
    return new Footing(body, Map.of(Side.RIGHT, 0.0, Side.LEFT, 0.0), 0, Floor.SHOE_FRICTION);
  }

  /**
   * One foot on the floor, the other in the air.
   *
   * @param body whose
   * @param side which foot stands
   * @return the support
   */
  public static Footing foot(Body body, Side side) {
    return new Footing(body, Map.of(side, 0.0), 0, Floor.SHOE_FRICTION);
  }

  /**
   * The same with one foot on a step.
   *
   * @param side which foot
   * @param height of the step, 0 to 100 cm
   * @return the changed support
   * @throws Refused if the height is missing or outside
   */
  public Footing step(Side side, Quantity<Length> height) {
    Map<Side, Double> changed = new EnumMap<>(Side.class);
    changed.putAll(heights);
    changed.put(side, Ask.length("height of the step", height, 0, 1));
    return new Footing(body, changed, underHeels, friction);
  }

  /**
   * The same with plates under the heels.
   *
   * @param height of the plates, 0 to 10 cm
   * @return the changed support
   * @throws Refused if the height is missing or outside
   */
  public Footing platesUnderHeels(Quantity<Length> height) {
    return new Footing(
        body, heights, Ask.length("height of the plates", height, 0, 0.10), friction);
  }

  /**
   * The same on other ground.
   *
   * @param coefficient of friction, 0 to 10
   * @return the changed support
   * @throws Refused if it is outside
   */
  public Footing friction(double coefficient) {
    return new Footing(body, heights, underHeels, coefficient);
  }

  @Override
  public String source() {
    return "floor";
  }

  @Override
  public String description() {
    String feet = heights.size() == 1 ? "one foot" : "both feet";
    return String.format(Locale.ROOT, "%s on the floor, friction %.2f", feet, friction);
  }

  @Override
  public List<Contact> contacts(Placement where) {
    List<Contact> contacts = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      if (heights.containsKey(side)) {
        contacts.addAll(of(where, side));
      }
    }
    return contacts;
  }

  private List<Contact> of(Placement where, Side side) {
    List<Contact> contacts = new ArrayList<>();
    double lowest = Double.POSITIVE_INFINITY;
    for (Body.SolePoint sole : body.soles()) {
      if (!sole.name().startsWith(side.word())) {
        continue;
      }
      double ground = heights.get(side) + (sole.name().contains("heel") ? underHeels : 0);
      Vector3D point = where.toWorld(sole.segment(), sole.place());
      double above = point.getY() - ground;
      lowest = Math.min(lowest, above);
      boolean bends = underHeels > 0 && sole.name().contains("ball");
      if (above >= -TOUCHES && above <= (bends ? BENDS : TOUCHES)) {
        contacts.add(
            new Contact(sole.name(), sole.segment(), point, Vector3D.PLUS_J, friction, false));
      }
    }
    if (lowest < -TOUCHES || contacts.isEmpty()) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The %s is %.1f cm %s its ground: raise or lower the foot, or say how high its ground"
                  + " is.",
              side.of("foot"),
              100 * Math.abs(lowest),
              lowest < 0 ? "below" : "above"));
    }
    return contacts;
  }
}
