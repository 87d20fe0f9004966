package org.leverbook.lift;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.leverbook.body.Body;
import org.leverbook.body.Person;
import org.leverbook.display.Saved;
import org.leverbook.display.Shown;
import org.leverbook.load.Barbell;
import org.leverbook.load.Cable;
import org.leverbook.load.HandWeights;
import org.leverbook.load.Load;
import org.leverbook.muscle.Effort;
import org.leverbook.muscle.Verdict;
import org.leverbook.muscle.VerdictWord;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Largest;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Notes;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import org.leverbook.statics.View;
import org.leverbook.strength.Capacity;
import org.leverbook.support.Support;

/**
 * A ready-made lift: a short recipe from what a coach says to positions, from start to finish.
 *
 * <p>A value: each word changes one setting and gives a new lift. What is not said keeps the
 * recipe's usual value. A position is solved when it is asked for; one that a real person cannot
 * get into is refused with what misses, by how much, and which joint's range stops it.
 *
 * @param <L> the lift itself
 */
public abstract class Lift<L extends Lift<L>> implements Shown {

  /** A verdict looks at so many steps of the way. */
  private static final int VERDICT_STEPS = 10;

  private final Setup setup;
  private final Way way;

  /** A lift as it was said. */
  Lift(Setup setup) {
    this.setup = setup;
    this.way = new Way(this);
  }

  /** Nothing said yet. */
  static Setup nothingSaid(Person lifter) {
    return Setup.of(Ask.present("lifter", lifter, "person(MALE, kg(85), cm(178))").body());
  }

  /** The same lift, said otherwise. */
  abstract L changed(Setup changed);

  /**
   * What a coach calls it.
   *
   * @return as in "bench press"
   */
  public abstract String name();

  /**
   * What it is for.
   *
   * @return one line
   */
  public abstract String purpose();

  /**
   * Where the usual posture comes from.
   *
   * @return a published source, or "common practice, no source"
   */
  public abstract String source();

  /** Whether left and right go alike. */
  boolean bothSidesAlike() {
    return true;
  }

  /** From where its work is to be seen. */
  View view() {
    return View.SIDE;
  }

  /**
   * Says the posture at one share of the way, what is lifted and what carries.
   *
   * @param p takes what is said
   */
  abstract void say(Posture p);

  /**
   * Numbers of a posture that only this lift tells, besides settings and angles.
   *
   * @param p what was said
   * @param pose what was found
   */
  List<Fact> facts(Posture p, Pose pose) {
    return List.of();
  }

  /**
   * What only this lift tells of a posture.
   *
   * @param p what was said
   * @param pose what was found
   */
  Notes notes(Posture p, Pose pose) {
    return Notes.ofPosture(List.of());
  }

  /** What to change where nobody of this build gets there. */
  String wayOut() {
    String settings = settings();
    return "Change a setting that gives way: "
        + (settings.isEmpty() ? "loads or build" : settings)
        + ".";
  }

  Setup setup() {
    return setup;
  }

  /**
   * Where the lift starts.
   *
   * @return the position, solved and its moments computed
   * @throws Refused if nobody of this build gets there; says by how much and what stops it
   */
  public Position start() {
    return way.at(0, "start");
  }

  /**
   * Half-way from start to finish.
   *
   * @return the position, solved and its moments computed
   * @throws Refused if nobody of this build gets there; says by how much and what stops it
   */
  public Position middle() {
    return way.at(0.5, "middle");
  }

  /**
   * Where the lift ends.
   *
   * @return the position, solved and its moments computed
   * @throws Refused if nobody of this build gets there; says by how much and what stops it
   */
  public Position finish() {
    return way.at(1, "finish");
  }

  /**
   * A share of the way from start to finish.
   *
   * @param share 0 to 100 %, as in {@code percent(30)}
   * @return the position, solved and its moments computed
   * @throws Refused if the share is missing or outside, or nobody of this build gets there
   */
  public Position at(Quantity<Dimensionless> share) {
    double part = Ask.share("share of the way", share, 0, 1);
    return way.at(part, String.format(Locale.ROOT, "%.0f %%", 100 * part));
  }

  /** Start, middle and finish. */
  List<Position> threePositions() {
    return List.of(start(), middle(), finish());
  }

  /**
   * Saves worksheet and picture at start, middle and finish, as in "back-squat-start.json" and
   * "back-squat-start.svg".
   *
   * @return what was written
   * @throws Refused if nobody of this build gets there, or the disk says no
   */
  public Saved save() {
    String file = name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    List<String> ends = List.of("start", "middle", "finish");
    List<Position> positions = threePositions();
    List<Path> files = new ArrayList<>();
    for (int i = 0; i < ends.size(); i++) {
      Position position = positions.get(i);
      String name = file + "-" + ends.get(i);
      files.addAll(position.worksheet().save(name + ".json").files());
      files.addAll(position.picture().save(name + ".svg").files());
    }
    return new Saved(files);
  }

  /**
   * The whole way at a tempo.
   *
   * @param tempo as in {@code smooth(seconds(1.5))}
   * @return the movement, from start to finish
   */
  public Movement moving(Tempo tempo) {
    return Movement.of(name(), tempo, share -> way.at(share, "moving"));
  }

