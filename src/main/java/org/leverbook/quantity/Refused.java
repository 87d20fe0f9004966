package org.leverbook.quantity;

/**
 * What was asked cannot be done, said so that a coach can act on it: the value, what is so, by how
 * much it misses, and what to change.
 *
 * <p>Every door (shell, script, notebook) prints the message alone, without a stack trace; a sweep
 * keeps it as the reason of its row.
 */
public class Refused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Says no.
   *
   * @param sentence whole sentences for the user
   */
  public Refused(String sentence) {
    super(sentence);
  }

  /**
   * Says no because of a deeper failure.
   *
   * @param sentence whole sentences for the user
   * @param cause what failed below
   */
  public Refused(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
