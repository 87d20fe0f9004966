package org.leverbook.statics;

import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Sheet;
import org.leverbook.muscle.Effort;
import org.leverbook.quantity.Refused;

/** What a position answers about muscles. */
public sealed interface MuscleQuestions permits Position {

  /**
   * Who pulls how hard, all joints together, with the least stress that holds.
   *
   * @return the effort
   * @throws Refused if the supports cannot hold the position
   */
  default Effort effort() {
    return ((Position) this).sums.effort();
  }

  /**
   * Who pulls how hard, as a table.
   *
   * @return the muscles that are not slack, hardest first: stress, force; below it what stays
   *     uncovered
   * @throws Refused if the supports cannot hold the position
   */
  default Sheet muscles() {
    return effort().muscles(((Position) this).name());
  }

  /**
   * How each joint is held, as a table.
   *
   * @return what is asked, what stretched tissue and muscles give, what stays uncovered
   * @throws Refused if the supports cannot hold the position
   */
  default Sheet heldBy() {
    return effort().joints(((Position) this).name());
  }

  /**
   * Who can oppose the resistance at a joint: of a paired joint, on the side where it is asked
   * more.
   *
   * @param joint as in {@code HIP}
   * @return a row for each muscle that can, those that give most first
   * @throws Refused if the supports cannot hold the position, or the data hold no muscle there
   */
  default Sheet opposing(JointId joint) {
    return opposing(joint, ((Position) this).moment(joint).joint().side());
  }

  /**
   * Who can oppose the resistance at a joint of one side.
   *
   * @param joint as in {@code HIP}
   * @param side left or right; ignored for a joint of the midline
   * @return a row for each muscle that can, those that give most first
   * @throws Refused if the supports cannot hold the position, or the data hold no muscle there
   */
  default Sheet opposing(JointId joint, Side side) {
    Position position = (Position) this;
    JointMoment moment = position.moment(joint, side);
    int axis = position.body().tree().angleOf(joint.on(side), moment.motion().axis());
    return effort().opposing(axis, joint.on(side) + ", " + position.name());
  }
}
