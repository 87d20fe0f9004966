package org.leverbook.figure;

import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;

/** Lays a view out on a page: one scale, the line of force, the arms, labels, caption. */
final class PositionPage {

  private static final double WIDTH = 900;
  private static final double MARGIN = 28;

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;
  private final Area body;
  private final Map<JointId, FigureStyle.Accent> accents;
  private final List<Ink> ink = new ArrayList<>();

  private PositionPage(Scene view, FigureStyle style) {
    this.view = view;
    this.style = style;
    double head = MARGIN + 2.2 * style.title() + headLines().size() * 1.35 * style.caption();
    this.scale = PageScale.fitted(view, WIDTH, head);
    this.body = new Area();
    this.accents = accents(view, style);
    view.body().forEach(piece -> body.add(scale.onPage(piece.area())));
    MachineInk.covered(view).forEach(area -> body.add(scale.onPage(area)));
    view.bar()
        .map(bar -> new Area(Curves.disc(bar.centre(), bar.plate())))
        .ifPresent(plate -> body.add(scale.onPage(plate)));
  }

  /** As in a plot of the same joints. */
  private static Map<JointId, FigureStyle.Accent> accents(Scene view, FigureStyle style) {
    List<JointId> joints = view.arms().stream().map(DrawnArm::id).distinct().toList();
    List<FigureStyle.Accent> each = style.accents(joints);
    Map<JointId, FigureStyle.Accent> accents = new EnumMap<>(JointId.class);
    for (int i = 0; i < joints.size(); i++) {
      accents.put(joints.get(i), each.get(i));
    }
    return accents;
  }

  static Drawing drawing(Scene view, FigureStyle style) {
    return new PositionPage(view, style).page();
  }

  private Drawing page() {
    heading();
    FloorInk floor = new FloorInk(view, style, scale, WIDTH - MARGIN);
    ink.add(floor.ground());
    SupportInk supports = new SupportInk(view, style, scale);
    ink.addAll(new StandInk(view, style, scale).pieces());
    ink.addAll(new MachineInk(view, style, scale).pieces());
    ink.addAll(supports.pads());
    ink.addAll(new BodyInk(view, style, scale).pieces());
    ink.addAll(new LoadInk(view, style, scale).pieces());
    ink.add(floor.marks());
    ink.addAll(supports.arrows());
    line();
    view.arms().forEach(arm -> ink.add(arm(arm)));
    labels();
    double height = caption(scale.floor() + FloorInk.DEPTH + 14);
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("data-scale", String.format(Locale.ROOT, "%.6f", scale.perMetre()));
    attributes.put("data-floor-y", SvgWriter.number(scale.floor()));
    return new Drawing(
        WIDTH, height, Caption.title(view), Caption.description(view), attributes, ink);
  }

  /** The title, or where that is too long only the name: what is lifted then stands below. */
  private String head() {
    double room = WIDTH - 2 * MARGIN;
    boolean fits = TextWidths.of(Caption.title(view), style.title(), true) <= room;
    return fits ? Caption.title(view) : Caption.name(view);
  }

  private List<String> headLines() {
    List<String> lines = new ArrayList<>();
    if (!head().equals(Caption.title(view))) {
      String held = Caption.capital(Caption.held(view));
      lines.addAll(TextWidths.wrapped(held, style.caption(), WIDTH - 2 * MARGIN));
    }
    lines.addAll(TextWidths.wrapped(Caption.person(view), style.caption(), WIDTH - 2 * MARGIN));
    return lines;
  }

  private void heading() {
    double y = MARGIN + style.title();
    double size = style.title();
    double room = WIDTH - 2 * MARGIN;
    double needed = TextWidths.of(head(), size, true);
    size = needed > room ? size * room / needed : size;
    ink.add(new Words(head(), MARGIN, y, size, true, style.ink(), false));
    y += 0.35 * style.title();
    for (String line : headLines()) {
      y += 1.35 * style.caption();
      ink.add(new Words(line, MARGIN, y, style.caption(), false, style.quiet(), false));
    }
  }

