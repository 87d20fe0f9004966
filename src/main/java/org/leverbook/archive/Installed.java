package org.leverbook.archive;

import java.io.File;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The program on this disk and the Java that runs it.
 *
 * @param jar the program
 * @param java the command that starts this Java
 * @param options what this Java was started with, before the jar
 */
public record Installed(Path jar, Path java, List<String> options) {

  /**
   * This program.
   *
   * @return where it is; empty where it runs from no jar, as in a development tool
   */
  public static Optional<Installed> here() {
    try {
      CodeSource source = Installed.class.getProtectionDomain().getCodeSource();
      Path jar = Path.of(source.getLocation().toURI());
      Path java = javaCommand();
      return Files.isRegularFile(jar) && Files.isExecutable(java)
          ? Optional.of(new Installed(jar, java, given()))
          : Optional.empty();
    } catch (URISyntaxException | RuntimeException e) {
      return Optional.empty();
    }
  }

  /**
   * What starts this Java.
   *
   * @return the command's file
   */
  public static Path javaCommand() {
    Path folder = Path.of(System.getProperty("java.home"), "bin");
    return folder.resolve(Files.exists(folder.resolve("java.exe")) ? "java.exe" : "java");
  }

  /** The shortest ways first: Java's own take 20 and 50 ms, which every start would wait. */
  private static List<String> given() {
    Path told = Path.of("/proc/self/cmdline");
    if (Files.isReadable(told)) {
      try {
        return beforeTheJar(Files.readString(told).split("\0"), 1);
      } catch (IOException e) {
        // Then as on other systems.
        return given(ProcessHandle.current().info());
      }
    }
    return given(ProcessHandle.current().info());
  }

  private static List<String> given(ProcessHandle.Info told) {
    return told.arguments()
        .map(arguments -> beforeTheJar(arguments, 0))
        .orElseGet(() -> ManagementFactory.getRuntimeMXBean().getInputArguments());
  }

  private static List<String> beforeTheJar(String[] arguments, int from) {
    List<String> options = new ArrayList<>();
    for (int i = from; i < arguments.length && !arguments[i].equals("-jar"); i++) {
      options.add(arguments[i]);
    }
    return options;
  }

  /**
   * What an archive depends on: Java's build, and the program with its size and age. Java itself
   * looks after the libraries, and does not read an archive of others.
   */
  String print() {
    File program = jar.toFile();
    return String.join(
        "\n",
        System.getProperty("java.vm.version"),
        System.getProperty("java.home"),
        program.getPath(),
        Long.toString(program.length()),
        Long.toString(program.lastModified()));
  }
}
