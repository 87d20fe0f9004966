package org.leverbook.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.leverbook.display.Drafts;

/**
 * The cells of all kernels of this user, one a line: {@code [session, number, "code"]}. Several
 * kernels may write at once; a line that is none is passed over. Where the file cannot be written,
 * nothing is kept, and nothing else changes.
 */
final class HistoryFile {

  private static final int MOST = 6_000;
  private static final int KEPT = 5_000;

  /** More kernels do not cut the file at the same moment. */
  private static final int TRIES = 20;

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
      if (!Files.exists(file)) {
        make(file);
      }
      open(file);
    } catch (IOException e) {
      log.say("The history is not kept: " + e + ".");
      usable = Optional.empty();
    }
    this.file = usable;
  }

  private void open(Path path) throws IOException {
    holding(
        path,
        channel -> {
          byte[] bytes = Channels.newInputStream(channel).readAllBytes();
          List<Entry> found = new ArrayList<>();
          int last = 0;
          for (String line : new String(bytes, StandardCharsets.UTF_8).split("\n")) {
            Optional<Entry> entry = entry(line);
            last = Math.max(last, entry.map(Entry::session).orElse(0));
            entry.filter(e -> e.line() > 0).ifPresent(found::add);
          }
          session = last + 1;
          // Takes the number, also for a kernel that starts before this one's first cell.
          Entry own = new Entry(session, 0, "", "");
          if (found.size() > MOST) {
            found.subList(0, found.size() - KEPT).clear();
            cut(path, found, own);
          } else {
            append(channel, own);
          }
          found.sort(Comparator.comparingInt(Entry::session));
          before = List.copyOf(found);
        });
  }

  /** What is done while the file is held. */
  @FunctionalInterface
  private interface Work {
    void on(FileChannel channel) throws IOException;
  }

  /** Holds the file alone, also where another kernel has just put a shorter one in its place. */
  private static void holding(Path path, Work work) throws IOException {
    for (int left = TRIES; left > 0; left--) {
      Object before = identity(path);
      try (FileChannel channel =
              FileChannel.open(
                  path,
                  StandardOpenOption.CREATE,
                  StandardOpenOption.READ,
                  StandardOpenOption.WRITE);
          var lock = channel.lock()) {
        assert lock.isValid();
        if (left == 1 || Objects.equals(before, identity(path))) {
          work.on(channel);
          return;
        }
      }
    }
  }

  /** Which file lies there now; null where there is none, or the system does not tell. */
  private static Object identity(Path path) throws IOException {
    try {
      return Files.readAttributes(path, BasicFileAttributes.class).fileKey();
    } catch (NoSuchFileException e) {
      return null;
    }
  }

  /** A process that is killed meanwhile leaves the long file or the short one, never a part. */
  private static void cut(Path path, List<Entry> found, Entry own) throws IOException {
    Path draft = path.resolveSibling(Drafts.name());
    Drafts.clear(path.toAbsolutePath().getParent());
    try {
      StringBuilder text = new StringBuilder();
      found.forEach(each -> text.append(line(each)));
      text.append(line(own));
      make(draft);
      Files.writeString(draft, text);
      Files.move(draft, path, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(draft);
    }
  }

  private static void make(Path file) throws IOException {
    if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.createFile(
          file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
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

  private static String line(Entry entry) {
    ArrayNode line = Json.array();
    line.add(entry.session()).add(entry.line()).add(entry.code());
    return Json.line(line) + "\n";
  }

  /** A line that was cut off, by a full disk or a kill, must not take the next one with it. */
  private static void append(FileChannel channel, Entry entry) throws IOException {
    long size = channel.size();
    ByteBuffer last = ByteBuffer.allocate(1);
    boolean open = size > 0 && channel.read(last, size - 1) == 1 && last.get(0) != '\n';
    String text = (open ? "\n" : "") + line(entry);
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    channel.position(size);
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
    try {
      holding(file.get(), channel -> append(channel, entry));
    } catch (IOException e) {
      log.say("A cell is missing from the history: " + e + ".");
    }
  }
}
