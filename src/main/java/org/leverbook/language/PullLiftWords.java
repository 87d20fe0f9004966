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
   * A row of a bar, bent over: trunk lean, knee bend, grip, as in {@code
   * bentOverRow(lifter).holding(barbell(kg(60))).trunkLean(deg(60)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static BentOverRow bentOverRow(Person lifter) {
    return BentOverRow.of(lifter);
  }

  /**
   * A row with one arm, the other hand on a bench: bench height, lean, as in {@code
   * oneArmRow(lifter).working(LEFT).benchHeight(cm(50)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static OneArmRow oneArmRow(Person lifter) {
    return OneArmRow.of(lifter);
  }

  /**
   * A row with the chest on a pad: pad angle, pad height, as in {@code
   * chestSupportedRow(lifter).padAngle(deg(30)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static ChestSupportedRow chestSupportedRow(Person lifter) {
    return ChestSupportedRow.of(lifter);
  }

  /**
   * A row at a low pulley, seated: lean, grip, seat, pulley, as in {@code
   * seatedCableRow(lifter).stack(kg(50)).grip(Grip.OVERHAND).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static SeatedCableRow seatedCableRow(Person lifter) {
    return SeatedCableRow.of(lifter);
  }

  /**
   * A row under a fixed bar, the body straight: bar height, feet on a box, as in {@code
   * invertedRow(lifter).barHeight(cm(70)).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static InvertedRow invertedRow(Person lifter) {
    return InvertedRow.of(lifter);
  }

  /**
   * A pulldown at a high pulley, thighs under a pad, as in {@code
   * latPulldown(lifter).stack(kg(60)).trunkLean(deg(-20)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static LatPulldown latPulldown(Person lifter) {
    return LatPulldown.of(lifter);
  }

  /**
   * A pull-up at a fixed bar: grip, width, knees, as in {@code
   * pullUp(lifter).grip(Grip.UNDERHAND).gripWidth(cm(45)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static PullUp pullUp(Person lifter) {
    return PullUp.of(lifter);
  }

  /**
   * A pull of a rope to the face, elbows high: pulley, lean, as in {@code
   * facePull(lifter).pulleyHeight(cm(150)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static FacePull facePull(Person lifter) {
    return FacePull.of(lifter);
  }

  /**
   * A raise sideways, bent over: trunk lean, raise, as in {@code
   * rearDeltFly(lifter).holding(dumbbells(kg(6))).raise(deg(70)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static RearDeltFly rearDeltFly(Person lifter) {
    return RearDeltFly.of(lifter);
  }

  /**
   * A lift of the shoulders with a bar: how far, grip, as in {@code
   * shrug(lifter).shrug(deg(15)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static Shrug shrug(Person lifter) {
    return Shrug.of(lifter);
  }

  /**
   * A hold on forearms and toes: hip height, spine, as in {@code plank(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static Plank plank(Person lifter) {
    return Plank.of(lifter);
  }

  /**
   * A hold on one forearm and one foot: side, hip height, as in {@code
   * sidePlank(lifter).working(LEFT).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static SidePlank sidePlank(Person lifter) {
    return SidePlank.of(lifter);
  }

  /**
   * A sit-up, feet held: knee bend, lean, spine, as in {@code
   * sitUp(lifter).kneeBend(deg(100)).middle()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static SitUp sitUp(Person lifter) {
    return SitUp.of(lifter);
  }

  /**
   * A turn of the trunk against a cable from beside: turn, pulley, as in {@code
   * cableChop(lifter).turn(deg(25)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static CableChop cableChop(Person lifter) {
    return CableChop.of(lifter);
  }

  /**
   * A walk with a weight in one hand: side, step, as in {@code
   * farmersCarry(lifter).holding(dumbbell(kg(30), RIGHT)).middle()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static FarmersCarry farmersCarry(Person lifter) {
    return FarmersCarry.of(lifter);
  }
}
