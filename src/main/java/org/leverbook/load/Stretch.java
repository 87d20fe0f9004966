package org.leverbook.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leverbook.quantity.Refused;

/**
 * How hard a band pulls at how much stretch: straight lines between measured points, the last one
 * carried on. One line from the origin is the linear law T = k s.
 *
 * @param points stretch beyond the rest length (m) and force (N), both rising, from (0, 0)
 */
public record Stretch(List<Point> points) {

  /**
   * A measured point.
   *
   * @param metres stretch beyond the rest length
   * @param newtons the pull there
   */
  public record Point(double metres, double newtons) {}

  /** Far beyond any band of a gym, metres. */
  private static final double LONGEST = 100;

  /** Far beyond any band of a gym, newtons. */
  private static final double STRONGEST = 100_000;

  /** Points nearer than this, in metres or newtons, say nothing of how the band rises. */
  private static final double STEP = 1e-6;

  /**
   * Checks the curve and keeps its own copy.
   *
   * @throws Refused if there are fewer than two points, or they do not rise from (0, 0)
   */
  public Stretch {
    if (points.size() < 2 || points.get(0).metres() != 0 || points.get(0).newtons() != 0) {
      throw new Refused(
          "A band's curve begins at no stretch and no force and needs one more point.");
    }
    for (int i = 1; i < points.size(); i++) {
      Point last = points.get(i - 1);
      Point point = points.get(i);
      reachable(point);
      if (!(point.metres() - last.metres() >= STEP && point.newtons() - last.newtons() >= STEP)) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "A band pulls harder the further it is stretched, but its curve goes from %.1f N at %.1f cm to %.1f N at"
                    + " %.1f cm.",
                last.newtons(),
                100 * last.metres(),
                point.newtons(),
                100 * point.metres()));
      }
    }
    points = List.copyOf(points);
  }

  private static void reachable(Point point) {
    if (!(Math.abs(point.metres()) <= LONGEST && Math.abs(point.newtons()) <= STRONGEST)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "A band's point at %s m and %s N is none that a band reaches: up to %.0f m and %,.0f N"
                  + " can be said.",
              point.metres(),
              point.newtons(),
              LONGEST,
              STRONGEST));
    }
  }

  /**
   * The linear law.
   *
   * @param stiffness newtons per metre, more than zero
   * @return the curve
   * @throws Refused if the stiffness is not above zero
   */
  public static Stretch linear(double stiffness) {
    if (!(stiffness > 0) || Double.isInfinite(stiffness)) {
      throw new Refused(
          "The band's stiffness is " + stiffness + " N/m, but must be a number above zero.");
    }
    return new Stretch(List.of(new Point(0, 0), new Point(1, stiffness)));
  }

  /**
   * The same curve with one more point.
   *
   * @param metres stretch beyond the rest length
   * @param newtons the pull there
   * @return the longer curve
   */
  public Stretch and(double metres, double newtons) {
    List<Point> longer = new ArrayList<>(points);
    longer.add(new Point(metres, newtons));
    return new Stretch(longer);
  }

  /**
   * The pull at a stretch.
   *
   * @param metres beyond the rest length
   * @return newtons; zero while slack
   * @throws Refused if the stretch is no number, or longer than any band gives
   */
  public double force(double metres) {
    if (!Double.isFinite(metres)) {
      throw new Refused("A band's stretch is asked for as a number of metres, not " + metres + ".");
    }
    if (metres <= 0) {
      return 0;
    }
    if (metres > LONGEST) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The band would be stretched by %.4g m, where no band gives more than %.0f m: fix it"
                  + " nearer to the hands.",
              metres,
              LONGEST));
    }
    int i = 1;
    while (i < points.size() - 1 && metres > points.get(i).metres()) {
      i++;
    }
    Point from = points.get(i - 1);
    Point to = points.get(i);
    double share = (metres - from.metres()) / (to.metres() - from.metres());
    return from.newtons() + share * (to.newtons() - from.newtons());
  }

  /**
   * The stretch at a pull: the law read backwards.
   *
   * @param newtons zero or more
   * @return metres beyond the rest length
   * @throws Refused if the force is negative: a band cannot push
   */
  public double metres(double newtons) {
    if (!(newtons >= 0 && newtons <= STRONGEST)) {
      throw new Refused(
          newtons < 0
              ? "A band cannot push: it was asked for " + newtons + " N. Give 0 N or more."
              : String.format(
                  Locale.ROOT, "A band pulls with up to %,.0f N, not %s N.", STRONGEST, newtons));
    }
    int i = 1;
    while (i < points.size() - 1 && newtons > points.get(i).newtons()) {
      i++;
    }
    Point from = points.get(i - 1);
    Point to = points.get(i);
    double share = (newtons - from.newtons()) / (to.newtons() - from.newtons());
    return from.metres() + share * (to.metres() - from.metres());
  }
}
