package org.leverbook.statics;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.leverbook.quantity.Ask;

/** From where a position is drawn, and with what. */
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
   * @param view {@code SIDE}, {@code FRONT}, {@code BACK}, {@code TOP}, or any other
   * @return the changed position; its numbers stay
   */
  default Position seenFrom(View view) {
    Position position = (Position) this;
    return position.changedView(position.setting.seenFrom(Ask.present("view", view, "FRONT")));
  }

  /**
   * The same position, drawn from anywhere, as in {@code seenFrom(deg(45), deg(20))}: half from the
   * front, half from the right, a little from above.
   *
   * @param around from before the lifter towards the lifter's right: 0° front, 90° right side
   * @param above over the level: 0° to 90°
   * @return the changed position; its numbers stay
   */
  default Position seenFrom(Quantity<Angle> around, Quantity<Angle> above) {
    return seenFrom(View.of(around, above));
  }

  /**
   * From where it is drawn.
   *
   * @return the side, unless the lift or the coach says otherwise
   */
  default View view() {
    return ((Position) this).setting.view();
  }

  /**
   * Its picture with a choice of what is drawn besides load, line of force and arms.
   *
   * @return the drawing, plain until more is asked for
   */
  default PositionDrawing drawing() {
    return new PositionDrawing((Position) this, List.of(), false, false, false);
  }
}
