package org.leverbook.archive;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Makes the archive of loaded classes: a process that plays through a short session, whose Java
 * writes what it has loaded when it ends; then the file gets its name. A process of its own, so
 * that the shell that asked for it can end before.
 */
public final class ArchiveMaker {

  /** Until then the shell that asked has its prompt, and the person reads. */
  private static final int SECONDS_BEFORE = 4;

  private static final int LONGEST_SECONDS = 120;

  private ArchiveMaker() {}

  /**
   * Begins to make the shell's archive in a process that outlives this one; failing quietly.
   *
   * @param installed the Java and the jar
   * @param archive what to make
   */
  public static void beginBehind(Installed installed, ClassArchive archive) {
    try {
      Files.createDirectories(archive.file().getParent());
      silent(
              installed.java().toString(),
              "-XX:TieredStopAtLevel=1",
              "-cp",
              installed.jar().toString(),
              ArchiveMaker.class.getName(),
              archive.file().toString(),
              String.valueOf(SECONDS_BEFORE))
          .start();
    } catch (IOException e) {
      // Then every start is a plain one.
      return;
    }
  }

  /**
   * Makes an archive.
   *
   * @param arguments the file, and the seconds to wait before
   * @throws IOException if the disk says no
   * @throws InterruptedException if this process is to end
   */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    Signals.ignoreTheTerminal();
    TimeUnit.SECONDS.sleep(Integer.parseInt(arguments[1]));
    ClassArchive archive = new ClassArchive(Path.of(arguments[0]));
    if (make(Installed.here().orElseThrow(), archive, "shell")) {
      dropOthers(archive.file());
    }
  }

  /**
   * Makes an archive, unless it is there or another process is at it.
   *
   * @param installed the Java and the jar
   * @param archive what to make
   * @param door whose classes: "shell" or "kernel"
   * @return whether it was made now
   * @throws IOException if the disk says no
   * @throws InterruptedException if this thread is to end
   */
  public static boolean make(Installed installed, ClassArchive archive, String door)
      throws IOException, InterruptedException {
    Path target = archive.file();
    Path lock = target.resolveSibling(target.getFileName() + ".lock");
    boolean made = false;
    try (FileChannel channel =
            FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        var held = channel.tryLock()) {
      if (held == null || archive.isThere()) {
        return false;
      }
      Path draft = target.resolveSibling(target.getFileName() + ".draft");
      List<String> command = new ArrayList<>();
      command.add(installed.java().toString());
      command.addAll(archive.make(draft));
      command.addAll(List.of("-jar", installed.jar().toString(), "practise", door));
      Process practice = silent(command.toArray(String[]::new)).start();
      boolean ended = practice.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS);
      made = ended && practice.exitValue() == 0 && Files.isRegularFile(draft);
      if (made) {
        Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
      } else {
        practice.destroyForcibly();
        Files.deleteIfExists(draft);
      }
    }
    Files.deleteIfExists(lock);
    return made;
  }

  /** Archives of jars and Javas that are no more would pile up, some 40 MB each. */
  private static void dropOthers(Path target) throws IOException {
    List<Path> old;
    try (Stream<Path> files = Files.list(target.getParent())) {
      old = files.filter(f -> f.getFileName().toString().matches("start-.*\\.(aot|jsa)")).toList();
    }
    List<Path> byAge = new ArrayList<>(old);
    byAge.sort(java.util.Comparator.comparing(ArchiveMaker::age).reversed());
    // Two Javas side by side keep theirs.
    for (Path each : byAge.stream().skip(2).toList()) {
      Files.deleteIfExists(each);
    }
  }

  private static java.nio.file.attribute.FileTime age(Path file) {
    try {
      return Files.getLastModifiedTime(file);
    } catch (IOException e) {
      return java.nio.file.attribute.FileTime.fromMillis(0);
    }
  }

  private static ProcessBuilder silent(String... command) {
    return new ProcessBuilder(command)
        .redirectInput(ProcessBuilder.Redirect.PIPE)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD);
  }
}
