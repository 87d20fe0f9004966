package org.leverbook.marks;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.data.DataTable;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;

/**
 * A table of landmarks over time, with what a coach says of it.
 *
 * <p>Layout: a header {@code time (s),landmark,x (cm),y (cm)}, for places in space also {@code z
 * (cm)}; a row for each landmark in each frame; # begins a comment. x runs to the right of a view
 * from the side, y up, z towards the viewer; lengths in mm, cm, m, or pixels (y down), named in the
 * headings. Empty cells, NaN and missing rows are gaps.
 *
 * <p>{@code landmarks("pull.csv").fit(lifter).holding(barbell(kg(60))).movement()} gives the
 * moments through the lift. A value.
 */
public final class Landmarks implements Shown {

  /** Longer gaps are not filled, seconds: common practice, no source. */
  private static final double GAP = 0.1;

  private final DataTable table;
  private final Map<String, String> columns;
  private final Map<String, String> names;
  private final Optional<UpAxis> up;
  private final Plan plan;

  /** What is done with the places. */
  record Plan(
      Optional<Double> metresPerPixel,
      Optional<Double> hertz,
      double gap,
      double from,
      double to,
      Side shown,
      boolean measuring,
      Known known) {

    Plan scaled(double metres) {
      return new Plan(Optional.of(metres), hertz, gap, from, to, shown, measuring, known);
    }

    Plan smoothed(double cutOff) {
      return new Plan(metresPerPixel, Optional.of(cutOff), gap, from, to, shown, measuring, known);
    }

    Plan gapsUpTo(double longest) {
      return new Plan(metresPerPixel, hertz, longest, from, to, shown, measuring, known);
    }

    Plan between(double first, double last) {
      return new Plan(metresPerPixel, hertz, gap, first, last, shown, measuring, known);
    }

    Plan seenFrom(Side side) {
      return new Plan(metresPerPixel, hertz, gap, from, to, side, measuring, known);
    }

    Plan lengthsFromMarks() {
      return new Plan(metresPerPixel, hertz, gap, from, to, shown, true, known);
    }

    Plan knowing(Known more) {
      return new Plan(metresPerPixel, hertz, gap, from, to, shown, measuring, more);
    }
  }

  private Landmarks(
      DataTable table,
      Map<String, String> columns,
      Map<String, String> names,
      Optional<UpAxis> up,
      Plan plan) {
    this.table = table;
    this.columns = Map.copyOf(columns);
    this.names = Map.copyOf(names);
    this.up = up;
    this.plan = plan;
  }

  /**
   * A table.
   *
   * @param file its name
   * @param columns from {@code time}, {@code landmark}, {@code x}, {@code y}, {@code z} to the
   *     file's own headings, where they differ
   * @return the landmarks
   * @throws Refused if there is no such file, or a row is broken
   */
  public static Landmarks of(String file, Map<String, String> columns) {
    DataTable table = TrackTable.read(Ask.present("table", file, "\"pull.csv\""));
    for (Map.Entry<String, String> e : columns.entrySet()) {
      if (!table.columns().contains(e.getValue())) {
        throw new Refused(
            file
                + " has no column \""
                + e.getValue()
                + "\"; it has "
                + String.join(", ", table.columns())
                + ".");
      }
    }
    return new Landmarks(
        table,
        columns,
        Map.of(),
        Optional.empty(),
        new Plan(
            Optional.empty(),
            Optional.empty(),
            GAP,
            Double.NEGATIVE_INFINITY,
            Double.POSITIVE_INFINITY,
            Side.MIDLINE,
            false,
            Known.nothing()));
  }

  private Landmarks planned(Plan changed) {
    return new Landmarks(table, columns, names, up, changed);
  }

  private Landmarks knowing(Known known) {
    return planned(plan.knowing(known));
  }

  /**
   * What a landmark of the file is called here.
   *
   * @param inFile its name there
   * @param landmark as in "left knee"
   * @return the changed landmarks
   * @throws Refused if there is no such landmark
   */
  public Landmarks called(String inFile, String landmark) {
    Landmark.asked(landmark);
    Map<String, String> more = new LinkedHashMap<>(names);
    more.put(inFile, landmark);
    return new Landmarks(table, columns, more, up, plan);
  }

  /**
   * Which axis of the table points up, where it is not y: {@code up("z")}, or {@code up("-y")}
   * where y runs down. x runs forward or to the right. Tables in pixels have y running down unless
   * said.
   *
   * @param axis {@code "y"}, {@code "-y"}, {@code "z"} or {@code "-z"}
   * @return the changed landmarks
   * @throws Refused if it is another
   */
  public Landmarks up(String axis) {
    return new Landmarks(table, columns, names, Optional.of(UpAxis.asked(axis)), plan);
  }

