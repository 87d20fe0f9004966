package org.leverbook.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where typed lines are remembered on each system. */
class HistoryFileTest {

  private static final Path HOME = Path.of("/home/a").toAbsolutePath();

  private static Properties on(String system) {
    Properties properties = new Properties();
    properties.setProperty("os.name", system);
    properties.setProperty("user.home", HOME.toString());
    return properties;
  }

  @Test
  void on_linux_it_follows_the_desktop_standard() {
    String state = Path.of("/state").toAbsolutePath().toString();
    assertThat(HistoryFile.place(Map.of(), on("Linux")))
        .isEqualTo(HOME.resolve(".local/state/leverbook/history"));
    assertThat(HistoryFile.place(Map.of("XDG_STATE_HOME", state), on("Linux")))
        .isEqualTo(Path.of(state, "leverbook", "history"));
    assertThat(HistoryFile.place(Map.of("XDG_STATE_HOME", "relative"), on("Linux")))
        .isEqualTo(HOME.resolve(".local/state/leverbook/history"));
  }

  @Test
  void on_windows_and_macos_it_goes_where_those_keep_such_things() {
    String local = Path.of("/local").toAbsolutePath().toString();
    assertThat(HistoryFile.place(Map.of("LOCALAPPDATA", local), on("Windows 11")))
        .isEqualTo(Path.of(local, "Leverbook", "history"));
    assertThat(HistoryFile.place(Map.of(), on("Mac OS X")))
        .isEqualTo(HOME.resolve("Library/Application Support/Leverbook/history"));
  }

  @Test
  void a_chosen_home_comes_first() {
    Properties properties = on("Linux");
    properties.setProperty("leverbook.home", "/chosen");
    assertThat(HistoryFile.place(Map.of("XDG_STATE_HOME", "/state"), properties))
        .isEqualTo(Path.of("/chosen/history"));
  }

  @Test
  void its_folder_is_made_and_a_place_that_cannot_be_written_means_no_file(@TempDir Path folder)
      throws IOException {
    Path place = folder.resolve("a").resolve("b").resolve("history");
    assertThat(HistoryFile.ready(place)).contains(place);
    assertThat(place.getParent()).isDirectory();

    Path file = Files.writeString(folder.resolve("file"), "x");
    assertThat(HistoryFile.ready(file.resolve("history"))).isEmpty();
  }
}
