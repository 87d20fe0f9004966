package org.leverbook;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.leverbook.data.Version;
import org.leverbook.kernel.KernelPractice;
import org.leverbook.terminal.Encoding;
import org.leverbook.terminal.Practice;
import org.leverbook.terminal.Shell;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;

/** The command line. */
@Command(
    name = "leverbook",
    description = "Which lift loads which joint, for whom, and why. Without a command: the shell.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionLine.class,
    subcommands = {RunCommand.class, ExportCommand.class, KernelCommand.class})
public final class Main implements Callable<Integer> {

  private Main() {}

  /**
   * Starts the command line; ends the process with its exit code.
   *
   * @param arguments as the user typed them
   */
  public static void main(String[] arguments) {
    System.setProperty("java.awt.headless", "true");
    speakTheTerminalsEncoding();
    if (arguments.length == 2 && arguments[0].equals("practise")) {
      System.exit(practise(arguments[1]));
    }
    // The shell needs no command line parser, whose start would delay the first prompt.
    int code = arguments.length == 0 ? Shell.run() : command(arguments);
    System.out.flush();
    // Threads of a script may still be alive; the script is done.
    System.exit(code);
  }

  private static int command(String[] arguments) {
    // As Jupyter starts a kernel: it should not wait for the parser either.
    Optional<Path> connection = KernelCommand.Start.plain(arguments);
    return connection.isPresent()
        ? KernelCommand.Start.run(connection.get(), false)
        : commandLine().execute(arguments);
  }

  /** Plays a session in a folder of its own, so that the user's history knows nothing of it. */
  private static int practise(String door) {
    try {
      Path folder = Files.createTempDirectory("leverbook-practice");
      System.setProperty("leverbook.home", folder.toString());
      try {
        if (door.equals("kernel")) {
          KernelPractice.run();
        } else {
          Practice.run();
        }
      } finally {
        delete(folder);
      }
      return 0;
    } catch (IOException e) {
      // No archive then: the next start is a plain one.
      return 1;
    }
  }

  private static void delete(Path folder) throws IOException {
    try (var files = Files.list(folder)) {
      for (Path each : files.toList()) {
        Files.deleteIfExists(each);
      }
    }
    Files.deleteIfExists(folder);
  }

  /** What reads the command line. */
  static CommandLine commandLine() {
    return new CommandLine(new Main())
        .setCaseInsensitiveEnumValuesAllowed(true)
        .setParameterExceptionHandler(new CommandSlips());
  }

  @Override
  public Integer call() {
    return Shell.run();
  }

  /** Without a locale, Java would print a question mark for every letter beyond ASCII. */
  private static void speakTheTerminalsEncoding() {
    Charset charset = Encoding.ofOutput();
    System.setOut(stream(FileDescriptor.out, charset));
    System.setErr(stream(FileDescriptor.err, charset));
  }

  private static PrintStream stream(FileDescriptor target, Charset charset) {
    return new PrintStream(new FileOutputStream(target), true, charset);
  }

  /** The name and the version. */
  static final class VersionLine implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"Leverbook " + Version.number()};
    }
  }
}
