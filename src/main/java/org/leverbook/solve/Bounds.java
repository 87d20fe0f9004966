package org.leverbook.solve;

import org.leverbook.body.Body;

/** For each coordinate of one pose: its range, its usual value, how strongly it keeps to it. */
public abstract sealed class Bounds extends Wishes permits Statements {

  /** Hardly any wish at all: only makes the answer one. */
  private static final double FAINT = 0.01;

  final double[] low;
  final double[] high;
  final double[] usual;
  final double[] stiffness;

  Bounds(Body body, Coordinates coordinates) {
    super(body, coordinates);
    int n = coordinates.count();
    low = new double[n];
    high = new double[n];
    usual = new double[n];
    stiffness = new double[n];
    for (int i = 0; i < n; i++) {
      low[i] = coordinates.low(i);
      high[i] = coordinates.high(i);
      stiffness[i] = FAINT;
    }
  }

  /**
   * A coordinate keeps to its usual value more or less strongly than before.
   *
   * @param name as in "knee flexion"
   * @param strength 1 for a joint that gives way last, 0.1 for one that gives way first
   */
  public void strength(String name, double strength) {
    stiffness[coordinates.indexOf(name)] = strength;
  }

  /**
   * All coordinates that are free keep to given values, and nothing else is wished: what was wished
   * is in the values already.
   *
   * @param values one a coordinate
   * @param strength how strongly, where nothing stronger was said
   */
  public void keepTo(double[] values, double strength) {
    said.removeIf(s -> !s.mustHold() && !s.where().equals(ON_THE_WAY));
    for (int i = 0; i < usual.length; i++) {
      usual[i] = Math.max(low[i], Math.min(high[i], values[i]));
      stiffness[i] = Math.max(stiffness[i], strength);
    }
  }

  /**
   * How unusual given coordinates are: the sum of squares of (value - usual) times strength.
   *
   * @param values one a coordinate
   * @return zero where all are as usual
   */
  public double unusual(double[] values) {
    double sum = 0;
    for (int i = 0; i < usual.length; i++) {
      double off = stiffness[i] * (values[i] - usual[i]);
      sum += off * off;
    }
    return sum;
  }

  /**
   * A load presses a coordinate beyond what its joint reaches by itself.
   *
   * @param name as in "wrist flexion"
   * @param bound the new end of its range, on the side where it lies, radians
   */
  public void pressedTo(String name, double bound) {
    int i = coordinates.indexOf(name);
    low[i] = Math.min(low[i], bound);
    high[i] = Math.max(high[i], bound);
  }
}
