package org.leverbook.study;

import java.util.Locale;

/**
 * One input that may be off.
 *
 * @param name as in "thigh mass"
 * @param unit in which its difference is told
 * @param scale from the spread's unit to that one
 * @param spread how far it may be off
 * @param source who says so, with its status
 * @param setter puts a difference into a case
 */
record Input(String name, String unit, double scale, Spread spread, String source, Setter setter) {

  /** Puts a difference into a case. */
  @FunctionalInterface
  interface Setter {

    /** Takes the score and the difference that belongs to it, in the spread's unit. */
    void set(Changes changes, double score, double off);
  }

  void set(Changes changes, double score) {
    setter.set(changes, score, spread.at(score));
  }

  /** The difference at a score, for readers. */
  String told(double score) {
    return told(spread.at(score) * scale, unit);
  }

  private static String told(double difference, String unit) {
    double size = Math.abs(difference);
    String number = String.format(Locale.ROOT, size < 0.095 ? "%.2f" : "%.1f", size);
    String sign = size < 0.005 ? "" : difference < 0 ? "−" : "+";
    return sign + number + (unit.equals("°") ? unit : " " + unit);
  }
}
