package org.leverbook.strength;

import java.util.List;
import org.leverbook.body.Body;
import org.leverbook.body.Condition;
import org.leverbook.body.Sex;
import org.leverbook.body.Training;
import org.leverbook.data.DataRow;
import org.leverbook.data.DataTable;

/**
 * What of a person scales a published strength: build, age, training.
 *
 * <p>Moments go with body mass times stature: muscle force with mass over stature, arms with
 * stature squared over stature, as the lower limb model has it (Anderson, Madigan and Nussbaum
 * 2007). Where a source gives newton metres without saying how tall and heavy its people were, they
 * are taken to be of 75 kg and 1.75 m (men) or 60 kg and 1.63 m (women): an assumption.
 *
 * <p>Age: a straight line from 25 down to 71.5 % at 75 (Danneskiold-Samsøe et al. 2009, men, middle
 * of 54 to 89 %); taken for women too, whose printed figure is ambiguous. The lower limb model and
 * grip have ages of their own.
 *
 * @param sex of the sample
 * @param mass kilograms
 * @param stature metres
 * @param condition age and training
 */
record Who(Sex sex, double mass, double stature, Condition condition) {

  private static final DataTable LEVELS = DataTable.read("strength/training_levels.csv");

  private static final double LEFT_AT_75 =
      DataTable.read("strength/strength_levels.csv")
          .only(
              "strength left at 75",
              r -> r.is("kind", "age scaling") && r.is("item", "men, all main joints"))
          .number("value");

  static Who of(Body body) {
    return new Who(
        body.person().sex(), body.tree().mass(), body.links().stature(), body.person().condition());
  }

  /** The letter of the tables. */
  String letter() {
    return sex == Sex.MALE ? "M" : "F";
  }

  /** Mass times stature over that of the people measured. */
  double size() {
    double measured = sex == Sex.MALE ? 75 * 1.75 : 60 * 1.63;
    return mass * stature / measured;
  }

  /** Mass over that of the people measured: for forces, where the arm is the body's own. */
  double massRatio() {
    return mass / (sex == Sex.MALE ? 75 : 60);
  }

  /** What age leaves. */
  double aged() {
    return 1 - (1 - LEFT_AT_75) * Math.max(0, condition.years() - 25) / 50;
  }

  /**
   * What training gives.
   *
   * @param joint as in the table
   * @param action as in the table
   * @param degrees where the table has angles
   * @return a factor, 1 for the untrained
   */
  double trained(String joint, String action, double degrees) {
    if (condition.training() == Training.UNTRAINED) {
      return 1;
    }
    List<DataRow> rows =
        LEVELS.rows().stream().filter(r -> r.is("joint", joint) && r.is("action", action)).toList();
    String column = condition.training().word();
    if (rows.isEmpty()) {
      return LEVELS.only("other motions", r -> r.is("joint", "other")).number(column);
    }
    if (rows.size() == 1) {
      return rows.get(0).number(column);
    }
    return Shape.of(rows, "at_deg", column).at(degrees);
  }

  /** The source of the factor of training; empty for the untrained. */
  String trainedBy(String joint, String action) {
    if (condition.training() == Training.UNTRAINED) {
      return "";
    }
    return " times the training ratio of "
        + LEVELS
            .first(r -> r.is("joint", joint) && r.is("action", action))
            .orElseGet(() -> LEVELS.only("other motions", r -> r.is("joint", "other")))
            .text(condition.training().word() + "_source");
  }
}
