package org.leverbook.article;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Where an article learns by which code it was made. A door that keeps a record of what worked
 * tells it here; of the whole process, as is the folder of saved files.
 */
public final class Reproduction {

  private static final Supplier<Optional<String>> NOBODY = Optional::empty;

  private static volatile Supplier<Optional<String>> source = NOBODY;

  private Reproduction() {}

  /**
   * Tells from here on which code has run, in place of whoever told before.
   *
   * @param next gives the code of the session that runs, or empty where it keeps none; null for
   *     nobody
   * @return who told before, to be put back
   */
  public static synchronized Supplier<Optional<String>> toldBy(Supplier<Optional<String>> next) {
    Supplier<Optional<String>> before = source;
    source = Objects.requireNonNullElse(next, NOBODY);
    return before;
  }

  /**
   * The code that has run.
   *
   * @return without blank lines at its ends; empty where no door keeps a record
   */
  static Optional<String> code() {
    return source.get().map(String::strip).filter(code -> !code.isEmpty());
  }
}
