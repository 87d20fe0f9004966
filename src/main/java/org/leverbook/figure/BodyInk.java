package org.leverbook.figure;

import java.awt.geom.Area;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;

/** Draws body, spine, joints and bar. */
final class BodyInk {

  /** Thickness of the plates on one side, drawn by eye, metres. */
  private static final double PLATES = 0.07;

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;

  BodyInk(Scene view, FigureStyle style, PageScale scale) {
    this.view = view;
    this.style = style;
    this.scale = scale;
  }

  List<Ink> pieces() {
    List<Ink> pieces = new ArrayList<>();
    for (Silhouette piece : view.body()) {
      Area area = scale.onPage(piece.area());
      String fill = piece.far() ? style.farFlesh() : style.flesh();
      Pen edge = Pen.solid(style.edge(), piece.far() ? 0.7 : 1);
      pieces.add(
          new Group(attributes("body", piece.name()), List.of(new Form(area, fill, 1, edge))));
    }
    view.bar().ifPresent(bar -> pieces.add(bar(bar)));
    pieces.add(spine());
    pieces.add(joints());
    return pieces;
  }

  private static Map<String, String> attributes(String kind, String part) {
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", kind);
    attributes.put("data-part", part);
    return attributes;
  }

  private Group spine() {
    List<Ink> marks = new ArrayList<>();
    List<Vector2D> levels = view.spine().stream().map(scale::centred).toList();
    marks.add(Form.line(Curves.open(levels), Pen.solid(style.bone(), 1.2)));
    levels.forEach(
        level ->
            marks.add(
                new Form(Curves.disc(level, 2.6), style.bone(), 1, Pen.solid(style.paper(), 0.6))));
    return new Group(Map.of("class", "spine"), marks);
  }

  private Group joints() {
    List<Ink> marks = new ArrayList<>();
    for (Vector2D joint : view.joints()) {
      marks.add(
          new Form(
              Curves.disc(scale.centred(joint), 3.6),
              style.paper(),
              1,
              Pen.solid(style.bone(), 1.2)));
    }
    return new Group(Map.of("class", "joints"), marks);
  }

  private Group bar(Scene.BarSeen bar) {
    Vector2D centre = scale.centred(bar.centre());
    double plate = bar.plate() * scale.perMetre();
    if (bar.rod().getNorm() > 0) {
      return new Group(Map.of("class", "bar"), across(bar));
    }
    return new Group(
        Map.of("class", "bar"),
        List.of(
            new Form(
                Curves.disc(centre, plate), style.metal(), 0.10, Pen.solid(style.metal(), 1.6)),
            new Form(Curves.disc(centre, 0.86 * plate), "", 1, Pen.solid(style.metal(), 0.6)),
            Form.filled(
                Curves.disc(centre, Math.max(3, bar.grip() * scale.perMetre())), style.metal())));
  }

  /** A bar along the page or aslant, its plates on edge or as ovals. */
  private List<Ink> across(Scene.BarSeen bar) {
    List<Ink> ink = new ArrayList<>();
    Vector2D half = bar.rod().scalarMultiply(Scene.BarSeen.HALF_LENGTH);
    Vector2D from = scale.centred(bar.centre().subtract(half));
    Vector2D to = scale.centred(bar.centre().add(half));
    double thick = Math.max(3, 2 * bar.grip() * scale.perMetre());
    ink.add(Form.line(Curves.open(List.of(from, to)), Pen.solid(style.metal(), thick)));
    for (Area plates : plates(view)) {
      ink.add(new Form(scale.onPage(plates), style.metal(), 0.25, Pen.solid(style.metal(), 1.4)));
    }
    return ink;
  }

  /** The plates of a bar as they are seen, metres: one disc, or those of both sides. */
  static List<Area> plates(Scene view) {
    List<Area> plates = new ArrayList<>();
    view.bar()
        .ifPresent(
            bar -> {
              if (bar.rod().getNorm() == 0) {
                plates.add(new Area(Curves.disc(bar.centre(), bar.plate())));
                return;
              }
              for (double side : new double[] {-1, 1}) {
                List<Vector2D> rim = new ArrayList<>();
                for (double along : new double[] {0, PLATES}) {
                  double aside = side * (Scene.BarSeen.HALF_BETWEEN_COLLARS + along);
                  rim.addAll(rim(view, bar.middle().add(new Vector3D(0, 0, aside)), bar.plate()));
                }
                plates.add(new Area(Loft.hull(rim)));
              }
            });
    return plates;
  }

  /** Around a plate on a bar that lies across the lifter, as it is seen, metres. */
  private static List<Vector2D> rim(Scene view, Vector3D centre, double radius) {
    List<Vector2D> rim = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      double angle = 2 * Math.PI * i / 40;
      Vector3D out = new Vector3D(radius * Math.cos(angle), radius * Math.sin(angle), 0);
      rim.add(view.seen(centre.add(out)));
    }
    return rim;
  }
}
