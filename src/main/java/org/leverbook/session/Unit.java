package org.leverbook.session;

/**
 * A piece of a text that is evaluated at once.
 *
 * @param kind what to do with it
 * @param start where its first code is in the text
 * @param end where the search for the next unit goes on
 * @param code what to hand to the compiler
 */
record Unit(Kind kind, int start, int end, String code) {

  /** What to do with a unit. */
  enum Kind {
    /** Nothing left but blanks and comments. */
    NOTHING,
    /** Complete: can be evaluated. */
    COMPLETE,
    /** Not Java, whatever may follow: the compiler says why. */
    INVALID,
    /** More text is needed. */
    INCOMPLETE,
    /** A character in it cannot be seen; {@code end} is its place. */
    UNSEEN,
    /** More brackets stand in one another than the compiler can bear. */
    TOO_DEEP,
    /** A quoted text in it is longer than the compiler can bear; {@code end} is its place. */
    TOO_LONG,
    /** A closing bracket fits nothing that is open. */
    WRONG_CLOSER,
    /** A command of some other shell. */
    COMMAND
  }
}
