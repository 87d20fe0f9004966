package org.leverbook.strength;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.muscle.JointLoads;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;

/**
 * Everything that loads ask of a person's strength in one pose.
 *
 * @param all the joints' directions that are asked for anything
 */
public record Demands(List<Demand> all) {

  /** Less is rounding, N·m or N. */
  private static final double NOTHING = 0.5;

  /** Both sides are told in one row where they differ by less than this share. */
  private static final double ALIKE = 1e-3;

  /** Keeps its own copy. */
  public Demands {
    all = List.copyOf(all);
  }

  /**
   * What loads ask.
   *
   * @param capacity of the person
   * @param loads what acts
   * @param where where the body is
   * @return the demands in the order of the joints
   */
  public static Demands of(Capacity capacity, JointLoads loads, Placement where) {
    List<Demand> demands = new ArrayList<>();
    for (Ability ability : capacity.abilities()) {
      double needed = ability.asked().of(loads, where);
      if (needed >= NOTHING) {
        demands.add(
            new Demand(
                ability.joint(),
                ability.side(),
                ability.action(),
                ability.unit(),
                needed,
                ability
                    .most()
                    .map(most -> OptionalDouble.of(most.applyAsDouble(where)))
                    .orElse(OptionalDouble.empty()),
                ability.limits(loads, where),
                ability.evidence()));
      }
    }
    return new Demands(demands);
  }

  /**
   * The one nearest to its limit, or furthest beyond: the first to reach it when all that is asked
   * grows alike. The right side where both are alike. Not a wrist that the load presses straight
   * on: a lifter lays the bar over it, while here the bar's place in the hand is fixed.
   *
   * @return empty where nothing of known strength is asked
   */
  public Optional<Demand> limiter() {
    Demand hardest = null;
    double most = 0;
    for (Demand demand : all) {
      double effort = demand.limits() ? demand.effort().orElse(0) : 0;
      if (effort > most * (1 + ALIKE)) {
        hardest = demand;
        most = effort;
      }
    }
    return Optional.ofNullable(hardest);
  }

  /**
   * The greatest share.
   *
   * @return 1 where something is at its limit; 0 where nothing of known strength is asked
   */
  public double effort() {
    return limiter().map(d -> d.effort().getAsDouble()).orElse(0.0);
  }

  /**
   * The demands as a table, the hardest first, those of unknown strength last.
   *
   * @param title what it shows
   * @param more notes of the caller
   * @return the table
   * @throws Refused if the title is missing
   */
  public Sheet table(String title, List<String> more) {
    List<Column> columns =
        List.of(
            Column.text("joint"),
            Column.text("side"),
            Column.text("asks to"),
            new Column("needed", "N·m", 0),
            new Column("can give", "N·m", 0),
            new Column("effort", "%", 0),
            Column.text("status"),
            Column.text("source"),
            Column.text("doubt"));
    List<Demand> sorted = new ArrayList<>(all.stream().filter(this::tells).toList());
    sorted.sort(Comparator.comparingDouble(d -> -d.effort().orElse(-1)));
    List<List<Object>> rows = new ArrayList<>();
    for (Demand demand : sorted) {
      Optional<Demand> other = alike(demand);
      if (other.isPresent() && demand.side() == Side.LEFT) {
        continue;
      }
      List<Object> row = new ArrayList<>();
      row.add(demand.joint().word());
      row.add(other.isPresent() ? "each" : demand.side().word());
      row.add(demand.action());
      row.add(demand.needed());
      row.add(demand.canGive().isPresent() ? demand.canGive().getAsDouble() : null);
      row.add(demand.effort().isPresent() ? 100 * demand.effort().getAsDouble() : null);
      row.add(demand.evidence().status());
      row.add(demand.evidence().source());
      row.add(demand.evidence().note());
      rows.add(row);
    }
    List<String> notes = new ArrayList<>(more);
    notes.add(
        "Of low back, upper back and neck the level that is asked most. Each direction of a joint is set against what healthy people gave in it alone, held still;"
            + " the grip's row is in newtons. Between people these strengths vary by 20 to 30 %"
            + " (from memory). A wrist that the load presses straight on is never called the limiter:"
            + " a lifter lays the bar over it. Where nothing was measured the effort is not known.");
    notes.add(Caution.TEXT);
    return new Sheet(title, columns, rows, notes);
  }

  /** Of the levels of low back, upper back and neck only the one that is asked most. */
  private boolean tells(Demand one) {
    return one.joint().paired()
        || all.stream()
            .filter(d -> !d.joint().paired() && d.action().equals(one.action()))
            .filter(d -> region(d).equals(region(one)))
            .noneMatch(d -> d.needed() > one.needed());
  }

  private static String region(Demand demand) {
    return Capacity.group(demand.joint()) + demand.canGive().isPresent();
  }

  /** The same on the other side. */
  private Optional<Demand> alike(Demand one) {
    return all.stream()
        .filter(
            d ->
                d.joint() == one.joint()
                    && d.side() != one.side()
                    && d.action().equals(one.action())
                    && Math.abs(d.needed() - one.needed()) <= ALIKE * one.needed())
        .findFirst();
  }
}
