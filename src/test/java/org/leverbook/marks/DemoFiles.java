package org.leverbook.marks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.BarbellCurl;
import org.leverbook.lift.Deadlift;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;

/** Makes the stills and the table that the words' examples use: drawn from poses of our own. */
final class DemoFiles {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private DemoFiles() {}

  /** The folder they lie in. */
  static final Path FOLDER = Path.of("notebooks", "pictures");

  /** Of a pull from the floor, 20° off square. */
  static Position pull() {
    return Deadlift.of(LIFTER).holding(Barbell.of(Units.kg(100))).start();
  }

  /** Of a curl with bent elbows, 20° off square. */
  static Position curl() {
    return BarbellCurl.of(LIFTER).holding(Barbell.of(Units.kg(30))).middle();
  }

  /** A squat over time, its places off by a millimetre. */
  static Filmed squat() {
    return new Filmed(
        BackSquat.of(LIFTER)
            .holding(Barbell.of(Units.kg(60)))
            .moving(Tempo.smooth(Units.seconds(1.6))),
        false,
        10,
        0.001);
  }

  /** A still of one of them as the camera sees it; written where there is none. */
  static Rendered still(Position position, Path file) {
    return Rendered.of(position, Side.RIGHT, 20, 5, file);
  }

  /** Its marks as they are typed: what can be read off a still, to the pixel. */
  static String marks(Rendered still) {
    return Rendered.NEAR.stream()
        .map(
            landmark ->
                String.format(
                    Locale.ROOT,
                    ".mark(\"%s\", %.0f, %.0f)",
                    landmark.word(),
                    still.pixel(landmark, Side.RIGHT).getX(),
                    still.pixel(landmark, Side.RIGHT).getY()))
        .collect(Collectors.joining());
  }

  /** Writes them anew, run by hand, and prints the marks. */
  public static void main(String[] arguments) throws IOException {
    Map<String, Position> stills = Map.of("still.png", curl(), "deadlift-still.png", pull());
    for (Map.Entry<String, Position> each : stills.entrySet()) {
      Path file = FOLDER.resolve(each.getKey());
      Files.deleteIfExists(file);
      System.out.println(file + ": " + marks(still(each.getValue(), file)));
    }
    squat().write(FOLDER.resolve("squat-landmarks.csv"));
  }
}
