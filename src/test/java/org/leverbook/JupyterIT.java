package org.leverbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Jupyter's own tools against the built jar: their tests lie in {@code src/test/python}. What is
 * not installed here is left out, and said.
 */
class JupyterIT {

  private static final Path JAR = Path.of("target", "leverbook.jar").toAbsolutePath();
  private static final Path TESTS = Path.of("src", "test", "python").toAbsolutePath();

  @TempDir private Path folder;

  /** What a process said and how it ended. */
  private record Ended(int code, String said) {}

  private Ended run(long seconds, List<String> command) throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    ProcessBuilder builder = new ProcessBuilder(HearingCtrlC.of(command));
    builder.redirectErrorStream(true).redirectOutput(said.toFile());
    // Everything stays away from the home of whoever runs this.
    var environment = builder.environment();
    for (String place : List.of("HOME", "JUPYTER_DATA_DIR", "JUPYTER_RUNTIME_DIR", "IPYTHONDIR")) {
      environment.put(place, Files.createDirectories(folder.resolve(place)).toString());
    }
    environment.put("JUPYTER_CONFIG_DIR", folder.resolve("config").toString());
    environment.put("XDG_STATE_HOME", folder.resolve("state").toString());
    environment.put("PYTHONDONTWRITEBYTECODE", "1");
    Process process = builder.start();
    boolean ended = process.waitFor(seconds, TimeUnit.SECONDS);
    process.descendants().forEach(ProcessHandle::destroyForcibly);
    process.destroyForcibly().waitFor();
    String text = Files.readString(said, StandardCharsets.UTF_8);
    assertThat(ended).as("ends within " + seconds + " s\n" + text).isTrue();
    return new Ended(process.exitValue(), text);
  }

  @BeforeEach
  void register() throws Exception {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    Ended registered = run(60, List.of(java, "-jar", JAR.toString(), "kernel", "install"));
    assertThat(registered.code()).as(registered.said()).isZero();
    assertThat(folder.resolve("JUPYTER_DATA_DIR/kernels/leverbook/kernel.json")).exists();
  }

  /** A Python that knows all of these modules. */
  private Optional<String> python(String modules) throws IOException, InterruptedException {
    for (String name : List.of("python3", "/usr/bin/python3")) {
      try {
        if (run(60, List.of(name, "-c", "import " + modules)).code() == 0) {
          return Optional.of(name);
        }
      } catch (IOException e) {
        // There is no such Python; perhaps the next.
        continue;
      }
    }
    return Optional.empty();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          test_suite     | jupyter_client, jupyter_kernel_test
          test_signals   | jupyter_client
          test_notebooks | nbclient, nbconvert, nbformat
          test_console   | jupyter_console, pexpect
          """)
  void jupyters_own_tools_work_with_the_kernel(String test, String modules) throws Exception {
    Optional<String> python = python(modules);
    if (python.isEmpty()) {
      System.out.println(
          "LEFT OUT: " + test + ".py, because no Python here has " + modules + " (see .ci/run).");
    }
    assumeTrue(python.isPresent(), "no Python has " + modules);

    Ended ended =
        run(900, List.of(python.get(), "-W", "ignore", TESTS.resolve(test + ".py").toString()));

    System.out.println(
        test + ".py: " + ended.said().strip().lines().reduce((a, b) -> b).orElse(""));
    assertThat(ended.code()).as(ended.said()).isZero();
    long skipped = ended.said().lines().filter(line -> line.contains("... skipped")).count();
    // The pager and the clearing of outputs, which Leverbook does not offer.
    assertThat(skipped).as(ended.said()).isEqualTo(test.equals("test_suite") ? 2 : 0);
  }
}
