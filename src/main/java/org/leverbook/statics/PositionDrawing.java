package org.leverbook.statics;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.leverbook.body.JointId;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A picture of a position, with a choice of what it shows: {@code
 * pull.start().drawing().withReactions().withMuscles()}. It is a picture itself, at every stop.
 *
 * @param position what is shown
 * @param joints to which arms are drawn; empty for the usual ones
 * @param reactions whether floor, pads and grips push as arrows to one scale
 * @param muscles whether muscles are drawn, coloured by their effort
 * @param spine whether the levels of the spine are coloured by their moment
 */
public record PositionDrawing(
    Position position, List<JointId> joints, boolean reactions, boolean muscles, boolean spine)
    implements Picture {

  /** Keeps its own copy of the list. */
  public PositionDrawing {
    joints = List.copyOf(joints);
  }

  /**
   * With what floor, pads and grips give, as arrows to one scale.
   *
   * @return the changed drawing
   */
  public PositionDrawing withReactions() {
    return new PositionDrawing(position, joints, true, muscles, spine);
  }

  /**
   * With the muscles as lines, coloured by effort: pull as a share of the greatest.
   *
   * @return the changed drawing
   * @throws Refused if the supports cannot hold the position
   */
  public PositionDrawing withMuscles() {
    position.effort();
    return new PositionDrawing(position, joints, reactions, true, spine);
  }

  /**
   * With the levels of the spine coloured by the moment there.
   *
   * @return the changed drawing
   */
  public PositionDrawing withSpine() {
    return new PositionDrawing(position, joints, reactions, muscles, true);
  }

  /**
   * With arms to other joints, as in {@code armsTo(KNEE, HIP)}.
   *
   * @param wished which; none for the usual ones
   * @return the changed drawing
   */
  public PositionDrawing armsTo(JointId... wished) {
    for (JointId joint : wished) {
      Ask.present("joint", joint, "HIP");
    }
    List<JointId> each = List.of(wished).stream().distinct().toList();
    return new PositionDrawing(position, each, reactions, muscles, spine);
  }

  /**
   * From elsewhere.
   *
   * @param view as in {@code TOP}
   * @return the changed drawing
   */
  public PositionDrawing seenFrom(View view) {
    return new PositionDrawing(position.seenFrom(view), joints, reactions, muscles, spine);
  }

  /**
   * From anywhere.
   *
   * @param around from before the lifter towards the lifter's right: 0° front, 90° right side
   * @param above over the level: 0° to 90°
   * @return the changed drawing
   */
  public PositionDrawing seenFrom(Quantity<Angle> around, Quantity<Angle> above) {
    return seenFrom(View.of(around, above));
  }

  private Picture picture() {
    return Illustrator.pictureOf(this, joints);
  }

  @Override
  public String svgDocument() {
    return picture().svgDocument();
  }

  @Override
  public byte[] pngFile() {
    return picture().pngFile();
  }

  @Override
  public List<Object> subjects() {
    return muscles ? List.of(position, position.effort()) : List.of(position);
  }

  @Override
  public String text() {
    return picture().text();
  }

  @Override
  public String toString() {
    return text();
  }
}
