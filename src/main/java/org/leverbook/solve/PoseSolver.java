package org.leverbook.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Pose;

/**
 * Finds the pose that meets every condition, comes nearest to the wishes and stays within the
 * ranges of the joints; or the pose that misses least, with what misses and by how much.
 *
 * <p>From the usual posture the conditions are first felt weakly, then ever more strongly, so that
 * the body walks towards them instead of jumping; then what they still miss is taken away by the
 * method of multipliers. Where that does not lead there, other starts are tried, always the same
 * ones. A neighbour's answer as start keeps a sweep smooth and saves most of the work.
 *
 * <p>Not for use by two threads at once.
 */
public final class PoseSolver {

  /** A condition that misses by less counts as met: metres and radians. */
  public static final double MET = 1e-7;

  private static final double[] GROWING = {1, 30, 1e3, 1e5};
  private static final double STRONG = 1e4;

  /** Where they cannot be met, wishes must not add to what misses. */
  private static final double TELLING = 1e5;

  /** Strengths to come to rest with, the second where the first does not lead there. */
  private static final double[] SETTLING = {STRONG, STRONG / 10};

  /** The last step on the way there, and at the end, radians and metres. */
  private static final double ROUGHLY = 1e-2;

  private static final double FINELY = 1e-7;

  /** Steps this small: what the conditions still miss may go into their shifts. */
  private static final double NEARLY_STILL = 1e-3;

  private static final double DAMPED = 1e-3;
  private static final double BARELY_DAMPED = 1e-6;
  private static final double NEARLY_MET = 0.02;
  private static final int MOST_STEPS = 60;
  private static final int SHIFTS = 12;
  private static final int STARTS = 12;

  /** So many strange starts that lead there are compared, so that no contorted one is taken. */
  private static final int COMPARED = 3;

  /** How far other starts stray from the usual posture, radians. */
  private static final double STRAYING = 0.35;

  /** A slope below this does not stop anything. */
  private static final double PRESSING = 1e-4;

  /** A miss by less than this share of the largest is left out, and so is what stops less. */
  private static final double WORTH_TELLING = 0.05;

  private static final int MOST_MISSES = 3;
  private static final int MOST_STOPS = 4;

  private final Statements said;
  private final PoseProblem problem;
  private final Descent descent;

  /**
   * A solver for one set of statements.
   *
   * @param said conditions, wishes, ranges
   */
  public PoseSolver(Statements said) {
    this.said = said;
    problem = new PoseProblem(said);
    descent = new Descent(problem);
  }

  /**
   * From the usual posture.
   *
   * @return the answer
   */
  public Answer solve() {
    double[] x = problem.usual.clone();
    walk(x);
    int steps = descent.steps();
    if (descent.worst() < MET) {
      return answer(x, steps);
    }
    return astray(x, steps);
  }

  /** Other starts; of the first few that lead there the one that is wished most. */
  private Answer astray(double[] first, int stepsBefore) {
    double[] best = first;
    double least = descent.worst();
    double unwished = Double.POSITIVE_INFINITY;
    int steps = stepsBefore;
    int found = 0;
    Random random = new Random(1);
    for (int start = 1; start < STARTS && found < COMPARED; start++) {
      double[] x = problem.usual.clone();
      stray(x, random);
      walk(x);
      steps += descent.steps();
      double worst = descent.worst();
      if (worst < MET) {
        found++;
        least = 0;
        double off = unwished(problem.whole(x));
        if (off < unwished) {
          unwished = off;
          best = x;
        }
      } else if (worst < least) {
        least = worst;
        best = x;
      }
    }
    return answer(best, steps);
  }

  /**
   * From a neighbour's answer; from the usual posture if that does not lead there.
   *
   * @param neighbour of the same kind of statements
   * @return the answer
   */
  public Answer solveFrom(Answer neighbour) {
    double[] x = problem.unknownsOf(neighbour.values());
    descent.begin();
    descent.strength(STRONG);
    descent.shiftTo(neighbour.holds());
    descent.start(x);
    finish(x);
    if (descent.worst() < MET) {
      return answer(x, descent.steps());
    }
    return solve();
  }

  /**
   * From an answer to the same statements, of which since then only what is usual was changed.
   *
   * @param answer this solver's
   * @return the answer
   */
  public Answer solveOn(Answer answer) {
    problem.usualAgain();
    return solveFrom(answer);
  }

  /**
   * How far given coordinates are from all that is wished and usual: the sum of squares, each times
   * its weight, that the search makes least.
   *
   * @param values one a coordinate
   * @return zero where every wish is met and every angle usual
   */
  public double unwished(double[] values) {
    double[] x = problem.unknownsOf(values);
    double[] residuals = new double[problem.rows];
    problem.residuals(x, residuals);
    double sum = said.unusual(values);
    for (int r = problem.conditions; r < problem.rows; r++) {
      double off = problem.weights[r] * residuals[r];
      sum += off * off;
    }
    return sum;
  }

