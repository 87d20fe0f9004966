package org.leverbook.language;

import org.leverbook.body.Person;
import org.leverbook.lift.BentOverRow;
import org.leverbook.lift.CableChop;
import org.leverbook.lift.ChestSupportedRow;
import org.leverbook.lift.FacePull;
import org.leverbook.lift.FarmersCarry;
import org.leverbook.lift.InvertedRow;
import org.leverbook.lift.LatPulldown;
import org.leverbook.lift.OneArmRow;
import org.leverbook.lift.Plank;
import org.leverbook.lift.PullUp;
import org.leverbook.lift.RearDeltFly;
import org.leverbook.lift.SeatedCableRow;
import org.leverbook.lift.Shrug;
import org.leverbook.lift.SidePlank;
import org.leverbook.lift.SitUp;

/**
 * The words for lifts that pull, and of the trunk: a theme of {@link Vocabulary}, which sessions
 * import.
 */
public abstract sealed class PullLiftWords extends PressLiftWords permits MuscleWords {

  PullLiftWords() {}

  /**
   * A row of a bar, bent over: trunk lean, knee bend, grip.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static BentOverRow bentOverRow(Person lifter) {
    return BentOverRow.of(lifter);
  }

  /**
   * A row with one arm, the other hand on a bench: bench height, lean.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static OneArmRow oneArmRow(Person lifter) {
    return OneArmRow.of(lifter);
  }

  /**
   * A row with the chest on a pad: pad angle, pad height.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static ChestSupportedRow chestSupportedRow(Person lifter) {
    return ChestSupportedRow.of(lifter);
  }

  /**
   * A row at a low pulley, seated: lean, grip, seat, pulley.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static SeatedCableRow seatedCableRow(Person lifter) {
    return SeatedCableRow.of(lifter);
  }

  /**
   * A row under a fixed bar, the body straight: bar height, feet on a box.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static InvertedRow invertedRow(Person lifter) {
    return InvertedRow.of(lifter);
  }

  /**
   * A pulldown at a high pulley, thighs under a pad.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static LatPulldown latPulldown(Person lifter) {
    return LatPulldown.of(lifter);
  }

  /**
   * A pull-up at a fixed bar: grip, width, knees.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static PullUp pullUp(Person lifter) {
    return PullUp.of(lifter);
  }

  /**
   * A pull of a rope to the face, elbows high: pulley, lean.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static FacePull facePull(Person lifter) {
    return FacePull.of(lifter);
  }

  /**
   * A raise sideways, bent over: trunk lean, raise.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static RearDeltFly rearDeltFly(Person lifter) {
    return RearDeltFly.of(lifter);
  }

  /**
   * A lift of the shoulders with a bar: how far, grip.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static Shrug shrug(Person lifter) {
    return Shrug.of(lifter);
  }

  /**
   * A hold on forearms and toes: hip height, spine.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static Plank plank(Person lifter) {
    return Plank.of(lifter);
  }

  /**
   * A hold on one forearm and one foot: side, hip height.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static SidePlank sidePlank(Person lifter) {
    return SidePlank.of(lifter);
  }

  /**
   * A sit-up, feet held: knee bend, lean, spine.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static SitUp sitUp(Person lifter) {
    return SitUp.of(lifter);
  }

  /**
   * A turn of the trunk against a cable from beside: turn, pulley.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static CableChop cableChop(Person lifter) {
    return CableChop.of(lifter);
  }

  /**
   * A walk with a weight in one hand: side, step.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static FarmersCarry farmersCarry(Person lifter) {
    return FarmersCarry.of(lifter);
  }
}
