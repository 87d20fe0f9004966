package org.leverbook.notebook;

import java.util.List;

/** One thing that a cell gave. */
public sealed interface Output {

  /**
   * What was printed.
   *
   * @param stream {@code "stdout"} or {@code "stderr"}
   * @param text all of it, line ends included
   */
  record Printed(String stream, String text) implements Output {}

  /**
   * A value that was shown.
   *
   * @param isResult whether it is the value of the cell's last expression, not shown on the way
   * @param bundle its forms
   */
  record Given(boolean isResult, MimeBundle bundle) implements Output {}

  /**
   * The mistake at which the cell ended.
   *
   * @param name a short technical name
   * @param message one or more lines of words
   * @param trace what is shown of it, line by line
   */
  record Failed(String name, String message, List<String> trace) implements Output {
    /** Keeps its own copy of the lines. */
    public Failed {
      trace = List.copyOf(trace);
    }
  }
}
