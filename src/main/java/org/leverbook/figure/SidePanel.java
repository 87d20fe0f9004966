package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;
import org.leverbook.statics.Position;
import org.leverbook.study.Comparison.Row;

/**
 * One of several positions on a page: its name, load and limiter, and its body with the line of
 * force and the arms.
 */
final class SidePanel {

  /** Free at both sides of the body, page units. */
  static final double PAD = 12;

  /** The force's arrow, so short that it ends above the rows below the floor, metres. */
  private static final double ARROW = 0.25;

  /** So far below the floor arrows may reach, page units. */
  private static final double BELOW = 16;

  private final String name;
  private final String reason;
  private final FigureStyle style;
  private final double width;
  private final Optional<Scene> scene;
  private final List<String> extra;

  /**
   * A panel.
   *
   * @param row which position
   * @param joints to which arms are drawn
   * @param style colours and sizes
   * @param width page units
   * @param extra lines below the name that only this page knows to be needed
   */
  SidePanel(Row row, List<JointId> joints, FigureStyle style, double width, List<String> extra) {
    this(
        row.name(),
        Optional.ofNullable(row.position()).map(SidePanel::levelled).map(p -> Scene.of(p, joints)),
        row.reason(),
        style,
        width,
        extra);
  }

  /** A panel of what is seen, or of nothing, with the reason why. */
  SidePanel(
      String name,
      Optional<Scene> scene,
      String reason,
      FigureStyle style,
      double width,
      List<String> extra) {
    this.name = name;
    this.scene = scene;
    this.reason = reason;
    this.style = style;
    this.width = width;
    this.extra = List.copyOf(extra);
  }

  /** All panels stand on one floor line, so a view from above is drawn from the side. */
  private static Position levelled(Position position) {
    return position.view().level() ? position : position.fromSide();
  }

  /** What of the world it must show, metres; empty where there is no position. */
  Optional<Rectangle2D> seen() {
    return scene.map(SidePanel::seen);
  }

  /** What it is called. */
  String called() {
    return name;
  }

  /** Whether its line is that of the body's own weight. */
  boolean holdsNothing() {
    return scene.filter(view -> !view.holdsSomething()).isPresent();
  }

  /** Whether it is seen from the front. */
  boolean fromFront() {
    return scene.filter(view -> view.sight().frontal()).isPresent();
  }

  /**
   * What is told of a joint: about its own axis, of a paired joint on the side that has more; from
   * the front, where there is an arm, what is drawn.
   *
   * @return empty where it is not known
   */
  Optional<MomentBars.Told> told(JointId joint) {
    Position position = scene.map(Scene::position).orElse(null);
    boolean known =
        position != null && joint.sides().stream().allMatch(side -> position.knows(joint, side));
    if (!known) {
      return Optional.empty();
    }
    return Optional.of(
        fromFront() ? fromFront(position, joint) : MomentBars.Told.of(position.moment(joint)));
  }

  private MomentBars.Told fromFront(Position position, JointId joint) {
    Scene view = scene.orElseThrow();
    Optional<DrawnArm> arm =
        view.arms().stream()
            .filter(a -> a.id() == joint)
            .max(Comparator.comparingDouble(DrawnArm::newtonMetres));
    return arm.map(a -> new MomentBars.Told(a.newtonMetres(), OptionalDouble.of(a.told())))
        .orElseGet(
            () ->
                new MomentBars.Told(
                    joint.sides().stream()
                        .map(side -> position.moment(joint, side).moment())
                        .mapToDouble(m -> Math.abs(m.dotProduct(view.sight().towards())))
                        .max()
                        .orElseThrow(),
                    OptionalDouble.empty()));
  }

  private static Rectangle2D seen(Scene view) {
    Rectangle2D seen = PageScale.fitted(view, 900, 0).seen();
    SupportInk.extent(view).forEach(point -> seen.add(point.getX(), point.getY()));
    return seen;
  }

  private List<String> nameLines() {
    // Bold letters are wider than plain ones.
    return TextWidths.wrapped(name, 1.15 * style.label(), width);
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    extra.forEach(line -> lines.addAll(TextWidths.wrapped(line, small(), width)));
    if (!reason.isEmpty()) {
      lines.addAll(TextWidths.wrapped(reason, small(), width));
    }
    return lines;
  }

