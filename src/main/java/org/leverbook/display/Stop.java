package org.leverbook.display;

/**
 * Leaves running code because the user asked to stop. An error, so that ordinary handlers let it
 * pass. Who computes many things keeps what is done when it meets one.
 */
public abstract class Stop extends Error {

  private static final long serialVersionUID = 1L;

  /** A signal, not a fault: it carries no stack trace. */
  protected Stop() {
    super("stopped", null, false, false);
  }
}
