package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RoomPagesTest {

  private static final Path SOURCES = Path.of("src", "main", "java");

  @Test
  void every_room_has_a_page_that_tells_its_idea() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      List<Path> rooms =
          files
              .filter(f -> f.toString().endsWith(".java"))
              .map(Path::getParent)
              .distinct()
              .toList();
      assertThat(rooms).hasSizeGreaterThan(10);
      for (Path room : rooms) {
        assertThat(room.resolve("package-info.java"))
            .as("the page of " + SOURCES.relativize(room))
            .exists()
            .content()
            .contains("/**");
      }
    }
  }

  @Test
  void nothing_lies_at_the_top_but_what_belongs_there() throws IOException {
    Set<String> found = new TreeSet<>();
    try (Stream<Path> files = Files.list(Path.of(""))) {
      files.map(Path::toString).filter(name -> !name.startsWith(".")).forEach(found::add);
    }
    found.remove("target");
    assertThat(found)
        .containsExactlyInAnyOrder(
            "DEVELOPERS.md", "LICENSE", "README.md", "datasets", "notebooks", "pom.xml", "src");
  }
}
