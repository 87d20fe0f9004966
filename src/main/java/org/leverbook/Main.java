package org.leverbook;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.leverbook.data.Version;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The command line. */
@Command(
    name = "leverbook",
    description = "Which lift loads which joint, for whom, and why. Without a command: the shell.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionLine.class,
    subcommands = RunCommand.class)
public final class Main implements Runnable {

  private Main() {}

  /**
   * Starts the command line; ends the process with its exit code.
   *
   * @param arguments as the user typed them
   */
  public static void main(String[] arguments) {
    System.setProperty("java.awt.headless", "true");
    writeUtf8WhereNothingIsSet();
    int code = new CommandLine(new Main()).execute(arguments);
    System.out.flush();
    // Threads of a script may still be alive; the script is done.
    System.exit(code);
  }

  @Override
  public void run() {
    System.out.println("shell");
  }

  /** Without a locale, Java would print a question mark for every letter beyond ASCII. */
  private static void writeUtf8WhereNothingIsSet() {
    if (System.out.checkError() || !isAscii()) {
      return;
    }
    System.setOut(utf8(FileDescriptor.out));
    System.setErr(utf8(FileDescriptor.err));
  }

  private static boolean isAscii() {
    String name = System.getProperty("stdout.encoding", System.getProperty("sun.stdout.encoding"));
    Charset charset =
        name != null && Charset.isSupported(name)
            ? Charset.forName(name)
            : Charset.forName(System.getProperty("native.encoding", "UTF-8"));
    return charset.equals(StandardCharsets.US_ASCII);
  }

  private static PrintStream utf8(FileDescriptor target) {
    return new PrintStream(new FileOutputStream(target), true, StandardCharsets.UTF_8);
  }

  /** The name and the version. */
  static final class VersionLine implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"Leverbook " + Version.number()};
    }
  }
}
