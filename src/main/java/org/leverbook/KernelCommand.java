package org.leverbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.leverbook.archive.ArchiveMaker;
import org.leverbook.archive.ClassArchive;
import org.leverbook.archive.Installed;
import org.leverbook.kernel.Connection;
import org.leverbook.kernel.Kernel;
import org.leverbook.kernel.KernelFolder;
import org.leverbook.quantity.Refused;
import picocli.CommandLine;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code kernel install}, {@code kernel uninstall}, {@code kernel start}. */
@Command(
    name = "kernel",
    description = "Leverbook in notebooks: registers it with an installed Jupyter.",
    mixinStandardHelpOptions = true,
    versionProvider = Main.VersionLine.class,
    subcommands = {
      KernelCommand.Install.class,
      KernelCommand.Uninstall.class,
      KernelCommand.Start.class
    })
final class KernelCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine().usage(System.err);
    return CommandLine.ExitCode.USAGE;
  }

  /** Does something; a refusal is a sentence on the error stream and exit code 1. */
  private static int said(Supplier<String> work) {
    try {
      System.out.println(work.get());
      return 0;
    } catch (Refused e) {
      System.err.println(e.getMessage());
      return 1;
    }
  }

  /** Where a kernel is registered. */
  static final class Place {

    @ArgGroup private Reach reach = new Reach();

    @Option(
        names = "--name",
        defaultValue = "leverbook",
        paramLabel = "NAME",
        description = "What Jupyter calls it (default: leverbook).")
    private String name;

    /** For whom. */
    static final class Reach {
      @Option(names = "--system", description = "For everyone on this machine.")
      private boolean system;

      @Option(
          names = "--prefix",
          paramLabel = "DIR",
          description = "For the Jupyter of this environment: into DIR/share/jupyter/kernels.")
      private Path prefix;
    }

    KernelFolder folder() {
      KernelFolder.Reach whom = reach.system ? KernelFolder.Reach.SYSTEM : KernelFolder.Reach.USER;
      Path kernels =
          reach.prefix == null
              ? KernelFolder.kernels(whom, System.getenv(), System.getProperties())
              : reach
                  .prefix
                  .toAbsolutePath()
                  .resolve("share")
                  .resolve("jupyter")
                  .resolve("kernels");
      return KernelFolder.of(kernels, name);
    }
  }

  /** {@code kernel install}. */
  @Command(
      name = "install",
      description = "Registers the kernel, with this Java and this Leverbook.",
      mixinStandardHelpOptions = true,
      versionProvider = Main.VersionLine.class,
      footer = {
        "",
        "Without an option: for you alone. Run it again after Leverbook or Java has moved."
      })
  static final class Install implements Callable<Integer> {

    @CommandLine.Mixin private Place place;

    @Override
    public Integer call() {
      return said(
          () -> {
            KernelFolder folder = place.folder();
            folder.write(startCommand(List.of()));
            quicken(folder);
            return "registered in "
                + folder.path()
                + "\nStart Jupyter and choose Leverbook for a new notebook.";
          });
    }

    /** Registers again with an archive of loaded classes, where one can be made. */
    private static void quicken(KernelFolder folder) {
      Optional<Installed> installed = Installed.here();
      if (installed.isEmpty()) {
        return;
      }
      System.err.println("preparing quick starts, some ten seconds ...");
      ClassArchive archive = ClassArchive.in(folder.path());
      try {
        ClassArchive.drop(folder.path());
        if (ArchiveMaker.make(installed.get(), archive, "kernel")) {
          folder.write(startCommand(archive.use()));
        }
      } catch (IOException e) {
        System.err.println("It starts without: " + e.getMessage());
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }
  }

  /** {@code kernel uninstall}. */
  @Command(
      name = "uninstall",
      description = "Takes the kernel away from Jupyter again; Leverbook itself stays.",
      mixinStandardHelpOptions = true,
      versionProvider = Main.VersionLine.class)
  static final class Uninstall implements Callable<Integer> {

    @CommandLine.Mixin private Place place;

    @Override
    public Integer call() {
      return said(
          () -> {
            KernelFolder folder = place.folder();
            folder.remove();
            return "removed " + folder.path();
          });
    }
  }

  /** What starts a kernel, before the connection file. */
  private static final List<String> STARTING = List.of("kernel", "start", "--connection");

  /** {@code kernel start --connection FILE}. */
  @Command(
      name = "start",
      description = "Starts a kernel; Jupyter calls this.",
      mixinStandardHelpOptions = true,
      versionProvider = Main.VersionLine.class,
      footer = {
        "",
        "Exit code 0 when it was asked to end, 1 when it could not start: the error stream then"
            + " says why."
      })
  static final class Start implements Callable<Integer> {

    private static final long PATIENCE = 1_500;

    @Option(
        names = "--connection",
        required = true,
        paramLabel = "FILE",
        description = "The connection file that Jupyter wrote.")
    private Path connection;

    @Option(
        names = "--open-to-network",
        description =
            "Listens also where other machines can reach it. Whoever has the connection file can"
                + " then run code on this machine.")
    private boolean open;

    @Override
    public Integer call() {
      return run(connection, open);
    }

    /** The connection file, where a command line asks for a kernel and nothing else. */
    static Optional<Path> plain(String[] arguments) {
      boolean plain =
          arguments.length == 4
              && List.of(arguments).subList(0, 3).equals(STARTING)
              && !arguments[3].startsWith("-");
      return plain ? Optional.of(Path.of(arguments[3])) : Optional.empty();
    }

    /** Runs a kernel until it is asked to end; gives the exit code. */
    static int run(Path connection, boolean open) {
      try (Kernel kernel = Kernel.start(Connection.read(connection, open))) {
        kernel.heed(System.getenv());
        kernel.awaitEnd();
        endSoon();
        return 0;
      } catch (Refused e) {
        System.err.println(e.getMessage());
        return 1;
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return 1;
      }
    }

    /** Whatever the user's code left running cannot keep the process. */
    private static void endSoon() {
      Thread guard =
          new Thread(
              () -> {
                try {
                  Thread.sleep(PATIENCE);
                } catch (InterruptedException e) {
                  return;
                }
                Runtime.getRuntime().halt(0);
              },
              "leverbook end");
      guard.setDaemon(true);
      guard.start();
    }
  }

  /** What starts a kernel like this program, but for the path of the connection file. */
  private static List<String> startCommand(List<String> options) {
    List<String> command = new ArrayList<>();
    command.add(Installed.javaCommand().toString());
    command.addAll(options);
    Optional<Installed> installed = Installed.here();
    if (installed.isPresent()) {
      command.addAll(List.of("-jar", installed.get().jar().toString()));
    } else {
      String path = System.getProperty("java.class.path");
      command.addAll(List.of("-cp", path, Main.class.getName()));
    }
    command.addAll(STARTING);
    return command;
  }
}
