package org.leverbook.session;

import java.util.List;

/**
 * What the call that a place stands in takes.
 *
 * @param forms the ways to call it, one signature each
 * @param parameter which parameter the place belongs to, from 0
 */
public record CallHint(List<String> forms, int parameter) {

  /** Keeps its own copy of the list. */
  public CallHint {
    forms = List.copyOf(forms);
  }
}
