package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.kernel.KernelFolder.Reach;
import org.leverbook.quantity.Refused;

class KernelFolderTest {

  private static final List<String> COMMAND =
      List.of("/jdk/bin/java", "-jar", "/place with blank/leverbook.jar", "kernel", "start");

  @TempDir private Path folder;

  private static Properties on(String system) {
    Properties properties = new Properties();
    properties.setProperty("os.name", system);
    properties.setProperty("user.home", "/home/coach");
    return properties;
  }

  private static Path kernels(Reach reach, String system, String... variables) {
    Map<String, String> environment =
        variables.length == 0 ? Map.of() : Map.of(variables[0], variables[1]);
    return KernelFolder.kernels(reach, environment, on(system));
  }

  @Test
  void the_kernel_lies_where_jupyter_looks_on_each_system() {
    assertThat(kernels(Reach.USER, "Linux"))
        .isEqualTo(Path.of("/home/coach/.local/share/jupyter/kernels"));
    assertThat(kernels(Reach.USER, "Linux", "XDG_DATA_HOME", "/data"))
        .isEqualTo(Path.of("/data/jupyter/kernels"));
    assertThat(kernels(Reach.USER, "Mac OS X"))
        .isEqualTo(Path.of("/home/coach/Library/Jupyter/kernels"));
    assertThat(kernels(Reach.USER, "Windows 11", "APPDATA", "/roaming"))
        .isEqualTo(Path.of("/roaming/jupyter/kernels"));
    assertThat(kernels(Reach.USER, "Mac OS X", "JUPYTER_DATA_DIR", "/chosen"))
        .isEqualTo(Path.of("/chosen/kernels"));
    assertThat(kernels(Reach.SYSTEM, "Linux"))
        .isEqualTo(Path.of("/usr/local/share/jupyter/kernels"));
    assertThat(kernels(Reach.SYSTEM, "Windows 11", "PROGRAMDATA", "/shared"))
        .isEqualTo(Path.of("/shared/jupyter/kernels"));
  }

  @Test
  void the_folder_tells_jupyter_how_to_start_the_kernel() throws Exception {
    KernelFolder kernel = KernelFolder.of(folder.resolve("kernels"), "leverbook");

    kernel.write(COMMAND);
    kernel.write(COMMAND);

    JsonNode spec = Client.JSON.readTree(kernel.path().resolve("kernel.json").toFile());
    assertThat(spec.path("argv").get(2).asText()).isEqualTo("/place with blank/leverbook.jar");
    assertThat(spec.path("argv").get(5).asText()).isEqualTo("{connection_file}");
    assertThat(spec.path("display_name").asText()).isEqualTo("Leverbook");
    assertThat(spec.path("language").asText()).isEqualTo("java");
    assertThat(spec.path("interrupt_mode").asText()).isEqualTo("message");
    for (int size : List.of(32, 64)) {
      BufferedImage logo =
          ImageIO.read(kernel.path().resolve("logo-" + size + "x" + size + ".png").toFile());
      assertThat(logo.getWidth()).isEqualTo(size);
      assertThat(logo.getHeight()).isEqualTo(size);
    }
    assertThat(kernel.path().resolve("logo-svg.svg")).content().contains("<svg");
  }

  @Test
  void a_second_kernel_bears_its_name_in_jupyters_list() throws Exception {
    KernelFolder kernel = KernelFolder.of(folder, "Leverbook-25");

    kernel.write(COMMAND);

    assertThat(kernel.path().getFileName()).hasToString("leverbook-25");
    assertThat(Files.readString(kernel.path().resolve("kernel.json")))
        .contains("Leverbook (leverbook-25)");
  }

  @Test
  void names_that_jupyter_does_not_take_are_refused() {
    for (String name : List.of("", "a b", "../up", "übung", ".hidden")) {
      assertThatThrownBy(() -> KernelFolder.of(folder, name))
          .isInstanceOf(Refused.class)
          .hasMessage(
              "A kernel cannot be called \""
                  + name
                  + "\": Jupyter takes letters a to z, digits, and . _ - between them; for example"
                  + " leverbook-25.");
    }
  }

  @Test
  void what_was_registered_is_removed_and_nothing_else() throws Exception {
    KernelFolder kernel = KernelFolder.of(folder, "leverbook");
    kernel.write(COMMAND);

    kernel.remove();

    assertThat(kernel.path()).doesNotExist();
    assertThatThrownBy(kernel::remove)
        .hasMessage(
            "There is no kernel \"leverbook\" in "
                + folder
                + "; \"jupyter kernelspec list\" tells where kernels are.");
  }

  @Test
  void another_kernels_folder_is_left_alone() throws Exception {
    Path other = Files.createDirectories(folder.resolve("other"));
    Files.writeString(other.resolve("kernel.json"), "{\"language\": \"java\"}");
    KernelFolder kernel = KernelFolder.of(folder, "other");
    String sentence =
        other
            + " belongs to another kernel and stays as it is. Choose another name, as in --name"
            + " leverbook-2.";

    assertThatThrownBy(() -> kernel.write(COMMAND)).hasMessage(sentence);
    assertThatThrownBy(kernel::remove).hasMessage(sentence);
    assertThat(other.resolve("kernel.json")).hasContent("{\"language\": \"java\"}");
  }

  @Test
  void files_of_the_user_in_the_folder_stay() throws Exception {
    KernelFolder kernel = KernelFolder.of(folder, "leverbook");
    kernel.write(COMMAND);
    Files.writeString(kernel.path().resolve("notes.txt"), "mine");

    assertThatThrownBy(kernel::remove)
        .hasMessage(
            "The folder "
                + kernel.path()
                + " cannot be removed: it holds files that are not Leverbook's.");
    assertThat(kernel.path().resolve("notes.txt")).hasContent("mine");
  }
}
