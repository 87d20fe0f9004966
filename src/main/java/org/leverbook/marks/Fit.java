package org.leverbook.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.display.Caution;
import org.leverbook.display.Illustrator;
import org.leverbook.display.Picture;
import org.leverbook.display.Shown;
import org.leverbook.load.Load;
import org.leverbook.load.SteadyForce;
import org.leverbook.pose.Camera;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.quantity.Units;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Position;
import org.leverbook.support.Footing;
import org.leverbook.support.Support;

/**
 * A lifter fitted to the marks of a photo: pose, camera, and what the marks say of them.
 *
 * <p>{@code fit.holding(barbell(kg(60))).position()} is the position with its loads; {@code
 * fit.other()} the mirror solution, turned the other way, where the marks leave both open. A value.
 */
public final class Fit implements Shown {

  /** A mark that misses by more is told of, metres. */
  private static final double FAR_OFF = 0.04;

  /** Sums that differ by less are as likely: three standard deviations. */
  private static final double TOLD_APART = 9;

  /** Views turned by less are as good as square on, radians. */
  private static final double SQUARE = Math.toRadians(3);

  /** Parts turned out by less are not worth a word, radians. */
  private static final double WORTH_A_WORD = Math.toRadians(10);

  private final Solved solved;
  private final Optional<Solved> mirror;
  private final Pose pose;
  private final Camera camera;
  private final List<Load> loads;
  private final List<Support> supports;

  private Fit(Solved solved, Optional<Solved> mirror, List<Load> loads, List<Support> supports) {
    this.solved = solved;
    this.mirror = mirror;
    this.pose = solved.pose();
    this.camera = solved.camera();
    this.loads = List.copyOf(loads);
    this.supports = List.copyOf(supports);
  }

  static Fit of(Solved solved, Optional<Solved> mirror) {
    return new Fit(solved, mirror, List.of(), List.of());
  }

  /**
   * With loads.
   *
   * @param more as in {@code barbell(kg(60))}
   * @return the changed fit
   */
  public Fit holding(Load... more) {
    List<Load> all = new ArrayList<>(loads);
    all.addAll(List.of(more));
    return new Fit(solved, mirror, all, supports);
  }

  /**
   * On supports: for a lifter who does not stand, what carries.
   *
   * @param more as in {@code bench(deg(0))}
   * @return the changed fit
   */
  public Fit on(Support... more) {
    List<Support> all = new ArrayList<>(supports);
    all.addAll(List.of(more));
    return new Fit(solved, mirror, loads, all);
  }

  /**
   * The second solution: usually the mirror one, turned towards the camera where this one is turned
   * away.
   *
   * @return the other fit, whose mirror is this one
   * @throws Refused if the marks leave only one
   */
  public Fit other() {
    Solved chosen =
        mirror.orElseThrow(
            () ->
                new Refused(
                    "There is no second solution: the marks and usual postures tell that the view"
                        + " is "
                        + viewInWords()
                        + "."));
    return new Fit(chosen, Optional.of(solved), loads, supports);
  }

  /** Whether the marks leave a second solution open. */
  public boolean hasOther() {
    return mirror.isPresent();
  }

  /**
   * The solution that is turned more towards the camera.
   *
   * @return this one or the other
   */
  public Fit towardsCamera() {
    return mirror.isEmpty() || turned() >= mirror.get().turned() ? this : other();
  }

  /**
   * The solution that is turned more away from the camera.
   *
   * @return this one or the other
   */
  public Fit awayFromCamera() {
    return mirror.isEmpty() || turned() < mirror.get().turned() ? this : other();
  }

  /**
   * Joint angles and place: facing x, the lowest sole on the floor.
   *
   * @return the pose
   */
  public Pose pose() {
    return pose;
  }

  /**
   * Whose body; with measured lengths where they were asked for.
   *
   * @return the body
   */
  public Body body() {
    return solved.body();
  }

  /**
   * The camera, in the same world as the pose.
   *
   * @return where pixels come from
   */
  public Camera camera() {
    return camera;
  }

  /**
   * The photo that was fitted.
   *
   * @return the photo
   */
  public Photo photo() {
    return solved.photo();
  }

  /**
   * The marks, each with its side.
   *
   * @return in the order they were made
   */
  public List<Mark> marks() {
    return solved.marks();
  }

  /**
   * Which side of the lifter is seen.
   *
   * @return left or right
   */
  public Side shown() {
    return solved.shown();
  }

  /**
   * How far the view is from square on.
   *
   * @return positive where the lifter's front is turned towards the camera
   */
  public Quantity<Angle> offSquare() {
    return Units.deg(Math.toDegrees(turned()));
  }

  private double turned() {
    return solved.turned();
  }

  /**
   * How long each marked part looks and is.
   *
   * @return thighs, shanks, upper arms, forearms, as far as both ends are marked
   */
  public List<Foreshortened> foreshortened() {
    return Foreshortened.of(solved.marks(), body(), camera, pose.placed());
  }

