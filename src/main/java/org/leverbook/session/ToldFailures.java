package org.leverbook.session;

import org.leverbook.display.FailureWording;

/** What a user's code threw, in the words of the session, for rooms that do not know it. */
public final class ToldFailures implements FailureWording {

  @Override
  public String told(Throwable thrown) {
    return ExceptionWording.of(Copies.essential(thrown));
  }
}
