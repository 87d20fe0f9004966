package org.leverbook.statics;

import org.leverbook.quantity.Ask;

/** From where a position is drawn. */
public sealed interface ViewQuestions permits Position {

  /**
   * The same position, drawn from the front.
   *
   * @return the changed position; its numbers stay
   */
  default Position fromFront() {
    return seenFrom(View.FRONT);
  }

  /**
   * The same position, drawn from the lifter's right side.
   *
   * @return the changed position; its numbers stay
   */
  default Position fromSide() {
    return seenFrom(View.SIDE);
  }

  /**
   * The same position, drawn from elsewhere.
   *
   * @param view {@code SIDE} or {@code FRONT}
   * @return the changed position; its numbers stay
   */
  default Position seenFrom(View view) {
    Position position = (Position) this;
    return position.changedView(position.setting.seenFrom(Ask.present("view", view, "FRONT")));
  }

  /**
   * From where it is drawn.
   *
   * @return the side, unless the lift or the coach says otherwise
   */
  default View view() {
    return ((Position) this).setting.view();
  }
}
