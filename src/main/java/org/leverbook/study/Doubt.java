package org.leverbook.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.SegmentTable;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;
import org.leverbook.display.Sheet.Column;
import org.leverbook.display.Shown;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;

/**
 * How sure an answer is, and which inputs move it most.
 *
 * <p>Of a person only sex, mass, stature and what was measured are known; segment masses, centres
 * of mass, joint centres and the other lengths are those of the average. Bars weigh about what is
 * written on them, and a lifter stands about as told. Each of these is put off by its published
 * spread ({@code body/spreads.csv}, and the survey for lengths), and the lift is done again as that
 * person would really do it: the posture is solved anew, with the same settings. All inputs are
 * independent but for lengths, which go together as in the survey. Left and right vary alike; what
 * a model leaves out (rigid segments, no deformation) is not in it.
 *
 * <p>{@code doubt(pull).band(L5_S1)} says how sure, {@code doubt(pull).sensitivity(L5_S1)} also
 * from what.
 */
public final class Doubt implements Shown {

  private static final int USUAL_DRAWS = 1000;
  private static final int FEWEST = 100;
  private static final int MOST = 20_000;

  private final Subject subject;
  private final Inputs inputs;
  private final List<String> only;
  private final List<String> without;
  private final int draws;
  private final long seed;

  private Doubt(
      Subject subject,
      Inputs inputs,
      List<String> only,
      List<String> without,
      int draws,
      long seed) {
    this.subject = subject;
    this.inputs = inputs;
    this.only = List.copyOf(only);
    this.without = List.copyOf(without);
    this.draws = draws;
    this.seed = seed;
  }

  private static Doubt of(Subject subject) {
    return new Doubt(subject, subject.inputs(), List.of(), List.of(), USUAL_DRAWS, 1);
  }

  /**
   * The doubt about a lift.
   *
   * @param <L> the kind of lift
   * @param lift what is done; its loads and settings may be off, too
   * @param at which position of it, as in {@code l -> l.finish()}
   * @return the doubt
   * @throws Refused if something is missing or the lift cannot be set up
   */
  public static <L extends Lift<L>> Doubt of(L lift, Function<L, Position> at) {
    return of(
        Subject.OfLift.of(
            Ask.present("lift", lift, "hinge(lifter)"),
            Ask.present("position", at, "l -> l.start()")));
  }

  /**
   * The doubt about a position that a script makes; which of its own quantities are unsure, the
   * script says of the {@link Draw}.
   *
   * @param person whose build may be off
   * @param position from a person and a draw to a position
   * @return the doubt
   * @throws Refused if something is missing or the position cannot be made
   */
  public static Doubt of(Person person, BiFunction<Person, Draw, Position> position) {
    return of(
        new Subject.OfPerson(
            Ask.present("lifter", person, "person(MALE, kg(85), cm(178))"),
            Ask.present("position", position, "(who, draw) -> hinge(who).start()")));
  }

  /**
   * The same with another number of cases.
   *
   * @param count 100 to 20,000; 1,000 unless said, which leaves the band's ends unsure by at most
   *     about 7 % of the standard deviation
   * @return the changed doubt
   * @throws Refused if it is outside
   */
  public Doubt draws(int count) {
    if (count < FEWEST || count > MOST) {
      throw new Refused(
          "Between 100 and 20,000 cases can be drawn, but " + count + " were asked for.");
    }
    return new Doubt(subject, inputs, only, without, count, seed);
  }

  /**
   * The seed of its cases.
   *
   * @return as it was given; 1 where nobody said
   */
  public long seed() {
    return seed;
  }

  /**
   * The same with other draws.
   *
   * @param other the same seed gives the same draws; 1 unless said
   * @return the changed doubt
   */
  public Doubt seed(long other) {
    return new Doubt(subject, inputs, only, without, draws, other);
  }

  /**
   * Only inputs whose name holds one of these words are off.
   *
   * @param words as in "mass" or "hip height"
   * @return the changed doubt
   * @throws Refused if no input is called so
   */
  public Doubt only(String... words) {
    checked(words);
    return new Doubt(subject, inputs, List.of(words), without, draws, seed);
  }

  /**
   * Inputs whose name holds one of these words are as they are thought to be: a calibrated bar, a
   * lifter weighed segment by segment.
   *
   * @param words as in "bar mass"
   * @return the changed doubt
   * @throws Refused if no input is called so
   */
  public Doubt without(String... words) {
    checked(words);
    List<String> all = new ArrayList<>(without);
    all.addAll(Arrays.asList(words));
    return new Doubt(subject, inputs, only, all, draws, seed);
  }

  private void checked(String... words) {
    List<Input> known = inputs.withStrength().withMuscles().all();
    for (String word : words) {
      if (known.stream().noneMatch(input -> input.name().contains(word))) {
        throw new Refused(
            "No input is called \""
                + word
                + "\"; there are "
                + inputs.all().stream().map(Input::name).collect(Collectors.joining(", "))
                + ", and strengths and muscles.");
      }
    }
  }

  private Inputs chosen(Inputs from) {
    return from.that(
        input ->
            (only.isEmpty() || only.stream().anyMatch(input.name()::contains))
                && without.stream().noneMatch(input.name()::contains));
  }

  /**
   * How sure the moment at a joint is.
   *
   * @param joint which; of a paired joint the side that has more
   * @return the band that nine of ten cases lie in
   * @throws Refused if the position cannot be held as it stands
   */
  public DoubtBand band(JointId joint) {
    return band(moment(joint), "N·m", chosen(inputs), size(joint));
  }

  /**
   * How sure the moment at a joint of one side is.
   *
   * @param joint which
   * @param side which side
   * @return the band that nine of ten cases lie in
   * @throws Refused if the position cannot be held as it stands
   */
  public DoubtBand band(JointId joint, Side side) {
    return band(moment(joint, side), "N·m", chosen(inputs), size(joint, side));
  }

