package org.leverbook.article;

import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTable;
import org.leverbook.display.Traced;
import org.leverbook.lift.LargestLoad;
import org.leverbook.lift.Library;
import org.leverbook.lift.Lift;
import org.leverbook.load.Chains;
import org.leverbook.load.Inertia;
import org.leverbook.load.Load;
import org.leverbook.marks.Fit;
import org.leverbook.marks.Recorded;
import org.leverbook.muscle.BoneLoad;
import org.leverbook.muscle.Bones;
import org.leverbook.muscle.DiscLoad;
import org.leverbook.muscle.Discs;
import org.leverbook.muscle.Effort;
import org.leverbook.muscle.MuscleGroup;
import org.leverbook.muscle.Verdict;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Largest;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.strength.Capacity;
import org.leverbook.strength.Demand;
import org.leverbook.strength.Demands;
import org.leverbook.study.Claim;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.ClaimCase;
import org.leverbook.study.Comparison;
import org.leverbook.study.Doubt;
import org.leverbook.study.DoubtBand;
import org.leverbook.study.Grid;
import org.leverbook.study.GridOfThree;
import org.leverbook.study.Group;
import org.leverbook.study.Optimum;
import org.leverbook.study.Sensitivity;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;
import org.leverbook.study.TradeOff;
import org.leverbook.study.WayComparison;
import org.leverbook.support.Support;

/**
 * What an article was really made of: it walks from the values that were put in to those that they
 * were made of, and sorts what it meets.
 */
final class Used {

  /** Beyond so many rows a sweep makes its positions anew; its ends then stand for all. */
  private static final int KEPT = 500;

  /** What can be asked of data beyond a body; the topics of {@link DataSource}. */
  enum Topic {
    STATICS("statics"),
    MUSCLES("muscles"),
    DISCS("discs"),
    BONES("bones"),
    STRENGTH("strength"),
    PEOPLE("people"),
    DOUBT("doubt"),
    CHAINS("chains");

    private final String word;

