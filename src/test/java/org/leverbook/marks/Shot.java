package org.leverbook.marks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.lift.BackSquat;
import org.leverbook.lift.BarbellCurl;
import org.leverbook.lift.BentOverRow;
import org.leverbook.lift.Deadlift;
import org.leverbook.lift.FrontSquat;
import org.leverbook.lift.GoodMorning;
import org.leverbook.lift.LateralRaise;
import org.leverbook.lift.OverheadPress;
import org.leverbook.lift.OverheadTriceps;
import org.leverbook.lift.RomanianDeadlift;
import org.leverbook.lift.SumoDeadlift;
import org.leverbook.lift.UprightRow;
import org.leverbook.load.Barbell;
import org.leverbook.load.HandWeights;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Position;

/**
 * A position of ours as one camera saw it.
 *
 * @param held whether it belongs to the photos that nothing was tuned on
 * @param name what and who
 * @param position the truth
 * @param view degrees off square; positive where turned towards the camera
 * @param distance of the camera, metres
 * @param above the lifter's middle, metres
 * @param down how far it looks down, degrees
 * @param side seen
 * @param seed of the marks' errors
 */
record Shot(
    boolean held,
    String name,
    Position position,
    double view,
    double distance,
    double above,
    double down,
    Side side,
    int seed) {

  static final int[] VIEWS = {-40, -20, 0, 10, 20, 30, 40};

  private static final int CAMERAS = 3;

  /** The photos on which usual angles and their spreads were chosen. */
  static List<Shot> tuning() {
    List<Person> lifters =
        List.of(
            Person.of(Sex.MALE, Units.kg(85), Units.cm(178)),
            Person.of(Sex.FEMALE, Units.kg(62), Units.cm(166))
                .longer(Part.THIGH, Units.percent(6)));
    List<Shot> shots = new ArrayList<>();
    for (int i = 0; i < lifters.size(); i++) {
      Person lifter = lifters.get(i);
      Barbell bar = Barbell.of(Units.kg(60));
      String who = i == 0 ? "lifter A" : "lifter B, long thighs";
      tuning(shots, "back squat middle, " + who, BackSquat.of(lifter).holding(bar).middle());
      tuning(shots, "back squat bottom, " + who, BackSquat.of(lifter).holding(bar).finish());
      tuning(shots, "deadlift start, " + who, Deadlift.of(lifter).holding(bar).start());
      tuning(shots, "Romanian deadlift, " + who, RomanianDeadlift.of(lifter).holding(bar).finish());
      tuning(shots, "curl middle, " + who, BarbellCurl.of(lifter).holding(bar).middle());
      tuning(shots, "press middle, " + who, OverheadPress.of(lifter).holding(bar).middle());
    }
    return shots;
  }

  private static void tuning(List<Shot> shots, String name, Position position) {
    for (int view : VIEWS) {
      int seed = name.hashCode() + view;
      shots.add(new Shot(false, name, position, view, 5, 0, 0, Side.RIGHT, seed));
    }
  }

  /**
   * Photos that nothing was tuned on: other lifts, other lifters, cameras at random up to 40° off
   * square, 3 to 8 m away, 0.5 m below to 0.7 m above the lifter's middle, level or looking down.
   */
  static List<Shot> heldOut() {
    List<Person> lifters =
        List.of(
            Person.of(Sex.MALE, Units.kg(104), Units.cm(191))
                .longer(Part.FOREARM, Units.percent(5)),
            Person.of(Sex.FEMALE, Units.kg(54), Units.cm(157)),
            Person.of(Sex.MALE, Units.kg(72), Units.cm(170)).longer(Part.THIGH, Units.percent(-5)));
    List<String> who = List.of("lifter C, long forearms", "lifter D", "lifter E, short thighs");
    List<Shot> shots = new ArrayList<>();
    Random random = new Random(20);
    for (int i = 0; i < lifters.size(); i++) {
      Person lifter = lifters.get(i);
      Barbell bar = Barbell.of(Units.kg(50));
      Barbell light = Barbell.of(Units.kg(30));
      String by = ", " + who.get(i);
      held(shots, random, "front squat" + by, FrontSquat.of(lifter).holding(bar).middle());
      held(shots, random, "good morning" + by, GoodMorning.of(lifter).holding(bar).finish());
      held(shots, random, "sumo deadlift" + by, SumoDeadlift.of(lifter).holding(bar).middle());
      held(shots, random, "bent-over row" + by, BentOverRow.of(lifter).holding(bar).finish());
      held(shots, random, "upright row" + by, UprightRow.of(lifter).holding(light).middle());
      held(
          shots,
          random,
          "overhead triceps" + by,
          OverheadTriceps.of(lifter).holding(HandWeights.pair("dumbbell", Units.kg(12))).middle());
      held(
          shots,
          random,
          "lateral raise" + by,
          LateralRaise.of(lifter).holding(HandWeights.pair("dumbbell", Units.kg(8))).middle());
    }
    return shots;
  }

  private static void held(List<Shot> shots, Random random, String name, Position position) {
    for (int i = 0; i < CAMERAS; i++) {
      double view = -40 + 80 * random.nextDouble();
      double distance = 3 + 5 * random.nextDouble();
      boolean high = random.nextBoolean();
      double above = high ? 0.7 * random.nextDouble() : -0.5 * random.nextDouble();
      double down = high && random.nextBoolean() ? Math.toDegrees(Math.atan(above / distance)) : 0;
      Side side = random.nextBoolean() ? Side.RIGHT : Side.LEFT;
      shots.add(
          new Shot(true, name, position, view, distance, above, down, side, random.nextInt()));
    }
  }

  /** What a coach has: the photo with its scale and marks off by so many pixels. */
  Photo marked(double noise, boolean told) {
    Path file = Path.of("target", "photos", "shot.png");
    Rendered taken = Rendered.of(position, side, view, distance, above, down, file);
    Photo photo = taken.scaled(taken.marked(noise, seed)).lookingDown(Units.deg(down));
    return told ? taken.told(photo) : photo;
  }
}
