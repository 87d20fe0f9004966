package org.leverbook.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Part;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.display.Shown;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A still photo of a lifter, seen more or less from the side, with what a coach marked in it.
 *
 * <p>{@code photo("still.png").scale(412, 655, 412, 430, cm(45)).mark("hip", 380, 420)...
 * .fit(lifter)} gives the pose. Pixels run to the right and down from the upper left corner. A
 * value: each word gives a changed copy.
 */
public final class Photo implements Shown {

  private static final double SHORTEST_SCALE = 10;
  private static final double MOST_TILT = Math.toRadians(45);

  private final Still still;
  final View view;
  final Known known;
  private final List<Mark> marks;
  private final Optional<Pull> pull;
  private final boolean measuring;

  /**
   * A line of force drawn in the photo.
   *
   * @param from where it takes hold, pixels
   * @param to where it pulls, pixels
   * @param newtons how hard
   */
  record Pull(Vector2D from, Vector2D to, double newtons) {}

  private Photo(
      Still still,
      View view,
      Known known,
      List<Mark> marks,
      Optional<Pull> pull,
      boolean measuring) {
    this.still = still;
    this.view = view;
    this.known = known;
    this.marks = List.copyOf(marks);
    this.pull = pull;
    this.measuring = measuring;
  }

  /**
   * A photo without marks.
   *
   * @param file its name
   * @return the photo
   * @throws Refused if there is none, or it is broken
   */
  public static Photo of(String file) {
    Still still = Still.read(Ask.present("photo", file, "\"still.png\""));
    return new Photo(still, View.unsaid(), Known.nothing(), List.of(), Optional.empty(), false);
  }

  private Photo seen(View changed) {
    return new Photo(still, changed, known, marks, pull, measuring);
  }

  private Photo knowing(Known changed) {
    return new Photo(still, view, changed, marks, pull, measuring);
  }

