import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;

/**
 * Gives every file below a folder the same mode, whatever the builder's umask: the jar keeps modes,
 * and two builds shall give the same bytes.
 *
 * <p>Run by the build: {@code java SameModes.java FOLDER}.
 */
final class SameModes {

  private SameModes() {}

  public static void main(String[] arguments) throws IOException {
    if (!FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
      return;
    }
    List<Path> all;
    try (Stream<Path> found = Files.walk(Path.of(arguments[0]))) {
      all = found.toList();
    }
    for (Path each : all) {
      String mode = Files.isDirectory(each) ? "rwxr-xr-x" : "rw-r--r--";
      Files.setPosixFilePermissions(each, PosixFilePermissions.fromString(mode));
    }
  }
}
