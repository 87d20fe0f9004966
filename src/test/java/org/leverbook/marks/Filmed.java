package org.leverbook.marks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;

/** A movement of our own, written down as a table of landmarks. */
final class Filmed {

  static final int FRAMES_A_SECOND = 50;

  final Movement movement;
  final boolean inSpace;
  final double offSquare;
  final double noise;

  /**
   * How it is seen.
   *
   * @param inSpace whether in space, both sides; otherwise the near side by a far camera
   * @param offSquare degrees; positive where the lifter's front is turned towards the camera
   * @param noise one deviation, metres
   */
  Filmed(Movement movement, boolean inSpace, double offSquare, double noise) {
    this.movement = movement;
    this.inSpace = inSpace;
    this.offSquare = offSquare;
    this.noise = noise;
  }

  double seconds() {
    return movement.duration().getValue().doubleValue();
  }

  Path write(Path file) {
    StringBuilder csv =
        new StringBuilder("# Computed from a movement of our own; nobody was filmed.\n");
    csv.append("time (s),landmark,x (cm),y (cm)").append(inSpace ? ",z (cm)\n" : "\n");
    Random random = new Random(41);
    Frame camera = Frame.aboutVertical(Math.toRadians(offSquare));
    int frames = (int) Math.round(seconds() * FRAMES_A_SECOND) + 1;
    for (int i = 0; i < frames; i++) {
      double time = i / (double) FRAMES_A_SECOND;
      Position position = movement.still(Units.seconds(Math.min(time, seconds())));
      for (Side side : inSpace ? List.of(Side.RIGHT, Side.LEFT) : List.of(Side.RIGHT)) {
        for (Landmark landmark : Rendered.NEAR) {
          var point = landmark.on(position.body(), side);
          Vector3D seen =
              camera.toLocal(position.placement().toWorld(point.segment(), point.local()));
          csv.append(
              String.format(
                  Locale.ROOT,
                  "%.2f,%s",
                  time,
                  inSpace ? side.of(landmark.word()) : landmark.word()));
          double[] xyz = seen.toArray();
          for (int k = 0; k < (inSpace ? 3 : 2); k++) {
            csv.append(
                String.format(
                    Locale.ROOT, ",%.2f", 100 * (xyz[k] + noise * random.nextGaussian())));
          }
          csv.append('\n');
        }
      }
    }
    try {
      Files.createDirectories(file.toAbsolutePath().getParent());
      return Files.writeString(file, csv);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
