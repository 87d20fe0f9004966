package org.leverbook.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.leverbook.body.JointId;
import org.leverbook.strength.Capacity;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

/**
 * What can be plotted of a joint.
 *
 * @param name as in "arm"
 * @param axis the axis title, with unit and sign
 * @param notes what a reader must know
 * @param of its value in a row that is held; empty where it is not known
 */
record Measure(
    String name,
    String axis,
    List<String> notes,
    BiFunction<SweepRow, JointId, OptionalDouble> of) {

  static final Measure MOMENT =
      new Measure(
          "moment",
          "moment (N·m), positive: the resistance flexes",
          List.of("Moments of paired joints are of one side."),
          (row, joint) -> OptionalDouble.of(row.moment(joint)));

  static final Measure ARM =
      new Measure(
          "arm",
          "arm of the load (cm), positive: the load flexes",
          List.of(
              "An arm is the perpendicular distance from the joint to the load's line of force."),
          (row, joint) -> OptionalDouble.of(100 * row.arm(joint)));

  static final Measure EFFORT =
      new Measure(
          "effort",
          "effort (% of what the joint can give)",
          List.of(
              "Effort is the moment asked over the moment that this joint can give at its angle, of"
                  + " the side and motion that is nearest to its limit. Strengths are published"
                  + " means; between people they vary by 20 to 30 % (from memory)."),
          Measure::effort);

  static final Measure FORCE =
      new Measure(
          "net force",
          "net force in the joint (N), without muscles",
          List.of(
              "The net force is what holds everything beyond the joint against weight, loads and"
                  + " supports; what the bones press with is more, as muscles pull too."),
          (row, joint) -> OptionalDouble.of(row.position().moment(joint).force().getNorm()));

  /** What a plot of it is made of: of an effort also the strength. */
  Object[] subjects(Sweep sweep) {
    List<Object> subjects = new ArrayList<>(List.of(sweep));
    if (this == EFFORT) {
      sweep.rows().stream()
          .filter(SweepRow::held)
          .findFirst()
          .ifPresent(row -> subjects.add(Capacity.of(row.position().body())));
    }
    return subjects.toArray();
  }

  private static OptionalDouble effort(SweepRow row, JointId joint) {
    return row.position().demands().all().stream()
        .filter(d -> d.joint() == joint && d.effort().isPresent())
        .mapToDouble(d -> 100 * d.effort().getAsDouble())
        .max();
  }

  /** Of all rows; NaN, where XChart breaks its line, where there is no value. */
  double[] along(List<SweepRow> rows, JointId joint) {
    return rows.stream()
        .mapToDouble(r -> r.held() ? of.apply(r, joint).orElse(Double.NaN) : Double.NaN)
        .toArray();
  }
}
