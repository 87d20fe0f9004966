package org.leverbook.figure;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.load.Cable;
import org.leverbook.load.Load;
import org.leverbook.load.Sled;
import org.leverbook.pose.Placement;

/**
 * What stands behind a load: the column and stack of a cable, the rail and plate of a sled. Pulley,
 * rail and plate are at their true places; the rest is drawn by eye and carries no number.
 */
final class MachineInk {

  /** Drawn by eye, metres. */
  private static final double COLUMN = 0.20;

  private static final double BESIDE_PULLEY = 0.07;
  private static final double BESIDE_BODY = 0.12;
  private static final double OVER_PULLEY = 0.10;
  private static final double LOWEST_TOP = 1.1;
  private static final double STACK = 0.45;
  private static final double STACK_PLATE = 0.05;
  private static final double FARTHEST = 2.0;
  private static final double PLATE_EDGE = 0.08;
  private static final double CARRIAGE = 0.24;
  private static final double DISC = 0.2;

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;

  MachineInk(Scene view, FigureStyle style, PageScale scale) {
    this.view = view;
    this.style = style;
    this.scale = scale;
  }

  /** Points that the page must hold, metres. */
  static List<Vector2D> extent(Scene view) {
    List<Vector2D> points = new ArrayList<>();
    for (Load load : view.position().loads()) {
      column(load, view)
          .ifPresent(
              c -> {
                points.add(new Vector2D(c.left(), 0));
                points.add(new Vector2D(c.left() + COLUMN, c.top()));
              });
      rail(load, view)
          .ifPresent(
              r -> {
                points.add(r.at(CARRIAGE + DISC, r.high()));
                points.add(r.at(CARRIAGE, r.high() + DISC));
              });
    }
    return points;
  }

  /** What labels had better not cover, metres. */
  static List<Area> covered(Scene view) {
    List<Area> covered = new ArrayList<>();
    for (Load load : view.position().loads()) {
      column(load, view)
          .map(c -> new Rectangle2D.Double(c.left(), 0, COLUMN, c.top()))
          .ifPresent(box -> covered.add(new Area(box)));
      rail(load, view)
          .map(r -> Curves.disc(r.at(CARRIAGE, r.middle()), DISC))
          .ifPresent(disc -> covered.add(new Area(disc)));
    }
    return covered;
  }

  List<Ink> pieces() {
    List<Ink> ink = new ArrayList<>();
    for (Load load : view.position().loads()) {
      List<Ink> drawn = new ArrayList<>();
      column(load, view).ifPresent(column -> drawn.addAll(drawn(column)));
      rail(load, view).ifPresent(rail -> drawn.addAll(drawn(rail)));
      if (!drawn.isEmpty()) {
        ink.add(new Group(Map.of("class", "machine", "data-source", load.source()), drawn));
      }
    }
    return ink;
  }

  /**
   * The column of a cable.
   *
   * @param left its left edge, metres
   * @param top its upper edge, metres
   * @param pulley where the cable leaves it
   */
  private record Column(double left, double top, Vector2D pulley) {}

  /** A cable that comes towards the eye, or from far away, shows no column. */
  private static Optional<Column> column(Load load, Scene view) {
    if (!(load instanceof Cable cable) || !view.sight().level()) {
      return Optional.empty();
    }
    Vector3D hand = cable.grasps().handle(view.position().placement());
    Vector2D pulley = view.seen(cable.pulley());
    double seen = pulley.distance(view.seen(hand));
    double whole = cable.pulley().distance(hand);
    if (seen > FARTHEST || seen < 0.5 * whole) {
      return Optional.empty();
    }
    Rectangle2D body = new Rectangle2D.Double(pulley.getX(), pulley.getY(), 0, 0);
    body.setFrame(view.body().get(0).area().getBounds2D());
    view.body().forEach(piece -> body.add(piece.area().getBounds2D()));
    double top = Math.max(LOWEST_TOP, pulley.getY() + OVER_PULLEY);
    boolean rightwards = pulley.getX() >= view.line().point().getX();
    double beside = pulley.getX() + (rightwards ? BESIDE_PULLEY : -BESIDE_PULLEY - COLUMN);
    boolean through = beside < body.getMaxX() && beside + COLUMN > body.getMinX();
    if (through) {
      boolean ahead = pulley.getX() >= view.seen(view.position().placement().origin(0)).getX();
      beside = ahead ? body.getMaxX() + BESIDE_BODY : body.getMinX() - BESIDE_BODY - COLUMN;
    }
    return Optional.of(new Column(beside, top, pulley));
  }

