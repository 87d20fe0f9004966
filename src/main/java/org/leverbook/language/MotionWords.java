package org.leverbook.language;

import org.leverbook.body.JointId;
import org.leverbook.display.MovingPicture;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Movement;
import org.leverbook.study.Sweep;

/** The words for pictures of several positions; {@link Vocabulary} hands them on. */
public abstract sealed class MotionWords extends PageWords permits ViewWords {

  MotionWords() {}

  /**
   * A lift from start to finish as a moving picture, as in {@code animation(backSquat(lifter), 41,
   * HIP, KNEE).save("squat.gif")}; {@code .save("squat.html")} makes a page with a slider.
   *
   * <p>One frame is refused: a way has two ends at least.
   *
   * @param lift which
   * @param frames how many, start and finish included; 2 to 400
   * @param joints to which arms are drawn; the picture's usual ones when none are named
   * @return the moving picture
   * @throws Refused if there are too few or too many frames, or nothing can be held
   */
  public static MovingPicture animation(Lift<?> lift, int frames, JointId... joints) {
    return Sweep.through(lift, frames).animation(joints);
  }

  /**
   * A movement at its own tempo as a moving picture, as in {@code animation(raise, 31)}.
   *
   * @param movement which
   * @param frames how many instants, both ends included; 2 to 400
   * @param joints to which arms are drawn; the picture's usual ones when none are named
   * @return the moving picture
   * @throws Refused if there are too few or too many frames, or nothing can be held
   */
  public static MovingPicture animation(Movement movement, int frames, JointId... joints) {
    return Sweep.over(movement, frames).animation(joints);
  }
}
