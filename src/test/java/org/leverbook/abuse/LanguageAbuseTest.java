package org.leverbook.abuse;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leverbook.desk.Desk;
import org.leverbook.display.OutputFolder;
import org.leverbook.display.Preferences;
import org.leverbook.language.Leaving;
import org.leverbook.language.Vocabulary;
import org.leverbook.quantity.Refused;
import org.leverbook.session.SeenByUser;

/** Every word, and all that can be asked of what words give, with arguments that no one means. */
class LanguageAbuseTest {

  private static final double SHARE = 0.8;

  /** Far above what the slowest good word takes here (some 5 s); more is a hang. */
  private static final int PATIENCE_SECONDS = 30;

  /** Examples that are left out: they repeat the others, take seconds, or leave. */
  private static final Pattern SLOW =
      Pattern.compile(
          "load\\(|trace|original|save\\(|undo|again|quit|sensitivity|animation|plotDoubt|stance width|beside\\(back");

  /** A call that takes longer than this is tried a few times only in a seed. */
  private static final long SLOW_NANOS = 80_000_000;

  private static final int FEW = 3;

  private static final List<Object> GOOD = new ArrayList<>();

  @TempDir private static Path made;
  @TempDir private Path folder;
  private Preferences before;

  static List<Long> seeds() {
    return Campaign.seeds(SHARE);
  }

  /** What the examples of the words give is what a user has at hand. */
  @BeforeAll
  static void evaluateTheExamples() {
    OutputFolder.choose(made);
    List<String> examples =
        Vocabulary.words()
            .text()
            .lines()
            .filter(line -> line.matches(" {6}\\S.*"))
            .map(String::strip)
            .filter(line -> !SLOW.matcher(line).find())
            .toList();
    try (Desk desk = Desk.open()) {
      for (String example : examples) {
        desk.evaluate(
            example,
            value -> {
              if (value.object() != null) {
                GOOD.add(value.object());
              }
            });
      }
    } finally {
      OutputFolder.choose(Path.of(""));
    }
    assertThat(GOOD).hasSizeGreaterThan(100);
  }

  @BeforeEach
  void hold() {
    before = Preferences.current();
    OutputFolder.choose(folder);
  }

  @AfterEach
  void putBack() {
    OutputFolder.choose(Path.of(""));
    Leaving.forget();
    Preferences.choose(before);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void every_call_gives_a_sound_value_or_a_sentence(long seed) throws Exception {
    Campaign campaign = new Campaign("calls of the language");
    Random random = new Random(seed);
    Pool pool = new Pool(random);
    GOOD.forEach(pool::keep);
    Hostile hostile = new Hostile(random, pool);
    ExecutorService worker = worker();
    Map<Method, Integer> slow = new HashMap<>();
    int size = Campaign.perSeed(SHARE);
    for (int i = 0; i < size; i++) {
      pool.nextCall();
      Method method = pool.method();
      if (slow.getOrDefault(method, 0) >= FEW) {
        i--;
        continue;
      }
      long began = System.nanoTime();
      Object receiver = pool.receiver(method);
      Object[] arguments = hostile.arguments(method);
      boolean pictures = i % 10 == 0;
      String call = method.getDeclaringClass().getSimpleName() + "." + method.getName();
      Future<String> outcome =
          worker.submit(() -> outcome(method, receiver, arguments, hostile, pool, pictures));
      String told;
      try {
        told = outcome.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
      } catch (TimeoutException e) {
        worker.shutdownNow();
        if (worker.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
          campaign.count("long, but stopped when asked");
        } else {
          campaign.complain("hangs: " + call, Call.text(receiver, method, arguments));
          campaign.count("hung");
        }
        worker = worker();
        slow.merge(method, FEW, Integer::sum);
        continue;
      } catch (ExecutionException e) {
        told = "!the check failed: " + e.getCause();
      }
      if (System.nanoTime() - began > SLOW_NANOS) {
        slow.merge(method, 1, Integer::sum);
      }
      if (told.startsWith("!")) {
        campaign.complain(call + ": " + told.substring(1), Call.text(receiver, method, arguments));
        campaign.count("to mend");
      } else {
        campaign.count(told);
      }
    }
    worker.shutdownNow();
    campaign.tell(seed);
    slow.forEach(
        (m, n) ->
            System.err.println(
                "slow " + m.getDeclaringClass().getSimpleName() + "." + m.getName() + " " + n));
    if (Campaign.isAskedFor()) {
      assertThat(campaign.complaints()).isEmpty();
    } else {
      // Which calls come up depends on how fast a machine is: an ordinary build tells, as a
      // campaign
      // would fail, so that nobody's other work waits for what a chance call found.
      campaign.complaints().forEach(each -> System.err.println("to mend: " + each));
    }
    assertThat(drafts()).isEmpty();
  }

  private static ExecutorService worker() {
    return Executors.newSingleThreadExecutor(
        task -> {
          Thread thread = new Thread(null, task, "abuse", 1 << 20);
          thread.setDaemon(true);
          return thread;
        });
  }

  private List<Path> drafts() throws Exception {
    try (var files = Files.walk(folder)) {
      return files.filter(f -> f.getFileName().toString().startsWith(".writing")).toList();
    }
  }

  private static String outcome(
      Method method,
      Object receiver,
      Object[] arguments,
      Hostile hostile,
      Pool pool,
      boolean pictures) {
    Object result;
    try {
      method.setAccessible(true);
      result = method.invoke(receiver, arguments);
    } catch (InvocationTargetException e) {
      return thrown(e.getCause(), hostile);
    } catch (IllegalAccessException e) {
      return "!not to be called: " + e.getMessage();
    }
    if (method.getReturnType() == void.class) {
      return "done";
    }
    String complaint;
    try {
      complaint = Judge.value(result, pictures);
    } catch (Refused e) {
      complaint = Judge.sentence(e.getMessage(), hostile.odd());
    } catch (Hostile.Boom e) {
      complaint = "";
    } catch (RuntimeException | Error e) {
      complaint = "cannot show itself: " + brief(e);
    }
    if (complaint.isEmpty() && result != null) {
      pool.came(result);
    }
    return complaint.isEmpty() ? "value" : "!" + complaint;
  }

  private static String thrown(Throwable thrown, Hostile hostile) {
    if (thrown instanceof Refused) {
      String complaint = Judge.sentence(thrown.getMessage(), hostile.odd());
      return complaint.isEmpty() ? "refused" : "!" + complaint;
    }
    if (thrown instanceof Hostile.Boom && hostile.thrown()) {
      return "the user's own exception";
    }
    boolean plain =
        thrown instanceof NullPointerException && hostile.missing()
            || thrown instanceof IndexOutOfBoundsException
            || thrown instanceof IllegalArgumentException
                && thrown.getMessage().startsWith("No enum constant");
    String seen = SeenByUser.words(thrown);
    String complaint = Judge.sentence(seen, true);
    return plain && complaint.isEmpty()
        ? "Java's own, in words"
        : "!" + brief(thrown) + " | " + seen;
  }

  private static String brief(Throwable thrown) {
    String where =
        Arrays.stream(thrown.getStackTrace())
            .filter(
                f ->
                    f.getClassName().startsWith("org.leverbook")
                        && !f.getClassName().contains("abuse"))
            .limit(4)
            .map(f -> f.getFileName() + ":" + f.getLineNumber())
            .collect(Collectors.joining(" < "));
    return thrown + " at " + where;
  }
}
