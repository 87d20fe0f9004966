package org.leverbook.statics;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.DoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;

/** When a movement is where: its share of the way, from 0 to 1, against time. */
public final class Tempo implements Shown {

  private static final double SHORTEST = 0.05;
  private static final double LONGEST = 600;

  /** How far a given law may overshoot the ends of the way: rounding. */
  private static final double ROUNDING = 1e-9;

  /**
   * One instant.
   *
   * @param share of the way, 0 to 1
   * @param speed how fast it grows, per second
   * @param acceleration how fast the speed grows, per second squared
   */
  public record Instant(double share, double speed, double acceleration) {}

  private final String words;
  private final double seconds;
  private final DoubleFunction<Instant> law;

  private Tempo(String words, double seconds, DoubleFunction<Instant> law) {
    this.words = words;
    this.seconds = seconds;
    this.law = law;
  }

  /**
   * Smooth start and stop: speed and acceleration are zero at both ends. With u = t/T the share is
   * 10u³ - 15u⁴ + 6u⁵, the way of least jerk between two rests (Flash and Hogan 1985, J Neurosci
   * 5:1688-1703, from memory). Its greatest speed is 1.875/T, half-way.
   *
   * @param duration T, 0.05 to 600 s
   * @return the tempo
   * @throws Refused if the duration is missing or outside
   */
  public static Tempo smooth(Quantity<Time> duration) {
    double whole = Ask.time("duration", duration, SHORTEST, LONGEST);
    return new Tempo(
        "smooth start and stop",
        whole,
        t -> {
          double u = t / whole;
          double rest = 1 - u;
          return new Instant(
              u * u * u * (10 - 15 * u + 6 * u * u),
              30 * u * u * rest * rest / whole,
              60 * u * rest * (1 - 2 * u) / (whole * whole));
        });
  }

  /**
   * The same speed all the way, as in the middle of a slow repetition; how it starts and stops is
   * left out.
   *
   * @param duration 0.05 to 600 s
   * @return the tempo
   * @throws Refused if the duration is missing or outside
   */
  public static Tempo steady(Quantity<Time> duration) {
    double whole = Ask.time("duration", duration, SHORTEST, LONGEST);
    return new Tempo("steady", whole, t -> new Instant(t / whole, 1 / whole, 0));
  }

  /**
   * From given accelerations along the way, as a sensor on the bar writes them: at equal times from
   * the start to the end, straight lines between them, starting from rest. Their unit does not
   * matter: they are scaled so that the movement arrives at its end when the time is over.
   *
   * @param duration 0.05 to 600 s
   * @param accelerations two or more
   * @return the tempo
   * @throws Refused if they are too few, do not lead forward, or leave the way between its ends
   */
  public static Tempo accelerating(Quantity<Time> duration, double... accelerations) {
    double whole = Ask.time("duration", duration, SHORTEST, LONGEST);
    if (accelerations.length < 2 || !Arrays.stream(accelerations).allMatch(Double::isFinite)) {
      throw new Refused("A tempo takes two or more accelerations, all of them finite numbers.");
    }
    // Of size one first: the way that very large numbers lead would be beyond all numbers.
    double largest = Arrays.stream(accelerations).map(Math::abs).max().orElse(0);
    double[] raw = Arrays.stream(accelerations).map(a -> a / largest).toArray();
    double way = new Piecewise(whole, raw).at(whole).share();
    if (!(way > 0)) {
      throw new Refused(
          "These accelerations do not lead forward: from rest they end at or behind the start."
              + " Check their sign, and take gravity out of a sensor's readings.");
    }
    Piecewise law = new Piecewise(whole, Arrays.stream(raw).map(a -> a / way).toArray());
    refuseLeaving(law);
    return new Tempo("given accelerations", whole, law::at);
  }

  /** Tells of the instant that is furthest off the way. */
  private static void refuseLeaving(Piecewise law) {
    double furthest = 0;
    double when = 0;
    for (int i = 0; i <= 1000; i++) {
      double time = i * law.whole() / 1000;
      double share = law.at(time).share();
      double off = Math.max(-share, share - 1);
      if (off > furthest) {
        furthest = off;
        when = time;
      }
    }
    if (furthest > ROUNDING) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "These accelerations leave the way: at %.2f s the movement is at %.1f %% of it.",
              when,
              100 * law.at(when).share()));
    }
  }

  /** Accelerations joined by straight lines, integrated exactly. */
  private record Piecewise(double whole, double[] accelerations) {

    Instant at(double time) {
      double step = whole / (accelerations.length - 1);
      double share = 0;
      double speed = 0;
      int i = 0;
      while (i < accelerations.length - 2 && time > (i + 1) * step) {
        Instant next = advance(share, speed, i, step, step);
        share = next.share();
        speed = next.speed();
        i++;
      }
      return advance(share, speed, i, step, time - i * step);
    }

    private Instant advance(double share, double speed, int i, double step, double t) {
      double from = accelerations[i];
      double slope = (accelerations[i + 1] - from) / step;
      return new Instant(
          share + t * (speed + t * (from / 2 + t * slope / 6)),
          speed + t * (from + t * slope / 2),
          from + t * slope);
    }
  }

  /**
   * Where the movement is.
   *
   * @param time seconds, from zero to {@link #seconds()}
   * @return share, speed and acceleration
   * @throws Refused if the time is outside
   */
  public Instant at(double time) {
    if (!(time >= 0 && time <= seconds * (1 + ROUNDING))) {
      String asked = Double.isFinite(time) ? Units.text(Units.seconds(time)) : String.valueOf(time);
      throw new Refused(
          "The movement lasts from 0 to "
              + Units.text(Units.seconds(seconds))
              + "; there is nothing at "
              + asked
              + ".");
    }
    Instant instant = law.apply(Math.min(time, seconds));
    double share = Math.max(0, Math.min(1, instant.share()));
    return new Instant(share, instant.speed(), instant.acceleration());
  }

  /**
   * How long it takes.
   *
   * @return seconds
   */
  public double seconds() {
    return seconds;
  }

  @Override
  public String text() {
    return Units.text(Units.seconds(seconds)) + ", " + words;
  }

  @Override
  public String toString() {
    return text();
  }
}
