package org.leverbook.session;

/** Sees a text being evaluated, piece by piece, on the thread that asked for it. */
public interface Course {

  /**
   * A bare expression has a value.
   *
   * @param value the value
   */
  void value(Value value);

  /**
   * A piece took effect; its value, if it has one, was handed over before.
   *
   * @param piece the piece
   */
  default void done(Piece piece) {}

  /**
   * Whether to stop after this piece, as if the text ended there.
   *
   * @return true to pause; the rest can be evaluated later
   */
  default boolean pauses() {
    return false;
  }
}
