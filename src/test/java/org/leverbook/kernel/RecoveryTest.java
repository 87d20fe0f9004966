package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leverbook.kernel.Client.Ran;
import org.leverbook.notebook.Notebook;

/**
 * Real processes with little memory, in which everything goes wrong that a user's code can do: the
 * variables stay, the files stay, and the process ends when it is asked to.
 */
@Timeout(value = 10, unit = TimeUnit.MINUTES)
class RecoveryTest {

  private static final String ENDLESS = "while (true) { }";
  private static final String FULL = "There is not enough memory for this";

  @TempDir private Path folder;
  private final List<Process> started = new ArrayList<>();

  @AfterEach
  void endAll() {
    started.forEach(Process::destroyForcibly);
  }

  @ParameterizedTest
  @ValueSource(strings = {"-XX:+UseSerialGC", "-XX:+UseG1GC"})
  void a_kernel_outlives_whatever_its_cells_do(String collector) throws Exception {
    Connection connection = Open.connection(Open.KEY);
    Path file =
        Files.writeString(
            folder.resolve("connection.json"), KernelProcess.file(connection).toString());
    Process process = KernelProcess.start(folder, List.of("-Xmx256m", collector), file, Map.of());
    started.add(process);
    try (Client client = new Client(connection)) {
      ok(client, "int kept = 41; var many = new ArrayList<Object>();");
      ok(client, "save(\"" + folder.resolve("lesson.jsh") + "\");");
      ok(client, "save(\"" + folder.resolve("lesson.ipynb") + "\");");

      assertThat(stopped(client, ENDLESS)).isEqualTo("Stopped");
      assertThat(stopped(client, "while (true) System.out.println(kept);")).isEqualTo("Stopped");
      fails(client, "int deep(int n) { return deep(n + 1) + 1; } deep(0)", "A method calls itself");
      fails(client, "System.exit(0);", "This would end Leverbook itself");
      fails(client, "Runtime.getRuntime().halt(0);", "This would end Leverbook itself");

      garbageIsNoReasonToStop(client);
      fails(client, "var huge = new double[100_000_000];", FULL);
      fails(client, "while (true) many.add(new double[10]);", FULL);
      assertThat(client.run("kept + 1").result()).isEqualTo("42");
      assertThat(client.run("many.size() > 1000").result()).isEqualTo("true");
      String told =
          fails(client, "while (true) many.add(new double[10]);", FULL).path("evalue").asText();
      assertThat(told).contains("many = null lets go of them", "-Xmx");
      ok(client, "many = null;");
      fails(
          client,
          "var more = new ArrayList<Object>(); while (true) more.add(\"\" + Math.random());",
          FULL);
      ok(client, "more = null;");
      fails(
          client,
          "{ var big = new ArrayList<Object>(); while (true) big.add(new int[500_000]); }",
          FULL);
      // What the line that failed had made is free again.
      ok(client, "var some = new double[5_000_000]; some = null;");
      ok(client, "for (int i = 0; i < 2; i++) new Thread(() -> { " + ENDLESS + " }).start();");
      assertThat(client.run("kept + 1").result()).isEqualTo("42");

      client.reply("control", client.ask("control", "shutdown_request", Client.object()));
      assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
      assertThat(process.exitValue()).isZero();
    }
    assertThat(Files.readString(folder.resolve("lesson.jsh"))).contains("int kept = 41");
    assertThat(Notebook.read(folder.resolve("lesson.ipynb")).codeCells()).isNotEmpty();
    assertThat(Files.readAllLines(folder.resolve("home").resolve("notebook-history")))
        .anyMatch(line -> line.contains("int kept = 41"))
        .anyMatch(line -> line.contains("some = null"))
        .allMatch(line -> line.isEmpty() || line.endsWith("]"));
    assertThat(KernelProcess.said(folder)).isEmpty();
  }

  @Test
  void a_piped_shell_outlives_whatever_its_lines_do() throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xmx256m", "-XX:+UseSerialGC", "-cp"));
    command.addAll(List.of(System.getProperty("java.class.path"), "org.leverbook.Main"));
    List<String> typed =
        List.of(
            "int kept = 41; var many = new ArrayList<Object>();",
            "save(\"" + folder.resolve("lesson.jsh") + "\");",
            "int deep(int n) { return deep(n + 1) + 1; }",
            "deep(0)",
            "System.exit(0)",
            "Runtime.getRuntime().halt(0)",
            "new double[100_000_000].length",
            "while (true) many.add(new double[10]);",
            "\"many \" + (many.size() > 1000)",
            "many = null;",
            "java.util.stream.Stream.generate(() -> \"\" + Math.random()).toList()",
            "for (int i = 0; i < 2; i++) new Thread(() -> { " + ENDLESS + " }).start();",
            "\"kept \" + (kept + 1)");
    Path said = folder.resolve("said");
    Process process =
        new ProcessBuilder(command)
            .redirectInput(Files.write(folder.resolve("typed"), typed).toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    started.add(process);
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();

    List<String> lines = Files.readAllLines(said);
    String text = String.join("\n", lines);
    assertThat(lines).as(text).contains("many true", "kept 42");
    assertThat(text)
        .contains("A method calls itself without end", "many = null lets go of them")
        .doesNotContain("\tat ", "Exception in");
    assertThat(lines).as(text).filteredOn(line -> line.contains(FULL)).hasSize(3);
    assertThat(lines).as(text).filteredOn(line -> line.contains("would end")).hasSize(2);
    // Inputs that failed make code 1, after the rest was read.
    assertThat(process.exitValue()).isEqualTo(1);
    assertThat(Files.readString(folder.resolve("lesson.jsh"))).contains("int kept = 41");
  }

  /** Old enough to be taken for kept, and let go all the time: three times what there is. */
  private static void garbageIsNoReasonToStop(Client client) {
    ok(
        client,
        "{ var ring = new double[200_000][]; for (int i = 0; i < 8_000_000; i++)"
            + " ring[i % ring.length] = new double[10]; }");
  }

  private static void ok(Client client, String code) {
    Ran ran = client.run(code);
    assertThat(ran.status()).as(code + "\n" + ran.reply()).isEqualTo("ok");
  }

  private static JsonNode fails(Client client, String code, String beginning) {
    Ran ran = client.run(code);
    assertThat(ran.reply().path("evalue").asText()).as(code).startsWith(beginning);
    return ran.reply();
  }

  private static String stopped(Client client, String code) {
    String busy = client.execute("System.out.println(\"on\"); " + code);
    client.next(each -> each.answers(busy) && each.type().equals("stream"));
    client.reply("control", client.ask("control", "interrupt_request", Client.object()));
    return client.done(busy).reply().path("ename").asText();
  }
}
