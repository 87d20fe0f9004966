package org.leverbook.language;

import org.leverbook.body.Person;
import org.leverbook.lift.BarbellCurl;
import org.leverbook.lift.BenchPress;
import org.leverbook.lift.CableLateralRaise;
import org.leverbook.lift.Dip;
import org.leverbook.lift.FrontRaise;
import org.leverbook.lift.InclineCurl;
import org.leverbook.lift.LateralRaise;
import org.leverbook.lift.OverheadPress;
import org.leverbook.lift.OverheadTriceps;
import org.leverbook.lift.PreacherCurl;
import org.leverbook.lift.Pullover;
import org.leverbook.lift.PushUp;
import org.leverbook.lift.TricepsPushdown;
import org.leverbook.lift.UprightRow;
import org.leverbook.lift.WristCurl;

/**
 * The words for lifts that press, and of the front of arm and shoulder: a theme of {@link
 * Vocabulary}, which sessions import.
 */
public abstract sealed class PressLiftWords extends LegLiftWords permits PullLiftWords {

  PressLiftWords() {}

  /**
   * Bench press: grip width, bench angle, elbows, as in {@code
   * benchPress(lifter).holding(barbell(kg(80))).gripWidth(cm(70)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static BenchPress benchPress(Person lifter) {
    return BenchPress.of(lifter);
  }

  /**
   * Push up: on hands and toes, as in {@code pushUp(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static PushUp pushUp(Person lifter) {
    return PushUp.of(lifter);
  }

  /**
   * Dip: between parallel bars, as in {@code dip(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static Dip dip(Person lifter) {
    return Dip.of(lifter);
  }

  /**
   * Overhead press: a bar from the shoulders to overhead, as in {@code
   * overheadPress(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static OverheadPress overheadPress(Person lifter) {
    return OverheadPress.of(lifter);
  }

  /**
   * Lateral raise: dumbbells to the sides: raise(deg(90)), as in {@code
   * lateralRaise(lifter).raise(deg(80)).finish()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static LateralRaise lateralRaise(Person lifter) {
    return LateralRaise.of(lifter);
  }

  /**
   * Cable lateral raise: one arm against a cable: pulleyHeight(cm(60)), as in {@code
   * cableLateralRaise(lifter).pulleyHeight(cm(60)).middle()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static CableLateralRaise cableLateralRaise(Person lifter) {
    return CableLateralRaise.of(lifter);
  }

  /**
   * Front raise: dumbbells forward, as in {@code frontRaise(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static FrontRaise frontRaise(Person lifter) {
    return FrontRaise.of(lifter);
  }

  /**
   * Pullover: a weight from above the chest to behind the head, as in {@code
   * pullover(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static Pullover pullover(Person lifter) {
    return Pullover.of(lifter);
  }

  /**
   * Barbell curl: standing, upper arms still, as in {@code barbellCurl(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static BarbellCurl barbellCurl(Person lifter) {
    return BarbellCurl.of(lifter);
  }

  /**
   * Preacher curl: upper arms on a pad: padAngle(deg(45)), as in {@code
   * preacherCurl(lifter).padAngle(deg(45)).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static PreacherCurl preacherCurl(Person lifter) {
    return PreacherCurl.of(lifter);
  }

  /**
   * Incline curl: lying back, arms hanging, as in {@code inclineCurl(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static InclineCurl inclineCurl(Person lifter) {
    return InclineCurl.of(lifter);
  }

  /**
   * Triceps pushdown: at a high pulley, as in {@code tricepsPushdown(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static TricepsPushdown tricepsPushdown(Person lifter) {
    return TricepsPushdown.of(lifter);
  }

  /**
   * Overhead triceps: elbows straightened overhead, as in {@code overheadTriceps(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static OverheadTriceps overheadTriceps(Person lifter) {
    return OverheadTriceps.of(lifter);
  }

  /**
   * Wrist curl: forearms on a bench, as in {@code wristCurl(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static WristCurl wristCurl(Person lifter) {
    return WristCurl.of(lifter);
  }

  /**
   * Upright row: a bar along the front of the body, as in {@code uprightRow(lifter).start()}.
   *
   * @param lifter who lifts
   * @return the lift with its usual settings
   */
  public static UprightRow uprightRow(Person lifter) {
    return UprightRow.of(lifter);
  }
}
