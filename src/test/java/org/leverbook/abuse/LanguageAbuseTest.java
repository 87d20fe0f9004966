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
import java.util.Set;
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
import org.leverbook.quantity.Refused;
import org.leverbook.script.WordExamples;
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

  /**
   * Calls that take long: each is tried a few times only in a seed. A list, not a clock, so that a
   * seed tries the same calls on every machine.
   */
  private static final Set<String> LONG =
      Set.of(
          "Cells.plot",
          "ClaimCase.picture",
          "ClaimWords.settings",
          "CompareWords.compare",
          "Comparison.verdicts",
          "DeskWords.words",
          "Doubt.band",
          "Doubt.sensitivity",
          "DoubtWords.sensitivity",
          "FigureWords.histogram",
          "FigureWords.plotArms",
          "FigureWords.plotDoubt",
          "FigureWords.plotEffort",
          "FigureWords.plotForces",
          "FigureWords.plotMoments",
          "FigureWords.plotOf",
          "FigureWords.plotParts",
          "FigureWords.plotSpine",
          "FigureWords.plotStrength",
          "Help.png",
          "Library.picture",
          "Library.save",
          "Library.table",
          "Lift.largest",
          "Lift.largestAtEffort",
          "Lift.largestWithStraps",
          "Lift.mainLoad",
          "Lift.save",
          "Lift.verdict",
          "MotionWords.animation",
          "MovementWords.sweep",
          "MovingPicture.pdfFile",
          "MovingPicture.pngFile",
          "MovingPicture.save",
          "MuscleWords.muscles",
          "Optimum.atLeast",
          "Optimum.called",
          "Optimum.where",
          "OptimumWords.highest",
          "PageWords.below",
          "PageWords.strip",
          "Picture.lettersInside",
          "Picture.pdfFile",
          "Picture.png",
          "Picture.save",
          "Picture.svg",
          "PicturePage.below",
          "PicturePage.pngFile",
          "PicturePage.strip",
          "Plot.pdfFile",
          "Plot.pngFile",
          "Plot.svgDocument",
          "PositionDrawing.armsTo",
          "PositionDrawing.pngFile",
          "PositionDrawing.svgDocument",
          "PositionDrawing.text",
          "PositionDrawing.withMuscles",
          "PositionDrawing.withReactions",
          "PositionDrawing.withSpine",
          "SeriesWords.sweep",
          "SeriesWords.through",
          "Shown.png",
          "Shown.svg",
          "Sweep.animation",
          "Verdict.of",
          "ViewQuestions.drawing",
          "Vocabulary.help",
          "WayComparison.atEqualEffort",
          "WayComparison.tracks");

  private static final int FEW = 3;

  /** The pelvis hangs on nothing. */
  private static final Set<String> MAY_BE_ABSENT = Set.of("Segment.joint");

  private static final List<Object> GOOD = new ArrayList<>();

  @TempDir private static Path made;
  @TempDir private Path folder;
  private Preferences before;
  private volatile Thread hands;

  static List<Long> seeds() {
    return Campaign.seeds(SHARE);
  }

  /** What the examples of the words give is what a user has at hand. */
  @BeforeAll
  static void evaluateTheExamples() {
    OutputFolder.choose(made);
    List<String> examples =
        WordExamples.lines().stream().filter(line -> !SLOW.matcher(line).find()).toList();
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
    Map<String, Integer> tried = new HashMap<>();
    int size = Campaign.perSeed(SHARE);
    for (int i = 0; i < size; i++) {
      pool.nextCall();
      Method method = pool.method();
      String call = name(method);
      if (LONG.contains(call) && tried.merge(call, 1, Integer::sum) > FEW) {
        i--;
        continue;
      }
      Object receiver = pool.receiver(method);
      Object[] arguments = hostile.arguments(method);
      boolean pictures = i % 10 == 0;
      Future<String> outcome =
          worker.submit(() -> outcome(method, receiver, arguments, hostile, pool, pictures));
      String told;
      try {
        told = outcome.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
      } catch (TimeoutException e) {
        String where = places(hands.getStackTrace());
        worker.shutdownNow();
        if (worker.awaitTermination(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
          campaign.count("long, but stopped when asked");
        } else {
          campaign.complain(
              "hangs: " + call + " at " + where, Call.text(receiver, method, arguments));
          campaign.count("hung");
        }
        worker = worker();
        continue;
      } catch (ExecutionException e) {
        told = "!the check failed: " + e.getCause();
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
    assertThat(campaign.complaints()).isEmpty();
    assertThat(drafts()).isEmpty();
  }

  private static String name(Method method) {
    return method.getDeclaringClass().getSimpleName() + "." + method.getName();
  }

  private ExecutorService worker() {
    return Executors.newSingleThreadExecutor(
        task -> {
          hands = new Thread(null, task, "abuse", 1 << 20);
          hands.setDaemon(true);
          return hands;
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
    if (method.getReturnType() == void.class
        || result == null && MAY_BE_ABSENT.contains(name(method))) {
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
    return thrown + " at " + places(thrown.getStackTrace());
  }

  private static String places(StackTraceElement[] stack) {
    return Arrays.stream(stack)
        .filter(f -> f.getClassName().startsWith("org.leverbook"))
        .filter(f -> !f.getClassName().contains("abuse"))
        .limit(4)
        .map(f -> f.getFileName() + ":" + f.getLineNumber())
        .collect(Collectors.joining(" < "));
  }
}