  /**
   * With further loads: a band, chains, a vest.
   *
   * @param more as in {@code vest(kg(10))}
   * @return the changed lift
   */
  public L with(Load... more) {
    return changed(setup.with(more));
  }

  /**
   * With further supports.
   *
   * @param more as in {@code chestPad(deg(45))}
   * @return the changed lift
   */
  public L on(Support... more) {
    return changed(setup.on(more));
  }

  /**
   * The largest load that can be held still at each share of the way, and where the lift sticks.
   *
   * @return a table; its least load is the largest for the whole lift
   * @throws Refused if the lift has no load that could grow
   */
  public LargestLoad largest() {
    return LargestLoad.of(this, Capacity.of(body()));
  }

  /**
   * The same with straps, so that the grip does not limit.
   *
   * @return a table; its least load is the largest for the whole lift
   * @throws Refused if the lift has no load that could grow
   */
  public LargestLoad largestWithStraps() {
    return LargestLoad.of(this, Capacity.of(body()).strapped());
  }

  /**
   * The largest load at each share of the way at which no joint gives more than a share of its
   * strength, as in {@code squat.largestAtEffort(percent(70))}.
   *
   * @param effort 1 to 1000 % of what each joint can give
   * @return a table; its least load is the largest for the whole lift
   * @throws Refused if the share is missing or outside, or the lift has no load that could grow
   */
  public LargestLoad largestAtEffort(Quantity<Dimensionless> effort) {
    double share = Ask.share("effort", effort, 0.01, 10);
    String name = String.format(Locale.ROOT, "%s, no joint above %.0f %%", name(), 100 * share);
    return LargestLoad.of(this, Capacity.of(body()).times(share)).called(name);
  }

  /**
   * What the lift is done with; in lifts with the body alone what is worn besides.
   *
   * @return the load that can grow
   * @throws Refused if there is none, or nobody of this build gets to the start
   */
  public Load mainLoad() {
    return LargestLoad.main(this, start());
  }

  /**
   * The same lift with its main load another size; each posture is found anew, since the balance
   * moves with the load.
   *
   * @param times how many times the size it has; above zero
   * @return the changed lift
   * @throws Refused if it is no such number, or the lift has no load that could grow
   */
  public L withLoadTimes(double times) {
    Load main = mainLoad();
    Largest.times(main, times);
    return with(main, times);
  }

  /**
   * What the lift asks of each trade group from start to finish, and one word for it: limiter,
   * worked, helps, holds or idle ({@link VerdictWord}).
   *
   * @return prints as a table, hardest group first
   * @throws Refused if nobody of this build gets there, or the supports cannot hold a position
   */
  public Verdict verdict() {
    List<Effort> efforts =
        IntStream.rangeClosed(0, VERDICT_STEPS)
            .mapToObj(i -> at(Units.percent(100.0 * i / VERDICT_STEPS)).effort())
            .toList();
    return Verdict.of(name(), body(), efforts);
  }

  /** The same lift with one of its loads so many times as heavy. */
  L with(Load main, double factor) {
    Load grown = main.times(factor).orElseThrow();
    return changed(
        setup.more().contains(main) ? setup.replacing(main, grown) : setup.lifting(said(grown)));
  }

  /** How a recipe is told what is lifted: a machine by the mass on it. */
  private static Load said(Load load) {
    boolean asItIs =
        load instanceof Barbell || load instanceof HandWeights || load instanceof Cable;
    return asItIs ? load : new Barbell(load.counted().orElseThrow(), Barbell.STANDARD_PLATE_RADIUS);
  }

  Way way() {
    return way;
  }

  /**
   * Whose lift it is.
   *
   * @return the body
   */
  public Body body() {
    return setup.body();
  }

  /**
   * Its settings with the values in use, said or usual.
   *
   * @return as in "grip width 49.3 cm, bench angle 0°"
   */
  public String settings() {
    Posture posture = new Posture(setup, 0, bothSidesAlike(), List.of());
    say(posture);
    return text(posture.used());
  }

  private String lifted() {
    Posture posture = new Posture(setup, 0, bothSidesAlike(), List.of());
    say(posture);
    return posture.loads().isEmpty()
        ? "nothing to lift"
        : posture.loads().stream().map(Load::description).collect(Collectors.joining(", "));
  }

  private static String text(Map<Setting, Double> used) {
    return used.entrySet().stream()
        .map(e -> e.getKey().text(e.getValue()))
        .collect(Collectors.joining(", "));
  }

  /** Changes one setting of a lift. */
  @SuppressWarnings("unchecked")
  static <T> T said(Object lift, Setting setting, double value) {
    Lift<?> asked = (Lift<?>) lift;
    return (T) asked.changed(asked.setup.said(setting, value));
  }

  /** Changes something else of a lift. */
  @SuppressWarnings("unchecked")
  static <T> T changed(Object lift, java.util.function.UnaryOperator<Setup> change) {
    Lift<?> asked = (Lift<?>) lift;
    return (T) asked.changed(change.apply(asked.setup));
  }

  @Override
  public String text() {
    List<String> lines =
        List.of(
            name() + ": " + body().person().text(),
            purpose(),
            lifted(),
            settings(),
            "posture: " + source(),
            "start(), middle(), finish() and at(percent(30)) give positions");
    return lines.stream().filter(l -> !l.isEmpty()).collect(Collectors.joining("\n"));
  }

  @Override
  public String toString() {
    return text();
  }
}
