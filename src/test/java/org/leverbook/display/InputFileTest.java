package org.leverbook.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.quantity.Refused;

/** A lesson finds what lies beside it, wherever it is started from. */
class InputFileTest {

  @AfterEach
  void putBack() {
    InputFile.lookIn(null);
  }

  @Test
  void what_lies_beside_the_running_script_is_found(@TempDir Path folder) throws IOException {
    Path table = Files.writeString(folder.resolve("club.txt"), "kg");
    assertThat(InputFile.runs(folder.resolve("lesson.jsh"))).isNull();
    assertThat(InputFile.find("list", "club.txt")).isEqualTo(table);
    assertThat(InputFile.runs(null)).isEqualTo(folder);
    assertThatThrownBy(() -> InputFile.find("list", "club.txt"))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "There is no list \"club.txt\" in "
                + Path.of("").toAbsolutePath()
                + ". Check the name, or give the whole path.");
  }

  @Test
  void the_working_folder_comes_first(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve("pom.xml"), "another");
    InputFile.runs(folder.resolve("lesson.jsh"));
    assertThat(InputFile.find("file", "pom.xml")).isEqualTo(Path.of("pom.xml"));
  }

  @Test
  void both_places_are_named_where_it_is_in_neither(@TempDir Path folder) {
    InputFile.runs(folder.resolve("lesson.jsh"));
    assertThatThrownBy(() -> InputFile.find("photo", "gone.png"))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "There is no photo \"gone.png\" in "
                + Path.of("").toAbsolutePath()
                + ", nor in "
                + folder
                + ". Check the name, or give the whole path.");
    assertThatThrownBy(() -> InputFile.find("photo", "a\0b"))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("\"a\0b\" cannot be a file name here: ");
  }
}
