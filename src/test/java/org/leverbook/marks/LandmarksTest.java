package org.leverbook.marks;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.BackSquat;
import org.leverbook.load.Barbell;
import org.leverbook.load.Load;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Tempo;

/** A squat of our own, seen as a table of landmarks, and what is found again. */
class LandmarksTest {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));
  private static final Load BAR =
      Barbell.of(Units.kg(60)).on(org.leverbook.body.Site.UPPER_BACK_HIGH);

  private static Movement squat() {
    return BackSquat.of(LIFTER)
        .holding(Barbell.of(Units.kg(60)))
        .moving(Tempo.smooth(Units.seconds(1.6)));
  }

  private static double[] errors(Filmed film, Recorded again, JointId joint) {
    double angle = 0;
    double moment = 0;
    Movement found = again.holding(BAR).movement();
    for (int i = 0; i <= 20; i++) {
      var time = Units.seconds(film.seconds() * i / 20);
      var truth = film.movement.at(time);
      var seen = found.at(time);
      angle =
          Math.max(
              angle,
              Math.abs(
                  Math.toDegrees(
                      seen.placement().pose().angle(joint, Side.RIGHT, "flexion")
                          - truth.placement().pose().angle(joint, Side.RIGHT, "flexion"))));
      if (seen.knows(joint, Side.RIGHT)) {
        moment =
            Math.max(
                moment,
                Math.abs(
                    seen.moment(joint, Side.RIGHT).signed()
                        - truth.moment(joint, Side.RIGHT).signed()));
      } else {
        System.out.print(i + " ");
      }
    }
    return new double[] {angle, moment};
  }

  @Test
  void a_squat_is_found_again() {
    for (boolean space : new boolean[] {true, false}) {
      for (double noise : new double[] {0, 0.001, 0.003}) {
        for (double off : new double[] {0}) {
          Filmed film = new Filmed(squat(), space, off, noise);
          Path file =
              film.write(Path.of("target", "photos", "squat-" + space + noise + off + ".csv"));
          long began = System.nanoTime();
          Recorded again =
              Landmarks.of(file.toString(), Map.of())
                  .smoothed(Double.parseDouble(System.getProperty("hz", "6")))
                  .fit(LIFTER);
          double took = (System.nanoTime() - began) / 1e9;
          System.out.printf(
              Locale.ROOT, "space %b noise %.3f off %.0f took %.1f%n", space, noise, off, took);
          System.out.println(again);
          for (JointId j : List.of(JointId.HIP, JointId.KNEE, JointId.ANKLE, JointId.SHOULDER)) {
            double[] e = errors(film, again, j);
            System.out.printf(Locale.ROOT, "  %s %.1f° %.1f N·m%n", j.word(), e[0], e[1]);
          }
        }
      }
    }
    assertThat(1).isEqualTo(1);
  }
}
