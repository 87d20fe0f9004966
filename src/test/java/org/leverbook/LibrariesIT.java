package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/** The list of libraries is that of the built jar, and their licences travel with them. */
class LibrariesIT {

  private static final Path LIST = Path.of("src", "dist", "LIBRARIES.md");

  /** A row: name, version, licence, what for. */
  private static final Pattern ROW =
      Pattern.compile("\\| (\\S+) \\| (\\d\\S*) \\| (\\S+) \\| .+ \\|");

  private static final Set<String> KNOWN =
      Set.of("Apache-2.0", "MIT", "BSD-2-Clause", "BSD-3-Clause", "MPL-2.0", "Unicode/ICU");

  private static List<List<String>> rows() throws Exception {
    return Files.readAllLines(LIST).stream()
        .map(ROW::matcher)
        .filter(row -> row.matches())
        .map(row -> List.of(row.group(1) + "-" + row.group(2) + ".jar", row.group(3)))
        .toList();
  }

  @Test
  void every_library_of_the_jar_is_listed_with_version_and_licence_and_no_other() throws Exception {
    Set<String> listed = new TreeSet<>();
    for (List<String> row : rows()) {
      assertThat(KNOWN).as(row.get(0)).contains(row.get(1));
      listed.add(row.get(0));
    }
    try (JarFile jar = new JarFile(Path.of("target", "leverbook.jar").toFile())) {
      String path = jar.getManifest().getMainAttributes().getValue("Class-Path");
      Set<String> named =
          Arrays.stream(path.split(" "))
              .map(entry -> entry.replace("lib/", ""))
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(listed).isEqualTo(named);
    }
  }

  @Test
  void the_zip_holds_the_libraries_of_the_list_and_the_texts_of_their_licences() throws Exception {
    Path zip;
    try (Stream<Path> files = Files.list(Path.of("target"))) {
      zip =
          files
              .filter(f -> f.getFileName().toString().matches("leverbook-\\d.*\\.zip"))
              .findFirst()
              .orElseThrow();
    }
    Set<String> libraries = new TreeSet<>();
    Set<String> texts = new TreeSet<>();
    try (ZipFile opened = new ZipFile(zip.toFile())) {
      opened.stream()
          .map(entry -> entry.getName().replaceFirst("^[^/]+/", ""))
          .forEach(
              name -> {
                if (name.startsWith("lib/") && name.endsWith(".jar")) {
                  libraries.add(name.substring(4));
                } else if (name.startsWith("licences/") || name.matches("[A-Z]+(\\.md)?")) {
                  texts.add(name);
                }
              });
    }
    Set<String> listed = new TreeSet<>();
    rows().forEach(row -> listed.add(row.get(0)));
    assertThat(libraries).isEqualTo(listed);
    assertThat(texts)
        .contains(
            "LICENSE", "LIBRARIES.md", "README.md", "licences/BSD.txt", "licences/MPL-2.0.txt");
  }
}
