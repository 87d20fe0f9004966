package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One script writes the same files whatever machine, language and time zone it runs in. */
class SameBytesIT {

  private static final Path JAR = Path.of("target", "leverbook.jar").toAbsolutePath();

  private static final String SCRIPT =
      """
      var lifter = person(FEMALE, kg(68), cm(171));
      var pull = hinge(lifter).holding(barbell(kg(60)));
      pull.start().moments().save("moments.csv")
      pull.start().verdict().table().save("verdict.csv")
      sweep("hip height", cm(55), cm(68), 9, h -> pull.hipHeight(h).start()).save("sweep.csv")
      var group = people(40, 7).women(percent(50));
      group.sizes().save("sizes.csv")
      sweep("lifter", group, one -> backSquat(one).finish()).save("people.csv")
      var more = claim("the hip carries more than the knee").margin("N·m", p -> p.moment(HIP).size() - p.moment(KNEE).size()).over(group, who -> hinge(who).holding(barbell(kg(60))).start());
      more.save("claim.csv")
      doubt(pull).draws(100).band(L5_S1)
      doubt(pull).draws(100).sensitivity(L5_S1).save("doubt.csv")
      backSquat(lifter).largest().table().save("largest.csv")
      var moving = movement("pull", smooth(seconds(1.5)), share -> pull.hipHeight(cm(60 + 6 * share)).start());
      sweep(moving, 9).save("moving.csv")
      pull.start().worksheet().save("start.json")
      pull.start().picture().save("start")
      """;

  @TempDir private Path folder;

  /** A machine: how many cores, which language, which time zone. */
  private record Machine(int cores, String language, String country, String zone) {

    List<String> options() {
      return List.of(
          "-XX:ActiveProcessorCount=" + cores,
          "-Duser.language=" + language,
          "-Duser.country=" + country,
          "-Duser.timezone=" + zone);
    }
  }

  @Test
  void cores_language_and_time_zone_change_no_byte_of_a_table() throws Exception {
    Path script = Files.writeString(folder.resolve("study.jsh"), SCRIPT, StandardCharsets.UTF_8);
    Map<String, String> first = run(script, new Machine(1, "en", "US", "UTC"));
    // Nine tables, a worksheet, a drawing and its image, and what was printed.
    assertThat(first).hasSize(13);
    for (Machine other :
        List.of(
            new Machine(2, "de", "DE", "Europe/Berlin"),
            new Machine(4, "tr", "TR", "Pacific/Auckland"))) {
      Map<String, String> again = run(script, other);
      assertThat(again.keySet()).isEqualTo(first.keySet());
      first.forEach(
          (name, text) -> assertThat(again.get(name)).as(name + ", " + other).isEqualTo(text));
    }
  }

  private Map<String, String> run(Path script, Machine machine) throws Exception {
    Path made = folder.resolve("made-" + machine.cores());
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(machine.options());
    command.add("-Djava.awt.headless=true");
    command.add("-Dleverbook.direct=true");
    command.add("-Dleverbook.home=" + folder.resolve("home"));
    command.addAll(
        List.of("-jar", JAR.toString(), "run", script.toString(), "--out", made.toString()));
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(300, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(Files.readString(err)).isZero();
    Map<String, String> files = files(made);
    // How far long work is depends on the machine, and is told beside the results.
    String printed = Files.readString(out, StandardCharsets.UTF_8);
    files.put("what was printed", printed.replace(made.toString(), "made"));
    return files;
  }

  /** Each file's bytes, one character a byte. */
  private static Map<String, String> files(Path made) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.list(made)) {
      for (Path file : all.toList()) {
        files.put(
            file.getFileName().toString(), Files.readString(file, StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }
}