  private List<Ink> drawn(Column column) {
    List<Ink> ink = new ArrayList<>();
    double left = column.left();
    double right = left + COLUMN;
    for (double x : new double[] {left, right}) {
      ink.add(line(new Vector2D(x, 0), new Vector2D(x, column.top()), 2.4));
    }
    ink.add(line(new Vector2D(left, column.top()), new Vector2D(right, column.top()), 2.4));
    double near = column.pulley().getX() < left ? left : right;
    double level = column.pulley().getY();
    ink.add(line(column.pulley(), new Vector2D(near, level), 2.4));
    double middle = left + COLUMN / 2;
    ink.add(line(new Vector2D(middle, STACK), new Vector2D(middle, column.top()), 1));
    for (double y = STACK_PLATE; y < STACK; y += STACK_PLATE) {
      Vector2D corner = scale.centred(new Vector2D(left + 0.02, y + STACK_PLATE));
      double unit = scale.perMetre();
      ink.add(
          new Form(
              new Rectangle2D.Double(
                  corner.getX(), corner.getY(), unit * (COLUMN - 0.04), unit * STACK_PLATE),
              style.metal(),
              0.25,
              Pen.solid(style.metal(), 0.8)));
    }
    return ink;
  }

  /**
   * The rail of a sled, as its plate stands.
   *
   * @param way unit vector up the rail
   * @param plate how far up the rail the face of the plate stands, metres
   * @param low lower edge of the plate across the rail, metres
   * @param high its upper edge
   */
  private record Rail(Vector2D way, double plate, double low, double high) {

    double middle() {
      return (low + high) / 2;
    }

    /** A point so far beyond the face of the plate, so far across the rail. */
    Vector2D at(double beyond, double across) {
      Vector2D square = new Vector2D(-way.getY(), way.getX());
      return way.scalarMultiply(plate + beyond).add(square.scalarMultiply(across));
    }
  }

  private static Optional<Rail> rail(Load load, Scene view) {
    if (!(load instanceof Sled sled) || !view.sight().fromSide()) {
      return Optional.empty();
    }
    Placement where = view.position().placement();
    Vector2D way = new Vector2D(Math.cos(sled.slope()), Math.sin(sled.slope()));
    Vector2D square = new Vector2D(-way.getY(), way.getX());
    double plate = Double.NEGATIVE_INFINITY;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      for (Site site : List.of(Site.HEEL, Site.BALL_OF_FOOT, Site.TOE_TIP)) {
        Vector2D sole = view.seen(where.at(where.tree().place(site, side)));
        plate = Math.max(plate, sole.dotProduct(way));
        low = Math.min(low, sole.dotProduct(square) - PLATE_EDGE);
        high = Math.max(high, sole.dotProduct(square) + PLATE_EDGE);
      }
    }
    return Optional.of(new Rail(way, plate, low, high));
  }

  private List<Ink> drawn(Rail rail) {
    List<Ink> ink = new ArrayList<>();
    double thick = 0.03;
    Path2D plate = new Path2D.Double();
    List<Vector2D> corners =
        List.of(
            rail.at(0, rail.low()),
            rail.at(0, rail.high()),
            rail.at(thick, rail.high()),
            rail.at(thick, rail.low()));
    plate.append(Loft.hull(corners.stream().map(scale::centred).toList()), false);
    ink.add(new Form(plate, style.metal(), 0.35, Pen.solid(style.metal(), 1.4)));
    double middle = rail.middle();
    ink.add(line(rail.at(thick, middle), rail.at(CARRIAGE, middle), 3));
    ink.add(line(rail.at(thick, rail.low()), rail.at(CARRIAGE, middle), 2.4));
    ink.add(
        new Form(
            Curves.disc(scale.centred(rail.at(CARRIAGE, middle)), DISC * scale.perMetre()),
            style.metal(),
            0.25,
            Pen.solid(style.metal(), 1.4)));
    Vector2D end = rail.at(CARRIAGE + DISC, rail.low());
    double down = rail.way().getY() > 0.05 ? end.getY() / rail.way().getY() : rail.plate();
    ink.add(line(end.subtract(rail.way().scalarMultiply(down)), end, 3));
    ink.add(line(end, new Vector2D(end.getX(), 0), 2.4));
    return ink;
  }

  private Form line(Vector2D from, Vector2D to, double width) {
    return Form.line(
        Curves.open(List.of(scale.centred(from), scale.centred(to))),
        Pen.solid(style.metal(), width));
  }
}