  private void stray(double[] x, Random random) {
    for (int i = 0; i < x.length; i++) {
      if (problem.open[i] >= Coordinates.ROOT - 3) {
        x[i] += STRAYING * random.nextGaussian();
      }
    }
  }

  private void walk(double[] x) {
    descent.begin();
    descent.start(x);
    for (int i = 0; i < GROWING.length; i++) {
      descent.strength(GROWING[i]);
      descent.again(x, DAMPED);
      descent.run(x, ROUGHLY, MOST_STEPS);
    }
    finish(x);
  }

  /**
   * Brings what is near to rest. Where strong conditions leave only a narrow curved valley to creep
   * along, weaker ones with their shifts lead on.
   */
  private void finish(double[] x) {
    for (double mu : SETTLING) {
      descent.strength(mu);
      descent.again(x, BARELY_DAMPED);
      if (settled(x) || descent.worst() > NEARLY_MET) {
        return;
      }
    }
  }

  /** Steps and shifts in turn until the conditions are met and nothing moves any more. */
  private boolean settled(double[] x) {
    int shifts = 0;
    double before = 0;
    for (int i = 0; i < MOST_STEPS; i++) {
      double moved = descent.step(x);
      boolean met = descent.worst() < MET / 10;
      // Steps dwindle ever faster: the next would be no larger than as if they went on like this.
      if (met && (moved < FINELY || moved * moved < FINELY * before && moved < NEARLY_STILL)) {
        return true;
      }
      before = moved;
      if (moved > FINELY) {
        descent.shiftAsForeseen(x);
      } else {
        if (shifts == SHIFTS || descent.worst() > NEARLY_MET && shifts > 2) {
          return met;
        }
        shifts++;
        descent.shift();
        descent.again(x, descent.damping());
      }
    }
    return descent.worst() < MET / 10;
  }

  private Answer answer(double[] x, int steps) {
    // What stops a miss is asked of the conditions alone, at the pose that misses least.
    descent.standAt(x);
    double[] values = problem.whole(x);
    double worst = descent.worst();
    List<String> misses = new ArrayList<>();
    List<String> stops = new ArrayList<>();
    if (worst >= MET) {
      tell(x, misses, stops);
      values = problem.whole(x);
    }
    Frame frame = problem.scene.rootFrame();
    Pose pose =
        Pose.of(
            said.tree(),
            problem.scene.jointAngles(),
            new Vector3D(values[0], values[1], values[2]),
            frame);
    return new Answer(pose, misses, stops, worst, steps, values, descent.holds());
  }

  /** Something to tell, and how much it matters. */
  private record Told(double size, String words) {}

  /** The most of what there is to tell, without what is small beside the largest. */
  private static List<String> most(List<Told> told, int count) {
    double largest = told.stream().mapToDouble(Told::size).max().orElse(0);
    return told.stream()
        .filter(t -> t.size() >= WORTH_TELLING * largest)
        .sorted(Comparator.comparingDouble(Told::size).reversed())
        .limit(count)
        .map(Told::words)
        .toList();
  }

  private void tell(double[] x, List<String> misses, List<String> stops) {
    descent.begin();
    descent.strength(TELLING);
    descent.start(x);
    descent.again(x, BARELY_DAMPED);
    descent.run(x, FINELY, MOST_STEPS);
    List<Told> missed = new ArrayList<>();
    for (int i = 0; i < problem.statements.size(); i++) {
      Statement statement = problem.statements.get(i);
      int first = problem.firsts.get(i);
      double miss = statement.miss(descent.residuals(), first);
      if (statement.mustHold() && miss > 1e-4) {
        missed.add(new Told(miss, statement.sentence(descent.residuals(), first)));
      }
    }
    misses.addAll(most(missed, MOST_MISSES));
    if (misses.isEmpty()) {
      misses.add(
          String.format(
              Locale.ROOT, "the conditions are met only to %.4f cm", 100 * descent.worst()));
    }
    List<Told> stopping = new ArrayList<>();
    Coordinates coordinates = said.coordinates();
    for (int i = 0; i < x.length; i++) {
      int which = problem.open[i];
      boolean angle = which >= Coordinates.ROOT && which < coordinates.count();
      boolean end = x[i] <= problem.low[i] || x[i] >= problem.high[i];
      double slope = Math.abs(descent.slopeOf(i));
      if (angle && end && slope > PRESSING * TELLING * 1e-3) {
        String words =
            String.format(Locale.ROOT, "%s (%.0f°)", coordinates.name(which), Math.toDegrees(x[i]));
        stopping.add(new Told(slope, words));
      }
    }
    stops.addAll(most(stopping, MOST_STOPS));
  }
}
