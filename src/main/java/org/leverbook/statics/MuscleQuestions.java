package org.leverbook.statics;

import java.util.List;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Sheet;
import org.leverbook.muscle.BoneLoad;
import org.leverbook.muscle.Bones;
import org.leverbook.muscle.DiscLoad;
import org.leverbook.muscle.Discs;
import org.leverbook.muscle.Effort;
import org.leverbook.muscle.InsideSheets;
import org.leverbook.muscle.Verdict;
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
    return effort().muscles(((Position) this).name()).about(this, effort());
  }

  /**
   * What it asks of each trade group, and one word for it. A position tells no change of length;
   * the lift's own verdict does.
   *
   * @return prints as a table, hardest group first
   * @throws Refused if the supports cannot hold the position
   */
  default Verdict verdict() {
    Position position = (Position) this;
    return Verdict.of(position.name(), position.body(), List.of(effort()));
  }

  /**
   * How each joint is held, as a table.
   *
   * @return what is asked, what stretched tissue and muscles give, what stays uncovered
   * @throws Refused if the supports cannot hold the position
   */
  default Sheet heldBy() {
    return effort().joints(((Position) this).name()).about(this, effort());
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
    return effort().opposing(axis, joint.on(side) + ", " + position.name()).about(this, effort());
  }

  /**
   * What one disc of the low back carries, muscles included.
   *
   * @param level L5/S1 to T12/L1
   * @return compression and shear
   * @throws Refused if the supports cannot hold the position, or it is no such level
   */
  default DiscLoad disc(JointId level) {
    return Discs.of(effort(), ((Position) this).body()).at(level);
  }

  /**
   * What the discs of the low back carry, muscles included, as a table.
   *
   * @return L5/S1 to T12/L1: compression and where it comes from, shear, pressure
   * @throws Refused if the supports cannot hold the position
   */
  default Sheet discs() {
    Position position = (Position) this;
    Discs discs = Discs.of(effort(), position.body());
    return InsideSheets.discs(discs, position.name()).about(this, effort(), discs);
  }

  /**
   * What presses in a hip, knee or shoulder, muscles included.
   *
   * @param joint {@code HIP}, {@code KNEE} or {@code SHOULDER}
   * @param side left or right
   * @return the force between the bones
   * @throws Refused if the supports cannot hold the position, or it is another joint
   */
  default BoneLoad boneLoad(JointId joint, Side side) {
    return Bones.of(effort(), ((Position) this).body()).at(joint, side);
  }

  /**
   * What presses in hips, knees and shoulders, muscles included, as a table.
   *
   * @return of both sides: net force before muscles, and what the bones press with
   * @throws Refused if the supports cannot hold the position
   */
  default Sheet boneLoads() {
    Position position = (Position) this;
    Bones bones = Bones.of(effort(), position.body());
    return InsideSheets.bones(bones, position.body(), position.name()).about(this, effort(), bones);
  }
}
