package org.leverbook.launch;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The program on this disk and the Java that runs it.
 *
 * @param jar the program
 * @param java the command that starts this Java
 * @param options what this Java was started with, before the jar
 */
record Installed(Path jar, Path java, List<String> options) {

  /** This program; empty where it runs from no jar, as in a development tool. */
  static Optional<Installed> here() {
    try {
      CodeSource source = Installed.class.getProtectionDomain().getCodeSource();
      Path jar = Path.of(source.getLocation().toURI());
      Path home = Path.of(System.getProperty("java.home"), "bin");
      Path java = home.resolve(Files.exists(home.resolve("java.exe")) ? "java.exe" : "java");
      return Files.isRegularFile(jar) && Files.isExecutable(java)
          ? Optional.of(new Installed(jar, java, given()))
          : Optional.empty();
    } catch (URISyntaxException | RuntimeException e) {
      return Optional.empty();
    }
  }

  /** Reading the process's own command line takes 2 ms, Java's management 50, but not all tell. */
  private static List<String> given() {
    Optional<String[]> told = ProcessHandle.current().info().arguments();
    if (told.isEmpty()) {
      return ManagementFactory.getRuntimeMXBean().getInputArguments();
    }
    List<String> options = new ArrayList<>();
    for (String each : told.get()) {
      if (each.equals("-jar")) {
        break;
      }
      options.add(each);
    }
    return options;
  }

  /** What an archive depends on: Java's build, and every jar with its size and age. */
  String print() {
    StringBuilder print = new StringBuilder();
    print.append(System.getProperty("java.vm.version")).append('\n');
    print.append(System.getProperty("java.home")).append('\n').append(seen(jar));
    try (Stream<Path> libraries = Files.list(jar.resolveSibling("lib"))) {
      new TreeSet<>(libraries.toList()).forEach(library -> print.append(seen(library)));
    } catch (IOException e) {
      // Without its libraries the program will complain itself.
      return print.toString();
    }
    return print.toString();
  }

  private static String seen(Path file) {
    try {
      return file
          + " "
          + Files.size(file)
          + " "
          + Files.getLastModifiedTime(file).toMillis()
          + "\n";
    } catch (IOException e) {
      return file + "\n";
    }
  }
}
