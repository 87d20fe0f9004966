package org.leverbook.launch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.leverbook.Main;
import org.leverbook.archive.ArchiveMaker;
import org.leverbook.archive.ClassArchive;
import org.leverbook.archive.Installed;
import org.leverbook.archive.Signals;

/**
 * Starts the command line quickly: where an archive of loaded classes fits this Java and this jar,
 * in a second process that reads it, since a jar cannot choose the options of its own Java.
 *
 * <p>Class archives are tied to one build of Java and one list of jars, so they never travel: the
 * first shell that a person opens has one made behind its back, and later starts use it. Starting
 * another Java costs some 60 ms, reading the archive saves several times that. Whatever goes wrong
 * with it, the command line starts the plain way.
 */
public final class Start {

  private Start() {}

  /**
   * Hands over to the command line, here or in a process of its own.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    if (Boolean.getBoolean(ClassArchive.DIRECT) || startsAKernel(arguments)) {
      Main.main(arguments);
      return;
    }
    Optional<Installed> installed = Installed.here();
    Optional<ClassArchive> archive = installed.map(ClassArchive::of);
    if (archive.isPresent() && archive.get().isThere()) {
      Optional<Integer> code = inOwnProcess(installed.get(), archive.get(), arguments);
      if (code.isPresent()) {
        System.exit(code.get());
      }
    } else if (arguments.length == 0 && System.console() != null) {
      // Only where a person sits: a test machine's runs would each begin one in vain.
      archive.ifPresent(missing -> ArchiveMaker.beginBehind(installed.get(), missing));
    }
    Main.main(arguments);
  }

  /** Its command line is ours, with every option it needs; a second process would hide its end. */
  private static boolean startsAKernel(String[] arguments) {
    return arguments.length > 0 && arguments[0].equals("kernel");
  }

  private static Optional<Integer> inOwnProcess(
      Installed installed, ClassArchive archive, String[] arguments) {
    List<String> command = new ArrayList<>();
    command.add(installed.java().toString());
    command.addAll(archive.use());
    command.addAll(installed.options());
    command.add("-jar");
    command.add(installed.jar().toString());
    command.addAll(List.of(arguments));
    try {
      Process started = new ProcessBuilder(command).inheritIO().start();
      Signals.leaveToTheOther();
      Runtime.getRuntime().addShutdownHook(new Thread(started::destroy, "leverbook end"));
      return Optional.of(started.waitFor());
    } catch (IOException e) {
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of(1);
    }
  }
}
