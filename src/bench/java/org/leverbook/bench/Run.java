package org.leverbook.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.results.format.ResultFormatType;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;

/** Runs all benchmarks and writes their figures and ratios as JSON. */
public final class Run {

  private Run() {}

  /**
   * Writes {@code all.json} (every figure) and {@code ratios.json} (each against its baseline).
   *
   * @param arguments the folder to write to
   * @throws RunnerException if a benchmark fails
   * @throws IOException if the disk says no
   */
  public static void main(String[] arguments) throws RunnerException, IOException {
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include("org\\.leverbook\\..*Bench")
                    .forks(1)
                    .warmupIterations(4)
                    .warmupTime(TimeValue.milliseconds(1500))
                    .measurementIterations(5)
                    .measurementTime(TimeValue.milliseconds(1500))
                    .addProfiler(GCProfiler.class)
                    .jvmArgsAppend("-Xms1g", "-Xmx2g")
                    .resultFormat(ResultFormatType.JSON)
                    .result(folder.resolve("all.json").toString())
                    .shouldFailOnError(true)
                    .build())
            .run();
    Map<String, Double> scores = new TreeMap<>();
    ObjectMapper json = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    ObjectNode root = json.createObjectNode();
    root.put("java", System.getProperty("java.version"));
    root.put("processors", Runtime.getRuntime().availableProcessors());
    for (RunResult result : results) {
      String name = result.getParams().getBenchmark();
      name = name.substring(name.lastIndexOf('.', name.lastIndexOf('.') - 1) + 1);
      boolean each = result.getParams().getMode() == Mode.SampleTime;
      double score =
          each
              ? result.getPrimaryResult().getStatistics().getPercentile(50)
              : result.getPrimaryResult().getScore();
      scores.put(name, score);
      double bytes = result.getSecondaryResults().get("gc.alloc.rate.norm").getScore();
      root.put(name + (each ? " (ns, median)" : " (ns)"), score);
      root.put(name + " (bytes)", bytes);
    }
    ratio(
        root,
        "one position, times faster",
        scores,
        "PositionBench.library",
        "PositionBench.leverbook");
    ratio(
        root,
        "support reactions, times faster",
        scores,
        "SupportsBench.library",
        "SupportsBench.leverbook");
    ratio(
        root,
        "a pose of the whole body over a plane pose of three angles (median)",
        scores,
        "PoseBench.bodyFromMiddle",
        "PoseBench.planeByLibrary");
    ratio(
        root,
        "a pose of the whole body from a neighbour over a plane pose of three angles (median)",
        scores,
        "PoseBench.bodyAgain",
        "PoseBench.planeByLibrary");
    ratio(
        root,
        "muscle sharing, times faster",
        scores,
        "SharingBench.library",
        "SharingBench.leverbook");
    ratio(
        root,
        "a sweep of a thousand positions, times a plain loop's rate",
        scores,
        "StudyBench.loop",
        "StudyBench.sweep");
    ratio(
        root,
        "100,000 rows as CSV, times the table library's rate",
        scores,
        "StudyBench.csvByTablesaw",
        "StudyBench.csvByLeverbook");
    GridRate.measure(root);
    EffortRate.measure(root);
    Files.writeString(folder.resolve("ratios.json"), json.writeValueAsString(root) + "\n");
    System.out.println(json.writeValueAsString(root));
  }

  private static void ratio(
      ObjectNode root, String name, Map<String, Double> scores, String baseline, String ours) {
    double ratio = scores.get(baseline) / scores.get(ours);
    root.put(name, Double.parseDouble(String.format(Locale.ROOT, "%.2f", ratio)));
  }
}
