package org.leverbook.session;

import org.leverbook.display.Stop;

/**
 * Thrown by a stop check to leave the running code. A handler that catches everything meets it
 * again at the next loop or call.
 */
public final class Stopped extends Stop {

  private static final long serialVersionUID = 1L;

  /** A signal, not a fault. */
  public Stopped() {}
}
