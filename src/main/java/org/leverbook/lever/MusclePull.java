package org.leverbook.lever;

import java.util.Locale;

/**
 * A muscle pulling with a known force.
 *
 * @param line where it pulls
 * @param force newtons, zero or more
 */
public record MusclePull(LineOfPull line, double force) {

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "%s %.0f N", line.name(), force);
  }
}