  private double small() {
    return style.caption() - 1;
  }

  /** What the lines above the body need, page units. */
  double head() {
    return 1.25 * style.label() * nameLines().size() + 1.3 * small() * lines().size() + 4;
  }

  /** Those lines. */
  List<Ink> heading(double left, double top) {
    List<Ink> ink = new ArrayList<>();
    double y = top;
    for (String line : nameLines()) {
      y += 1.25 * style.label();
      ink.add(new Words(line, left, y, style.label(), true, style.ink(), false));
    }
    for (String line : lines()) {
      y += 1.3 * small();
      ink.add(new Words(line, left, y, small(), false, style.quiet(), false));
    }
    return ink;
  }

  /**
   * The body.
   *
   * @param left edge of the panel
   * @param top of the panel's drawing
   * @param floor where y = 0 is
   * @param perMetre the scale all panels share
   * @param accents of the arms
   * @return all of it as one group
   */
  Group body(
      double left,
      double top,
      double floor,
      double perMetre,
      Map<JointId, FigureStyle.Accent> accents) {
    double middle = seen().map(Rectangle2D::getCenterX).orElse(0.0);
    return body(left, top, floor, perMetre, middle, accents);
  }

  /** The body, with this place of the world, metres, in the middle of the panel. */
  Group body(
      double left,
      double top,
      double floor,
      double perMetre,
      double middle,
      Map<JointId, FigureStyle.Accent> accents) {
    List<Ink> ink = new ArrayList<>();
    ink.add(ground(left, floor));
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "panel");
    attributes.put("data-name", name);
    if (scene.isEmpty()) {
      return new Group(attributes, ink);
    }
    Scene view = scene.get();
    PageScale scale =
        new PageScale(
            perMetre,
            left + width / 2 - perMetre * middle,
            floor,
            top,
            new Rectangle2D.Double(
                middle - width / 2 / perMetre, 0, width / perMetre, (floor - top) / perMetre));
    SupportInk supports = new SupportInk(view, style, scale);
    ink.addAll(new StandInk(view, style, scale).pieces());
    ink.addAll(new MachineInk(view, style, scale).pieces());
    ink.addAll(supports.pads());
    ink.addAll(new BodyInk(view, style, scale).pieces());
    ink.addAll(new LoadInk(view, style, scale).pieces());
    ink.addAll(supports.arrows(BELOW));
    view.position()
        .onGround()
        .filter(balance -> view.position().held())
        .ifPresent(b -> ink.add(push(view.seen(b.centreOfPressure()).getX(), left, scale)));
    Rectangle2D room = new Rectangle2D.Double(left, top, width, floor - top);
    ForceInk forces = new ForceInk(view, style, scale, room, ARROW * perMetre);
    ink.add(forces.line());
    view.arms().forEach(arm -> ink.add(forces.arm(arm, accents.get(arm.id()))));
    attributes.put("data-scale", String.format(Locale.ROOT, "%.6f", perMetre));
    return new Group(attributes, ink);
  }

  private Group ground(double left, double floor) {
    List<Ink> content = new ArrayList<>();
    content.add(
        Form.line(
            new Line2D.Double(left, floor, left + width, floor), Pen.solid(style.quiet(), 1.4)));
    Path2D hatch = new Path2D.Double();
    for (double x = left + 8; x <= left + width; x += 14) {
      hatch.moveTo(x, floor);
      hatch.lineTo(x - 5, floor + 6);
    }
    content.add(Form.line(hatch, Pen.solid(style.quiet(), 0.6)));
    return new Group(Map.of("class", "floor"), content);
  }

  /** Where the floor's push acts. */
  private Ink push(double metres, double left, PageScale scale) {
    Vector2D at = scale.centred(new Vector2D(metres, 0));
    double x = Math.max(left + 6, Math.min(left + width - 6, at.getX()));
    Path2D mark = new Path2D.Double();
    mark.moveTo(x, at.getY() + 1);
    mark.lineTo(x - 5, at.getY() + 11);
    mark.lineTo(x + 5, at.getY() + 11);
    mark.closePath();
    return new Form(mark, style.ink(), 1, Pen.solid(style.paper(), 1));
  }
}
