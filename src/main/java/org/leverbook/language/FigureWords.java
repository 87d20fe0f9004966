package org.leverbook.language;

import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import org.leverbook.body.JointId;
import org.leverbook.figure.Charts;
import org.leverbook.figure.ColumnPlot;
import org.leverbook.figure.CurvePlot;
import org.leverbook.figure.FigureStyle;
import org.leverbook.figure.LabelWords;
import org.leverbook.figure.RowPlot;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.Doubt;
import org.leverbook.study.Span;
import org.leverbook.study.Sweep;

/** The words for pictures and plots and how they look; {@link Vocabulary} hands them on. */
public abstract sealed class FigureWords extends OptimumWords permits PageWords {

  FigureWords() {}

  /**
   * Chooses the look of all pictures made from now on, as in {@code style(slide())}; {@code
   * style(article())} goes back. For one picture: {@code picture.styled(slide())}.
   *
   * <p>A colour that cannot be read is refused: {@code style(article().withColour(HIP, "#ffff00"))}
   * says by how much.
   *
   * @param look which
   * @return the same
   * @throws Refused if there is none
   */
  public static FigureStyle style(FigureStyle look) {
    return FigureStyle.choose(look);
  }

  /**
   * The usual look: for the pages of an article, in calm colours that readers of every colour
   * vision tell apart, as in {@code style(article())}.
   *
   * @return the style; {@code .withColour(…)}, {@code .withLetters(1.2)}, {@code .withLines(2)},
   *     {@code .speaking(labelWords("german.txt"))} change it
   */
  public static FigureStyle article() {
    return FigureStyle.ARTICLE;
  }

  /**
   * Larger letters and wider lines, to be read from the last row, as in {@code
   * pull.start().picture().styled(slide())}.
   *
   * @return the style
   */
  public static FigureStyle slide() {
    return FigureStyle.SLIDE;
  }

  /**
   * Greys, dashes and markers instead of colours, as in {@code
   * pull.start().picture().styled(blackAndWhite())}.
   *
   * @return the style
   */
  public static FigureStyle blackAndWhite() {
    return FigureStyle.BLACK_AND_WHITE;
  }

  /**
   * The clearest colours for readers of every colour vision, as in {@code style(clearColours())};
   * less calm than the usual ones.
   *
   * @return the style
   */
  public static FigureStyle clearColours() {
    return FigureStyle.CLEAR_COLOURS;
  }

  /**
   * One's own words for labels, as in {@code article().speaking(labelWords("german.txt"))}. A line
   * for each: {@code hip = Hüfte}.
   *
   * @param file text in UTF-8
   * @return the words
   * @throws Refused if there is no such file, or a line is none; says which
   */
  public static LabelWords labelWords(String file) {
    return LabelWords.read(file);
  }

  /**
   * Moments of a sweep as curves, as in {@code plotMoments(byHip, HIP).chart()}: the chart, to be
   * styled further.
   *
   * @param sweep what was varied
   * @param joints which joints, or none for the usual ones
   * @return the plot
   * @throws Refused if nothing could be held, or the sweep is over named things
   */
  public static CurvePlot plotMoments(Sweep sweep, JointId... joints) {
    return Charts.moments(sweep, joints);
  }

  /**
   * Arms of the load along a sweep, as in {@code plotArms(byHip, HIP, L5_S1)}.
   *
   * @param sweep what was varied
   * @param joints which joints, or none for the usual ones
   * @return the plot
   * @throws Refused if nothing could be held, or the sweep is over named things
   */
  public static CurvePlot plotArms(Sweep sweep, JointId... joints) {
    return Charts.arms(sweep, joints);
  }

  /**
   * What is asked of each joint in per cent of what it can give, as in {@code
   * plotEffort(byHip.against(HIP), HIP, KNEE)}.
   *
   * @param sweep what was varied
   * @param joints which joints, or none for the usual ones
   * @return the plot
   * @throws Refused if nothing could be held, no strength is known, or it is over named things
   */
  public static CurvePlot plotEffort(Sweep sweep, JointId... joints) {
    return Charts.effort(sweep, joints);
  }

