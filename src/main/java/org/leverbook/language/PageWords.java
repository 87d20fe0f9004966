package org.leverbook.language;

import org.leverbook.figure.PicturePage;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Movement;

/** The words for pictures; {@link Vocabulary} hands them on. */
public abstract sealed class PageWords extends FigureWords permits MotionWords {

  PageWords() {}

  /**
   * Pictures beside each other as one, as in {@code beside(pull.start(), pull.finish())}.
   *
   * <p>{@code .called("before", "after")}, {@code .titled("Hips lower")}, {@code .captioned("…")}
   * and {@code .sameScale()} say more. {@code beside()} is refused: "There is no picture to put on
   * the page".
   *
   * @param pictures one to 48: pictures, or values that have one, such as positions, sweeps, charts
   * @return the page, which is a picture itself
   * @throws Refused if there are none or too many, or one has no picture
   */
  public static PicturePage beside(Object... pictures) {
    return PicturePage.beside(pictures);
  }

  /**
   * Pictures one below the other as one, as in {@code below(pull.start(), byHip.plot(HIP))}.
   *
   * @param pictures one to 48: pictures, or values that have one, such as positions, sweeps, charts
   * @return the page, which is a picture itself
   * @throws Refused if there are none or too many, or one has no picture
   */
  public static PicturePage below(Object... pictures) {
    return PicturePage.below(pictures);
  }

  /**
   * Pictures in rows as one, as in {@code inRows(2, pull.start(), pull.finish(), squat.start(),
   * squat.finish())}.
   *
   * @param rows how many rows, up to the number of pictures
   * @param pictures one to 48: pictures, or values that have one, such as positions, sweeps, charts
   * @return the page, which is a picture itself
   * @throws Refused if there are none or too many, fewer than rows, or one has no picture
   */
  public static PicturePage inRows(int rows, Object... pictures) {
    return PicturePage.inRows(rows, pictures);
  }

  /**
   * A lift in frames from start to finish, as in {@code strip(backSquat(lifter), 5)}.
   *
   * @param lift which
   * @param frames 2 to 12
   * @return the page, all frames to one scale
   * @throws Refused if there are too few or too many frames, or none can be drawn
   */
  public static PicturePage strip(Lift<?> lift, int frames) {
    return PicturePage.strip(lift, frames);
  }

  /**
   * A movement in frames over its time, as in {@code
   * strip(backSquat(lifter).moving(smooth(seconds(2))), 5)}.
   *
   * @param movement which
   * @param frames 2 to 12
   * @return the page, all frames to one scale
   * @throws Refused if there are too few or too many frames, or none can be drawn
   */
  public static PicturePage strip(Movement movement, int frames) {
    return PicturePage.strip(movement, frames);
  }
}