  /**
   * The scale of a table in pixels.
   *
   * @param pixels how many
   * @param length how long they are in truth
   * @return the changed landmarks
   * @throws Refused if there are no pixels
   */
  public Landmarks scale(double pixels, Quantity<Length> length) {
    double metres = Ask.length("length of the scale", length, 0.02, 3);
    if (!(pixels >= 1) || Double.isInfinite(pixels)) {
      throw new Refused("A scale takes one pixel or more, not " + pixels + ".");
    }
    return planned(plan.scaled(metres / pixels));
  }

  /**
   * Smoothed with a cut-off of the coach's own: a zero-lag Butterworth low-pass of fourth order.
   * Unless said, the cut-off is chosen from the places themselves by residual analysis, and told.
   *
   * @param hertz 0.5 to 50
   * @return the changed landmarks
   * @throws Refused if it is outside
   */
  public Landmarks smoothed(double hertz) {
    if (!(hertz >= 0.5 && hertz <= 50)) {
      throw new Refused("The cut-off is " + hertz + " Hz, but must lie between 0.5 and 50 Hz.");
    }
    return planned(plan.smoothed(hertz));
  }

  /**
   * Gaps up to this long are filled along a straight line; 0.1 s unless said.
   *
   * @param longest 0 to 1 s
   * @return the changed landmarks
   */
  public Landmarks gapsUpTo(Quantity<Time> longest) {
    double seconds = Ask.time("longest gap", longest, 0, 1);
    return planned(plan.gapsUpTo(seconds));
  }

  /**
   * Only a part of the time.
   *
   * @param from first instant, by the table's own clock
   * @param to last instant
   * @return the changed landmarks
   */
  public Landmarks between(Quantity<Time> from, Quantity<Time> to) {
    double first = Si.seconds(Ask.present("first instant", from, "seconds(0.4)"));
    double last = Si.seconds(Ask.present("last instant", to, "seconds(2.1)"));
    return planned(plan.between(first, last));
  }

  /**
   * Which side of the lifter was seen; told by the foot's direction unless said.
   *
   * @param side left or right
   * @return the changed landmarks
   */
  public Landmarks seenFrom(Side side) {
    return planned(plan.seenFrom(Ask.present("side", side, "RIGHT")));
  }

  /**
   * Thighs, shanks, upper arms and forearms are as long as they were seen: in space their middle
   * distance over time, in a view from the side their longest.
   */
  public Landmarks lengthsFromMarks() {
    return planned(plan.lengthsFromMarks());
  }

  /** The feet do not stand flat in one place: a lifter who sits, lies, hangs or steps. */
  public Landmarks offTheFloor() {
    return knowing(plan.known.offTheFloor());
  }

  /**
   * How far apart the ankles stand, where the coach knows it.
   *
   * @param length 0 to 150 cm
   * @return the changed landmarks
   */
  public Landmarks stanceWidth(Quantity<Length> length) {
    return knowing(plan.known.stanceWidth(Ask.length("stance width", length, 0, 1.5)));
  }

  /**
   * How far each foot points outward, where the coach knows it.
   *
   * @param angle 0 to 60°
   * @return the changed landmarks
   */
  public Landmarks turnOut(Quantity<Angle> angle) {
    return knowing(plan.known.turnOut(Ask.angle("turn-out", angle, 0, Math.toRadians(60))));
  }

  /**
   * How far apart the hands grip a bar, where the coach knows it.
   *
   * @param length 0 to 200 cm
   * @return the changed landmarks
   */
  public Landmarks gripWidth(Quantity<Length> length) {
    return knowing(plan.known.gripWidth(Ask.length("grip width", length, 0, 2)));
  }

  /**
   * Each hand holds its own weight: nothing is taken for usual of how far apart they are.
   *
   * @return the changed landmarks
   */
  public Landmarks handsApart() {
    return knowing(plan.known.handsApart());
  }

  /**
   * The poses of this lifter that fit the landmarks.
   *
   * @param lifter who was seen
   * @return the lift over time
   * @throws Refused if landmarks are missing or jump, or no such body can be seen like this; names
   *     line and column
   */
  public Recorded fit(Person lifter) {
    Ask.present("lifter", lifter, "person(MALE, kg(85), cm(178))");
    TrackTable read = TrackTable.of(table, columns, names, plan.metresPerPixel, up);
    return new TrackFit(table.name(), read.tracks(), read.clock(), read.up(), plan, lifter)
        .recorded();
  }

  @Override
  public String text() {
    return table.name()
        + ": "
        + table.rows().size()
        + " rows of landmarks\nfit(lifter) gives the lift over time";
  }

  @Override
  public String toString() {
    return text();
  }
}
