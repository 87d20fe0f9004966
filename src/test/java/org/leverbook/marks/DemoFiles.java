package org.leverbook.marks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.BarbellCurl;
import org.leverbook.lift.Deadlift;
import org.leverbook.load.Barbell;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Tempo;

/** Makes the stills and the table that the words' examples use: drawn from poses of our own. */
final class DemoFiles {

  private static final Person LIFTER = Person.of(Sex.MALE, Units.kg(85), Units.cm(178));

  private DemoFiles() {}

  /** Writes them anew, run by hand. */
  public static void main(String[] arguments) throws IOException {
    Barbell bar = Barbell.of(Units.kg(60));
    Path folder = Path.of("notebooks", "pictures");
    Files.deleteIfExists(folder.resolve("still.png"));
    Rendered still =
        Rendered.of(
            BarbellCurl.of(LIFTER).holding(Barbell.of(Units.kg(30))).middle(),
            Side.RIGHT,
            20,
            5,
            folder.resolve("still.png"));
    Rendered.NEAR.forEach(l -> System.out.println(l.word() + " " + still.pixel(l, Side.RIGHT)));
    Files.deleteIfExists(folder.resolve("deadlift-still.png"));
    Rendered pull =
        Rendered.of(
            Deadlift.of(LIFTER).holding(Barbell.of(Units.kg(100))).start(),
            Side.RIGHT,
            20,
            5,
            folder.resolve("deadlift-still.png"));
    Rendered.NEAR.forEach(l -> System.out.println(l.word() + " " + pull.pixel(l, Side.RIGHT)));
    new Filmed(
            BackSquat.of(LIFTER).holding(bar).moving(Tempo.smooth(Units.seconds(1.6))),
            false,
            10,
            0.001)
        .write(folder.resolve("squat-landmarks.csv"));
  }
}
