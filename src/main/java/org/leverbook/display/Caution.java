package org.leverbook.display;

/** The line that stands wherever loads or limits are spoken of. */
public final class Caution {

  /** For tables, pictures and pages. */
  public static final String TEXT =
      "A teaching model, not medical or coaching clearance: local rules and licensed practitioners come first.";

  private Caution() {}
}
