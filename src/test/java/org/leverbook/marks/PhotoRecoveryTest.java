package org.leverbook.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.BarbellCurl;
import org.leverbook.lift.Deadlift;
import org.leverbook.lift.OverheadPress;
import org.leverbook.lift.RomanianDeadlift;
import org.leverbook.load.Barbell;
import org.leverbook.load.Load;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/** Poses of our own, seen by known cameras, and what is found again from their marks. */
class PhotoRecoveryTest {

  private static final List<JointId> JOINTS =
      List.of(JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.SHOULDER, JointId.ELBOW);

  private static final List<Person> LIFTERS =
      List.of(
          Person.of(Sex.MALE, Units.kg(85), Units.cm(178)),
          Person.of(Sex.FEMALE, Units.kg(62), Units.cm(166)).longer(Part.THIGH, Units.percent(6)));

  private static final int[] VIEWS = {-40, -20, 0, 10, 20, 30, 40};
  private static final double[] NOISES = {0, 2.5};

  private record Shot(String name, Position position) {}

  private static List<Shot> shots() {
    List<Shot> shots = new ArrayList<>();
    for (int i = 0; i < LIFTERS.size(); i++) {
      Person lifter = LIFTERS.get(i);
      Barbell bar = Barbell.of(Units.kg(60));
      String who = i == 0 ? "lifter A" : "lifter B, long thighs";
      shots.add(new Shot("back squat middle, " + who, BackSquat.of(lifter).holding(bar).middle()));
      shots.add(new Shot("back squat bottom, " + who, BackSquat.of(lifter).holding(bar).finish()));
      shots.add(new Shot("deadlift start, " + who, Deadlift.of(lifter).holding(bar).start()));
      shots.add(
          new Shot("Romanian deadlift, " + who, RomanianDeadlift.of(lifter).holding(bar).finish()));
      shots.add(new Shot("curl middle, " + who, BarbellCurl.of(lifter).holding(bar).middle()));
      shots.add(new Shot("press middle, " + who, OverheadPress.of(lifter).holding(bar).middle()));
    }
    return shots;
  }

  /** What was found again of one photo. */
  private record Found(
      String shot, int view, double noise, boolean told, Map<String, Double> errors) {

    double error(String quantity) {
      return Math.abs(errors.get(quantity));
    }
  }

  @Test
  void angles_and_moments_are_found_again_from_photos_up_to_forty_degrees_off_square()
      throws IOException {
    List<Found> all = new ArrayList<>();
    for (Shot shot : shots()) {
      for (int view : VIEWS) {
        for (double noise : NOISES) {
          all.add(found(shot, view, noise, false));
          all.add(found(shot, view, noise, true));
        }
      }
    }
    write(all);
    assertThat(all).hasSize(shots().size() * VIEWS.length * NOISES.length * 2);
    long tipping = all.size() - known(all, "hip moment (N·m)").size();
    assertThat(tipping).as("photos whose pose came out tipping").isLessThan(all.size() / 20);
    assertThat(median(some(all, 0, 0, false), "hip flexion (°)")).isLessThan(3);
    for (int view : VIEWS) {
      // Guards with some room above what was found when they were set; how good the fit is stands
      // in the table. With what a coach sees beside the photo, exact marks give hip and knee within
      // a few degrees; what is left is what one picture cannot tell: how far the pelvis is tipped
      // under a bent back, and how much of a raised arm the shoulder girdle gives. Hips carry 200
      // to 300 N·m here: 9 are 4 %.
      List<Found> exact = some(all, view, 0, true);
      assertThat(median(exact, "hip flexion (°)")).as("hip at %d°", view).isLessThan(3);
      assertThat(median(exact, "knee flexion (°)")).as("knee at %d°", view).isLessThan(2);
      assertThat(median(exact, "shoulder flexion (°)")).as("shoulder at %d°", view).isLessThan(10);
      assertThat(median(exact, "view (°)")).as("view at %d°", view).isLessThan(8);
      assertThat(median(exact, "hip moment (N·m)")).as("hip moment at %d°", view).isLessThan(9);
      // Two and a half pixels are a centimetre here.
      List<Found> rough = some(all, view, 2.5, false);
      assertThat(median(rough, "hip flexion (°)")).as("hip at %d°", view).isLessThan(6);
      assertThat(median(rough, "knee flexion (°)")).as("knee at %d°", view).isLessThan(6);
    }
  }

