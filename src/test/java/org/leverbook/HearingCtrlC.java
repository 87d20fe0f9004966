package org.leverbook;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Commands that hear Ctrl-C. A build that was started in the background ignores that signal, hands
 * this on to every process it starts, and no Java can take it back.
 */
public final class HearingCtrlC {

  private static final List<String> PREFIX = List.of("env", "--default-signal=INT");

  private HearingCtrlC() {}

  /**
   * The command as a terminal would start it, where the system has a way to.
   *
   * @param command a command with its arguments
   * @return the same, begun by what hears the signal again
   * @throws InterruptedException if the test is to end
   */
  public static List<String> of(List<String> command) throws InterruptedException {
    List<String> hearing = new ArrayList<>(known() ? PREFIX : List.of());
    hearing.addAll(command);
    return hearing;
  }

  private static boolean known() throws InterruptedException {
    List<String> attempt = new ArrayList<>(PREFIX);
    attempt.add("true");
    try {
      return new ProcessBuilder(attempt).redirectErrorStream(true).start().waitFor() == 0;
    } catch (IOException e) {
      return false;
    }
  }
}
