package org.leverbook.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.desk.Desk;
import org.leverbook.display.OutputFolder;
import org.leverbook.language.Leaving;
import org.leverbook.quantity.Refused;
import org.leverbook.script.WordExamples;
import org.leverbook.session.Evaluation;
import org.leverbook.session.Problem;

/** The examples of all words, typed with odd numbers and slips: answered, and nothing is lost. */
class TypedAbuseTest {

  private static final double SHARE = 0.05;
  private static final int PATIENCE_SECONDS = 120;

  private static final List<String> NUMBERS =
      List.of(
          "0",
          "-1",
          "1e308",
          "-1e308",
          "1e-300",
          "0.0 / 0",
          "1 / 0.0",
          "1 / 0",
          "null",
          "1_000_000_000_000L",
          "Double.MAX_VALUE",
          "Double.NaN",
          "Integer.MIN_VALUE",
          "\"7\"",
          "'x'",
          "cm(5)",
          "kg(-3)",
          "deg(400)",
          "kg(1).multiply(0.0 / 0)",
          "cm(1).divide(0)",
          "kg(1e308).multiply(1e308)",
          "HIP",
          "MALE",
          "lifter",
          "pull",
          "x -> x",
          "List.of()",
          "",
          "new int[0]",
          "(String) null");

  @TempDir private Path folder;

  static List<Long> seeds() {
    return Campaign.seeds(SHARE);
  }

  @BeforeEach
  void choose() {
    OutputFolder.choose(folder);
    Leaving.forget();
  }

  @AfterEach
  void putBack() {
    OutputFolder.choose(Path.of(""));
    Leaving.forget();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void every_typed_line_is_answered_in_plain_words_and_no_variable_is_lost(long seed)
      throws Exception {
    Campaign campaign = new Campaign("typed lines");
    Random random = new Random(seed);
    Mangled mangled = new Mangled(random);
    List<String> lines = lines();
    ExecutorService worker = Executors.newCachedThreadPool(Hands::daemon);
    try (Desk desk = Desk.open()) {
      desk.evaluate(
          "var kept = 41; var lifter = person(MALE, kg(85), cm(178));"
              + " var pull = hinge(lifter).holding(barbell(kg(140))).hipHeight(cm(58));"
              + " var start = pull.start();",
          value -> {});
      int size = Campaign.perSeed(SHARE);
      for (int i = 0; i < size; i++) {
        String good = lines.get(random.nextInt(lines.size()));
        String text = random.nextInt(3) == 0 ? mangled.text(good) : odd(good, random);
        Future<String> answer = worker.submit(() -> answer(desk, text));
        String complaint;
        try {
          complaint = answer.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
          campaign.count("answered");
        } catch (TimeoutException e) {
          desk.session().stop();
          campaign.count("stopped");
          complaint = stopped(answer);
        } catch (ExecutionException e) {
          complaint = "thrown: " + Hands.brief(e.getCause());
        }
        if (!complaint.isEmpty()) {
          campaign.complain(complaint, text.substring(0, Math.min(300, text.length())));
        }
      }
      List<Object> values = new ArrayList<>();
      desk.evaluate("kept + 1", value -> values.add(value.object()));
      desk.evaluate("lifter.mass()", value -> values.add(value.text()));
      assertThat(values).as("what was made before").containsExactly(42, "85 kg");
    }
    worker.shutdownNow();
    campaign.tell(seed);
    assertThat(campaign.complaints()).isEmpty();
    try (var files = Files.walk(folder)) {
      assertThat(files.filter(f -> f.getFileName().toString().startsWith(".writing"))).isEmpty();
    }
  }

  private static String stopped(Future<String> answer) throws Exception {
    try {
      answer.get(30, TimeUnit.SECONDS);
      return "";
    } catch (TimeoutException e) {
      return "hangs, and hears no stop";
    }
  }

  /** What is quick, and does not take away what others made. */
  private static List<String> lines() {
    return WordExamples.lines().stream()
        .filter(
            line ->
                !line.matches(
                    ".*(quit\\(|load\\(|again\\(|undo|sensitivity|animation|toFile|stance width).*"))
        .toList();
  }

  /** One argument is another one. */
  private static String odd(String good, Random random) {
    List<int[]> places = new ArrayList<>();
    var number =
        java.util.regex.Pattern.compile("(?<![\\w.])-?\\d+(?:\\.\\d+)?|\"[^\"]*\"").matcher(good);
    while (number.find()) {
      places.add(new int[] {number.start(), number.end()});
    }
    String piece = NUMBERS.get(random.nextInt(NUMBERS.size()));
    if (places.isEmpty()) {
      return good + "." + piece;
    }
    int[] place = places.get(random.nextInt(places.size()));
    return good.substring(0, place[0]) + piece + good.substring(place[1]);
  }

  private static String answer(Desk desk, String text) {
    List<String> complaints = new ArrayList<>();
    Evaluation evaluation =
        desk.evaluate(
            text,
            value -> {
              String complaint = Judge.sentence(value.text() + ".", true);
              // A name the user wrote, or a value that the user asked of Java, is the user's.
              if (complaint.startsWith("no number")) {
                complaints.add(complaint);
              }
              if (value.failure().filter(f -> !(f instanceof Refused)).isPresent()) {
                complaints.add("cannot show itself: " + value.text());
              }
            });
    if (evaluation.problem().isPresent()) {
      Problem problem = evaluation.problem().get();
      String complaint = Judge.sentence(problem.message(), true);
      // What a user's own text says is told as it is.
      boolean quoted =
          text.contains("Exception")
              || complaint.startsWith("null") && text.matches("(?s).*(?:null|nil|\u0000).*");
      if (!complaint.isEmpty() && !quoted) {
        complaints.add(problem.kind() + ": " + complaint);
      }
    }
    return complaints.isEmpty() ? "" : complaints.get(0);
  }
}
