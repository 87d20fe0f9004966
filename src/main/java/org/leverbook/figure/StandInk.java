package org.leverbook.figure;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.load.Barbell;
import org.leverbook.pose.Placement;
import org.leverbook.support.Contact;
import org.leverbook.support.FixedBar;
import org.leverbook.support.Footing;
import org.leverbook.support.Pad;
import org.leverbook.support.Support;

/**
 * What holds bars, pads and feet up: posts, legs, boxes, so that nothing floats. Places are true,
 * shapes are drawn by eye and carry no number.
 */
final class StandInk {

  /** A sole is drawn this far beyond its pressure points, metres. */
  private static final double BESIDE = 0.06;

  /** A plate under a heel reaches this far beyond its pressure points, metres. */
  private static final double HEEL = 0.045;

  /** Half of a rail between whose ends a lifter dips, metres. */
  private static final double RAIL = 0.35;

  /** Lower than this nothing needs a leg, metres. */
  private static final double LOW = 0.12;

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;

  StandInk(Scene view, FigureStyle style, PageScale scale) {
    this.view = view;
    this.style = style;
    this.scale = scale;
  }

  List<Ink> pieces() {
    Placement where = view.position().placement();
    List<Ink> ink = new ArrayList<>();
    for (Support support : view.position().supports()) {
      List<Ink> drawn = new ArrayList<>();
      if (support instanceof Footing footing) {
        drawn.addAll(boxes(footing, where));
      } else if (support instanceof FixedBar bar) {
        drawn.addAll(bar(bar, where));
      } else if (support instanceof Pad pad && pad.length() < 3) {
        drawn.addAll(legs(pad, where));
      }
      if (!drawn.isEmpty()) {
        ink.add(new Group(Map.of("class", "stand", "data-source", support.source()), drawn));
      }
    }
    return ink;
  }

  /** A step or a block under each foot that stands higher than the floor, a plate under a heel. */
  private List<Ink> boxes(Footing footing, Placement where) {
    List<Ink> ink = new ArrayList<>();
    for (Side side : footing.heights().keySet()) {
      double height = footing.heights().get(side);
      if (height > 0) {
        ink.addAll(box(under(footing, where, side, ""), BESIDE, 0, height));
      }
      if (footing.underHeels() > 0) {
        ink.addAll(box(under(footing, where, side, "heel"), HEEL, height, footing.underHeels()));
      }
    }
    return ink;
  }

  /** From where to where a foot, or a part of it, touches its ground, metres. */
  private DoubleSummaryStatistics under(Footing footing, Placement where, Side side, String part) {
    return footing.contacts(where).stream()
        .filter(c -> c.name().startsWith(side.word()) && c.name().contains(part))
        .map(Contact::point)
        .mapToDouble(point -> view.seen(point).getX())
        .summaryStatistics();
  }

  private List<Ink> box(
      DoubleSummaryStatistics along, double beside, double ground, double height) {
    if (along.getCount() == 0) {
      return List.of();
    }
    double length = along.getMax() - along.getMin() + 2 * beside;
    Vector2D corner = scale.centred(new Vector2D(along.getMin() - beside, ground + height));
    double unit = scale.perMetre();
    return List.of(
        new Form(
            new Rectangle2D.Double(corner.getX(), corner.getY(), length * unit, height * unit),
            style.metal(),
            0.25,
            Pen.solid(style.metal(), 1.2)));
  }

  /** Seen end-on with its post, or along the way ahead as a rail on two posts. */
  private List<Ink> bar(FixedBar bar, Placement where) {
    List<Ink> ink = new ArrayList<>();
    for (Side side : bar.hands()) {
      Vector2D hand = view.seen(where.at(where.tree().place(Site.HAND, side)));
      Vector3D along = where.frame(where.tree().indexOf(side.of("hand"))).z();
      if (Math.abs(view.seen(along).getX()) > 0.9) {
        Vector2D half = new Vector2D(RAIL, 0);
        ink.add(line(hand.subtract(half), hand.add(half), 4));
        ink.add(post(hand.subtract(half), 2.4));
        ink.add(post(hand.add(half), 2.4));
      } else {
        ink.add(post(hand, 2.4));
        double radius = Math.max(3, Barbell.GRIP_RADIUS * scale.perMetre());
        ink.add(Form.filled(Curves.disc(scale.centred(hand), radius), style.metal()));
      }
    }
    return ink;
  }

  /** Two legs under what looks up, one post under what stands or looks down. */
  private List<Ink> legs(Pad pad, Placement where) {
    List<Vector3D> ends = pad.ends(where);
    Vector2D one = view.seen(ends.get(0));
    Vector2D other = view.seen(ends.get(1));
    if (Math.min(one.getY(), other.getY()) < LOW) {
      return List.of();
    }
    if (pad.facing().getY() > 0.3) {
      Vector2D in = other.subtract(one).scalarMultiply(0.15);
      return List.of(post(one.add(in), 2.4), post(other.subtract(in), 2.4));
    }
    Vector2D lower = one.getY() < other.getY() ? one : other;
    Vector2D ahead = one.getX() > other.getX() ? one : other;
    return List.of(post(pad.facing().getY() < -0.3 ? ahead : lower, 2.4));
  }

  private Form post(Vector2D top, double width) {
    return line(top, new Vector2D(top.getX(), 0), width);
  }

  private Form line(Vector2D from, Vector2D to, double width) {
    Path2D path = Curves.open(List.of(scale.centred(from), scale.centred(to)));
    return Form.line(path, Pen.solid(style.metal(), width));
  }
}
