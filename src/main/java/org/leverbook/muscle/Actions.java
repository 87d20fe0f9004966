package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.leverbook.body.Body;
import org.leverbook.muscle.Turns.Turn;

/** What muscles of a person can do together at each joint, direction by direction. */
final class Actions {

  /** An arm below half a millimetre is none. */
  private static final double NOTHING = 0.0005;

  private static final double DEGREE = Math.toRadians(1);

  private Actions() {}

  /**
   * Everything these muscles can do.
   *
   * @param muscles which, taken together
   * @param body whose
   * @return one action for each joint and direction; empty if they turn no joint
   */
  static List<Action> of(List<MuscleRow> muscles, Body body) {
    Map<List<String>, List<Turn>> groups = new LinkedHashMap<>();
    for (MuscleRow muscle : muscles) {
      for (Turn turn : Turns.of(muscle, body)) {
        if (turn.arm().angles().stream().anyMatch(a -> turn.arm().at(a) >= NOTHING)) {
          groups
              .computeIfAbsent(List.of(turn.joint(), turn.action()), k -> new ArrayList<>())
              .add(turn);
        }
      }
    }
    List<String> joints = groups.keySet().stream().map(key -> key.get(0)).distinct().toList();
    return groups.values().stream()
        .map(Actions::together)
        .sorted(Comparator.comparingInt(action -> joints.indexOf(action.joint())))
        .toList();
  }

  private static Action together(List<Turn> turns) {
    Map<String, Place> places = new LinkedHashMap<>();
    Set<String> parts = new LinkedHashSet<>();
    Set<String> sources = new LinkedHashSet<>();
    Set<String> statuses = new LinkedHashSet<>();
    for (Turn turn : turns) {
      places.computeIfAbsent(turn.level(), k -> new Place()).turns.add(turn);
      parts.add(turn.part());
      sources.addAll(turn.series().sources());
      statuses.add(turn.series().status());
    }
    places.values().forEach(Place::look);
    Place strongest = places.values().iterator().next();
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Place place : places.values()) {
      strongest = place.moment > strongest.moment ? place : strongest;
      least = Math.min(least, place.least);
      most = Math.max(most, place.most);
    }
    Turn one = turns.get(0);
    boolean counted = AxisWords.counted(one.series());
    return new Action(
        List.copyOf(parts),
        one.joint(),
        one.action(),
        strongest.standing,
        least,
        most,
        strongest.varies ? OptionalDouble.of(Math.toDegrees(strongest.at)) : OptionalDouble.empty(),
        strongest.moment,
        counted,
        statuses.size() == 1 ? statuses.iterator().next() : "partly from memory",
        List.copyOf(sources));
  }

  /** One joint, or one level of the spine, and what turns it there. */
  private static final class Place {

    final List<Turn> turns = new ArrayList<>();
    boolean varies;
    double standing;
    double least = Double.POSITIVE_INFINITY;
    double most;
    double moment = -1;
    double at;

    void look() {
      TreeSet<Double> angles = new TreeSet<>();
      double force = 0;
      for (Turn turn : turns) {
        force += turn.force();
        angles.addAll(turn.arm().angles());
        varies |= !turn.arm().single();
      }
      List<Double> listed = List.copyOf(angles);
      for (double a = listed.get(0); a < angles.last(); a += DEGREE) {
        angles.add(a);
      }
      for (double angle : angles) {
        double here = sum(angle);
        least = Math.min(least, here / force);
        most = Math.max(most, here / force);
        if (here > moment) {
          moment = here;
          at = angle;
        }
      }
      standing = sum(0) / force;
    }

    /** Their moment; what works the other way there stays slack. */
    private double sum(double angle) {
      double sum = 0;
      for (Turn turn : turns) {
        double arm = turn.arm().at(angle);
        sum += turn.force() * Math.max(0, arm);
      }
      return sum;
    }
  }
}
