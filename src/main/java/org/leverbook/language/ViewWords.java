package org.leverbook.language;

import org.leverbook.statics.View;

/** The words for where a picture is seen from; {@link Vocabulary} hands them on. */
public abstract sealed class ViewWords extends MotionWords permits ArticleWords {

  /** From the lifter's right, as in {@code pull.start().seenFrom(SIDE).picture()}. */
  public static final View SIDE = View.SIDE;

  /** From before the lifter, as in {@code pull.start().seenFrom(FRONT).picture()}. */
  public static final View FRONT = View.FRONT;

  /** From behind the lifter, as in {@code pull.start().seenFrom(BACK).picture()}. */
  public static final View BACK = View.BACK;

  /** From straight above, as in {@code pull.start().seenFrom(TOP).picture()}. */
  public static final View TOP = View.TOP;

  ViewWords() {}
}
