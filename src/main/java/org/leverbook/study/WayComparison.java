package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import org.leverbook.body.JointId;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import tech.tablesaw.api.Table;

/**
 * Lifts or movements side by side over the whole way: the largest moment at each joint and where it
 * is; or at one share of the way, as positions.
 *
 * <p>Loads are as given unless said otherwise; the last thing said counts. An effort or a largest
 * load is that of the hardest share of the way, looked for at every twentieth, met to half a per
 * cent. Of a movement a share is one of its time.
 *
 * <p>{@code WayComparison.of(highBar, lowBar).atEqualEffort(percent(70)).finish()} works; one lift
 * alone is refused.
 */
public final class WayComparison implements Shown {

  private final List<Entrant<Passage>> given;
  private final LoadRule rule;
  private final List<Entrant<Passage>> weighed;
  private volatile List<Track> tracks;

  private WayComparison(List<Entrant<Passage>> given, LoadRule rule) {
    this.given = given;
    this.rule = rule;
    this.weighed = rule == LoadRule.AS_GIVEN ? given : Entrant.by(rule, given);
  }

  /**
   * Lifts side by side.
   *
   * @param first what the others are set against
   * @param others one to eleven more
   * @return the comparison, loads as given
   * @throws Refused if one is missing, or there are too few or too many
   */
  public static WayComparison of(Lift<?> first, Lift<?>... others) {
    List<Lift<?>> all = new ArrayList<>();
    all.add(first);
    all.addAll(Arrays.asList(Ask.present("other lift", others, "frontSquat(lifter)")));
    all.forEach(l -> Ask.present("lift", l, "backSquat(lifter)"));
    Entrant.counted(all.size(), "lifts", "compare(backSquat(lifter), frontSquat(lifter))");
    List<Entrant<Passage>> entrants = new ArrayList<>();
    List<String> names =
        names(all.stream().map(Lift::name).toList(), all.stream().map(Passage::of).toList());
    for (int i = 0; i < all.size(); i++) {
      entrants.add(Entrant.of(names.get(i), new WeighedWay.OfLift(all.get(i))));
    }
    return new WayComparison(entrants, LoadRule.AS_GIVEN);
  }

  /**
   * Movements side by side, each over its own time.
   *
   * @param first what the others are set against
   * @param others one to eleven more
   * @return the comparison, loads as given
   * @throws Refused if one is missing, or there are too few or too many
   */
  public static WayComparison of(Movement first, Movement... others) {
    List<Movement> all = new ArrayList<>();
    all.add(first);
    all.addAll(Arrays.asList(Ask.present("other movement", others, "slow")));
    all.forEach(m -> Ask.present("movement", m, "backSquat(lifter).moving(smooth(seconds(1)))"));
    Entrant.counted(all.size(), "movements", "compare(fast, slow)");
    List<String> plain =
        all.stream()
            .map(
                m ->
                    String.format(
                        Locale.ROOT,
                        "%s in %.2f s",
                        m.name(),
                        m.duration().getValue().doubleValue()))
            .toList();
    List<Entrant<Passage>> entrants = new ArrayList<>();
    List<String> names = names(plain, all.stream().map(Passage::of).toList());
    for (int i = 0; i < all.size(); i++) {
      entrants.add(Entrant.of(names.get(i), new WeighedWay.OfMovement(all.get(i))));
    }
    return new WayComparison(entrants, LoadRule.AS_GIVEN);
  }

  /** Told apart by their starts, where there are any. */
  private static List<String> names(List<String> plain, List<Passage> ways) {
    List<Position> starts = new ArrayList<>();
    for (Passage way : ways) {
      Position start = Attempt.at(() -> way.at().apply(0)).position();
      if (start == null) {
        return Names.numbered(plain);
      }
      starts.add(start);
    }
    return ComparedNames.of(plain, starts);
  }

  /**
   * The same under names of your own.
   *
   * @param names one for each, in their order
   * @return the changed comparison
   * @throws Refused if there are too few or too many names, or two are alike
   */
  public WayComparison called(String... names) {
    return new WayComparison(Entrant.called(given, names), rule);
  }

  /**
   * All with the load of the first, in kilograms.
   *
   * @return the changed comparison
   * @throws Refused if the first has no load that is counted in kilograms
   */
  public WayComparison atEqualLoad() {
    return new WayComparison(given, Entrant.equalLoad(given));
  }

  /**
   * All with one load, as in {@code atEqualLoad(kg(60))}.
   *
   * @param mass 0.1 to 1000 kg; what is worn besides stays
   * @return the changed comparison
   * @throws Refused if it is missing or outside
   */
  public WayComparison atEqualLoad(Quantity<Mass> mass) {
    return new WayComparison(given, Entrant.equalLoad(mass));
  }

  /**
   * Each with the load at which its limiter, where the way is hardest, gives the same share of its
   * strength as that of the first gives as it is.
   *
   * @return the changed comparison
   * @throws Refused if the effort of the first is not known
   */
  public WayComparison atEqualEffort() {
    return new WayComparison(given, Entrant.equalEffort(given));
  }

  /**
   * Each with the load at which its limiter, where the way is hardest, gives this share of its
   * strength.
   *
   * @param share 1 to 150 %, as in {@code percent(70)}
   * @return the changed comparison
   * @throws Refused if it is missing or outside
   */
  public WayComparison atEqualEffort(Quantity<Dimensionless> share) {
    return new WayComparison(given, Entrant.equalEffort(share));
  }

