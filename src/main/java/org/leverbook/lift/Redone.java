package org.leverbook.lift;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.leverbook.body.Person;
import org.leverbook.load.Load;

/**
 * The same lift done by another person, with settings and loads somewhat off what was said: what a
 * question of how sure an answer is must know of a lift.
 */
public final class Redone {

  private Redone() {}

  /**
   * The settings in force, said or usual.
   *
   * @param lift which
   * @return metres or radians
   */
  public static Map<Setting, Double> settings(Lift<?> lift) {
    Map<Setting, Double> settings = new EnumMap<>(Setting.class);
    settings.putAll(said(lift).used());
    settings.putAll(lift.setup().values());
    return settings;
  }

  /**
   * The loads that can be heavier or lighter.
   *
   * @param lift which
   * @return in order
   */
  public static List<Load> loads(Lift<?> lift) {
    Posture posture = said(lift);
    lift.setup().more().forEach(posture::lifts);
    return posture.loads().stream()
        .filter(load -> load.mass() > 0 && load.times(1).isPresent())
        .distinct()
        .toList();
  }

  /**
   * Does it again.
   *
   * @param <L> the kind of lift
   * @param lift as it was said
   * @param person who does it now
   * @param values settings in place of those said, metres or radians
   * @param factors how many times as heavy loads are; those not named stay
   * @return the changed lift
   */
  public static <L extends Lift<L>> L of(
      L lift, Person person, Map<Setting, Double> values, Map<Load, Double> factors) {
    L again = lift.changed(set(lift, person, values));
    for (Map.Entry<Load, Double> e : factors.entrySet()) {
      again = again.with(e.getKey(), e.getValue());
    }
    return again;
  }

  static Setup set(Lift<?> lift, Person person, Map<Setting, Double> values) {
    Setup setup = lift.setup().by(person.body());
    for (Map.Entry<Setting, Double> e : values.entrySet()) {
      setup = setup.said(e.getKey(), e.getValue());
    }
    return setup;
  }

  private static Posture said(Lift<?> lift) {
    Posture posture = new Posture(lift.setup(), 0, lift.bothSidesAlike(), List.of());
    lift.say(posture);
    return posture;
  }
}