  /**
   * How far a mark is from where the fitted body has it.
   *
   * @param mark one of {@link #marks}
   * @return metres, beside the line of sight
   */
  double miss(Mark mark) {
    Placement where = pose.placed();
    var point = mark.landmark().on(body(), mark.side());
    return camera.sight(mark.pixel()).miss(where.toWorld(point.segment(), point.local()));
  }

  /**
   * The lifter held still with the loads, the moments computed in space whatever the view.
   *
   * @return the position; where nothing carries it, {@link Position#holding()} says so
   * @throws Refused if a support is not touched
   */
  public Position position() {
    List<Load> all = new ArrayList<>(loads);
    solved.photo().pull().ifPresent(p -> all.add(pull(p)));
    List<Support> carrying = new ArrayList<>(supports);
    if (solved.photo().known.standing()) {
      carrying.add(0, Footing.feet(body()));
    }
    List<Fact> facts =
        List.of(
            new Fact("view off square", Math.toDegrees(turned()), "°"),
            new Fact("largest miss of a mark", 100 * worst(), "cm"));
    return Position.of(
        "photo " + solved.photo().still().name(), body(), pose, all, carrying, facts, notes());
  }

  /** Along the line that was drawn, at the depth of the lifter's middle. */
  private Load pull(Photo.Pull drawn) {
    Placement where = pose.placed();
    Vector3D hands = where.centre("right grip").add(where.centre("left grip")).scalarMultiply(0.5);
    Vector3D from = camera.place(drawn.from(), hands);
    Vector3D to = camera.place(drawn.to(), hands);
    return SteadyForce.of("pull", Units.newton(drawn.newtons()), hands.add(to.subtract(from)));
  }

  private double worst() {
    return marks().stream().mapToDouble(this::miss).max().orElse(0);
  }

  private String viewInWords() {
    double angle = Math.abs(turned());
    return angle < SQUARE
        ? "square on"
        : String.format(
            Locale.ROOT,
            "not square on: the lifter is turned %.0f° %s the camera",
            Math.toDegrees(angle),
            turned() > 0 ? "towards" : "away from");
  }

  /**
   * What the fit says of view, lengths and marks.
   *
   * @return sentences in the coach's words
   */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add("The view is " + viewInWords() + ". Everything is computed in space.");
    mirror.ifPresent(m -> notes.add(mirrored(m)));
    foreshortened().stream()
        .filter(f -> f.tilt() > WORTH_A_WORD || f.seen() > 1.05 * f.length())
        .forEach(f -> notes.add("The " + f + "."));
    for (Mark mark : marks()) {
      double miss = miss(mark);
      if (miss > FAR_OFF) {
        notes.add(
            String.format(
                Locale.ROOT,
                "The mark of the %s is %.0f cm from where this lifter's can be: check the mark, the"
                    + " scale and the lifter's lengths%s.",
                mark.name(),
                100 * miss,
                ends()));
      }
    }
    if (solved.photo().measuring()) {
      notes.add("Lengths taken from the marks: " + PhotoFit.lengths(body().person()) + ".");
    }
    if (solved.marks().stream().map(Mark::side).filter(s -> s != Side.MIDLINE).distinct().count()
        == 1) {
      notes.add("Only the near side is marked; the far side mirrors it.");
    }
    return notes;
  }

  private String mirrored(Solved m) {
    double worse = m.cost() - solved.cost();
    String fits =
        Math.abs(worse) < TOLD_APART
            ? "The marks fit about as well"
            : worse > 0 ? "The marks fit worse, but perhaps," : "The marks even fit better";
    return String.format(
        Locale.ROOT,
        "%s with the lifter turned %.0f° %s the camera: .other() gives that%s solution.",
        fits,
        Math.toDegrees(Math.abs(m.turned())),
        m.turned() > 0 ? "towards" : "away from",
        m.turned() * turned() < 0 ? " mirror" : "");
  }

  private String ends() {
    List<String> ends = solved.fit().ends(solved.answer());
    return ends.isEmpty() ? "" : "; at the end of their range: " + String.join(", ", ends);
  }

  /**
   * The photo with the pose, the line of force and the arms drawn over it.
   *
   * @return the picture
   */
  public Picture picture() {
    return Illustrator.pictureOf(this, List.of());
  }

  @Override
  public String text() {
    List<String> lines = new ArrayList<>();
    lines.add("photo " + solved.photo().still().name() + ": " + body().person().text());
    lines.addAll(notes());
    lines.add(String.format(Locale.ROOT, "Largest miss of a mark: %.1f cm.", 100 * worst()));
    lines.add("pose() and position() go on from here; picture() draws over the photo");
    lines.add(Caution.TEXT);
    return String.join("\n", lines);
  }

  @Override
  public String toString() {
    return text();
  }
}
