package org.leverbook.launch;

import java.lang.reflect.Proxy;
import java.util.List;

/** Signals that a terminal sends to both processes, but that only the second is to obey. */
final class Signals {

  private Signals() {}

  /**
   * Lets Ctrl-C pass by here. Not ignored: a process inherits that, and the shell must hear it.
   * Reached by name, since the class is no part of Java proper; without it Ctrl-C leaves the shell.
   */
  static void leaveToTheOther() {
    try {
      Class<?> handler = Class.forName("sun.misc.SignalHandler");
      Object nothing =
          Proxy.newProxyInstance(
              Signals.class.getClassLoader(),
              new Class<?>[] {handler},
              (proxy, method, arguments) -> null);
      handle("INT", handler, nothing);
    } catch (ReflectiveOperationException | IllegalArgumentException e) {
      return;
    }
  }

  /** Work in the background goes on when the terminal hears Ctrl-C or its window is closed. */
  static void ignoreTheTerminal() {
    for (String name : List.of("INT", "HUP")) {
      try {
        Class<?> handler = Class.forName("sun.misc.SignalHandler");
        handle(name, handler, handler.getField("SIG_IGN").get(null));
      } catch (ReflectiveOperationException | IllegalArgumentException e) {
        // Not every system knows both: then the work ends with its terminal, and is done again.
        continue;
      }
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
