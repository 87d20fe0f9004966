package org.leverbook.language;

import org.leverbook.display.Saved;
import org.leverbook.display.Sheet;
import org.leverbook.display.Shown;

/**
 * What the words about the session ask of whoever runs it. A word runs in the middle of a text, so
 * what needs the session free ({@code undo}, {@code again}, {@code load}) is only asked for here,
 * and is carried out as soon as the asking statement has ended, before the next one.
 */
public interface Doorway {

  /**
   * Whether the calling thread runs code of this session.
   *
   * @return true if so
   */
  boolean isHere();

  /** The statement that runs is about the session itself: a saved script does without it. */
  void aside();

  /**
   * What the user declared.
   *
   * @return a row each
   */
  Sheet mine();

  /**
   * What was given to evaluate.
   *
   * @return a row each
   */
  Sheet inputs();

  /** Asks to take the last input back. */
  void undo();

  /**
   * Asks to run an input again.
   *
   * @param number of the input; 0 for the last
   * @throws org.leverbook.quantity.Refused if there is no such input
   */
  void again(int number);

  /**
   * Writes what worked.
   *
   * @param name a file name that ends in {@code .jsh} or {@code .ipynb}
   * @return what was written
   * @throws org.leverbook.quantity.Refused if the name has another ending, nothing worked yet, or
   *     the disk says no
   */
  Saved save(String name);

  /**
   * Asks to run a file.
   *
   * @param name a file name that ends in {@code .jsh} or {@code .ipynb}
   * @throws org.leverbook.quantity.Refused if there is none, or it cannot be read
   */
  void load(String name);

  /**
   * Offers code to be put where the user types.
   *
   * @param code any number of lines
   * @return whether it will stand there, ready to run; false where nobody types
   */
  boolean offer(String code);

  /**
   * The last failure with its whole stack.
   *
   * @return a text
   * @throws org.leverbook.quantity.Refused if nothing has failed
   */
  Shown trace();

  /**
   * What the compiler itself said of the last failure.
   *
   * @return a text
   * @throws org.leverbook.quantity.Refused if nothing has failed
   */
  Shown original();

  /**
   * The guided first lesson; begins where none is under way.
   *
   * @return the lesson, at the step where it stands
   */
  Lesson lesson();
}
