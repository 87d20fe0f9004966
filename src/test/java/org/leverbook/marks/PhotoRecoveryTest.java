package org.leverbook.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leverbook.marks.Recovered.Summary;

/**
 * Poses of our own, seen by known cameras, and what is found again from their marks. Usual angles
 * were chosen on the one set of photos; the other is of lifts, lifters and cameras that nothing was
 * chosen on. Every figure stands in target/photo-recovery.csv.
 *
 * <p>Bounds are guards with some room above what was found when they were set.
 */
class PhotoRecoveryTest {

  private static final double[] NOISES = {0, 2.5};

  /** Degrees off square up to which held-out photos are put together. */
  private static final double[] BANDS = {15, 28, 40};

  private static final List<Recovered> TUNING = new ArrayList<>();
  private static final List<Recovered> HELD_OUT = new ArrayList<>();

  @BeforeAll
  static void findAgain() throws IOException {
    for (double noise : NOISES) {
      for (boolean told : new boolean[] {false, true}) {
        Shot.tuning().forEach(s -> TUNING.add(Recovered.of(s, noise, told)));
        Shot.heldOut().forEach(s -> HELD_OUT.add(Recovered.of(s, noise, told)));
      }
    }
    StringBuilder csv =
        new StringBuilder(
            "set,view off square (°),noise (pixels),stance turn-out and grip told,quantity,photos,"
                + "median error,worst error,worst photo\n");
    for (double noise : NOISES) {
      for (boolean told : new boolean[] {false, true}) {
        String rest = String.format(Locale.ROOT, ",%.1f,%s", noise, told ? "yes" : "no");
        for (int view : Shot.VIEWS) {
          csv.append(tuning(view, noise, told).csv("tuning," + view + rest));
        }
        for (int band = 0; band < BANDS.length; band++) {
          String views =
              String.format(
                  Locale.ROOT, "%.0f to %.0f", band == 0 ? 0 : BANDS[band - 1], BANDS[band]);
          csv.append(heldOut(band, noise, told).csv("held out," + views + rest));
        }
      }
    }
    Files.writeString(Path.of("target", "photo-recovery.csv"), csv);
  }

  private static Summary tuning(int view, double noise, boolean told) {
    return Summary.of(
        TUNING, r -> r.shot().view() == view && r.noise() == noise && r.told() == told);
  }

  private static Summary heldOut(int band, double noise, boolean told) {
    double from = band == 0 ? 0 : BANDS[band - 1];
    return Summary.of(
        HELD_OUT,
        r ->
            Math.abs(r.shot().view()) >= from
                && Math.abs(r.shot().view()) < BANDS[band]
                && r.noise() == noise
                && r.told() == told);
  }

  private static final String HIP = "hip flexion (°)";
  private static final String KNEE = "knee flexion (°)";
  private static final String ELBOW = "elbow flexion (°)";

  @Test
  void of_the_photos_that_were_tuned_on_angles_and_moments_are_found_again() {
    for (int view : Shot.VIEWS) {
      // With what a coach sees beside the photo, exact marks give hip and knee within a few
      // degrees; what is left is what one picture cannot tell: how far the pelvis is tipped under a
      // bent back, and how much of a raised arm the shoulder girdle gives. Hips carry 200 to
      // 300 N·m here.
      Summary exact = tuning(view, 0, true);
      assertThat(exact.median(HIP)).as("hip at %d°", view).isLessThan(3);
      assertThat(exact.median(KNEE)).as("knee at %d°", view).isLessThan(2);
      assertThat(exact.median("view (°)")).as("view at %d°", view).isLessThan(8);
      assertThat(exact.worst(ELBOW)).as("elbow at %d°", view).isLessThan(8);
      assertThat(exact.median(Recovered.HIP_MOMENT)).as("moment at %d°", view).isLessThan(8);
      assertThat(exact.worst(Recovered.HIP_MOMENT)).as("moment at %d°", view).isLessThan(22);
      // Two and a half pixels are a centimetre here. Untold, nobody knows the stance: moments may
      // be off by a tenth, and behind a bar on the back an elbow lies where it is hardly seen.
      Summary rough = tuning(view, 2.5, false);
      assertThat(rough.median(HIP)).as("hip at %d°", view).isLessThan(6);
      assertThat(rough.median(KNEE)).as("knee at %d°", view).isLessThan(5);
      assertThat(rough.worst(ELBOW)).as("elbow at %d°", view).isLessThan(40);
      assertThat(rough.median(Recovered.HIP_MOMENT)).as("moment at %d°", view).isLessThan(14);
      assertThat(rough.worst(Recovered.HIP_MOMENT)).as("moment at %d°", view).isLessThan(40);
    }
  }

  @Test
  void of_photos_of_other_lifts_lifters_and_cameras_they_are_found_again_too() {
    for (int band = 0; band < BANDS.length; band++) {
      Summary exact = heldOut(band, 0, true);
      assertThat(exact.median(HIP)).as("hip, band %d", band).isLessThan(6);
      assertThat(exact.worst(HIP)).as("hip, band %d", band).isLessThan(10);
      assertThat(exact.median(KNEE)).as("knee, band %d", band).isLessThan(2);
      assertThat(exact.worst(KNEE)).as("knee, band %d", band).isLessThan(7);
      assertThat(exact.median(Recovered.HIP_MOMENT)).as("moment, band %d", band).isLessThan(6);
      assertThat(exact.worst(Recovered.HIP_MOMENT)).as("moment, band %d", band).isLessThan(20);
      Summary rough = heldOut(band, 2.5, true);
      assertThat(rough.worst(HIP)).as("hip, band %d", band).isLessThan(18);
      assertThat(rough.worst(KNEE)).as("knee, band %d", band).isLessThan(10);
      assertThat(rough.worst(ELBOW)).as("elbow, band %d", band).isLessThan(16);
      assertThat(rough.worst(Recovered.HIP_MOMENT)).as("moment, band %d", band).isLessThan(20);
      assertThat(rough.median(Recovered.HIP_MOMENT)).as("moment, band %d", band).isLessThan(9);
      // A stance of twice the usual width, as for a sumo deadlift, is not seen from the side: the
      // worst untold photos are those, and the fit says that a wide stance must be told.
      Summary untold = heldOut(band, 2.5, false);
      assertThat(untold.median(Recovered.HIP_MOMENT)).as("moment, band %d", band).isLessThan(14);
      assertThat(untold.worst(Recovered.HIP_MOMENT)).as("moment, band %d", band).isLessThan(100);
    }
    // Where the pose found is wrong, the right one often is among those offered.
    Summary all = Summary.of(HELD_OUT, r -> true);
    assertThat(all.median(Recovered.OFFERED)).isLessThanOrEqualTo(all.median(Recovered.HIP_MOMENT));
  }

  @Test
  void few_poses_come_out_tipping() {
    // A pose a centimetre off may tip, and its leg moments are then not known.
    Summary tuning = Summary.of(TUNING, r -> true);
    Summary held = Summary.of(HELD_OUT, r -> true);
    assertThat(tuning.photos()).hasSize(12 * Shot.VIEWS.length * 4);
    assertThat(held.photos()).hasSize(7 * 3 * 3 * 4);
    assertThat(tuning.count(Recovered.HIP_MOMENT)).isGreaterThan(tuning.photos().size() * 19 / 20);
    assertThat(held.count(Recovered.HIP_MOMENT)).isGreaterThan(held.photos().size() * 8 / 10);
  }
}
