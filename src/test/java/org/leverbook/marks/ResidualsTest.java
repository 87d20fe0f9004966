package org.leverbook.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Side;

/** A cut-off chosen from places that move and tremble as was written down. */
class ResidualsTest {

  private static final double FRAMES = 50;

  /** A smooth movement of half a metre to and fro, at so many turns a second. */
  private static Residuals moving(double hertz, double trembling) {
    Random random = new Random(7);
    double[] places =
        IntStream.range(0, 400)
            .mapToDouble(
                i ->
                    0.25 * Math.sin(2 * Math.PI * hertz * i / FRAMES)
                        + trembling * random.nextGaussian())
            .toArray();
    Track track =
        new Track(Landmark.KNEE, Side.RIGHT, new double[][] {places}, new int[places.length]);
    return new Residuals(List.of(track), FRAMES);
  }

  @Test
  void the_size_of_the_trembling_is_found_again() {
    // The line through the tail is not quite straight for even noise: a fifth is allowed.
    assertThat(moving(0.5, 0.002).choice().trembling()).isEqualTo(0.002, within(0.0004));
  }

  @Test
  void faster_movements_keep_more_and_rougher_places_less() {
    double slow = moving(0.3, 0.002).choice().hertz();
    double fast = moving(1.2, 0.002).choice().hertz();
    double rough = moving(1.2, 0.01).choice().hertz();

    assertThat(slow).isLessThan(fast);
    assertThat(rough).isLessThan(fast);
    // The movement itself stays below the cut-off.
    assertThat(fast).isGreaterThan(1.2);
  }

  @Test
  void with_few_frames_a_usual_cut_off_is_taken_and_told() {
    Track few = new Track(Landmark.KNEE, Side.RIGHT, new double[][] {new double[12]}, new int[12]);
    List<String> notes = new ArrayList<>();

    assertThat(new Residuals(List.of(few), 30).hertz(notes)).isEqualTo(3);
    assertThat(notes).singleElement().asString().startsWith("Fewer than 25 frames are too few");
  }
}
