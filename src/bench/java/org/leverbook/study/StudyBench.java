package org.leverbook.study;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.lift.Hinge;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * Many positions, and their tables in files: a thousand bars in one posture, by a plain loop (the
 * baseline) and by a sweep on all processors; a table of 100,000 rows as CSV, by Tablesaw's own
 * writer (the baseline) and by ours.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class StudyBench {

  private static final int POSITIONS = 1000;
  private static final int ROWS = 100_000;

  private Position bent;
  private Table table;
  private Path folder;

  /** Makes the posture and the table; both sides get the same. */
  @Setup
  public void setUp() throws IOException {
    bent =
        Hinge.of(Person.of(Sex.MALE, Units.kg(85), Units.cm(178)))
            .holding(Barbell.of(Units.kg(60)))
            .hipHeight(Units.cm(60))
            .start()
            .without("bar");
    Random random = new Random(5);
    table = Table.create("long");
    for (String name : new String[] {"hip", "knee", "ankle", "L5/S1"}) {
      double[] moments = random.doubles(ROWS, -300, 300).toArray();
      table.addColumns(DoubleColumn.create(name + " moment (N·m)", moments));
    }
    String[] reasons =
        IntStream.range(0, ROWS)
            .mapToObj(i -> i % 9 == 0 ? "Tips forward, by " + i + " mm." : "")
            .toArray(String[]::new);
    table.addColumns(StringColumn.create("reason", reasons));
    folder = Files.createTempDirectory("bench");
  }

  /** Takes the files away. */
  @TearDown
  public void tearDown() throws IOException {
    for (String name : new String[] {"tablesaw.csv", "leverbook.csv"}) {
      Files.deleteIfExists(folder.resolve(name));
    }
    Files.delete(folder);
  }

  private Position with(double kilograms) {
    return bent.with(Barbell.of(Units.kg(kilograms)));
  }

  /**
   * A plain loop over the positions.
   *
   * @return the sum of the hip's moments
   */
  @Benchmark
  public double loop() {
    double sum = 0;
    for (int i = 0; i < POSITIONS; i++) {
      Position position = with(25 + 0.1 * i);
      sum += position.held() ? position.moment(JointId.HIP).signed() : 0;
    }
    return sum;
  }

  /**
   * A sweep over the same positions.
   *
   * @return the sum of the hip's moments
   */
  @Benchmark
  public double sweep() {
    return Sweep.over(
            "bar mass",
            Units.kg(25),
            Units.kg(25 + 0.1 * (POSITIONS - 1)),
            POSITIONS,
            mass -> bent.with(Barbell.of(mass)))
        .rows()
        .stream()
        .mapToDouble(r -> r.held() ? r.position().moment(JointId.HIP).signed() : 0)
        .sum();
  }

  /**
   * The table by Tablesaw's writer.
   *
   * @return the file
   */
  @Benchmark
  public Path csvByTablesaw() {
    Path file = folder.resolve("tablesaw.csv");
    table.write().csv(file.toString());
    return file;
  }

  /**
   * The table by ours, which also keeps types and caution.
   *
   * @return what was saved
   */
  @Benchmark
  public Object csvByLeverbook() {
    return TableFiles.save(table, folder.resolve("leverbook.csv").toString());
  }

  /**
   * The same file read back.
   *
   * @return the table
   */
  @Benchmark
  public Table csvReadBack() {
    Path file = folder.resolve("leverbook.csv");
    if (!Files.exists(file)) {
      TableFiles.save(table, file.toString());
    }
    return TableFiles.read(file.toString());
  }
}
