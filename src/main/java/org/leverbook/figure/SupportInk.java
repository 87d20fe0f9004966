package org.leverbook.figure;

import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.statics.Reaction;
import org.leverbook.support.LimbRest;
import org.leverbook.support.Pad;
import org.leverbook.support.Support;

/** Draws pads to scale, and what each support other than the floor gives, at its pressure point. */
final class SupportInk {

  /** Thickness of a cushion, metres: drawn by eye. */
  private static final double CUSHION = 0.05;

  /** What is longer than any cushion is floor, metres. */
  private static final double LONGEST = 3;

  private static final double ARROW = 60;

  /** Tails end above the words below the floor, page units. */
  private static final double BELOW = 0.9 * FloorInk.DEPTH;

  /** Two points this close look like one, metres. */
  private static final double NEAR = 0.01;

  private static final String RIGHT = "right ";
  private static final String LEFT = "left ";

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;

  SupportInk(Scene view, FigureStyle style, PageScale scale) {
    this.view = view;
    this.style = style;
    this.scale = scale;
  }

  /** Points of cushions that a page must hold, metres. */
  static List<Vector2D> extent(Scene view) {
    List<Vector2D> points = new ArrayList<>();
    for (Support support : view.position().supports()) {
      if (support instanceof Pad pad && pad.length() < LONGEST) {
        pad.ends(view.position().placement()).forEach(end -> points.add(view.seen(end)));
      }
    }
    return points;
  }

  /** The cushions, to stand behind the body. */
  List<Ink> pads() {
    List<Ink> ink = new ArrayList<>();
    for (Support support : view.position().supports()) {
      if (support instanceof Pad pad && pad.length() < LONGEST) {
        ink.add(
            slab(pad.source(), pad.ends(view.position().placement()), pad.facing(), pad.width()));
      } else if (support instanceof LimbRest rest && rest.height() > 0) {
        ink.add(slab(rest.source(), rest.ends(view.position().placement()), Vector3D.PLUS_J, 0));
      }
    }
    return ink;
  }

  private Ink slab(String source, List<Vector3D> ends, Vector3D facing, double width) {
    Area cushion = scale.onPage(cushion(view, ends, facing, width));
    return new Group(
        Map.of("class", "pad", "data-source", source),
        List.of(new Form(cushion, style.metal(), 0.35, Pen.solid(style.metal(), 1.4))));
  }

  private static Area cushion(Scene view, List<Vector3D> ends, Vector3D facing, double width) {
    List<Vector2D> corners = new ArrayList<>();
    for (Vector3D end : ends) {
      for (double aside : new double[] {-width / 2, width / 2}) {
        Vector3D edge = end.add(new Vector3D(0, 0, aside));
        corners.add(view.seen(edge));
        corners.add(view.seen(edge.add(facing.scalarMultiply(-CUSHION))));
      }
    }
    return new Area(Loft.hull(corners));
  }

  /** What labels had better not cover, metres. */
  static List<Area> covered(Scene view) {
    return view.position().supports().stream()
        .filter(Pad.class::isInstance)
        .map(Pad.class::cast)
        .filter(pad -> pad.length() < LONGEST)
        .map(pad -> cushion(view, pad.ends(view.position().placement()), pad.facing(), pad.width()))
        .toList();
  }

  /** One arrow for each support and part of the body that can be told apart from the side. */
  List<Ink> arrows() {
    return arrows(BELOW);
  }

  /** The same with so much room for them below the floor, page units. */
  List<Ink> arrows(double below) {
    List<Ink> ink = new ArrayList<>();
    for (Reaction reaction : shown()) {
      Point2D tip = scale.onPage(view.seen(reaction.point()));
      Point2D tail = tail(reaction, below);
      ink.add(
          new Group(
              Map.of(
                  "class",
                  "reaction",
                  "data-source",
                  reaction.source(),
                  "data-newtons",
                  String.format(Locale.ROOT, "%.3f", reaction.force().getNorm())),
              List.of(
                  Form.line(new Line2D.Double(tail, tip), Pen.solid(style.bone(), 2.6)),
                  Form.filled(Arrows.head(tail, tip, 12, 5), style.bone()))));
    }
    return ink;
  }

  /** A name and a size for each arrow. */
  List<Label> labels() {
    List<Label> labels = new ArrayList<>();
    for (Reaction reaction : shown()) {
      labels.add(
          new Label(
              List.of(
                  reaction.source() + ": " + name(reaction),
                  String.format(Locale.ROOT, "%.0f N", reaction.force().getNorm())),
              style.label(),
              style.bone(),
              List.of(tail(reaction, BELOW))));
    }
    return labels;
  }

  private Point2D tail(Reaction reaction, double below) {
    Vector2D seen = view.seen(reaction.force()).normalize();
    Point2D tip = scale.onPage(view.seen(reaction.point()));
    double room = scale.bottom() + below - tip.getY();
    double steep = ARROW * seen.getY();
    double length = steep > room && room > 0 ? ARROW * Math.max(0.3, room / steep) : ARROW;
    return new Point2D.Double(tip.getX() - length * seen.getX(), tip.getY() + length * seen.getY());
  }

  /** The floor's push under the feet has its own mark; of two alike the left one stays hidden. */
  private List<Reaction> shown() {
    List<Reaction> all =
        view.position().supportForces().stream()
            .filter(r -> !r.source().equals("floor"))
            .filter(r -> view.seen(r.force()).getNorm() > seenLeast(r))
            .toList();
    return withoutTwins(all);
  }

  /** Every push that can be told apart, the floor's too. */
  List<Reaction> apart() {
    return withoutTwins(
        view.position().supportForces().stream().filter(r -> r.force().getNorm() > 1).toList());
  }

  private List<Reaction> withoutTwins(List<Reaction> all) {
    return all.stream().filter(r -> !r.on().startsWith(LEFT) || !hasTwin(r, all)).toList();
  }

  /** Of a push that is seen nearly end-on an arrow would tell nothing. */
  private static double seenLeast(Reaction reaction) {
    return Math.max(1, 0.2 * reaction.force().getNorm());
  }

  /** As in "each foot" where both sides look the same from the side. */
  String name(Reaction reaction) {
    String on = reaction.on();
    boolean both = on.startsWith(RIGHT) && hasTwin(reaction, view.position().supportForces());
    return both ? "each " + on.substring(RIGHT.length()) : on;
  }

  private boolean hasTwin(Reaction one, List<Reaction> all) {
    String part = one.on().replaceFirst("^(right|left) ", "");
    return all.stream()
        .anyMatch(
            r ->
                !r.on().equals(one.on())
                    && r.source().equals(one.source())
                    && r.on().replaceFirst("^(right|left) ", "").equals(part)
                    && view.seen(r.point()).distance(view.seen(one.point())) < NEAR
                    && view.seen(r.force()).distance(view.seen(one.force()))
                        < 0.01 * one.force().getNorm());
  }
}
