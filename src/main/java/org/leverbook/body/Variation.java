package org.leverbook.body;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * How one body differs from what tables and surveys say of its kind: what is not known of a person
 * whose sex, mass and stature are known.
 *
 * <p>Factors are on the usual value, 1 where nothing is said; shifts are in metres, 0 where nothing
 * is said. Both sides of the body vary alike.
 *
 * @param sizes a factor or a shift for each trait of each part
 */
public record Variation(Map<Of, Double> sizes) {

  /** The body as tables and survey have it. */
  public static final Variation NONE = new Variation(Map.of());

  /** What can differ. */
  public enum Trait {
    /** Factor on a segment's share of body mass; all shares are then brought to their sum of 1. */
    MASS,
    /**
     * Of a limb, shift of its centre of mass away from the upper joint, as a share of its length;
     * of the trunk, shift of all its slices forward, metres.
     */
    CENTRE,
    /** Factor on a length; what is left of stature gives way, as told at {@link Person}. */
    LENGTH,
    /** Shift of a joint's centre forward, metres; of the ankle, along the foot as share of it. */
    JOINT_FORWARD,
    /** Shift of a joint's centre up (of the grip: towards the fingers), metres. */
    JOINT_UP,
    /** Factor on the strength of a joint. */
    STRENGTH,
    /** Factor on the greatest pull of a group of muscles. */
    PULL,
    /** Factor on the arms of a group of muscles. */
    ARM
  }

  /**
   * A trait of a part.
   *
   * @param trait which
   * @param part of what, as in "thigh"
   */
  public record Of(Trait trait, String part) {}

  /** No factor or shift that is meant is larger. */
  private static final double MOST = 1_000;

  /** Keeps its own copy of the map. */
  public Variation {
    sizes = Map.copyOf(sizes);
  }

  /**
   * The same with one difference more.
   *
   * @param trait which
   * @param part of what
   * @param size factor or shift
   * @return the changed variation
   * @throws Refused if a part is missing, or the size beyond a thousand either way
   */
  public Variation with(Trait trait, String part, double size) {
    Ask.present("trait that differs", trait, "Trait.MASS");
    Ask.present("part that differs", part, "\"thigh\"");
    Ask.number("size of the difference", size, -MOST, MOST);
    Map<Of, Double> more = new HashMap<>(sizes);
    more.put(new Of(trait, part), size);
    return new Variation(more);
  }

  /** A factor, 1 where none was said. */
  public double factor(Trait trait, String part) {
    return sizes.getOrDefault(new Of(trait, part), 1.0);
  }

  /** A shift, 0 where none was said. */
  public double shift(Trait trait, String part) {
    return sizes.getOrDefault(new Of(trait, part), 0.0);
  }

  /** A person's changes of length with those of the variation multiplied in. */
  Map<Part, Double> lengths(Map<Part, Double> changes) {
    if (sizes.isEmpty()) {
      return changes;
    }
    Map<Part, Double> all = new EnumMap<>(Part.class);
    all.putAll(changes);
    for (Part part : Part.values()) {
      Double factor = sizes.get(new Of(Trait.LENGTH, part.word()));
      if (factor != null) {
        all.merge(part, factor, (said, more) -> said * more);
      }
    }
    return all;
  }
}
