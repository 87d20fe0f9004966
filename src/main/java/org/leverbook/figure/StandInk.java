package org.leverbook.figure;

import java.awt.geom.Path2D;
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

  /** Where a foot, or a part of it, touches its ground. */
  private List<Vector3D> under(Footing footing, Placement where, Side side, String part) {
    return footing.contacts(where).stream()
        .filter(c -> c.name().startsWith(side.word()) && c.name().contains(part))
        .map(Contact::point)
        .toList();
  }

  /** A block upon a ground, under points and a little around them. */
  private List<Ink> box(List<Vector3D> points, double beside, double ground, double height) {
    if (points.isEmpty()) {
      return List.of();
    }
    DoubleSummaryStatistics along = points.stream().mapToDouble(Vector3D::getX).summaryStatistics();
    DoubleSummaryStatistics aside = points.stream().mapToDouble(Vector3D::getZ).summaryStatistics();
    List<Vector2D> corners = new ArrayList<>();
    for (double x : new double[] {along.getMin() - beside, along.getMax() + beside}) {
      for (double z : new double[] {aside.getMin() - beside, aside.getMax() + beside}) {
        corners.add(scale.centred(view.seen(new Vector3D(x, ground, z))));
        corners.add(scale.centred(view.seen(new Vector3D(x, ground + height, z))));
      }
    }
    return List.of(
        new Form(Loft.hull(corners), style.metal(), 0.25, Pen.solid(style.metal(), 1.2)));
  }

  /** Seen end-on with its post, or along the way ahead as a rail on two posts. */
  private List<Ink> bar(FixedBar bar, Placement where) {
    List<Ink> ink = new ArrayList<>();
    for (Side side : bar.hands()) {
      Vector3D hand = where.at(where.tree().place(Site.HAND, side));
      Vector3D along = where.frame(where.tree().indexOf(side.of("hand"))).z();
      if (Math.abs(view.seen(along).getX()) > 0.9) {
        Vector3D half = view.sight().across().scalarMultiply(RAIL);
        ink.add(line(view.seen(hand.subtract(half)), view.seen(hand.add(half)), 4));
        ink.add(post(hand.subtract(half), 2.4));
        ink.add(post(hand.add(half), 2.4));
      } else {
        ink.add(post(hand, 2.4));
        double radius = Math.max(3, Barbell.GRIP_RADIUS * scale.perMetre());
        ink.add(Form.filled(Curves.disc(scale.centred(view.seen(hand)), radius), style.metal()));
      }
    }
    return ink;
  }

  /** Two legs under what looks up, one post under what stands or looks down. */
  private List<Ink> legs(Pad pad, Placement where) {
    List<Vector3D> ends = pad.ends(where);
    Vector3D one = ends.get(0);
    Vector3D other = ends.get(1);
    if (Math.min(one.getY(), other.getY()) < LOW) {
      return List.of();
    }
    if (pad.facing().getY() > 0.3) {
      Vector3D in = other.subtract(one).scalarMultiply(0.15);
      return List.of(post(one.add(in), 2.4), post(other.subtract(in), 2.4));
    }
    Vector3D lower = one.getY() < other.getY() ? one : other;
    Vector3D ahead = view.seen(one).getX() > view.seen(other).getX() ? one : other;
    return List.of(post(pad.facing().getY() < -0.3 ? ahead : lower, 2.4));
  }

  private Form post(Vector3D top, double width) {
    Vector3D foot = new Vector3D(top.getX(), 0, top.getZ());
    return line(view.seen(top), view.seen(foot), width);
  }

  private Form line(Vector2D from, Vector2D to, double width) {
    Path2D path = Curves.open(List.of(scale.centred(from), scale.centred(to)));
    return Form.line(path, Pen.solid(style.metal(), width));
  }
}
