package org.leverbook;

import java.time.Duration;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Seconds as they are typed. */
final class Seconds implements ITypeConverter<Duration> {

  private static final double LEAST = 0.001;
  private static final double MOST = 1e9;

  @Override
  public Duration convert(String typed) {
    try {
      double seconds = Double.parseDouble(typed);
      if (seconds >= LEAST && seconds <= MOST) {
        return Duration.ofMillis(Math.round(1000 * seconds));
      }
    } catch (NumberFormatException e) {
      throw new TypeConversionException("\"" + typed + "\" is no number of seconds, such as 60");
    }
    throw new TypeConversionException(typed + " is no limit in seconds: 0.001 to a billion");
  }
}
