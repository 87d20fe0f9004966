package org.leverbook.statics;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.leverbook.body.Condition;
import org.leverbook.display.Sheet;
import org.leverbook.load.Load;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.strength.Capacity;
import org.leverbook.strength.Demand;
import org.leverbook.strength.Demands;

/** What a position asks of the lifter's strength, and what gives out first. */
public sealed interface StrengthQuestions permits Position {

  /**
   * What every joint must give against what it can give.
   *
   * @return for each direction asked: needed, can give, their share, source and status
   * @throws Refused if the supports cannot hold the position
   */
  default Sheet strength() {
    Position position = (Position) this;
    Capacity capacity = Capacity.of(position.body());
    return demands(capacity)
        .table(
            "Strength, " + position.name(),
            List.of("For " + position.body().person().text() + ". " + who(position)))
        .about(this, capacity);
  }

  /**
   * The joint that is nearest to its limit, or furthest beyond.
   *
   * @return what is asked of it, and what it can give
   * @throws Refused if the supports cannot hold the position, or nothing of known strength is asked
   */
  default Demand limiter() {
    return demands()
        .limiter()
        .orElseThrow(
            () -> new Refused("Nothing here asks for a strength that is known: nothing limits."));
  }

  /**
   * What every joint must give.
   *
   * @return the demands, joint after joint
   * @throws Refused if the supports cannot hold the position
   */
  default Demands demands() {
    return demands(Capacity.of(((Position) this).body()));
  }

  /**
   * What every joint must give, of a person whose strength is at hand.
   *
   * @param capacity of the position's lifter
   * @return the demands, joint after joint
   * @throws Refused if the supports cannot hold the position
   */
  default Demands demands(Capacity capacity) {
    Position position = (Position) this;
    if (!position.held()) {
      throw new Refused(
          "What this asks of strength is not known, because the supports cannot hold it. "
              + position.holding().sentence());
    }
    return Demands.of(
        capacity, new AskedLoads(position.placement(), position.forces()), position.placement());
  }

  /**
   * The largest load that can be held still in this posture: the main load grows until a joint
   * reaches its limit, a hand its grip, or the supports no longer hold.
   *
   * @return the load and what limits it
   * @throws Refused if nothing here can grow
   */
  default Largest largest() {
    Position position = (Position) this;
    return Largest.of(position, Capacity.of(position.body()));
  }

  /**
   * The same with straps, so that the grip does not limit.
   *
   * @return the load and what limits it
   * @throws Refused if nothing here can grow
   */
  default Largest largestWithStraps() {
    Position position = (Position) this;
    return Largest.of(position, Capacity.of(position.body()).strapped());
  }

  /**
   * The largest load at which no joint gives more than a share of its strength, as in {@code
   * start.largestAtEffort(percent(70))}.
   *
   * @param effort 1 to 1000 % of what each joint can give
   * @return the load and what then gives that share
   * @throws Refused if the share is missing or outside, or nothing here can grow
   */
  default Largest largestAtEffort(Quantity<Dimensionless> effort) {
    Position position = (Position) this;
    double share = Ask.share("effort", effort, 0.01, 10);
    return Largest.of(position, Capacity.of(position.body()).times(share));
  }

  /**
   * The load that can grow: of several the one that pulls hardest.
   *
   * @return the load
   * @throws Refused if nothing here can grow
   */
  default Load mainLoad() {
    return Largest.growing((Position) this);
  }

  /**
   * The same posture with its main load another size; whether that is held is found anew.
   *
   * @param times how many times the size it has; zero or more
   * @return the changed position
   * @throws Refused if it is no such number, or nothing here can grow
   */
  default Position withLoadTimes(double times) {
    Position position = (Position) this;
    Load main = mainLoad();
    Load grown = Largest.times(main, times);
    return position.changed(position.setting.changing(load -> load.equals(main) ? grown : load));
  }

  private static String who(Position position) {
    Condition condition = position.body().person().condition();
    return "Taken as "
        + condition.years()
        + " years old and "
        + condition.training().word()
        + "; .aged(40) and .trained(TRAINED) change it.";
  }
}
