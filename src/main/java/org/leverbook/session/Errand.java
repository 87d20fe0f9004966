package org.leverbook.session;

/**
 * What a text is evaluated for, known to every thread that its code runs on or starts. A door with
 * several readers at once gives each text one, and asks {@link Errands#here} whose output it is.
 */
public interface Errand {

  /** The next unit of the text begins to run; told from the thread that evaluates. */
  default void goesOn() {}
}
