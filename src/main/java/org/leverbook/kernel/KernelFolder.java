package org.leverbook.kernel;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import org.leverbook.archive.ClassArchive;
import org.leverbook.data.Version;
import org.leverbook.display.OutputFolder;
import org.leverbook.quantity.Refused;

/**
 * The folder by which an installed Jupyter knows the kernel: {@code kernel.json} and its pictures.
 *
 * @param path the folder
 */
public record KernelFolder(Path path) {

  private static final String SPEC = "kernel.json";
  private static final List<String> LOGOS =
      List.of("logo-32x32.png", "logo-64x64.png", "logo-svg.svg");

  /** For whom a kernel is registered. */
  public enum Reach {
    /** This user. */
    USER,
    /** Everyone on this machine. */
    SYSTEM
  }

  /**
   * The folder where Jupyter looks for kernels of this user, or of all users.
   *
   * @param reach for whom
   * @param environment the environment variables
   * @param properties the system properties
   * @return the folder of all kernels
   */
  public static Path kernels(Reach reach, Map<String, String> environment, Properties properties) {
    Path data =
        reach == Reach.SYSTEM ? shared(environment, properties) : own(environment, properties);
    return data.resolve("kernels");
  }

  private static Path own(Map<String, String> environment, Properties properties) {
    String chosen = environment.getOrDefault("JUPYTER_DATA_DIR", "");
    if (!chosen.isBlank()) {
      return Path.of(chosen);
    }
    Path home = Path.of(properties.getProperty("user.home", "."));
    String system = system(properties);
    if (system.startsWith("windows")) {
      String roaming = environment.getOrDefault("APPDATA", "");
      return (roaming.isBlank() ? home.resolve("AppData").resolve("Roaming") : Path.of(roaming))
          .resolve("jupyter");
    }
    if (system.startsWith("mac")) {
      return home.resolve("Library").resolve("Jupyter");
    }
    String data = environment.getOrDefault("XDG_DATA_HOME", "");
    return (data.isBlank() ? home.resolve(".local").resolve("share") : Path.of(data))
        .resolve("jupyter");
  }

  private static Path shared(Map<String, String> environment, Properties properties) {
    return system(properties).startsWith("windows")
        ? Path.of(environment.getOrDefault("PROGRAMDATA", "C:\\ProgramData")).resolve("jupyter")
        : Path.of("/usr/local/share/jupyter");
  }

  private static String system(Properties properties) {
    return properties.getProperty("os.name", "").toLowerCase(Locale.ROOT);
  }

  /**
   * The folder of one kernel.
   *
   * @param kernels the folder of all kernels
   * @param name what Jupyter calls it
   * @return the folder
   * @throws Refused if Jupyter could not call it so
   */
  public static KernelFolder of(Path kernels, String name) {
    if (!name.matches("[A-Za-z0-9][A-Za-z0-9._-]*")) {
      throw new Refused(
          "A kernel cannot be called \""
              + name
              + "\": Jupyter takes letters a to z, digits, and . _ - between them; for example"
              + " leverbook-25.");
    }
    // Jupyter looks names up in small letters.
    return new KernelFolder(kernels.resolve(name.toLowerCase(Locale.ROOT)));
  }

  private String name() {
    return path.getFileName().toString();
  }

  /**
   * Writes the folder, in place of an older one.
   *
   * @param command what starts a kernel, up to the path of the connection file
   * @throws Refused if the disk says no, or the folder is another kernel's
   */
  public void write(List<String> command) {
    checkOwner();
    ObjectNode spec = Json.object();
    spec.set("argv", Json.array(command).add("{connection_file}"));
    boolean usual = name().equals("leverbook");
    spec.put("display_name", usual ? "Leverbook" : "Leverbook (" + name() + ")");
    spec.put("language", "java");
    spec.put("interrupt_mode", "message");
    spec.putObject("metadata").putObject("leverbook").put("version", Version.number());
    try {
      Files.createDirectories(path);
      for (String logo : LOGOS) {
        try (InputStream in = KernelFolder.class.getResourceAsStream(logo)) {
          Files.write(path.resolve(logo), in.readAllBytes());
        }
      }
    } catch (IOException e) {
      throw refused("written", e);
    }
    // At once or not at all: Jupyter may be reading it.
    OutputFolder.write(path.resolve(SPEC).toString(), Json.page(spec));
  }

  /**
   * Removes the folder.
   *
   * @throws Refused if it is not there, is another kernel's, or the disk says no
   */
  public void remove() {
    if (!Files.exists(path)) {
      throw new Refused(
          "There is no kernel \""
              + name()
              + "\" in "
              + path.getParent()
              + "; \"jupyter kernelspec list\" tells where kernels are.");
    }
    checkOwner();
    try {
      for (String logo : LOGOS) {
        Files.deleteIfExists(path.resolve(logo));
      }
      Files.deleteIfExists(path.resolve(SPEC));
      ClassArchive.drop(path);
      Files.delete(path);
    } catch (IOException e) {
      throw refused("removed", e);
    }
  }

  private void checkOwner() {
    if (Files.exists(path) && !isOurs()) {
      throw new Refused(
          path
              + " belongs to another kernel and stays as it is. Choose another name, as in --name"
              + " leverbook-2.");
    }
  }

  private boolean isOurs() {
    try {
      JsonNode spec = Json.read(Files.readAllBytes(path.resolve(SPEC)));
      return spec.path("metadata").has("leverbook");
    } catch (IOException e) {
      return false;
    }
  }

  private Refused refused(String done, IOException cause) {
    String why =
        cause instanceof java.nio.file.AccessDeniedException
            ? "you may not write there. Without --system and --prefix it goes to your own folder"
            : cause instanceof java.nio.file.DirectoryNotEmptyException
                ? "it holds files that are not Leverbook's"
                : String.valueOf(cause.getMessage());
    return new Refused("The folder " + path + " cannot be " + done + ": " + why + ".", cause);
  }
}