  /**
   * The net force in each joint along a sweep, without muscles, as in {@code plotForces(byHip,
   * HIP)}.
   *
   * @param sweep what was varied
   * @param joints which joints, or none for the usual ones
   * @return the plot
   * @throws Refused if nothing could be held, or the sweep is over named things
   */
  public static CurvePlot plotForces(Sweep sweep, JointId... joints) {
    return Charts.forces(sweep, joints);
  }

  /**
   * Any quantity along a sweep, as in {@code plotOf(byHip, "trunk lean", "°", p -> p.fact("trunk
   * lean"))}.
   *
   * @param sweep what was varied
   * @param what as in "trunk lean"
   * @param unit its unit; may be empty
   * @param of from a position to the number
   * @return the plot
   * @throws Refused if nothing could be held, the sweep is over named things, or it is no number
   */
  public static CurvePlot plotOf(
      Sweep sweep, String what, String unit, ToDoubleFunction<Position> of) {
    return Charts.of(sweep, what, unit, of);
  }

  /**
   * Where the moments of a position come from, as in {@code plotParts(pull.start(), HIP, KNEE)}.
   *
   * @param position which
   * @param joints which joints, or none for the usual ones
   * @return stacked bars
   * @throws Refused if none of the moments is known
   */
  public static ColumnPlot plotParts(Position position, JointId... joints) {
    return Charts.parts(position, joints);
  }

  /**
   * Where the moment at a joint comes from along a sweep, as in {@code plotParts(byHip, HIP)}.
   *
   * @param sweep what was varied
   * @param joint which
   * @return stacked areas
   * @throws Refused if nothing could be held, or the sweep is over named things
   */
  public static CurvePlot plotParts(Sweep sweep, JointId joint) {
    return Charts.parts(sweep, joint);
  }

  /**
   * The spine level upon level: moments, and what presses in the discs of the low back, as in
   * {@code plotSpine(pull.start())}.
   *
   * @param position which
   * @return the plot
   * @throws Refused if no moment of the spine is known
   */
  public static RowPlot plotSpine(Position position) {
    return Charts.spine(position);
  }

  /**
   * The largest load along a lift's way against the one that is held, the sticking region marked,
   * as in {@code plotStrength(backSquat(lifter).holding(barbell(kg(60))))}.
   *
   * @param lift which
   * @return the plot
   * @throws Refused if no strength that is known limits it
   */
  public static CurvePlot plotStrength(Lift<?> lift) {
    return Charts.strength(lift);
  }

  /**
   * What a joint can give against what is asked of it, as in {@code
   * plotStrength(byHip.against(HIP), HIP)}.
   *
   * @param sweep what was varied
   * @param joint which
   * @return the plot
   * @throws Refused if nothing of known strength is asked of the joint
   */
  public static CurvePlot plotStrength(Sweep sweep, JointId joint) {
    return Charts.strength(sweep, joint);
  }

  /**
   * How sure a curve is, as in {@code plotDoubt(span("hip height", cm(55), cm(70), 4), h ->
   * doubt(pull.hipHeight(h)).draws(100), HIP)}.
   *
   * @param <Q> what kind of quantity
   * @param span the setting and its values
   * @param doubt from a value to what may be off
   * @param joint whose moment
   * @return the plot
   * @throws Refused if there is no answer anywhere
   */
  public static <Q extends Quantity<Q>> CurvePlot plotDoubt(
      Span<Q> span, Function<Quantity<Q>, Doubt> doubt, JointId joint) {
    return Charts.doubt(span, doubt, joint);
  }

  /**
   * How often values occur, as in {@code histogram("thigh length", "cm", people(200, 1), p -> 100 *
   * p.body().links().lengthOf(THIGH))}.
   *
   * @param <T> what kind of thing
   * @param what is counted
   * @param unit its unit; may be empty
   * @param things of which
   * @param of from a thing to the number
   * @return the plot
   * @throws Refused if there are fewer than two, or one is no number
   */
  public static <T> CurvePlot histogram(
      String what, String unit, Iterable<? extends T> things, ToDoubleFunction<? super T> of) {
    return Charts.histogram(what, unit, things, of);
  }

  /**
   * How the margins of a claim spread, as in {@code histogram(answer)}.
   *
   * @param answer to a claim that was made by a margin
   * @return the plot
   * @throws Refused if the claim tells no margins
   */
  public static CurvePlot histogram(ClaimAnswer answer) {
    return Charts.histogram(answer);
  }
}
