package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Time;
import org.leverbook.display.Shown;
import org.leverbook.load.Inertia;
import org.leverbook.load.Load;
import org.leverbook.pose.Accelerations;
import org.leverbook.pose.Course;
import org.leverbook.pose.MovingPose;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Si;
import org.leverbook.quantity.Units;

/**
 * A family of positions along a way, run through at a tempo: the moments at an instant then include
 * what the masses of body and load set against being moved.
 *
 * <p>{@code Movement.of("pull", Tempo.smooth(seconds(1.5)), share -> pull.hipHeight(cm(60 + 10 *
 * share)).start())} lifts the hips from 60 to 70 cm in one and a half seconds. At an instant at
 * which nothing moves the answer is that of the still position.
 *
 * <p>How it is computed: the tempo gives the share s of the way with s' and s''; the course gives
 * joint angles with their derivatives in s; together these are q' and q''. One outward pass gives
 * the acceleration of every segment ({@link Accelerations}); their inertia enters the sums as
 * forces ({@link Inertia}), so reactions, balance and parts come out as for any load.
 */
public final class Movement implements Shown {

  /** Of ten minutes they leave less than a billionth of a second. */
  private static final int HALVINGS = 50;

  private final String name;
  private final Tempo tempo;
  private final Course course;
  private final DoubleFunction<Position> still;

  private Movement(String name, Tempo tempo, Course course, DoubleFunction<Position> still) {
    this.name = name;
    this.tempo = tempo;
    this.course = course;
    this.still = still;
  }

  /**
   * A movement through positions that a lambda gives.
   *
   * @param name what to call it, as in "pull"
   * @param tempo when it is where
   * @param positions from a share of the way, 0 to 1, to the position there, held still
   * @return the movement
   * @throws Refused if something is missing
   */
  public static Movement of(String name, Tempo tempo, DoubleFunction<Position> positions) {
    Ask.present("movement's name", name, "\"pull\"");
    Ask.present("tempo", tempo, "smooth(seconds(1.5))");
    Ask.present("lambda", positions, "share -> pull.hipHeight(cm(60 + 10 * share)).start()");
    DoubleFunction<Position> still =
        share -> Ask.present("lambda's position", positions.apply(share), "pull.start()");
    Course course = Course.through(share -> still.apply(share).placement().pose());
    return new Movement(name, tempo, course, still);
  }

  /**
   * A movement along a course of poses whose derivatives are known.
   *
   * @param name what to call it, as in "raise"
   * @param tempo when it is where
   * @param course the poses, as in {@code Course.between(low, high)}
   * @param positions from a pose to the position with its loads and supports, held still
   * @return the movement
   * @throws Refused if something is missing
   */
  public static Movement along(
      String name, Tempo tempo, Course course, Function<Pose, Position> positions) {
    Ask.present("movement's name", name, "\"pull\"");
    Ask.present("tempo", tempo, "smooth(seconds(1.5))");
    Ask.present("course", course, "Course.between(low, high)");
    Ask.present("lambda", positions, "pose -> Position.of(...)");
    return new Movement(
        name,
        tempo,
        course,
        share ->
            positions.apply(
                Ask.present("course's pose", course.at(share), "MovingPose.still(pose)").pose()));
  }

  /**
   * The same way at another tempo.
   *
   * @param other when it is where
   * @return the changed movement
   */
  public Movement at(Tempo other) {
    return new Movement(name, Ask.present("tempo", other, "steady(seconds(2))"), course, still);
  }

  /**
   * The same way with its main load another size; its inertia follows.
   *
   * @param times how many times the size it has; zero or more
   * @return the changed movement
   */
  public Movement withLoadTimes(double times) {
    return new Movement(name, tempo, course, share -> still.apply(share).withLoadTimes(times));
  }

  /**
   * The position at an instant, moving.
   *
   * @param time since the start, up to the tempo's duration
   * @return the position with the inertia of body and loads among its forces
   * @throws Refused if there is no such instant, no position there, or the way turns a corner
   */
  public Position at(Quantity<Time> time) {
    double seconds = Si.seconds(Ask.present("time", time, "seconds(0.5)"));
    Tempo.Instant instant = tempo.at(seconds);
    Position position = still.apply(instant.share());
    String called = String.format(Locale.ROOT, "%s, %.2f s", name, seconds);
    String told =
        String.format(
            Locale.ROOT,
            "Moving: %.2f s into %s, at %.0f %% of the way. Inertia of body and load is counted; a"
                + " load's mass goes with the places that hold it.",
            seconds,
            tempo.text(),
            100 * instant.share());
    if (instant.speed() == 0 && instant.acceleration() == 0) {
      return position.called(called, position.notes.and(told));
    }
    MovingPose moving = course.at(instant.share()).paced(instant.speed(), instant.acceleration());
    Accelerations accelerations = moving.accelerations();
    List<Load> inertia = inertia(position.loads(), accelerations);
    return new Position(
        called,
        position
            .setting
            .changing(load -> load.moving(accelerations))
            .with(inertia.toArray(new Load[0])),
        position.facts(),
        position.notes.withoutThoseOfLoads().and(told));
  }

  /**
   * The position at a share of the way, moving.
   *
   * @param share of the way, 0 to 100 %, as in {@code percent(30)}
   * @return the position at the instant at which the movement gets there
   * @throws Refused if the share is missing or outside, there is no position there, or the way
   *     turns a corner
   */
  public Position onTheWay(Quantity<Dimensionless> share) {
    double asked = Ask.share("share of the way", share, 0, 1);
    double early = 0;
    double late = tempo.seconds();
    if (asked == 0 || asked == 1) {
      return at(Units.seconds(asked == 0 ? early : late));
    }
    // The way is run through once, so the instant lies between; as exact as numbers are.
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (early + late) / 2;
      if (tempo.at(middle).share() < asked) {
        early = middle;
      } else {
        late = middle;
      }
    }
    return at(Units.seconds((early + late) / 2));
  }

  private static List<Load> inertia(List<Load> loads, Accelerations moving) {
    List<Load> inertia = new ArrayList<>();
    for (Load load : loads) {
      Inertia own = Inertia.of(load, moving);
      if (!own.fixed().isEmpty()) {
        inertia.add(own);
      }
    }
    inertia.add(Inertia.ofBody(moving));
    return inertia;
  }

  /**
   * The same instant, held still.
   *
   * @param time since the start, up to the tempo's duration
   * @return the position without inertia
   * @throws Refused if there is no such instant, or no position there
   */
  public Position still(Quantity<Time> time) {
    return still.apply(tempo.at(Si.seconds(Ask.present("time", time, "seconds(0.5)"))).share());
  }

  /**
   * What to call it.
   *
   * @return as in "pull"
   */
  public String name() {
    return name;
  }

  /**
   * How long it takes.
   *
   * @return the tempo's duration
   */
  public Quantity<Time> duration() {
    return Units.seconds(tempo.seconds());
  }

  @Override
  public String text() {
    return name
        + ": "
        + tempo.text()
        + "\nat(seconds(...)) gives the position at an instant, still(seconds(...)) the same held"
        + " still";
  }

  @Override
  public String toString() {
    return text();
  }
}