  /**
   * Each with this share of the largest load that it could hold all the way.
   *
   * @param share 1 to 150 %, as in {@code percent(70)}
   * @return the changed comparison
   * @throws Refused if it is missing or outside
   */
  public WayComparison atEqualShareOfLargest(Quantity<Dimensionless> share) {
    return new WayComparison(given, Entrant.shareOfLargest(share));
  }

  /**
   * The positions at a share of the way, with the loads they are compared at.
   *
   * @param share 0 to 100 %, as in {@code percent(30)}
   * @return positions side by side
   * @throws Refused if the share is missing or outside
   */
  public Comparison at(Quantity<Dimensionless> share) {
    return at(Ask.share("share of the way", share, 0, 1));
  }

  private Comparison at(double share) {
    List<Entrant<Position>> there = new ArrayList<>();
    for (Entrant<Passage> way : weighed) {
      if (way.shown() == null) {
        there.add(new Entrant<>(way.name(), null, null, way.reason()));
        continue;
      }
      Attempt tried = Attempt.at(() -> way.shown().at().apply(share));
      there.add(
          tried.position() == null
              ? new Entrant<>(way.name(), null, null, tried.reason())
              : Entrant.of(way.name(), new Weighed.OfPosition(tried.position())));
    }
    return Comparison.at(there, rule.words());
  }

  /**
   * The positions at the start.
   *
   * @return positions side by side
   */
  public Comparison start() {
    return at(0);
  }

  /**
   * The positions half-way.
   *
   * @return positions side by side
   */
  public Comparison middle() {
    return at(0.5);
  }

  /**
   * The positions at the finish.
   *
   * @return positions side by side
   */
  public Comparison finish() {
    return at(1);
  }

  /**
   * The numbers at every twentieth of the way.
   *
   * @return one track for each, in the order given
   * @throws Refused if the user asked to stop
   */
  public List<Track> tracks() {
    List<Track> found = tracks;
    if (found == null) {
      found = Track.of(weighed);
      tracks = found;
    }
    return found;
  }

  /**
   * How the loads were chosen.
   *
   * @return as in "loads as given"
   */
  public String loads() {
    return rule.words();
  }

  /**
   * Each one's load, its hardest point and limiter, and why it is not held all the way.
   *
   * @return a row for each
   */
  public Sheet summary() {
    return WaySheets.summary(this).about(this);
  }

  /**
   * The largest moment at each joint over the way, where it is, and the arm there, with difference
   * and ratio to the first.
   *
   * @param joints which joints; hip, knee, ankle, low back, mid back, shoulder and elbow when none
   *     are named
   * @return a row for each joint
   */
  public Sheet peaks(JointId... joints) {
    return WaySheets.peaks(this, joints.length == 0 ? ComparisonSheets.USUAL : List.of(joints))
        .about(this);
  }

  /**
   * What each trade group must give over the whole way, in one word each.
   *
   * @return a row for each group that is not idle everywhere
   */
  public Sheet verdicts() {
    return WaySheets.verdicts(this, weighed).about(this);
  }

  /**
   * Everything as a tidy table: a row for each lift, share of the way, joint and side.
   *
   * @return a Tablesaw table, units in the column names
   */
  public Table table() {
    return Tables.of(WaySheets.tidy(this));
  }

  /**
   * The same in wide form: a row for each lift and share of the way, columns for moment and arm at
   * each joint.
   *
   * @param joints which joints, or none for those of {@link #peaks}
   * @return a Tablesaw table, units in the column names
   */
  public Table wideTable(JointId... joints) {
    return Tables.of(
        WaySheets.wide(this, joints.length == 0 ? ComparisonSheets.USUAL : List.of(joints)));
  }

  /**
   * Moment through the way, a curve for each.
   *
   * @param joint one joint; the hardest worked of the usual ones when none is named
   * @return the plot
   * @throws Refused if more than one is named, or nothing is held
   */
  public Picture plot(JointId... joint) {
    if (joint.length > 1) {
      throw new Refused("A plot of several ways shows one joint: give one, as in .plot(HIP).");
    }
    return Illustrator.pictureOf(this, List.of(joint.length == 1 ? joint[0] : hardest()));
  }

  /** Of the usual joints the one with the largest moment. */
  private JointId hardest() {
    return ComparisonSheets.USUAL.stream()
        .max(
            Comparator.comparingDouble(
                j ->
                    tracks().stream()
                        .flatMap(t -> t.points().stream())
                        .mapToDouble(p -> Math.abs(p.moment(j).orElse(0)))
                        .max()
                        .orElse(0)))
        .orElseThrow();
  }

  /**
   * Saves the tidy table as CSV, or the plot.
   *
   * @param file a name that ends in {@code .csv}, {@code .svg} or {@code .png}
   * @return what was written
   * @throws Refused if the name has another ending, or the disk says no
   */
  public Saved save(String file) {
    return ComparisonTables.save(file, WaySheets.tidy(this), () -> plot());
  }

  /**
   * What a reader must know of it.
   *
   * @return sentences
   */
  public List<String> notes() {
    return WaySheets.notes(this);
  }

  @Override
  public String text() {
    return summary().text()
        + "\n\n"
        + peaks().text()
        + "\nAlso: .start(), .at(percent(30)), .finish(), .verdicts(), .table(), .plot(HIP)";
  }

  @Override
  public Optional<String> html() {
    return Optional.of(summary().html().orElseThrow() + peaks().html().orElseThrow());
  }

  @Override
  public String toString() {
    return text();
  }
}
