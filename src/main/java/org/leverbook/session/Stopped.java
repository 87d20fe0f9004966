package org.leverbook.session;

/**
 * Thrown by a stop check to leave the running code. An error, so that ordinary handlers let it
 * pass; a handler that catches everything meets it again at the next loop or call.
 */
public final class Stopped extends Error {

  private static final long serialVersionUID = 1L;

  /** A signal, not a fault: it carries no stack trace. */
  public Stopped() {
    super("stopped", null, false, false);
  }
}
