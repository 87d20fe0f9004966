package org.leverbook.terminal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.leverbook.desk.Desk;
import org.leverbook.desk.RememberedPreferences;
import org.leverbook.display.Preferences;
import org.leverbook.display.Progress;
import org.leverbook.display.ProgressLines;
import org.leverbook.language.Leaving;

/** The shell: at a terminal with prompts and completion, at a pipe line by line. */
public final class Shell {

  /** JLine's log; held, since an unheld logger forgets its level. */
  private static final Logger LOG = Logger.getLogger("org.jline");

  /** About what the first answer takes, in milliseconds. */
  private static final long FIRST_ANSWER = 300;

  private Shell() {}

  /**
   * Runs the shell on the process's own input and output until it is left.
   *
   * @return the exit code: 0; but 1 where the input is no terminal and one of its inputs failed
   */
  public static int run() {
    Leaving.forget();
    Supplier<Desk> desk = startBehind();
    try (Terminal terminal = terminalOrNull()) {
      if (terminal != null) {
        RememberedPreferences.in(
            HistoryFile.place(System.getenv(), System.getProperties())
                .resolveSibling("preferences"));
        new Conversation(terminal, desk, System.getenv(), Preferences::current, Desk::takeOffered)
            .run();
        return 0;
      }
    } catch (IOException e) {
      // The terminal is gone: there is nobody left to tell.
      return 0;
    }
    return piped(desk) ? 0 : 1;
  }

  /** Starts the desk on a thread of its own; asking for it waits until it is ready. */
  static Supplier<Desk> startBehind() {
    CompletableFuture<Desk> started = new CompletableFuture<>();
    Thread starter =
        new Thread(
            () -> {
              try {
                Desk desk = Desk.open();
                started.complete(desk);
                // Whoever typed while the session started is answered first.
                Thread.sleep(FIRST_ANSWER);
                desk.session().prepareCompletion();
              } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
              } catch (RuntimeException | Error e) {
                started.completeExceptionally(e);
              }
            },
            "leverbook start");
    starter.setDaemon(true);
    starter.start();
    return started::join;
  }

  private static Terminal terminalOrNull() throws IOException {
    // A terminal of a kind unknown here works plainly; a stack trace about it helps nobody.
    LOG.setLevel(Level.OFF);
    Terminal terminal = terminalOrNull(false);
    // Asking the system's own programs takes a process each: only where nothing else will do.
    return terminal == null && System.console() != null ? terminalOrNull(true) : terminal;
  }

  private static Terminal terminalOrNull(boolean byPrograms) {
    try {
      return TerminalBuilder.builder()
          .system(true)
          .ffm(false)
          .exec(byPrograms)
          .dumb(false)
          .encoding(Encoding.ofOutput())
          .build();
    } catch (IllegalStateException | IOException e) {
      // No terminal: input, output or both are files or pipes.
      return null;
    }
  }

  private static boolean piped(Supplier<Desk> desk) {
    var in = new BufferedReader(new InputStreamReader(System.in, Encoding.ofOutput()));
    Voice voice = new Voice(writer(System.out), writer(System.err), Voice.Manner.PLAIN);
    // Beside the answers: those may be read by a program.
    Progress.Listener listened = Progress.listen(new ProgressLines(System.err::println));
    try {
      return new PipedInput(desk.get(), in, voice).run();
    } finally {
      Progress.listen(listened);
    }
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(stream, true);
  }
}
