package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The zip as a coach unpacks it, into a folder whose name has spaces and letters of another land.
 */
class UnpackedZipIT {

  @TempDir private Path folder;

  private Path unpacked() throws IOException {
    Path zip;
    try (Stream<Path> files = Files.list(Path.of("target"))) {
      zip = files.filter(f -> f.toString().endsWith(".zip")).findFirst().orElseThrow();
    }
    Path home = Files.createDirectory(folder.resolve("Kraft & Übung (1)"));
    try (FileSystem inside =
            FileSystems.newFileSystem(zip, Map.of("enablePosixFileAttributes", true));
        Stream<Path> all = Files.walk(inside.getPath("/"))) {
      for (Path from : all.toList()) {
        Path to = home.resolve(from.toString().substring(1));
        if (Files.isDirectory(from)) {
          Files.createDirectories(to);
        } else {
          Files.copy(from, to, StandardCopyOption.COPY_ATTRIBUTES);
          Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        }
      }
    }
    try (Stream<Path> one = Files.list(home)) {
      return one.findFirst().orElseThrow();
    }
  }

  private String said(Path program, String... arguments) throws Exception {
    List<String> command =
        Stream.concat(Stream.of(program.toString()), Stream.of(arguments)).toList();
    Path in = Files.writeString(folder.resolve("in.txt"), "1+1\nkg(140)\n");
    Path out = folder.resolve("out.txt");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectInput(in.toFile())
            .redirectOutput(out.toFile());
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("CDPATH", ".:/");
    Process process = builder.start();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).isZero();
    return Files.readString(out, StandardCharsets.UTF_8);
  }

  @Test
  void the_zip_runs_by_its_script_from_any_folder_and_by_a_link_to_it() throws Exception {
    Path home = unpacked();
    Path script = home.resolve("leverbook");
    assertThat(Files.getPosixFilePermissions(script)).contains(PosixFilePermission.OTHERS_EXECUTE);
    assertThat(said(script)).isEqualTo("2\n140 kg\n");
    Path link = Files.createSymbolicLink(folder.resolve("my link"), script);
    assertThat(said(link, "--version")).startsWith("Leverbook ");
    Path made = folder.resolve("made here");
    said(script, "run", home.resolve("notebooks/hinge.jsh").toString(), "--out", made.toString());
    assertThat(made.resolve("moments.csv")).isNotEmptyFile();
  }

  @Test
  void each_script_has_the_line_ends_of_its_system() throws Exception {
    Path home = unpacked();
    assertThat(Files.readString(home.resolve("leverbook"))).doesNotContain("\r");
    assertThat(Files.readString(home.resolve("leverbook.bat")))
        .contains("\r\n")
        .doesNotContainPattern("[^\r]\n");
  }
}
