package org.leverbook.display;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.quantity.Refused;

class OutputFolderTest {

  @TempDir Path folder;

  @BeforeEach
  void choose() {
    OutputFolder.choose(folder.resolve("new"));
  }

  @AfterEach
  void backToWorkingFolder() {
    OutputFolder.choose(Path.of(""));
  }

  private static Sheet sheet() {
    return new Sheet("T", List.of(Sheet.Column.text("a")), List.of(List.of("b")), List.of());
  }

  @Test
  void a_save_makes_the_folder_and_says_where_the_file_is() {
    Saved saved = sheet().save("table.csv");
    Path file = folder.resolve("new").resolve("table.csv");
    assertThat(saved.files()).containsExactly(file);
    assertThat(saved.text()).isEqualTo("saved " + file);
    assertThat(file).hasContent("a,note\nb,\n");
  }

  @Test
  void a_second_save_replaces_the_file_and_leaves_no_draft() throws IOException {
    OutputFolder.write("a.txt", "one");
    OutputFolder.write("a.txt", "two");
    assertThat(folder.resolve("new").resolve("a.txt")).hasContent("two");
    try (var files = Files.list(folder.resolve("new"))) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void a_saved_file_can_be_read_by_whoever_can_read_its_neighbours() throws IOException {
    Path saved = OutputFolder.write("a.txt", "one");
    Path neighbour = Files.writeString(saved.resolveSibling("b.txt"), "two");
    if (Files.getFileStore(saved).supportsFileAttributeView("posix")) {
      assertThat(Files.getPosixFilePermissions(saved))
          .isEqualTo(Files.getPosixFilePermissions(neighbour));
    }
  }

  @Test
  void an_absolute_path_is_taken_as_it_is() {
    Path elsewhere = folder.resolve("elsewhere.txt").toAbsolutePath();
    assertThat(OutputFolder.write(elsewhere.toString(), "x")).isEqualTo(elsewhere);
  }

  @Test
  void a_table_is_not_saved_under_a_foreign_ending() {
    assertThatThrownBy(() -> sheet().save("table.xlsx"))
        .isInstanceOf(Refused.class)
        .hasMessage("A table is saved as .csv or .json, not as \"table.xlsx\".");
    assertThat(folder.resolve("new")).doesNotExist();
  }

  @Test
  void a_disk_that_says_no_leaves_nothing_half_written() throws IOException {
    Path blocked = Files.writeString(folder.resolve("blocked"), "a file, not a folder");
    OutputFolder.choose(blocked);
    assertThatThrownBy(() -> OutputFolder.write("a.csv", "x"))
        .isInstanceOf(Refused.class)
        .hasMessageStartingWith("Could not write " + blocked.resolve("a.csv"))
        .hasMessageEndingWith("Nothing was changed there.");
    assertThat(blocked).hasContent("a file, not a folder");
  }

  @Test
  void what_a_killed_process_left_half_written_is_cleared_and_what_another_writes_now_is_not()
      throws IOException {
    Path fresh = Files.createDirectory(folder.resolve("new"));
    Path old = Files.writeString(fresh.resolve(".writing-1.tmp"), "half");
    Path now = Files.writeString(fresh.resolve(".writing-2.tmp"), "half");
    Files.setLastModifiedTime(
        old, java.nio.file.attribute.FileTime.from(java.time.Instant.now().minusSeconds(7200)));

    OutputFolder.write("a.txt", "whole");

    assertThat(old).doesNotExist();
    assertThat(now).exists();
  }

  @Test
  void a_file_needs_a_name() {
    assertThatThrownBy(() -> OutputFolder.write(" ", "x"))
        .isInstanceOf(Refused.class)
        .hasMessage("A file needs a name, such as save(\"start.csv\").");
  }
}
