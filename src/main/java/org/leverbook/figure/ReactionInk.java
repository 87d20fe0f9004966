package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;
import org.leverbook.statics.Reaction;

/**
 * What floor, pads and grips give, as arrows to one scale: each begins at its pressure point and is
 * as long as the push is seen to be.
 */
final class ReactionInk {

  /** The longest arrow, page units. */
  private static final double LONGEST = 130;

  /** An arrow shorter than this is a ring. */
  private static final double SHORTEST = 9;

  private static final double HEAD = 13;

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;
  private final List<Reaction> shown;
  private final double perNewton;

  ReactionInk(Scene view, FigureStyle style, PageScale scale) {
    this.view = view;
    this.style = style;
    this.scale = scale;
    this.shown = new SupportInk(view, style, scale).apart();
    double most = shown.stream().mapToDouble(r -> r.force().getNorm()).max().orElse(1);
    this.perNewton = LONGEST / Math.max(1, most);
  }

  List<Ink> arrows() {
    List<Ink> ink = new ArrayList<>();
    for (Reaction reaction : shown) {
      Point2D from = scale.onPage(view.seen(reaction.point()));
      Point2D to = tip(reaction);
      Map<String, String> attributes = new LinkedHashMap<>();
      attributes.put("class", "reaction-to-scale");
      attributes.put("data-source", reaction.source());
      attributes.put(
          "data-newtons", String.format(Locale.ROOT, "%.3f", reaction.force().getNorm()));
      attributes.put("data-per-newton", String.format(Locale.ROOT, "%.6f", perNewton));
      ink.add(new Group(attributes, from.distance(to) < SHORTEST ? ring(from) : arrow(from, to)));
    }
    return ink;
  }

  private List<Ink> arrow(Point2D from, Point2D to) {
    // The tip of a head lies 0.6 of its length beyond the end of its line.
    double back = 0.6 * HEAD / from.distance(to);
    Point2D neck =
        new Point2D.Double(
            to.getX() - back * (to.getX() - from.getX()),
            to.getY() - back * (to.getY() - from.getY()));
    Line2D line = new Line2D.Double(from, neck);
    return List.of(
        Form.line(line, Pen.solid(style.paper(), 5)),
        Form.line(line, Pen.solid(style.quiet(), 3)),
        Form.filled(Arrows.head(from, neck, HEAD, 5.5), style.quiet()));
  }

  private List<Ink> ring(Point2D at) {
    Vector2D centre = new Vector2D(at.getX(), at.getY());
    return List.of(
        new Form(Curves.disc(centre, 7), style.paper(), 1, Pen.solid(style.quiet(), 2)),
        Form.filled(Curves.disc(centre, 2.4), style.quiet()));
  }

  private Point2D tip(Reaction reaction) {
    Point2D from = scale.onPage(view.seen(reaction.point()));
    Vector2D seen = view.seen(reaction.force()).scalarMultiply(perNewton);
    return new Point2D.Double(from.getX() + seen.getX(), from.getY() - seen.getY());
  }

  List<Line2D> lines() {
    List<Line2D> lines = new ArrayList<>();
    shown.forEach(r -> lines.add(new Line2D.Double(scale.onPage(view.seen(r.point())), tip(r))));
    return lines;
  }

  List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    SupportInk supports = new SupportInk(view, style, scale);
    for (Reaction reaction : shown) {
      Point2D from = scale.onPage(view.seen(reaction.point()));
      Point2D to = tip(reaction);
      Point2D middle =
          new Point2D.Double((from.getX() + to.getX()) / 2, (from.getY() + to.getY()) / 2);
      labels.add(
          new Label(
              List.of(
                  reaction.source() + ": " + supports.name(reaction),
                  String.format(Locale.ROOT, "%.0f N", reaction.force().getNorm())),
              style.label(),
              style.quiet(),
              List.of(to, middle, from)));
    }
    return labels;
  }

  /** A bar of a round number of newtons, near a half of the longest arrow. */
  Group bar(double left, double top) {
    double rough = LONGEST / 2 / perNewton;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double newtons = power;
    for (double times : new double[] {2, 5}) {
      newtons = times * power <= rough * 1.2 ? times * power : newtons;
    }
    double length = newtons * perNewton;
    Path2D bar = new Path2D.Double();
    bar.moveTo(left, top + 2);
    bar.lineTo(left, top + 10);
    bar.moveTo(left, top + 6);
    bar.lineTo(left + length, top + 6);
    bar.moveTo(left + length, top + 2);
    bar.lineTo(left + length, top + 10);
    String words = String.format(Locale.ROOT, "%.0f N of a support's push", newtons);
    return new Group(
        Map.of("class", "force-scale", "data-newtons", String.format(Locale.ROOT, "%.0f", newtons)),
        List.of(
            Form.line(bar, Pen.solid(style.quiet(), 1.4)),
            new Words(
                words, left + length + 10, top + 10, style.caption(), false, style.ink(), false)));
  }
}
