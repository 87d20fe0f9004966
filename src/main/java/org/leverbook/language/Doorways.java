package org.leverbook.language;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.leverbook.quantity.Refused;

/**
 * The sessions that are open in this process. A word finds its own by the thread it runs on, so
 * several can be open and run at once.
 */
public final class Doorways {

  private static final List<Doorway> OPEN = new CopyOnWriteArrayList<>();

  private Doorways() {}

  /**
   * A session opens.
   *
   * @param doorway how words reach it
   */
  public static void open(Doorway doorway) {
    OPEN.add(doorway);
  }

  /**
   * A session ends.
   *
   * @param doorway the same as was opened
   */
  public static void close(Doorway doorway) {
    OPEN.remove(doorway);
  }

  /**
   * The session whose code is running here.
   *
   * @return the session of the calling thread; else the only one there is
   * @throws Refused if there is none, or nothing tells which
   */
  static Doorway here() {
    for (Doorway doorway : OPEN) {
      if (doorway.isHere()) {
        return doorway;
      }
    }
    if (OPEN.size() == 1) {
      return OPEN.get(0);
    }
    throw new Refused(
        OPEN.isEmpty()
            ? "This word is about a session, and none is open: it works in the shell, in a script"
                + " and in a notebook."
            : "Several sessions are open and nothing tells which one is meant: say this word in one"
                + " of them.");
  }
}