  /**
   * How sure any number of the position is; strengths and muscles may be off, too.
   *
   * @param what it is, as in "largest load"
   * @param unit its unit, as in "kg"
   * @param value from the position to the number
   * @return the band that nine of ten cases lie in
   * @throws Refused if the position cannot be held as it stands
   */
  public DoubtBand band(String what, String unit, ToDoubleFunction<Position> value) {
    return band(what, unit, asked(what, unit, value), value);
  }

  private DoubtBand band(String what, String unit, Inputs off, ToDoubleFunction<Position> value) {
    Position plain = plain();
    return DoubtBand.of(
        plain.name() + ": " + what,
        unit,
        plainValue(value),
        Cases.of(subject, off, value, draws, seed));
  }

  /**
   * Which inputs move the moment at a joint most.
   *
   * @param joint which; of a paired joint the side that has more
   * @return a row an input, the strongest first, and the band
   * @throws Refused if the position cannot be held as it stands
   */
  public Sensitivity sensitivity(JointId joint) {
    return sensitivity(moment(joint), "N·m", chosen(inputs), size(joint));
  }

  /**
   * Which inputs move the moment at a joint of one side most.
   *
   * @param joint which
   * @param side which side
   * @return a row an input, the strongest first, and the band
   * @throws Refused if the position cannot be held as it stands
   */
  public Sensitivity sensitivity(JointId joint, Side side) {
    return sensitivity(moment(joint, side), "N·m", chosen(inputs), size(joint, side));
  }

  /**
   * Which inputs move any number of the position most; strengths and muscles may be off, too.
   *
   * @param what it is, as in "largest load"
   * @param unit its unit, as in "kg"
   * @param value from the position to the number
   * @return a row an input, the strongest first, and the band
   * @throws Refused if the position cannot be held as it stands
   */
  public Sensitivity sensitivity(String what, String unit, ToDoubleFunction<Position> value) {
    return sensitivity(what, unit, asked(what, unit, value), value);
  }

  private Sensitivity sensitivity(
      String what, String unit, Inputs off, ToDoubleFunction<Position> value) {
    Cases cases = Cases.of(subject, off, value, draws, seed);
    double plain = plainValue(value);
    DoubtBand band = DoubtBand.of(plain().name() + ": " + what, unit, plain, cases);
    OneByOne alone = new OneByOne(subject, off, value, plain, cases);
    return new Sensitivity(band, alone.rows(), alone.explained(), otherTable(value));
  }

  /** The answer with the other published table of masses: a choice, no spread. */
  private Sensitivity.Choice otherTable(ToDoubleFunction<Position> value) {
    SegmentTable other =
        subject.person().table() == SegmentTable.DE_LEVA_1996
            ? SegmentTable.WINTER_2009
            : SegmentTable.DE_LEVA_1996;
    Cases.Outcome outcome = Cases.one(subject, new Changes().weighedBy(other), value);
    return new Sensitivity.Choice("masses by " + other.source(), outcome.value(), outcome.reason());
  }

  private Inputs asked(String what, String unit, ToDoubleFunction<Position> value) {
    Ask.present("name of the number", what, "\"largest load\"");
    Ask.present("unit", unit, "\"kg\"");
    Ask.present("lambda", value, "p -> p.moment(HIP).size()");
    return chosen(inputs.withStrength().withMuscles());
  }

  private Position plain() {
    Position plain = subject.with(new Changes());
    if (plain == null) {
      throw new Refused("The lambda gave no position (null), so there is no answer to be sure of.");
    }
    if (!plain.held()) {
      throw new Refused(
          "As it stands this cannot be held, so there is no answer to be sure of: "
              + plain.holding().sentence());
    }
    return plain;
  }

  private double plainValue(ToDoubleFunction<Position> value) {
    double plain = value.applyAsDouble(plain());
    if (!Double.isFinite(plain)) {
      throw new Refused("The lambda gave no number for the position as it stands.");
    }
    return plain;
  }

  private static String moment(JointId joint) {
    String word = Ask.present("joint", joint, "L5_S1").word();
    return "moment at " + (joint.spineLevel() ? "" : "the ") + word;
  }

  private static String moment(JointId joint, Side side) {
    Ask.present("joint", joint, "L5_S1");
    return "moment at the " + joint.on(Ask.present("side", side, "LEFT"));
  }

  private static ToDoubleFunction<Position> size(JointId joint) {
    return p -> p.moment(joint).size();
  }

  private static ToDoubleFunction<Position> size(JointId joint, Side side) {
    return p -> p.moment(joint, side).size();
  }

  /**
   * What may be off, by how much, and who says so.
   *
   * @return a row an input; strengths and muscles, which count for numbers of your own, left out
   */
  public Sheet table() {
    List<List<Object>> rows = new ArrayList<>();
    for (Input input : chosen(inputs).all()) {
      rows.add(
          List.of(input.name(), input.told(-Spread.HIGH), input.told(Spread.HIGH), input.source()));
    }
    return new Sheet(
            "What may be off: " + plain().name(),
            List.of(
                Column.text("input"),
                Column.text("5 %"),
                Column.text("95 %"),
                Column.text("source")),
            rows,
            List.of(
                String.format(
                    Locale.ROOT,
                    "band(L5_S1) says how sure a moment is, sensitivity(L5_S1) which of these move it"
                        + " most; %,d cases, seed %d.",
                    draws,
                    seed),
                Caution.TEXT))
        .about(this);
  }

  @Override
  public String text() {
    return table().text();
  }

  @Override
  public Optional<String> html() {
    return table().html();
  }

  @Override
  public String toString() {
    return text();
  }
}
