package org.leverbook.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Preferences;
import org.leverbook.language.Vocabulary;
import org.leverbook.notebook.CodeShown;
import org.leverbook.notebook.Notebook;
import org.leverbook.notebook.Page;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.script.ReadByScript;
import tech.tablesaw.api.Table;

/** Every file that can be read, mangled: a sound value or a sentence, and nothing half-written. */
class ReaderAbuseTest {

  private static final double SHARE = 0.12;
  private static final int PATIENCE_SECONDS = 30;

  @TempDir private Path folder;
  private final Person lifter = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  static List<Long> seeds() {
    return Campaign.seeds(SHARE);
  }

  /** A kind of file: a good one, and who reads it. */
  private record Reader(String name, byte[] good, Reading reading) {}

  /** Reads a file as a user would. */
  private interface Reading {
    Object read(Path file) throws Exception;
  }

  @BeforeEach
  void choose() {
    OutputFolder.choose(folder);
  }

  @AfterEach
  void putBack() {
    OutputFolder.choose(Path.of(""));
  }

  private List<Reader> readers() throws IOException {
    List<Reader> readers = new ArrayList<>();
    byte[] club = Files.readAllBytes(Path.of("notebooks/club.csv"));
    readers.add(new Reader("club.csv", club, f -> Vocabulary.lifters(f.toString())));
    byte[] seen = Files.readAllBytes(Path.of("notebooks/pictures/squat-landmarks.csv"));
    readers.add(
        new Reader(
            "landmarks.csv", Arrays.copyOf(seen, 3000), f -> Vocabulary.landmarks(f.toString())));
    readers.add(
        new Reader(
            "landmarks.csv",
            Arrays.copyOf(seen, 3000),
            f -> Vocabulary.landmarks(f.toString()).fit(lifter)));
    byte[] still = Files.readAllBytes(Path.of("notebooks/pictures/still.png"));
    readers.add(new Reader("still.png", still, f -> Vocabulary.photo(f.toString())));
    var table =
        Vocabulary.sweep(
                "hip height",
                Units.cm(55),
                Units.cm(65),
                3,
                h -> Vocabulary.hinge(lifter).hipHeight(h).start())
            .table();
    for (String name : List.of("table.csv", "table.json")) {
      Vocabulary.save(table, name);
      byte[] bytes = Files.readAllBytes(folder.resolve(name));
      readers.add(new Reader(name, bytes, f -> Vocabulary.table(f.toString())));
    }
    byte[] lesson = Files.readAllBytes(Path.of("notebooks/lesson-01-hinge-back-and-lats.ipynb"));
    byte[] small =
        ("{\"cells\":[{\"cell_type\":\"code\",\"execution_count\":1,\"id\":\"a1\",\"metadata\":{},"
                + "\"outputs\":[{\"data\":{\"text/plain\":[\"4\"],\"image/png\":\"AAAA\",\"text/html\":\"<b>4</b>\"},"
                + "\"execution_count\":1,\"metadata\":{},\"output_type\":\"execute_result\"},{\"name\":\"stdout\","
                + "\"output_type\":\"stream\",\"text\":[\"x\\n\"]},{\"ename\":\"E\",\"evalue\":\"v\",\"output_type\":"
                + "\"error\",\"traceback\":[\"t\"]}],\"source\":[\"2+2\"]},{\"cell_type\":\"markdown\",\"id\":\"b\","
                + "\"metadata\":{},\"source\":\"# Title\\n$x^2$ **b**\\n\\n| a | b |\\n|--|--|\\n| 1 | 2 |\"}],"
                + "\"metadata\":{\"kernelspec\":{\"display_name\":\"L\",\"language\":\"java\",\"name\":\"l\"}},"
                + "\"nbformat\":4,\"nbformat_minor\":5}")
            .getBytes(java.nio.charset.StandardCharsets.UTF_8);
    readers.add(new Reader("small.ipynb", small, ReaderAbuseTest::notebook));
    readers.add(new Reader("small.ipynb", small, ReaderAbuseTest::notebook));
    readers.add(new Reader("lesson.ipynb", lesson, f -> Notebook.read(f).text()));
    byte[] script = Files.readAllBytes(Path.of("notebooks/hinge.jsh"));
    readers.add(new Reader("hinge.jsh", script, f -> ReadByScript.cells(f)));
    readers.add(
        new Reader(
            "preferences",
            Preferences.USUAL.lines().getBytes(java.nio.charset.StandardCharsets.UTF_8),
            f ->
                Preferences.ofLines(
                    Files.readString(f, java.nio.charset.StandardCharsets.ISO_8859_1))));
    return readers;
  }

  /** What the file itself says in words is the file's. */
  private static String sound(Object value, byte[] bytes) {
    if (value instanceof Table table) {
      for (var column : table.numericColumns()) {
        for (double number : column.asDoubleArray()) {
          if (Double.isInfinite(number)) {
            return "a column that holds " + number;
          }
        }
      }
    }
    String text = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
    return text.matches("(?s).*\\b(?:null|NaN|Infinity)\\b.*") ? "" : Judge.value(value, false);
  }

  /** Read, shown as a page in both forms, and written again. */
  private static Object notebook(Path file) {
    Notebook notebook = Notebook.read(file);
    new Page(notebook, "in", CodeShown.FOLDED, file.getParent()).html();
    new Page(notebook, "in", CodeShown.FOLDED, file.getParent()).markdown();
    return notebook.text();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void every_mangled_file_gives_a_sound_value_or_a_sentence(long seed) throws Exception {
    Campaign campaign = new Campaign("mangled files");
    Random random = new Random(seed);
    Mangled mangled = new Mangled(random);
    List<Reader> readers = readers();
    ExecutorService worker = Executors.newCachedThreadPool(Hands::daemon);
    int size = Campaign.perSeed(SHARE);
    for (int i = 0; i < size; i++) {
      Reader reader = readers.get(random.nextInt(readers.size()));
      byte[] bytes = mangled.bytes(reader.good());
      Path file = Files.write(folder.resolve("in-" + reader.name()), bytes);
      Callable<Object> read = () -> reader.reading().read(file);
      String complaint;
      try {
        Object value = worker.submit(read).get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        boolean ours = !(value instanceof String);
        complaint = ours ? sound(value, bytes) : "";
        campaign.count(reader.name() + " read");
      } catch (TimeoutException e) {
        complaint = "hangs";
      } catch (ExecutionException e) {
        campaign.count(reader.name() + " refused");
        complaint =
            e.getCause() instanceof Refused refused
                ? Judge.sentence(refused.getMessage(), true)
                : Hands.brief(e.getCause());
      }
      if (!complaint.isEmpty()) {
        String shown = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
        campaign.complain(
            reader.name() + ": " + complaint, shown.substring(0, Math.min(200, shown.length())));
      }
      if (!Arrays.equals(Files.readAllBytes(file), bytes)) {
        campaign.complain(reader.name() + ": the file was changed by reading it", "");
      }
    }
    worker.shutdownNow();
    campaign.tell(seed);
    assertThat(campaign.complaints()).isEmpty();
  }
}
