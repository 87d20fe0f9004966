package org.leverbook.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leverbook.body.Body;
import org.leverbook.display.Caution;
import org.leverbook.display.Shown;
import org.leverbook.load.Load;
import org.leverbook.pose.Pose;
import org.leverbook.pose.TimedCourse;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Movement;
import org.leverbook.statics.Position;
import org.leverbook.statics.Tempo;
import org.leverbook.support.Footing;
import org.leverbook.support.Support;

/**
 * A lift over time, fitted to landmarks: a pose a frame.
 *
 * <p>{@code movement()} joins them by splines; its moments include the inertia of body and load.
 * {@code sweep(lift.movement(), 101)} tells them against time, and {@code .against(KNEE)} of that
 * sweep against the knee's angle. A value.
 */
public final class Recorded implements Shown {

  private final String name;
  private final Body body;
  private final List<Pose> poses;
  private final Track.Clock clock;
  private final boolean standing;
  private final List<String> notes;
  private final List<Load> loads;
  private final List<Support> supports;

  Recorded(
      String name,
      Body body,
      List<Pose> poses,
      Track.Clock clock,
      boolean standing,
      List<String> notes) {
    this(name, body, poses, clock, standing, notes, List.of(), List.of());
  }

  private Recorded(
      String name,
      Body body,
      List<Pose> poses,
      Track.Clock clock,
      boolean standing,
      List<String> notes,
      List<Load> loads,
      List<Support> supports) {
    this.name = name;
    this.body = body;
    this.poses = List.copyOf(poses);
    this.clock = clock;
    this.standing = standing;
    this.notes = List.copyOf(notes);
    this.loads = List.copyOf(loads);
    this.supports = List.copyOf(supports);
  }

  /**
   * With loads.
   *
   * @param more as in {@code barbell(kg(60))}
   * @return the changed lift
   */
  public Recorded holding(Load... more) {
    List<Load> all = new ArrayList<>(loads);
    all.addAll(List.of(more));
    return new Recorded(name, body, poses, clock, standing, notes, all, supports);
  }

  /**
   * On supports, for a lifter who does not stand.
   *
   * @param more as in {@code bench(deg(0))}
   * @return the changed lift
   */
  public Recorded on(Support... more) {
    List<Support> all = new ArrayList<>(supports);
    all.addAll(List.of(more));
    return new Recorded(name, body, poses, clock, standing, notes, loads, all);
  }

  /**
   * Whose body; with measured lengths where they were asked for.
   *
   * @return the body
   */
  public Body body() {
    return body;
  }

  /**
   * A pose a frame.
   *
   * @return in the order of time
   */
  public List<Pose> poses() {
    return poses;
  }

  /**
   * How long it lasts.
   *
   * @return seconds
   */
  public double seconds() {
    return (poses.size() - 1) * clock.step();
  }

  /**
   * The whole as a movement from its first frame on, inertia counted.
   *
   * @return the movement; its time begins at zero
   */
  public Movement movement() {
    return Movement.along(
        title(),
        Tempo.steady(Units.seconds(seconds())),
        TimedCourse.through(poses),
        this::position);
  }

  /** The file's name without its folders and ending. */
  private String title() {
    return name.replaceFirst(".*[/\\\\]", "").replaceFirst("\\.csv$", "");
  }

  private Position position(Pose pose) {
    List<Support> carrying = new ArrayList<>(supports);
    if (standing) {
      carrying.add(0, Footing.feet(body));
    }
    return Position.of(title(), body, pose, loads, carrying, List.of(), notes);
  }

  /**
   * What was done with the landmarks and how well the body fits them.
   *
   * @return sentences in the coach's words
   */
  public List<String> notes() {
    return notes;
  }

  @Override
  public String text() {
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "%s: %d frames, %.2f s, %s",
            name,
            poses.size(),
            seconds(),
            body.person().text()));
    lines.addAll(notes);
    lines.add("movement() gives the moments over time, as in sweep(lift.movement(), 101)");
    lines.add(Caution.TEXT);
    return String.join("\n", lines);
  }

  @Override
  public String toString() {
    return text();
  }
}
