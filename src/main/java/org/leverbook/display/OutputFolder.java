package org.leverbook.display;

import java.io.BufferedWriter;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Objects;
import java.util.function.Consumer;
import org.leverbook.quantity.Refused;

/**
 * Where saved files go. One folder for the process, chosen by the door ({@code run --out DIR}); the
 * working folder otherwise. A Java process cannot change its working folder, so every {@code save}
 * asks here.
 */
public final class OutputFolder {

  private static volatile Path folder = Path.of("");
  private static volatile Consumer<Path> watcher = file -> {};

  private OutputFolder() {}

  /**
   * Chooses the folder for all later saves.
   *
   * @param chosen a folder; made when the first file is written
   */
  public static void choose(Path chosen) {
    folder = chosen;
  }

  /**
   * Hears of every file that is written from here on, in place of whoever did before.
   *
   * @param next takes the place of each; null for nobody
   * @return who heard before, to be put back
   */
  public static synchronized Consumer<Path> watch(Consumer<Path> next) {
    Consumer<Path> before = watcher;
    watcher = Objects.requireNonNullElse(next, file -> {});
    return before;
  }

  /**
   * The place of a file.
   *
   * @param name a file name; an absolute path stays as it is
   * @return the path in the output folder
   * @throws Refused if the name is no file name on this system
   */
  public static Path resolve(String name) {
    if (name.isBlank()) {
      throw new Refused("A file needs a name, such as save(\"start.csv\").");
    }
    try {
      return folder.resolve(name);
    } catch (InvalidPathException e) {
      throw new Refused("\"" + name + "\" cannot be a file name here: " + e.getReason() + ".", e);
    }
  }

  /**
   * Writes a text file whole, in UTF-8: a reader never sees half of it.
   *
   * @param name a file name
   * @param text the content
   * @return where it was written
   * @throws Refused if the disk says no
   */
  public static Path write(String name, String text) {
    return write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes a file whole: a reader never sees half of it.
   *
   * @param name a file name
   * @param bytes the content
   * @return where it was written
   * @throws Refused if the disk says no
   */
  public static Path write(String name, byte[] bytes) {
    return write(name, out -> out.write(bytes));
  }

  /** Fills a file. */
  @FunctionalInterface
  public interface Filling {

    /**
     * Writes the content.
     *
     * @param out where to
     * @throws IOException if the disk says no
     */
    void fill(OutputStream out) throws IOException;
  }

  /**
   * Writes a file bit by bit; under its name it appears when it is whole.
   *
   * @param name a file name
   * @param filling writes the content; what it throws leaves no file behind
   * @return where it was written
   * @throws Refused if the disk says no
   */
  public static Path write(String name, Filling filling) {
    Path target = resolve(name);
    Path parent = target.toAbsolutePath().getParent();
    // Not a temporary file of the system's making: those are closed to every other user.
    Path draft = parent.resolve(Drafts.name());
    try {
      Files.createDirectories(parent);
      Drafts.clear(parent);
      // Not Files.newOutputStream: it refuses on an interrupted thread, and what was done before a
      // stop is to be saved all the same.
      try (OutputStream out = new FileOutputStream(draft.toFile())) {
        filling.fill(out);
      }
      moveInto(target, draft);
      watcher.accept(target);
      return target;
    } catch (IOException e) {
      discard(draft);
      throw new Refused(
          "Could not write "
              + target
              + ": "
              + WriteTrouble.of(e, target.toAbsolutePath())
              + " Nothing was changed there.",
          e);
    } catch (RuntimeException | Error e) {
      discard(draft);
      throw e;
    }
  }

  /** Writes a text. */
  @FunctionalInterface
  public interface Text {

    /**
     * Writes the content.
     *
     * @param out where to; need not be flushed
     * @throws IOException if the disk says no
     */
    void to(Writer out) throws IOException;
  }

  /**
   * Writes a text file bit by bit, in UTF-8, however long.
   *
   * @param name a file name
   * @param text writes the content; what it throws leaves no file behind
   * @return where it was written
   * @throws Refused if the disk says no
   */
  public static Path writeText(String name, Text text) {
    return write(
        name,
        out -> {
          Writer writer =
              new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8), 1 << 16);
          text.to(writer);
          writer.flush();
        });
  }

  private static void moveInto(Path target, Path draft) throws IOException {
    try {
      Files.move(
          draft, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private static void discard(Path draft) {
    try {
      Files.deleteIfExists(draft);
    } catch (IOException ignored) {
      // The first failure is the one to report; a stray draft is harmless and hidden.
    }
  }
}
