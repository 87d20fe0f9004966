package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.Doubt;
import org.leverbook.study.Span;
import org.leverbook.study.Sweep;

/**
 * Every plot by its name: each a {@link Plot}, which is a picture and hands out the XChart chart.
 */
public final class Charts {

  private static final String SWEEP = "sweep(\"hip height\", ...)";

  private Charts() {}

  /**
   * Moments of a sweep.
   *
   * @param sweep what was varied
   * @param joints which joints, or none for the usual ones
   * @return the plot
   * @throws Refused if nothing could be held, or the sweep is over named things
   */
  public static CurvePlot moments(Sweep sweep, JointId... joints) {
    return curves(sweep, Measure.MOMENT, joints);
  }

  /**
   * Arms of the load.
   *
   * @param sweep what was varied
   * @param joints which joints, or none for the usual ones
   * @return the plot
   * @throws Refused if nothing could be held, or the sweep is over named things
   */
  public static CurvePlot arms(Sweep sweep, JointId... joints) {
    return curves(sweep, Measure.ARM, joints);
  }

  /**
   * What is asked of each joint as a share of what it can give.
   *
   * @param sweep what was varied
   * @param joints which joints, or none for the usual ones
   * @return the plot
   * @throws Refused if nothing could be held, no strength is known, or it is over named things
   */
  public static CurvePlot effort(Sweep sweep, JointId... joints) {
    return curves(sweep, Measure.EFFORT, joints);
  }

  /**
   * The net force in each joint, without muscles.
   *
   * @param sweep what was varied
   * @param joints which joints, or none for the usual ones
   * @return the plot
   * @throws Refused if nothing could be held, or the sweep is over named things
   */
  public static CurvePlot forces(Sweep sweep, JointId... joints) {
    return curves(sweep, Measure.FORCE, joints);
  }

  private static CurvePlot curves(Sweep sweep, Measure measure, JointId... joints) {
    Ask.present("sweep", sweep, SWEEP);
    List<JointId> asked = joints.length == 0 ? Plots.usual() : List.of(joints);
    return SweepCurves.plot(sweep, asked, measure, FigureStyle.current());
  }

  /**
   * Any quantity of the positions of a sweep.
   *
   * @param sweep what was varied
   * @param what is plotted, as in "trunk lean"
   * @param unit its unit; may be empty
   * @param of from a position to the number
   * @return the plot
   * @throws Refused if nothing could be held, the sweep is over named things, or it is no number
   */
  public static CurvePlot of(Sweep sweep, String what, String unit, ToDoubleFunction<Position> of) {
    Ask.present("sweep", sweep, SWEEP);
    Ask.present("lambda", of, "p -> p.fact(\"trunk lean\")");
    return SweepCurves.plot(sweep, named(what), unit, of, FigureStyle.current());
  }

  private static String named(String what) {
    if (what == null || what.isBlank()) {
      throw new Refused("What is plotted needs a name, such as \"trunk lean\".");
    }
    return what.strip();
  }

  /**
   * Where the moments of a position come from.
   *
   * @param position which
   * @param joints which joints, or none for the usual ones
   * @return stacked bars, one for each joint
   * @throws Refused if none of the moments is known
   */
  public static ColumnPlot parts(Position position, JointId... joints) {
    Ask.present("position", position, "pull.start()");
    List<JointId> asked = joints.length == 0 ? Plots.usual() : List.of(joints);
    return PartPlots.plot(position, asked, FigureStyle.current());
  }

  /**
   * Where the moment at a joint comes from, along a sweep.
   *
   * @param sweep what was varied
   * @param joint which
   * @return stacked areas and the whole moment
   * @throws Refused if nothing could be held, or the sweep is over named things
   */
  public static CurvePlot parts(Sweep sweep, JointId joint) {
    Ask.present("sweep", sweep, SWEEP);
    Ask.present("joint", joint, "HIP");
    return PartPlots.plot(sweep, joint, FigureStyle.current());
  }

  /**
   * The moment at each level of the spine, and what presses in the discs of the low back.
   *
   * @param position which
   * @return bars, level upon level
   * @throws Refused if no moment of the spine is known
   */
  public static RowPlot spine(Position position) {
    Ask.present("position", position, "pull.start()");
    return SpinePlots.plot(position, FigureStyle.current());
  }

  /**
   * The largest load along a lift's way against the load that is held, with the sticking region.
   *
   * @param lift which
   * @return the plot
   * @throws Refused if no strength that is known limits it
   */
  public static CurvePlot strength(Lift<?> lift) {
    Ask.present("lift", lift, "backSquat(lifter)");
    return StrengthPlots.plot(lift, FigureStyle.current());
  }

  /**
   * What a joint can give against what is asked of it, with the sticking region.
   *
   * @param sweep what was varied; {@code sweep.against(KNEE)} for the joint's angle
   * @param joint which
   * @return the plot
   * @throws Refused if nothing of known strength is asked of the joint
   */
  public static CurvePlot strength(Sweep sweep, JointId joint) {
    Ask.present("sweep", sweep, SWEEP);
    Ask.present("joint", joint, "KNEE");
    return StrengthPlots.plot(sweep, joint, FigureStyle.current());
  }

  /**
   * A moment over a range of settings with the band that it may be off by.
   *
   * @param <Q> what kind of quantity
   * @param span the setting and its values
   * @param doubt from a value to what may be off
   * @param joint whose moment
   * @return the plot
   * @throws Refused if there is no answer anywhere
   */
  public static <Q extends Quantity<Q>> CurvePlot doubt(
      Span<Q> span, Function<Quantity<Q>, Doubt> doubt, JointId joint) {
    Ask.present("span", span, "span(\"hip height\", cm(48), cm(72), 7)");
    Ask.present("lambda", doubt, "h -> doubt(pull.hipHeight(h)).draws(100)");
    Ask.present("joint", joint, "HIP");
    return DoubtPlots.plot(span, doubt, joint, FigureStyle.current());
  }

  /**
   * How often values of a quantity occur among people or other things.
   *
   * @param <T> what kind of thing
   * @param what is counted, as in "thigh length"
   * @param unit its unit; may be empty
   * @param things of which
   * @param of from a thing to the number
   * @return the plot
   * @throws Refused if there are fewer than two, or one is no number
   */
  public static <T> CurvePlot histogram(
      String what, String unit, Iterable<? extends T> things, ToDoubleFunction<? super T> of) {
    Ask.present("list", things, "people(200, 1)");
    Ask.present("lambda", of, "p -> 100 * p.body().links().lengthOf(THIGH)");
    List<Double> values = new ArrayList<>();
    boolean people = true;
    for (T thing : things) {
      values.add(of.applyAsDouble(thing));
      people &= thing instanceof org.leverbook.body.Person;
    }
    return Histograms.plot(
        named(what),
        unit,
        values.size() + (people ? " people" : " values"),
        values.stream().mapToDouble(v -> v).toArray(),
        List.of(),
        FigureStyle.current(),
        things);
  }

  /**
   * How the margins of a claim spread: above zero it holds.
   *
   * @param answer to a claim that was made by a margin
   * @return the plot
   * @throws Refused if the claim tells no margins
   */
  public static CurvePlot histogram(ClaimAnswer answer) {
    Ask.present("answer", answer, "claim(...).margin(...).over(...)");
    return Histograms.plot(
        "margin",
        answer.unit(),
        String.format(java.util.Locale.ROOT, "%,d cases", answer.tested()),
        answer.margins(),
        List.of(
            Caption.capital(answer.words()) + ": where the margin is above zero.", Caution.TEXT),
        FigureStyle.current(),
        answer);
  }
}
