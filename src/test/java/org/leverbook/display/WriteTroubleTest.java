package org.leverbook.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.quantity.Refused;

class WriteTroubleTest {

  @TempDir Path folder;

  @Test
  void a_missing_folder_is_made() {
    Path file = folder.resolve("lessons").resolve("one").resolve("a.svg");
    OutputFolder.write(file.toString(), "text");
    assertThat(file).hasContent("text");
  }

  @Test
  void a_file_in_the_place_of_a_folder_is_named() throws IOException {
    Path blocked = Files.writeString(folder.resolve("lessons"), "a file");
    assertThatThrownBy(() -> OutputFolder.write(blocked.resolve("one/a.svg").toString(), "text"))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "Could not write "
                + blocked.resolve("one/a.svg")
                + ": "
                + blocked
                + " is a file, not a folder; choose another place. Nothing was changed there.");
  }

  @Test
  void a_folder_of_the_same_name_is_named() throws IOException {
    Path taken = Files.createDirectories(folder.resolve("a.svg").resolve("inside")).getParent();
    assertThatThrownBy(() -> OutputFolder.write(taken.toString(), "text"))
        .isInstanceOf(Refused.class)
        .hasMessageEndingWith(
            "there is a folder of this name; choose another name. Nothing was changed there.");
    assertThat(taken.resolve("inside")).isDirectory();
    assertThat(folder.toFile().list()).as("no draft is left").containsExactly("a.svg");
  }

  @Test
  void a_name_too_long_for_the_disk_is_told_so() {
    Path file = folder.resolve("w".repeat(300) + ".svg");
    assertThatThrownBy(() -> OutputFolder.write(file.toString(), "text"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("the name is too long for this disk; choose a shorter one.");
  }

  @Test
  void a_missing_right_says_whose_folder_to_leave() {
    assertThat(WriteTrouble.of(new AccessDeniedException("a.svg"), folder.resolve("a.svg")))
        .isEqualTo(
            "you have no right to write into "
                + folder
                + "; choose another folder, or have the right given to you.");
    assertThat(WriteTrouble.of(new IOException("No space left on device"), folder.resolve("a.svg")))
        .isEqualTo("the disk said \"No space left on device\".");
  }
}