  /**
   * The scale by two points and their true distance, both in a plane square to the view through the
   * lifter: a plate on the bar from its top to its bottom, not the nearer end of the bar (that
   * appears larger; see {@link #scaleNearer}).
   *
   * @param ax first point
   * @param ay first point
   * @param bx second point
   * @param by second point
   * @param length their true distance, 2 to 300 cm
   * @return the changed photo
   * @throws Refused if the points are closer than ten pixels
   */
  public Photo scale(double ax, double ay, double bx, double by, Quantity<Length> length) {
    double metres = Ask.length("true distance of the two points", length, 0.02, 3);
    double pixels = inside("scale", ax, ay).distance(inside("scale", bx, by));
    if (pixels < SHORTEST_SCALE) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The two points of the scale are %.1f pixels apart; a pixel's error would then be"
                  + " %.0f %%. Choose points farther apart, at least %.0f pixels.",
              pixels,
              100 / Math.max(1, pixels),
              SHORTEST_SCALE));
    }
    return seen(view.scale(pixels / metres));
  }

  /**
   * The scale by a part of the lifter that lies square to the view: an upright shank does, whatever
   * way the lifter is turned.
   *
   * @param part {@code SHANK}, {@code THIGH}, {@code UPPER_ARM} or {@code FOREARM}, both ends
   *     marked
   * @return the changed photo
   * @throws Refused if it is another part
   */
  public Photo scale(Part part) {
    if (Stretch.of(Ask.present("part", part, "SHANK")).isEmpty()) {
      throw new Refused(
          "The scale can be taken from SHANK, THIGH, UPPER_ARM or FOREARM, not from the "
              + part.word()
              + ".");
    }
    return seen(view.scale(part));
  }

  /**
   * The two points of the scale were nearer to the camera than the lifter's middle, as at the end
   * of a bar. Counts only where the camera's distance is known.
   *
   * @param length by how much, -200 to 200 cm
   * @return the changed photo
   */
  public Photo scaleNearer(Quantity<Length> length) {
    return seen(view.nearer(Ask.length("how much nearer the scale was", length, -2, 2)));
  }

  /**
   * The distance from the camera to the lifter's middle, so that what is nearer counts as appearing
   * larger. Left out, everything has one scale, as from far away.
   *
   * @param length 1 to 100 m
   * @return the changed photo
   */
  public Photo distance(Quantity<Length> length) {
    return seen(view.distance(Ask.length("distance of the camera", length, 1, 100)));
  }

  /**
   * Two points of a line that is upright in truth, where the camera was held askew.
   *
   * @param lowX lower point
   * @param lowY lower point
   * @param highX upper point
   * @param highY upper point
   * @return the changed photo
   * @throws Refused if the line leans by more than 45°
   */
  public Photo upright(double lowX, double lowY, double highX, double highY) {
    Vector2D up = inside("upright", highX, highY).subtract(inside("upright", lowX, lowY));
    double rolled = Math.atan2(up.getX(), -up.getY());
    if (Math.abs(rolled) > MOST_TILT) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The upright line leans by %.0f° in the photo; up to 45° can be meant. Give its lower"
                  + " point first, and turn the photo if it lies on its side.",
              Math.toDegrees(rolled)));
    }
    return seen(view.rolled(rolled));
  }

  /**
   * How far the camera looks down; level unless said.
   *
   * @param angle -45 to 45°
   * @return the changed photo
   */
  public Photo lookingDown(Quantity<Angle> angle) {
    return seen(view.down(Ask.angle("looking down", angle, -MOST_TILT, MOST_TILT)));
  }

  /**
   * Which side of the lifter the photo shows; told by the foot's direction unless said.
   *
   * @param side left or right
   * @return the changed photo
   * @throws Refused if it is neither
   */
  public Photo seenFrom(Side side) {
    if (Ask.present("side", side, "RIGHT") == Side.MIDLINE) {
      throw new Refused("A photo is seen from the lifter's LEFT or RIGHT.");
    }
    return seen(view.shown(side));
  }

  /**
   * The feet do not stand flat on level ground: a lifter who sits, lies, hangs or stands on toes.
   */
  public Photo offTheFloor() {
    return knowing(known.offTheFloor());
  }

  /**
   * How far apart the ankles stand, where the coach knows it.
   *
   * @param length 0 to 150 cm
   * @return the changed photo
   */
  public Photo stanceWidth(Quantity<Length> length) {
    return knowing(known.stanceWidth(Ask.length("stance width", length, 0, 1.5)));
  }

  /**
   * How far each foot points outward, where the coach knows it.
   *
   * @param angle 0 to 60°
   * @return the changed photo
   */
  public Photo turnOut(Quantity<Angle> angle) {
    return knowing(known.turnOut(Ask.angle("turn-out", angle, 0, Math.toRadians(60))));
  }

  /**
   * How far apart the hands grip a bar, where the coach knows it.
   *
   * @param length 0 to 200 cm
   * @return the changed photo
   */
  public Photo gripWidth(Quantity<Length> length) {
    return knowing(known.gripWidth(Ask.length("grip width", length, 0, 2)));
  }

  /**
   * Each hand holds its own weight: nothing is taken for usual of how far apart they are.
   *
   * @return the changed photo
   */
  public Photo handsApart() {
    return knowing(known.handsApart());
  }

  /**
   * One place is nearer to the camera than another: tells apart what a picture leaves open.
   *
   * @param one as in "knee"
   * @param other as in "hip"
   * @return the changed photo
   * @throws Refused if there is no such landmark
   */
  public Photo nearer(String one, String other) {
    return knowing(
        known.nearer(
            new Known.Pair(
                Landmark.asked(one), Mark.sideOf(one), Landmark.asked(other), Mark.sideOf(other))));
  }

  /**
   * A landmark at a pixel. Without "left" or "right" in front it is one of the side that the photo
   * shows; the far side mirrors it unless it is marked too.
   *
   * @param name as in "hip" or "left knee"
   * @param x to the right
   * @param y down
   * @return the changed photo
   * @throws Refused if there is no such landmark, or the pixel is not in the photo
   */
  public Photo mark(String name, double x, double y) {
    Landmark landmark = Landmark.asked(name);
    Mark mark = new Mark(landmark, Mark.sideOf(name), inside(name, x, y));
    List<Mark> more = new ArrayList<>(marks);
    more.removeIf(m -> m.name().equals(mark.name()));
    more.add(mark);
    return new Photo(still, view, known, more, pull, measuring);
  }

  /**
   * A force along a line of the photo, on both hands: a cable, from the handle to its pulley.
   *
   * @param fromX where it takes hold
   * @param fromY where it takes hold
   * @param toX where it pulls to
   * @param toY where it pulls to
   * @param force how hard, 0 to 20000 N
   * @return the changed photo
   * @throws Refused if a point is not in the photo, or the line has no length
   */
  public Photo lineOfForce(
      double fromX, double fromY, double toX, double toY, Quantity<Force> force) {
    Vector2D from = inside("line of force", fromX, fromY);
    Vector2D to = inside("line of force", toX, toY);
    if (from.distance(to) < SHORTEST_SCALE) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The line of force is only %.1f pixels long; give two points of it at least %.0f"
                  + " pixels apart.",
              from.distance(to),
              SHORTEST_SCALE));
    }
    Pull drawn = new Pull(from, to, Ask.force("line of force", force, 0, 20_000));
    return new Photo(still, view, known, marks, Optional.of(drawn), measuring);
  }

  /**
   * The lifter's thighs, shanks, upper arms and forearms are as long as they appear: for a view
   * that is square on. Nothing can then be told about how far a part is turned out of the picture.
   */
  public Photo lengthsFromMarks() {
    return new Photo(still, view, known, marks, pull, true);
  }

  /**
   * The pose of this lifter that fits the marks.
   *
   * @param lifter who is seen
   * @return the fit, the likelier of two solutions where the marks leave them open
   * @throws Refused if scale or marks are missing, or no such body can be seen like this
   */
  public Fit fit(Person lifter) {
    Ask.present("lifter", lifter, "person(MALE, kg(85), cm(178))");
    return PhotoFit.of(this, lifter);
  }

  private Vector2D inside(String what, double x, double y) {
    boolean in = x >= 0 && y >= 0 && x <= still.width() && y <= still.height();
    if (!in) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The %s at pixel (%s, %s) is not in the photo, which is %d pixels wide and %d high.",
              what,
              number(x),
              number(y),
              still.width(),
              still.height()));
    }
    return new Vector2D(x, y);
  }

  private static String number(double value) {
    return Double.isFinite(value) ? String.format(Locale.ROOT, "%.0f", value) : "" + value;
  }

  /**
   * The picture file.
   *
   * @return its name and pixels
   */
  public Still still() {
    return still;
  }

  /**
   * What was marked.
   *
   * @return the marks, in the order they were made
   */
  public List<Mark> marks() {
    return marks;
  }

  Optional<Pull> pull() {
    return pull;
  }

  boolean measuring() {
    return measuring;
  }

  @Override
  public String text() {
    String marked =
        marks.isEmpty()
            ? "nothing marked yet"
            : "marked: " + marks.stream().map(Mark::name).collect(Collectors.joining(", "));
    return String.format(
        Locale.ROOT,
        "photo %s, %d x %d pixels; %s\nfit(lifter) gives the pose",
        still.name(),
        still.width(),
        still.height(),
        marked);
  }

  @Override
  public String toString() {
    return text();
  }
}
