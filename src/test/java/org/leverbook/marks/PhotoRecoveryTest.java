package org.leverbook.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
      String shot,
      int view,
      double noise,
      boolean told,
      double turned,
      Map<String, Double> errors) {}

  @Test
  void angles_and_moments_are_found_again_from_photos_up_to_forty_degrees_off_square()
      throws IOException {
    List<Found> all = new ArrayList<>();
    long began = System.nanoTime();
    for (Shot shot : shots()) {
      for (int view : new int[] {0, 10, 20, 30, 40, -20, -40}) {
        for (double noise : new double[] {0, 2.5}) {
          all.add(found(shot, view, noise, false));
          all.add(found(shot, view, noise, true));
        }
      }
    }
    double each = (System.nanoTime() - began) / 1e9 / all.size();
    write(all);
    System.out.printf(Locale.ROOT, "%d photos, %.2f s each%n", all.size(), each);
    assertThat(all).hasSize(12 * 7 * 4);
  }

  private static Found found(Shot shot, int view, double noise, boolean told) {
    Rendered photo = Rendered.of(shot.position(), view, 5, Path.of("target", "photos", "shot.png"));
    Photo marked = photo.scaled(photo.marked(noise, 7 + view));
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
    errors.put("view (°)", Math.toDegrees(0) + Units_deg(fit) - view);
    for (JointId joint : JOINTS) {
      if (again.knows(joint, Side.RIGHT)) {
        errors.put(
            joint.word() + " moment (N·m)",
            again.moment(joint, Side.RIGHT).signed()
                - shot.position().moment(joint, Side.RIGHT).signed());
      }
    }
    return new Found(shot.name(), view, noise, told, Units_deg(fit), errors);
  }

  private static double Units_deg(Fit fit) {
    return fit.offSquare().to(Units.DEG).getValue().doubleValue();
  }

  private static void write(List<Found> all) throws IOException {
    StringBuilder csv = new StringBuilder("shot,view (°),noise (pixels),told,found view (°)");
    all.get(0).errors().keySet().forEach(k -> csv.append(",error of ").append(k));
    csv.append('\n');
    for (Found f : all) {
      csv.append(
          String.format(
              Locale.ROOT,
              "\"%s\",%d,%.1f,%b,%.1f",
              f.shot(),
              f.view(),
              f.noise(),
              f.told(),
              f.turned()));
      f.errors().values().forEach(e -> csv.append(String.format(Locale.ROOT, ",%.2f", e)));
      csv.append('\n');
    }
    Files.writeString(Path.of("target", "photo-recovery-each.csv"), csv);
  }
}
