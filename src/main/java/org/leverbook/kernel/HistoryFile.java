package org.leverbook.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The cells of all kernels of this user, one a line: {@code [session, number, "code"]}. Several
 * kernels may write at once; a line that is none is passed over. Where the file cannot be written,
 * nothing is kept, and nothing else changes.
 */
final class HistoryFile {

  private static final int MOST = 6_000;
  private static final int KEPT = 5_000;

  /** A cell. */
  record Entry(int session, int line, String code, String output) {}

  private final Optional<Path> file;
  private final Log log;
  private List<Entry> before = List.of();
  private int session = 1;

  /**
   * Opens the file, and with it a session whose number no other has.
   *
   * @param file where it lies, made if missing
   */
  HistoryFile(Path file, Log log) {
    this.log = log;
    Optional<Path> usable = Optional.of(file);
    try {
      Path folder = file.toAbsolutePath().getParent();
      Files.createDirectories(folder);
      if (!Files.exists(file)
          && file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
        Files.createFile(
            file,
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
      }
      open(file);
    } catch (IOException e) {
      log.say("The history is not kept: " + e + ".");
      usable = Optional.empty();
    }
    this.file = usable;
  }

  private void open(Path path) throws IOException {
    try (FileChannel channel =
            FileChannel.open(
                path,
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE);
        var lock = channel.lock()) {
      assert lock.isValid();
      byte[] bytes = Channels.newInputStream(channel).readAllBytes();
      List<Entry> found = new ArrayList<>();
      int last = 0;
      for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n")) {
        Optional<Entry> entry = entry(line);
        last = Math.max(last, entry.map(Entry::session).orElse(0));
        entry.filter(e -> e.line() > 0).ifPresent(found::add);
      }
      session = last + 1;
      if (found.size() > MOST) {
        found.subList(0, found.size() - KEPT).clear();
        channel.truncate(0);
        channel.position(0);
        for (Entry each : found) {
          write(channel, each);
        }
      }
      // Takes the number, also for a kernel that starts before this one's first cell.
      write(channel, new Entry(session, 0, "", ""));
      found.sort(Comparator.comparingInt(Entry::session));
      before = List.copyOf(found);
    }
  }

  private static Optional<Entry> entry(String line) {
    try {
      JsonNode said = Json.read(line.getBytes(StandardCharsets.UTF_8));
      boolean whole = said.isArray() && said.path(0).isInt() && said.path(1).isInt();
      return whole && said.path(2).isTextual()
          ? Optional.of(
              new Entry(
                  said.get(0).intValue(), said.get(1).intValue(), said.get(2).textValue(), ""))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static void write(FileChannel channel, Entry entry) throws IOException {
    ArrayNode line = Json.array();
    line.add(entry.session()).add(entry.line()).add(entry.code());
    ByteBuffer bytes = ByteBuffer.wrap((Json.line(line) + "\n").getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
  }

  /** The number of this session. */
  int session() {
    return session;
  }

  /** The cells of earlier sessions, and of others that were open when this one began. */
  List<Entry> before() {
    return before;
  }

  /** Keeps a cell. */
  void add(Entry entry) {
    if (file.isEmpty()) {
      return;
    }
    try (FileChannel channel =
            FileChannel.open(file.get(), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        var lock = channel.lock()) {
      assert lock.isValid();
      write(channel, entry);
    } catch (IOException e) {
      log.say("A cell is missing from the history: " + e + ".");
    }
  }
}