  private static Found found(Shot shot, int view, double noise, boolean told) {
    Rendered photo = Rendered.of(shot.position(), view, 5, Path.of("target", "photos", "shot.png"));
    Photo marked = photo.scaled(photo.marked(noise, shot.name().hashCode() + view));
    Fit fit = (told ? photo.told(marked) : marked).fit(shot.position().body().person());
    fit = view > 0 ? fit.towardsCamera() : view < 0 ? fit.awayFromCamera() : fit;
    Position again = fit.holding(shot.position().loads().toArray(new Load[0])).position();
    Map<String, Double> errors = new LinkedHashMap<>();
    Pose truth = shot.position().placement().pose();
    for (JointId joint : JOINTS) {
      double off =
          fit.pose().angle(joint, Side.RIGHT, "flexion")
              - truth.angle(joint, Side.RIGHT, "flexion");
      errors.put(joint.word() + " flexion (°)", Math.toDegrees(off));
    }
    errors.put("view (°)", degrees(fit) - view);
    for (JointId joint : JOINTS) {
      // A pose a centimetre off may tip; its leg moments are then not known, and it is counted out.
      if (!again.knows(joint, Side.RIGHT)) {
        continue;
      }
      errors.put(
          joint.word() + " moment (N·m)",
          again.moment(joint, Side.RIGHT).signed()
              - shot.position().moment(joint, Side.RIGHT).signed());
    }
    return new Found(shot.name(), view, noise, told, errors);
  }

  private static double degrees(Fit fit) {
    return fit.offSquare().to(Units.DEG).getValue().doubleValue();
  }

  /** A row for each view, noise and quantity: median and worst error of all shots. */
  private static void write(List<Found> all) throws IOException {
    StringBuilder csv =
        new StringBuilder(
            "view off square (°),noise (pixels),stance turn-out and grip told,quantity,photos,"
                + "median error,worst error,worst photo\n");
    for (int view : VIEWS) {
      for (double noise : NOISES) {
        for (boolean told : new boolean[] {false, true}) {
          List<Found> some = some(all, view, noise, told);
          for (String quantity : quantities()) {
            List<Found> known = known(some, quantity);
            Found worst =
                known.stream()
                    .max(Comparator.comparingDouble(f -> f.error(quantity)))
                    .orElseThrow();
            csv.append(
                String.format(
                    Locale.ROOT,
                    "%d,%.1f,%s,%s,%d,%.2f,%.2f,\"%s\"%n",
                    view,
                    noise,
                    told ? "yes" : "no",
                    quantity,
                    known.size(),
                    median(some, quantity),
                    worst.error(quantity),
                    worst.shot()));
          }
        }
      }
    }
    Files.writeString(Path.of("target", "photo-recovery.csv"), csv);
  }

  private static List<Found> some(List<Found> all, int view, double noise, boolean told) {
    return all.stream()
        .filter(f -> f.view() == view && f.noise() == noise && f.told() == told)
        .toList();
  }

  private static List<Found> known(List<Found> some, String quantity) {
    return some.stream().filter(f -> f.errors().containsKey(quantity)).toList();
  }

  private static List<String> quantities() {
    List<String> all = new ArrayList<>();
    JOINTS.forEach(j -> all.add(j.word() + " flexion (°)"));
    all.add("view (°)");
    JOINTS.forEach(j -> all.add(j.word() + " moment (N·m)"));
    return all;
  }

  private static double median(List<Found> some, String quantity) {
    double[] sorted =
        known(some, quantity).stream().mapToDouble(f -> f.error(quantity)).sorted().toArray();
    return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
  }
}
