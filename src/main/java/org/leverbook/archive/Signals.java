package org.leverbook.archive;

import java.util.List;

/** Signals that a terminal sends to both processes, but that only the second is to obey. */
public final class Signals {

  private Signals() {}

  /**
   * Lets Ctrl-C pass by here. To be called when the other process runs: it would begin with the
   * same deafness.
   */
  public static void leaveToTheOther() {
    ignore("INT");
  }

  /** Work in the background goes on when the terminal hears Ctrl-C or its window is closed. */
  static void ignoreTheTerminal() {
    for (String name : List.of("INT", "HUP")) {
      ignore(name);
    }
  }

  /**
   * Reached by name, since the class is no part of Java proper. Not every system knows each signal:
   * then this process ends with its terminal.
   */
  private static void ignore(String name) {
    try {
      Class<?> handler = Class.forName("sun.misc.SignalHandler");
      handle(name, handler, handler.getField("SIG_IGN").get(null));
    } catch (ReflectiveOperationException | IllegalArgumentException e) {
      return;
    }
  }

  private static void handle(String name, Class<?> handler, Object how)
      throws ReflectiveOperationException {
    Class<?> signal = Class.forName("sun.misc.Signal");
    signal
        .getMethod("handle", signal, handler)
        .invoke(null, signal.getConstructor(String.class).newInstance(name), how);
  }
}