    Topic(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  /** By their texts, since equal people are told once. */
  private final Map<String, Person> people = new LinkedHashMap<>();

  private final Map<String, Position> positions = new LinkedHashMap<>();
  private final Map<String, Load> loads = new LinkedHashMap<>();
  private final Map<String, Support> supports = new LinkedHashMap<>();
  private final Set<SegmentTable> masses = new LinkedHashSet<>();
  private final Set<Topic> topics = new LinkedHashSet<>();
  private final Set<Object> studies = new LinkedHashSet<>();
  private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
  private boolean moving;
  private boolean found;

  /** Walks from values; in any order the same is found. */
  static Used of(Collection<?> values) {
    Used used = new Used();
    values.forEach(used::value);
    return used;
  }

  /** Whether a value leads to anything that a method could tell. */
  static boolean tells(Object value) {
    return of(List.of(value)).found;
  }

  Collection<Person> people() {
    return people.values();
  }

  Collection<Position> positions() {
    return positions.values();
  }

  Collection<Load> loads() {
    return loads.values();
  }

  Collection<Support> supports() {
    return supports.values();
  }

  Set<SegmentTable> masses() {
    return masses;
  }

  Set<Topic> topics() {
    return topics;
  }

  /** Sweeps, comparisons, groups, claims, doubts, lifts and their like, in order. */
  Set<Object> studies() {
    return studies;
  }

  boolean moving() {
    return moving;
  }

  private void value(Object value) {
    if (value == null || !seen.add(value)) {
      return;
    }
    if (value instanceof Traced traced) {
      traced.subjects().forEach(this::value);
    } else if (value instanceof Collection<?> several && !(value instanceof Group)) {
      several.forEach(this::value);
    } else {
      found |= people(value) || mechanics(value) || study(value);
    }
  }

  private boolean people(Object value) {
    if (value instanceof Group group) {
      group(group);
    } else if (value instanceof Person person) {
      person(person);
    } else if (value instanceof Body body) {
      person(body.person());
    } else if (value instanceof Position position) {
      position(position);
    } else {
      return false;
    }
    return true;
  }

  private void person(Person person) {
    people.putIfAbsent(person.text(), person);
    masses.add(person.table());
  }

  private void position(Position position) {
    person(position.body().person());
    equipment(position);
    positions.putIfAbsent(
        position.name()
            + "\n"
            + position.body().person().text()
            + "\n"
            + position.facts()
            + position.loads().stream().map(Load::description).toList(),
        position);
  }

  /** Loads and supports of a position that itself is not shown. */
  private void equipment(Position position) {
    topics.add(Topic.STATICS);
    masses.add(position.body().person().table());
    position.supports().forEach(s -> supports.putIfAbsent(s.description(), s));
    for (Load load : position.loads()) {
      loads.putIfAbsent(load.description(), load);
      moving |= load instanceof Inertia;
      if (load instanceof Chains) {
        topics.add(Topic.CHAINS);
      }
    }
  }

  private void group(Group group) {
    topics.add(Topic.PEOPLE);
    if (group.size() > 0) {
      masses.add(group.get(0).table());
    }
    studies.add(group);
  }

  /** Lifts, movements, and what was asked of muscles and strength. */
  private boolean mechanics(Object value) {
    if (value instanceof Lift<?> lift) {
      lift(lift);
    } else if (value instanceof Library library) {
      library.lifts().forEach(this::value);
    } else if (value instanceof Movement movement) {
      studies.add(movement);
      tried(() -> value(movement.onTheWay(Units.percent(0))));
      moving = true;
    } else if (value instanceof Fit fit) {
      studies.add(fit);
      value(fit.position());
    } else if (value instanceof Recorded recorded) {
      studies.add(recorded);
      value(recorded.movement());
    } else if (value instanceof Effort
        || value instanceof MuscleGroup
        || value instanceof Verdict) {
      topics.add(Topic.MUSCLES);
    } else if (value instanceof Discs || value instanceof DiscLoad) {
      topics.addAll(List.of(Topic.MUSCLES, Topic.DISCS));
    } else if (value instanceof Bones || value instanceof BoneLoad) {
      topics.addAll(List.of(Topic.MUSCLES, Topic.BONES));
    } else if (value instanceof Capacity capacity) {
      topics.add(Topic.STRENGTH);
      person(capacity.body().person());
    } else if (value instanceof LargestLoad
        || value instanceof Largest
        || value instanceof Demand
        || value instanceof Demands) {
      topics.add(Topic.STRENGTH);
    } else {
      // A moment tells its size, and whose it is not.
      return value instanceof JointMoment;
    }
    return true;
  }

  private void lift(Lift<?> lift) {
    person(lift.body().person());
    studies.add(lift);
    // Somebody of this build may not get to the start; the lift is told all the same.
    tried(() -> equipment(lift.start()));
  }

  private boolean study(Object value) {
    if (value instanceof Sweep sweep) {
      studies.add(sweep);
      sweep(sweep);
    } else if (value instanceof Grid<?, ?> grid) {
      studies.add(grid);
      grid.cells().stream().filter(c -> c.held()).findFirst().ifPresent(c -> value(grid.at(c)));
    } else if (value instanceof GridOfThree<?, ?, ?> grid) {
      studies.add(grid);
      grid.cells().stream().filter(c -> c.held()).findFirst().ifPresent(c -> value(grid.at(c)));
    } else if (value instanceof Comparison comparison) {
      studies.add(comparison);
      comparison.rows().forEach(row -> value(row.position()));
    } else if (value instanceof WayComparison ways) {
      studies.add(ways);
      tried(() -> ways.start().rows().forEach(row -> value(row.position())));
    } else if (value instanceof ClaimAnswer answer) {
      claim(answer);
    } else if (value instanceof ClaimCase example) {
      value(example.position());
    } else if (value instanceof Doubt || value instanceof DoubtBand) {
      doubt(value);
    } else if (value instanceof Sensitivity sensitivity) {
      doubt(sensitivity.band());
    } else if (value instanceof Optimum<?> || value instanceof TradeOff<?>) {
      studies.add(value);
    } else {
      if (value instanceof Claim) {
        studies.add(value);
      }
      return value instanceof Claim;
    }
    return true;
  }

  private void sweep(Sweep sweep) {
    List<SweepRow> rows = sweep.rows().stream().filter(SweepRow::held).toList();
    if (rows.isEmpty()) {
      return;
    }
    if (rows.size() <= KEPT && sweep.named()) {
      rows.forEach(row -> value(row.position()));
    } else {
      // Its first position is no more than where the span begins: who and with what, that is told.
      person(rows.get(0).position().body().person());
      equipment(rows.get(0).position());
    }
  }

  private void claim(ClaimAnswer answer) {
    studies.add(answer);
    if (answer.people() instanceof Group group) {
      group(group);
    } else {
      topics.add(Topic.PEOPLE);
    }
    if (answer.tested() > 0) {
      tried(() -> equipment(answer.at(1).position()));
    }
  }

  private void doubt(Object value) {
    topics.addAll(List.of(Topic.PEOPLE, Topic.DOUBT));
    studies.add(value);
  }

  private static void tried(Runnable step) {
    try {
      step.run();
    } catch (Refused ignored) {
      // What cannot be made anew is not told; what was shown of it stands in the article.
      return;
    }
  }
}
