package org.leverbook.session;

/** Whether a text can be evaluated as it stands. */
public enum Completeness {
  /** It can. */
  COMPLETE,
  /** More text is needed. */
  INCOMPLETE,
  /** It cannot, whatever may follow. */
  INVALID
}
