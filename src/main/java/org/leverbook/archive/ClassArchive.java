package org.leverbook.archive;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.leverbook.display.OwnFolder;

/**
 * An archive of loaded classes of one Java and one jar.
 *
 * @param file where it lies, or will
 */
public record ClassArchive(Path file) {

  /** From this Java on one file also keeps linked classes, which starts faster still. */
  private static final int LINKED = 25;

  /** With more of them, several threads that clear memory are worth their start. */
  private static final int FEW_CORES = 4;

  private static final String NAME = "classes";

  /** Set in the process that reads or writes an archive, and by who wants none. */
  public static final String DIRECT = "leverbook.direct";

  /** Nothing told of archives, and no further process. */
  private static final List<String> QUIET = List.of("-Xlog:disable", "-D" + DIRECT + "=true");

  /**
   * The shell's archive, in the folder for what can be made again.
   *
   * @param installed the Java and the jar
   * @return the archive that fits them, whether it is there or not
   */
  public static ClassArchive of(Installed installed) {
    Path folder = OwnFolder.CACHE.of(System.getenv(), System.getProperties()).toAbsolutePath();
    String name = "start-" + Long.toHexString(mark(installed.print()));
    return new ClassArchive(folder.resolve(name + ending()));
  }

  /** By hand, since Java's ways of marking a text take longer to load than all else here. */
  private static long mark(String text) {
    long mark = 17;
    for (int i = 0; i < text.length(); i++) {
      mark = mark * 0x100000001b3L + text.charAt(i);
    }
    return mark;
  }

  /**
   * An archive in a given folder.
   *
   * @param folder where it lies, or will
   * @return the archive, whether it is there or not
   */
  public static ClassArchive in(Path folder) {
    return new ClassArchive(folder.resolve(NAME + ending()));
  }

  /**
   * Removes the archives that lie in a folder, and what was left of making them.
   *
   * @param folder the folder of {@link #in}
   * @throws IOException if the disk says no
   */
  public static void drop(Path folder) throws IOException {
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, NAME + ".{aot,jsa}*")) {
      for (Path each : found) {
        Files.delete(each);
      }
    }
  }

  private static String ending() {
    return linked() ? ".aot" : ".jsa";
  }

  /**
   * Whether it was made.
   *
   * @return true if the file is there
   */
  public boolean isThere() {
    return Files.isRegularFile(file);
  }

  /**
   * What makes a session quick. A start runs much code a few times, where Java's best compiler
   * costs more than it saves: it comes ten times later, and counting for it begins when it is idle.
   * Sweeps reach it after a second or two, and take no longer than without (measured). A Java that
   * keeps linked classes also keeps those counts, and needs none of this.
   */
  private static List<String> haste() {
    List<String> options = new ArrayList<>();
    if (!linked()) {
      options.addAll(
          List.of(
              "-XX:+IgnoreUnrecognizedVMOptions",
              "-XX:Tier3DelayOn=0",
              "-XX:Tier4InvocationThreshold=50000",
              "-XX:Tier4MinInvocationThreshold=6000",
              "-XX:Tier4CompileThreshold=150000",
              "-XX:Tier4BackEdgeThreshold=400000"));
    }
    if (Runtime.getRuntime().availableProcessors() <= FEW_CORES) {
      options.add("-XX:+UseSerialGC");
    }
    // Else what Java throws in code that runs often says nothing of what was wrong.
    options.add("-XX:-OmitStackTraceInFastThrow");
    return options;
  }

  /**
   * The options of a Java that reads it and is to start quickly; where it does not fit after all,
   * that is not told.
   *
   * @return what stands before {@code -jar}
   */
  public List<String> use() {
    List<String> options =
        new ArrayList<>(
            linked()
                ? List.of("-XX:AOTCache=" + file, "-XX:AOTMode=auto")
                : List.of("-XX:SharedArchiveFile=" + file, "-Xshare:auto"));
    options.addAll(haste());
    options.addAll(QUIET);
    return options;
  }

  /** The options of a Java that writes it when it ends. */
  List<String> make(Path draft) {
    List<String> options = new ArrayList<>(QUIET);
    options.add((linked() ? "-XX:AOTCacheOutput=" : "-XX:ArchiveClassesAtExit=") + draft);
    return options;
  }

  private static boolean linked() {
    return Runtime.version().feature() >= LINKED;
  }
}
