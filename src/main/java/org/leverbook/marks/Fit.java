package org.leverbook.marks;

import java.util.ArrayList;
import java.util.Comparator;
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
 * fit.other()} the mirror solution, each part turned out of the picture the other way; {@code
 * fit.solutions()} all that fit the marks about as well. A value.
 */
public final class Fit implements Shown {

  /** Sums that differ by less are as likely: three standard deviations. */
  private static final double TOLD_APART = 9;

  private final Solved solved;
  private final Optional<Mirrored> mirror;
  private final List<Solved> all;
  private final Pose pose;
  private final Camera camera;
  private final List<Load> loads;
  private final List<Support> supports;

  private Fit(
      Solved solved,
      Optional<Mirrored> mirror,
      List<Solved> all,
      List<Load> loads,
      List<Support> supports) {
    this.solved = solved;
    this.mirror = mirror;
    this.all = List.copyOf(all);
    this.pose = solved.pose();
    this.camera = solved.camera();
    this.loads = List.copyOf(loads);
    this.supports = List.copyOf(supports);
  }

  /** The likeliest of all solutions, which come in that order. */
  static Fit of(List<Solved> all) {
    Solved best = all.get(0);
    return new Fit(best, Mirror.of(best), all, List.of(), List.of());
  }

  private Fit with(Solved chosen) {
    return chosen == solved ? this : new Fit(chosen, Mirror.of(chosen), all, loads, supports);
  }

  /**
   * With loads.
   *
   * @param more as in {@code barbell(kg(60))}
   * @return the changed fit
   */
  public Fit holding(Load... more) {
    List<Load> carried = new ArrayList<>(loads);
    carried.addAll(List.of(more));
    return new Fit(solved, mirror, all, carried, supports);
  }

  /**
   * On supports: for a lifter who does not stand, what carries.
   *
   * @param more as in {@code bench(deg(0))}
   * @return the changed fit
   */
  public Fit on(Support... more) {
    List<Support> carrying = new ArrayList<>(supports);
    carrying.addAll(List.of(more));
    return new Fit(solved, mirror, all, loads, carrying);
  }

  /**
   * The mirror solution: one picture does not tell on which side of its plane a part lies that
   * looks short, so here each is turned to the other side, as far as joints and stance allow; the
   * notes name what stayed.
   *
   * @return the other fit, whose mirror is this one
   * @throws Refused if the view is square on, or nothing can turn the other way
   */
  public Fit other() {
    Mirrored chosen =
        mirror.orElseThrow(
            () ->
                new Refused(
                    "There is no mirror solution: the view is "
                        + told().view()
                        + ", and no part of this lifter can turn to the other side of the picture."
                        + " Other poses that fit are in .solutions()."));
    return new Fit(chosen.solved(), Optional.of(chosen.back(solved)), all, loads, supports);
  }

  /** Whether there is a mirror solution. */
  public boolean hasOther() {
    return mirror.isPresent();
  }

  /**
   * All poses that the marks, and how lifters usually hold themselves, leave open.
   *
   * @return this one first, then those that fit about as well or better, the likeliest first
   */
  public List<Fit> solutions() {
    List<Fit> open = new ArrayList<>(List.of(this));
    likely().forEach(s -> open.add(with(s)));
    return open;
  }

  private List<Solved> likely() {
    return all.stream().filter(s -> s != solved && s.cost() < solved.cost() + TOLD_APART).toList();
  }

  /**
   * The likeliest solution that is turned towards the camera.
   *
   * @return this one, the mirror solution or another; where none is, the one turned that way most
   */
  public Fit towardsCamera() {
    return turnedTo(1);
  }

  /**
   * The likeliest solution that is turned away from the camera.
   *
   * @return this one, the mirror solution or another; where none is, the one turned that way most
   */
  public Fit awayFromCamera() {
    return turnedTo(-1);
  }

  private Fit turnedTo(int sign) {
    List<Solved> known = new ArrayList<>(all);
    known.add(solved);
    mirror.ifPresent(m -> known.add(m.solved()));
    Solved chosen =
        known.stream()
            .filter(s -> sign * s.turned() >= 0)
            .min(Comparator.comparingDouble(Solved::cost))
            .orElseGet(
                () ->
                    known.stream()
                        .max(Comparator.comparingDouble(s -> sign * s.turned()))
                        .orElseThrow());
    return mirror.isPresent() && mirror.get().solved() == chosen ? other() : with(chosen);
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
    List<Load> acting = new ArrayList<>(loads);
    solved.photo().pull().ifPresent(p -> acting.add(pull(p)));
    List<Support> carrying = new ArrayList<>(supports);
    if (solved.photo().known.standing()) {
      carrying.add(0, Footing.feet(body()));
    }
    List<Fact> facts =
        List.of(
            new Fact("view off square", Math.toDegrees(turned()), "°"),
            new Fact("largest miss of a mark", 100 * worst(), "cm"));
    return Position.of(
        "photo " + solved.photo().still().name(), body(), pose, acting, carrying, facts, notes());
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

  /**
   * What the fit says of view, lengths and marks.
   *
   * @return sentences in the coach's words
   */
  public List<String> notes() {
    return told().all();
  }

  private FitNotes told() {
    return new FitNotes(this, solved, mirror, likely());
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
