package org.leverbook.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.leverbook.body.Links;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Population;
import org.leverbook.body.Sex;
import org.leverbook.solve.Answer;
import org.leverbook.solve.PoseSolver;
import org.leverbook.solve.Statements;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * The start of every lift of the library by people drawn from the survey: the whole body in space,
 * within the ranges of its joints. The baseline is a general library's least squares (no ranges)
 * for the lesson's smallest pose alone: shank, thigh and trunk in a plane, three conditions. Each
 * call is timed by itself, so that the median over lifts and people can be told.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class PoseBench {

  private static final int PEOPLE = 8;

  private record Case(Statements said, Optional<Answer> middle, Answer found) {}

  private final List<Case> cases = new ArrayList<>();
  private final List<LeastSquaresProblem> planes = new ArrayList<>();
  private final LevenbergMarquardtOptimizer library = new LevenbergMarquardtOptimizer();
  private int next;
  private Case one;
  private PoseSolver solver;

  /** Solves each once, to leave out what nobody of that build can do. */
  @Setup
  public void setUp() {
    for (int i = 0; i < PEOPLE; i++) {
      Person person = Population.person(i % 2 == 0 ? Sex.MALE : Sex.FEMALE, 7, i);
      planes.add(plane(person.body().links()));
      for (Lift<?> lift : Library.of(person)) {
        Posture posture = new Posture(lift.setup(), 0, lift.bothSidesAlike(), List.of());
        lift.say(posture);
        for (Map.Entry<Vector3D, Double> e : posture.balance().entrySet()) {
          posture.statements().balanced(e.getKey(), e.getValue(), posture.carried(), List.of());
        }
        PoseSolver solver = new PoseSolver(posture.statements());
        Answer found = solver.solve();
        if (found.met()) {
          cases.add(new Case(posture.statements(), Typical.of(lift, false), found));
        }
      }
    }
  }

  /** Hips 0.6 m up, the bar 0.2 m up and 5 cm ahead of the ankles, arms hanging. */
  private static LeastSquaresProblem plane(Links links) {
    double[] lengths = {
      links.lengthOf(Part.SHANK), links.lengthOf(Part.THIGH), 0.5 * links.standingHipHeight()
    };
    double shoulder = 0.2 + links.lengthOf(Part.UPPER_ARM) + links.lengthOf(Part.FOREARM);
    double ankle = 0.08;
    return new LeastSquaresBuilder()
        .start(new double[] {0.3, -0.9, 0.9})
        .target(new double[] {0.6 - ankle, 0.05, shoulder - ankle})
        .model(point -> plane(point, lengths))
        .lazyEvaluation(false)
        .maxEvaluations(200)
        .maxIterations(200)
        .build();
  }

  private static Pair<RealVector, RealMatrix> plane(RealVector lean, double[] lengths) {
    double[] value = new double[3];
    double[][] slopes = new double[3][3];
    for (int i = 0; i < 3; i++) {
      double s = lengths[i] * Math.sin(lean.getEntry(i));
      double c = lengths[i] * Math.cos(lean.getEntry(i));
      if (i < 2) {
        value[0] += c;
        slopes[0][i] = -s;
      }
      value[1] += s;
      slopes[1][i] = c;
      value[2] += c;
      slopes[2][i] = -s;
    }
    return new Pair<>(new ArrayRealVector(value), new Array2DRowRealMatrix(slopes));
  }

  /** A solver just built, as a lift builds its own: its arrays are where the processor is. */
  @Setup(Level.Invocation)
  public void takeNext() {
    next = (next + 1) % cases.size();
    one = cases.get(next);
    solver = new PoseSolver(one.said);
  }

  /**
   * Three angles in a plane, by the general library.
   *
   * @return its result
   */
  @Benchmark
  public Object planeByLibrary() {
    return library.optimize(planes.get(next % planes.size()));
  }

  /**
   * The whole body, from a person of middle size, as lifts do.
   *
   * @return the answer
   */
  @Benchmark
  public Object bodyFromMiddle() {
    return one.middle.map(solver::solveFrom).orElseGet(solver::solve);
  }

  /**
   * The whole body, from the usual posture.
   *
   * @return the answer
   */
  @Benchmark
  public Object bodyFromNothing() {
    return solver.solve();
  }

  /**
   * The whole body, its own answer again: what a neighbour costs at least.
   *
   * @return the answer
   */
  @Benchmark
  public Object bodyAgain() {
    return solver.solveFrom(one.found);
  }
}