  /** The line of force, with an arrow at the point where the load acts. */
  private void line() {
    ForceLine force = view.line();
    Pen dashed = new Pen(style.ink(), 1.4, List.of(7.0, 4.0));
    List<Ink> content = new ArrayList<>();
    Line2D whole = lineOnPage();
    content.add(Form.line(whole, dashed));
    Point2D from = scale.onPage(force.point());
    double length = 74;
    Point2D to =
        new Point2D.Double(
            from.getX() + length * force.direction().getX(),
            from.getY() - length * force.direction().getY());
    content.add(Form.line(new Line2D.Double(from, to), Pen.solid(style.ink(), 3)));
    content.add(Form.filled(Arrows.head(from, to, 13, 5.5), style.ink()));
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "line-of-force");
    attributes.put("data-source", force.source());
    attributes.put("data-newtons", String.format(Locale.ROOT, "%.3f", force.newtons()));
    ink.add(new Group(attributes, content));
  }

  /** From above everything to below, along the force. */
  private Line2D lineOnPage() {
    ForceLine force = view.line();
    double up = 0;
    double down = 0;
    for (Vector2D corner : scale.corners()) {
      double along = corner.subtract(force.point()).dotProduct(force.direction());
      up = Math.min(up, along);
      down = Math.max(down, along);
    }
    Line2D whole =
        new Line2D.Double(
            scale.onPage(force.point().add(force.direction().scalarMultiply(up))),
            scale.onPage(force.point().add(force.direction().scalarMultiply(down))));
    return Curves.within(whole, room());
  }

  /** Where figure and labels may be: above the floor, between the margins. */
  private Rectangle2D room() {
    return new Rectangle2D.Double(
        MARGIN, scale.top(), WIDTH - 2 * MARGIN, scale.floor() - scale.top());
  }

  private Group arm(DrawnArm arm) {
    FigureStyle.Accent accent = accents.get(arm.id());
    Point2D joint = scale.onPage(arm.joint());
    Point2D foot = scale.onPage(arm.foot());
    List<Ink> content = new ArrayList<>();
    Line2D line = new Line2D.Double(joint, foot);
    content.add(Form.line(line, Pen.solid(style.paper(), 5)));
    content.add(Form.line(line, new Pen(accent.colour(), 2.6, accent.dash())));
    Vector2D along = view.line().direction();
    double square = Math.min(9, joint.distance(foot) / 2);
    if (square > 2) {
      content.add(Form.line(corner(joint, foot, along, square), Pen.solid(accent.colour(), 1.3)));
    }
    content.add(
        new Form(
            Curves.disc(new Vector2D(joint.getX(), joint.getY()), 4.6),
            accent.colour(),
            1,
            Pen.solid(style.paper(), 1.4)));
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "arm");
    attributes.put("data-joint", arm.id().word());
    attributes.put("data-arm-m", String.format(Locale.ROOT, "%.6f", arm.told()));
    attributes.put("data-arm-3d-m", String.format(Locale.ROOT, "%.6f", arm.moment().arm3d()));
    attributes.put("data-moment-nm", String.format(Locale.ROOT, "%.3f", arm.newtonMetres()));
    attributes.put("data-tends-to", arm.tendsTo().orElse(""));
    return new Group(attributes, content);
  }

  /** The mark of a right angle where the arm meets the line of force. */
  private static Path2D corner(Point2D joint, Point2D foot, Vector2D along, double size) {
    double length = joint.distance(foot);
    double ax = size * (joint.getX() - foot.getX()) / length;
    double ay = size * (joint.getY() - foot.getY()) / length;
    // Towards where the load comes from, so that the mark stays clear of the arrow.
    double bx = -size * along.getX();
    double by = size * along.getY();
    Path2D mark = new Path2D.Double();
    mark.moveTo(foot.getX() + ax, foot.getY() + ay);
    mark.lineTo(foot.getX() + ax + bx, foot.getY() + ay + by);
    mark.lineTo(foot.getX() + bx, foot.getY() + by);
    return mark;
  }

  private void labels() {
    List<Label> labels = new ArrayList<>();
    List<Line2D> lines = new ArrayList<>();
    for (DrawnArm arm : view.arms()) {
      Point2D joint = scale.onPage(arm.joint());
      Point2D foot = scale.onPage(arm.foot());
      lines.add(new Line2D.Double(joint, foot));
      labels.add(
          new Label(
              List.of(arm.name(), arm.size(), arm.share()),
              style.label(),
              accents.get(arm.id()).colour(),
              List.of(
                  between(joint, foot, 0.5),
                  joint,
                  between(joint, foot, 0.25),
                  between(joint, foot, 0.75))));
    }
    Line2D force = lineOnPage();
    lines.add(force);
    Point2D above = scale.onPage(view.line().point());
    labels.add(
        new Label(
            List.of(
                "line of force: " + view.line().source(),
                String.format(Locale.ROOT, "%.0f N", view.line().newtons())),
            style.label(),
            style.ink(),
            List.of(between(force.getP1(), above, 0.04), between(force.getP1(), above, 0.2))));
    labels.addAll(new SupportInk(view, style, scale).labels());
    lines.addAll(new LoadInk(view, style, scale).lines());
    new LabelPlacer(room(), List.of(), lines, body)
        .place(labels)
        .forEach(placed -> ink.add(LabelInk.onPage(placed, style)));
  }

  private static Point2D between(Point2D from, Point2D to, double share) {
    return new Point2D.Double(
        from.getX() + share * (to.getX() - from.getX()),
        from.getY() + share * (to.getY() - from.getY()));
  }

  private double caption(double top) {
    double y = top;
    for (String sentence : Caption.sentences(view)) {
      for (String line : TextWidths.wrapped(sentence, style.caption(), WIDTH - 2 * MARGIN)) {
        y += 1.35 * style.caption();
        ink.add(new Words(line, MARGIN, y, style.caption(), false, style.ink(), false));
      }
      y += 0.3 * style.caption();
    }
    return Math.ceil(y + MARGIN * 0.7);
  }
}
