package org.leverbook.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.leverbook.language.Vocabulary;
import org.leverbook.notebook.Notebook;
import tech.tablesaw.api.Table;

/** A process killed (kill -9) at any moment leaves every file whole: the old one or the new one. */
@Timeout(value = 30, unit = TimeUnit.MINUTES)
class KilledWhileSavingTest {

  private static final int KILLS =
      Integer.getInteger(
          "leverbook.kills", Math.max(4, Integer.getInteger("leverbook.abuse", 4000) / 2000));

  private static final long SEED = 20_261_126;

  @TempDir private Path folder;

  @Test
  void every_file_is_whole_after_each_of_many_kills() throws Exception {
    StringBuilder many = new StringBuilder();
    for (int i = 1; i <= 6_500; i++) {
      many.append("[1,").append(i).append(",\"long\"]\n");
    }
    Files.writeString(folder.resolve("long-source"), many);
    Random random = new Random(SEED);
    for (int kill = 0; kill < KILLS; kill++) {
      int begin = 1 + kill * 100_000;
      Process saver = start(begin);
      try {
        awaitFirst(saver, folder.resolve("begun-" + begin));
        LockSupport.parkNanos(random.nextInt(400_000_000));
      } finally {
        // On Linux and macOS this is SIGKILL: nothing of the process runs any more.
        saver.destroyForcibly().waitFor();
      }
      assertAllWhole(begin);
    }
  }

  private Process start(int begin) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            Saver.class.getName(),
            folder.toString(),
            String.valueOf(begin))
        .redirectErrorStream(true)
        .redirectOutput(folder.resolve("said").toFile())
        .start();
  }

  private void awaitFirst(Process saver, Path sign) throws IOException {
    long end = System.nanoTime() + 120_000_000_000L;
    while (!Files.exists(sign)) {
      assertThat(saver.isAlive()).as(Files.readString(folder.resolve("said"))).isTrue();
      assertThat(System.nanoTime()).isLessThan(end);
      LockSupport.parkNanos(5_000_000);
    }
  }

  private void assertAllWhole(int begin) throws IOException {
    List<String> script = Files.readAllLines(folder.resolve("lesson.jsh"));
    assertThat(script).hasSize(Saver.LINES + 1);
    int saved = Integer.parseInt(script.get(0).replace("kept = ", ""));
    assertThat(saved).isGreaterThanOrEqualTo(begin);
    assertThat(script.get(Saver.LINES)).isEqualTo("// end " + saved);
    assertThat(Set.copyOf(script)).hasSize(2);

    List<String> cells = Notebook.read(folder.resolve("lesson.ipynb")).codeCells();
    assertThat(cells).hasSize(Saver.LINES);
    assertThat(Set.copyOf(cells)).hasSize(1);

    assertThat(Files.readString(folder.resolve("page.html")).strip()).endsWith("</html>");
    for (String name : List.of("table.csv", "table.json")) {
      Table table = Vocabulary.table(folder.resolve(name).toString());
      assertThat(table.rowCount()).isEqualTo(Saver.LINES);
      assertThat(table.column("kept").unique().size()).isEqualTo(1);
    }
    assertHistories(saved);
  }

  private void assertHistories(int saved) throws IOException {
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    Log log = new Log(new PrintStream(said, true, StandardCharsets.UTF_8));
    Set<Integer> kept =
        new HistoryFile(folder.resolve("kernel-history"), log)
            .before().stream().map(HistoryFile.Entry::line).collect(Collectors.toSet());
    // The last one may have been cut off; all before it are there.
    assertThat(kept).contains(saved - 1 < firstOf(saved) ? saved : saved - 1);
    assertThat(Files.readAllLines(folder.resolve("kernel-history")))
        .filteredOn(line -> !line.isEmpty() && !line.endsWith("]"))
        .hasSizeLessThan(KILLS + 1);
    List<String> typed = Files.readAllLines(folder.resolve("history"));
    assertThat(typed.stream().anyMatch(l -> l.contains("kept " + firstOf(saved) + " "))).isTrue();
    int cut = new HistoryFile(folder.resolve("long-history"), log).before().size();
    // Whether it was cut already or is cut by reading it: never less.
    assertThat(cut).isEqualTo(5_000);
    assertThat(said.toString(StandardCharsets.UTF_8)).isEmpty();
  }

  private static int firstOf(int saved) {
    return (saved - 1) / 100_000 * 100_000 + 1;
  }
}
