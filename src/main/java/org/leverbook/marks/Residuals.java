package org.leverbook.marks;

import java.util.List;
import java.util.Locale;

/**
 * Chooses how much to smooth from the places themselves, by residual analysis.
 *
 * <p>What a low-pass filter takes away is its residual: R(f) = sqrt(mean of (x - x̂)²) for cut-off
 * f. Where f is high only trembling is taken away, and R falls along a straight line; where it is
 * low the movement itself goes too, and R rises above that line. The line, drawn on to 0 Hz, meets
 * the axis at the size of the trembling; the cut-off is where R has just that size, so that as much
 * movement is lost as trembling kept (Winter 2009, Biomechanics and Motor Control of Human
 * Movement, 4th ed., chapter 3, from memory; the steps as described by Duarte 2020, Residual
 * analysis to determine the optimal cutoff frequency).
 *
 * <p>One residual is made of all landmarks and directions together, weighing each alike, so that
 * all are smoothed alike and parts keep their lengths. The line is taken over the upper half of the
 * frequencies that the frame rate allows. What the method does not promise: moments need second
 * derivatives, whose trembling grows with the square of the cut-off.
 */
final class Residuals {

  /** Cut-offs are tried this far apart, hertz. */
  private static final double STEP = 0.25;

  private static final double LEAST = 1;

  /**
   * More is not taken, hertz: walking is usually smoothed at 6 Hz (Winter 2009, from memory), and
   * places that hardly tremble would ask for none at all.
   */
  private static final double ENOUGH = 6;

  /** The filter takes up to this share of the frame rate. */
  private static final double MOST = 0.4;

  /** With fewer frames a residual says little. */
  private static final int FEW = 25;

  /** Cut-off where there are too few, hertz: an assumption. */
  private static final double USUAL = 3;

  private final List<Track> tracks;
  private final double framesPerSecond;

  /**
   * For places without gaps.
   *
   * @param tracks of one length
   * @param framesPerSecond how often places are given
   */
  Residuals(List<Track> tracks, double framesPerSecond) {
    this.tracks = List.copyOf(tracks);
    this.framesPerSecond = framesPerSecond;
  }

  /** The cut-off of this table, hertz; tells how it was chosen. */
  double hertz(List<String> notes) {
    if (tracks.get(0).frames() < FEW) {
      double hertz = Math.min(USUAL, MOST * framesPerSecond);
      notes.add(
          String.format(
              Locale.ROOT,
              "Fewer than %d frames are too few to choose a cut-off from: %.1f Hz was taken;"
                  + " .smoothed(hertz) sets another.",
              FEW,
              hertz));
      return hertz;
    }
    Choice choice = choice();
    notes.add(
        String.format(
            Locale.ROOT,
            "The places tremble by %.1f mm, and a cut-off of %.1f Hz was chosen for that by residual"
                + " analysis (Winter 2009, from memory); .smoothed(hertz) sets another.",
            1000 * choice.trembling(),
            choice.hertz()));
    return choice.hertz();
  }

  /** What a filter takes away, root mean square of all places and directions, metres. */
  double residual(double hertz) {
    LowPass filter = new LowPass(hertz, framesPerSecond);
    double sum = 0;
    int count = 0;
    for (Track track : tracks) {
      for (double[] places : track.places()) {
        double[] smooth = filter.smooth(places);
        for (int i = 0; i < places.length; i++) {
          sum += (places[i] - smooth[i]) * (places[i] - smooth[i]);
          count++;
        }
      }
    }
    return Math.sqrt(sum / count);
  }

  /**
   * What was chosen.
   *
   * @param hertz the cut-off
   * @param trembling its size by the line, metres
   */
  record Choice(double hertz, double trembling) {}

  /** The cut-off where what is taken away is as large as the trembling. */
  Choice choice() {
    double most = MOST * framesPerSecond;
    int count = (int) Math.floor((most - LEAST) / STEP) + 1;
    double[] residuals = new double[Math.max(count, 1)];
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] = residual(Math.min(most, LEAST + i * STEP));
    }
    double trembling = atZero(residuals);
    int chosen = 0;
    while (chosen < residuals.length - 1 && residuals[chosen] > trembling) {
      chosen++;
    }
    double hertz = LEAST + chosen * STEP;
    if (chosen > 0) {
      // Between two tried ones, along a straight line.
      double above = residuals[chosen - 1] - trembling;
      double below = residuals[chosen - 1] - residuals[chosen];
      hertz += STEP * (below > 0 ? Math.min(1, above / below) - 1 : 0);
    }
    return new Choice(Math.min(Math.min(most, ENOUGH), hertz), trembling);
  }

  /** Where the straight line through the upper half meets 0 Hz. */
  private static double atZero(double[] residuals) {
    int from = residuals.length / 2;
    int n = residuals.length - from;
    double meanF = 0;
    double meanR = 0;
    for (int i = from; i < residuals.length; i++) {
      meanF += (LEAST + i * STEP) / n;
      meanR += residuals[i] / n;
    }
    double both = 0;
    double own = 0;
    for (int i = from; i < residuals.length; i++) {
      double f = LEAST + i * STEP - meanF;
      both += f * (residuals[i] - meanR);
      own += f * f;
    }
    return own > 0 ? meanR - both / own * meanF : meanR;
  }
}
