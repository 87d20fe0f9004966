package org.leverbook.lift;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Load;
import org.leverbook.support.Support;

/**
 * What was said about a lift: who, with what, set how. What was not said is left to the recipe.
 *
 * @param body whose
 * @param values settings in metres and radians
 * @param main what is lifted
 * @param grip how the hands take it
 * @param side which side works, in one-sided lifts
 * @param barPlace where a bar rests
 * @param more further loads
 * @param supports further supports
 */
record Setup(
    Body body,
    Map<Setting, Double> values,
    Optional<Load> main,
    Optional<Grip> grip,
    Optional<Side> side,
    Optional<Site> barPlace,
    List<Load> more,
    List<Support> supports) {

  static Setup of(Body body) {
    return new Setup(
        body,
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** The same movement by another body, nothing else said: grip, side and the bar's place alone. */
  Setup bare(Body other) {
    Setup nothing = of(other);
    return new Setup(
        other, nothing.values, nothing.main, grip, side, barPlace, nothing.more, nothing.supports);
  }

  /** The same, all said as it was, by another body. */
  Setup by(Body other) {
    return new Setup(other, values, main, grip, side, barPlace, more, supports);
  }

  Setup said(Setting setting, double value) {
    Map<Setting, Double> changed = new EnumMap<>(Setting.class);
    changed.putAll(values);
    changed.put(setting, value);
    return new Setup(body, Map.copyOf(changed), main, grip, side, barPlace, more, supports);
  }

  Setup without(Setting... settings) {
    Map<Setting, Double> changed = new EnumMap<>(Setting.class);
    changed.putAll(values);
    changed.keySet().removeAll(Arrays.asList(settings));
    return new Setup(body, Map.copyOf(changed), main, grip, side, barPlace, more, supports);
  }

  Setup lifting(Load load) {
    return new Setup(body, values, Optional.of(load), grip, side, barPlace, more, supports);
  }

  Setup gripped(Grip how) {
    return new Setup(body, values, main, Optional.of(how), side, barPlace, more, supports);
  }

  Setup working(Side which) {
    return new Setup(body, values, main, grip, Optional.of(which), barPlace, more, supports);
  }

  Setup resting(Site where) {
    return new Setup(body, values, main, grip, side, Optional.of(where), more, supports);
  }

  Setup with(Load... loads) {
    List<Load> all = new ArrayList<>(more);
    all.addAll(Arrays.asList(loads));
    return new Setup(body, values, main, grip, side, barPlace, List.copyOf(all), supports);
  }

  Setup replacing(Load one, Load other) {
    List<Load> all = more.stream().map(l -> l.equals(one) ? other : l).toList();
    return new Setup(body, values, main, grip, side, barPlace, all, supports);
  }

  Setup on(Support... others) {
    List<Support> all = new ArrayList<>(supports);
    all.addAll(Arrays.asList(others));
    return new Setup(body, values, main, grip, side, barPlace, more, List.copyOf(all));
  }

  /**
   * What the recipe itself has in hand or on the back.
   *
   * @param said all loads of a posture; those that the coach added come last
   */
  List<Load> own(List<Load> said) {
    return said.subList(0, said.size() - more.size());
  }
}
