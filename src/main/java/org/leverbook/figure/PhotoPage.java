package org.leverbook.figure;

import java.awt.BasicStroke;
import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.display.Picture;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;
import org.leverbook.load.Force;
import org.leverbook.marks.Fit;
import org.leverbook.marks.Mark;
import org.leverbook.statics.Position;

/** A photo with the fitted pose, the line of force and the arms drawn over it. */
final class PhotoPage {

  private static final double WIDTH = 900;
  private static final double MARGIN = 28;

  /** A taller photo is drawn narrower than the page, page units. */
  private static final double TALLEST = 900;

  /** A lifter this tall on the page is drawn with full widths, a smaller one finer. */
  private static final double USUAL = 420;

  private static final double FINEST = 0.5;

  private final Fit fit;
  private final Position position;
  private final Scene view;
  private final FigureStyle style;
  private final Overlay over;
  private final Rectangle2D room;
  private final double fine;
  private final List<Ink> ink = new ArrayList<>();
  private final List<Line2D> lines = new ArrayList<>();
  private final List<Label> labels = new ArrayList<>();
  private final Area body = new Area();

  private PhotoPage(Fit fit, List<JointId> joints, FigureStyle style) {
    this.fit = fit;
    this.style = style;
    position = fit.position();
    view = Scene.of(position, joints.isEmpty() ? Scene.USUAL : joints, Sight.SIDE);
    double top = MARGIN + 1.7 * style.title() + 1.35 * style.caption() * head().size();
    double wide = fit.photo().still().width();
    double high = fit.photo().still().height();
    double perPixel = Math.min((WIDTH - 2 * MARGIN) / wide, TALLEST / high);
    double left = (WIDTH - perPixel * wide) / 2;
    over = new Overlay(fit, position.placement(), left, top, perPixel);
    room = new Rectangle2D.Double(left, top, perPixel * wide, perPixel * high);
    fine = Math.max(FINEST, Math.min(1, tall() / USUAL));
  }

  static Picture picture(Fit fit, List<JointId> joints, FigureStyle style) {
    return new PositionPicture(new PhotoPage(fit, joints, style).drawing(), style);
  }

  private Drawing drawing() {
    heading();
    ink.add(
        new Ink.Photograph(
            fit.photo().still().image(),
            room.getX(),
            room.getY(),
            room.getWidth(),
            room.getHeight()));
    ink.add(bones());
    ink.add(marks());
    line();
    arms();
    // Beside a narrow photo the page is free too.
    Rectangle2D free =
        new Rectangle2D.Double(MARGIN, room.getY(), WIDTH - 2 * MARGIN, room.getHeight());
    new LabelPlacer(free, List.of(over.head()), lines, body)
        .place(labels.stream().map(label -> label.in(style)).toList())
        .forEach(placed -> ink.add(LabelInk.onPhoto(placed, style)));
    double height = caption();
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("data-photo-left", SvgWriter.number(room.getX()));
    attributes.put("data-photo-top", SvgWriter.number(room.getY()));
    attributes.put("data-per-pixel", String.format(Locale.ROOT, "%.6f", over.perPixel()));
    return new Drawing(
        WIDTH, height, Caption.title(view), Caption.description(view), attributes, ink);
  }

  private List<String> head() {
    return TextWidths.wrapped(
        Caption.capital(fit.body().person().text()), style.caption(), WIDTH - 2 * MARGIN);
  }

  private void heading() {
    double y = MARGIN + style.title();
    String title = style.say(Caption.title(view));
    double needed = TextWidths.of(title, style.title(), true);
    double size = style.title() * Math.min(1, (WIDTH - 2 * MARGIN) / needed);
    ink.add(new Words(title, MARGIN, y, size, true, style.ink(), false));
    y += 0.2 * style.title();
    for (String line : head()) {
      y += 1.35 * style.caption();
      ink.add(new Words(line, MARGIN, y, style.caption(), false, style.quiet(), false));
    }
  }

  /** The far side thin, then spine and near side; light below dark, to be seen on any photo. */
  private Group bones() {
    Side far = fit.shown() == Side.RIGHT ? Side.LEFT : Side.RIGHT;
    List<Ink> bones = new ArrayList<>();
    bone(bones, over.leg(far), 1.5);
    bone(bones, over.arm(far), 1.5);
    bone(bones, over.spine(), 3);
    bone(bones, over.leg(fit.shown()), 3.5);
    bone(bones, over.arm(fit.shown()), 3.5);
    return new Group(Map.of("class", "pose"), bones);
  }

  /** How tall the lifter is on the page, page units. */
  private double tall() {
    Rectangle2D around = new Rectangle2D.Double();
    List<Point2D> points = new ArrayList<>(over.spine());
    points.addAll(over.leg(fit.shown()));
    around.setFrame(points.get(0).getX(), points.get(0).getY(), 0, 0);
    points.forEach(around::add);
    return Math.max(around.getHeight(), around.getWidth());
  }

  private void bone(List<Ink> into, List<Point2D> points, double full) {
    double width = fine * full;
    List<Vector2D> ends = points.stream().map(p -> new Vector2D(p.getX(), p.getY())).toList();
    var path = Curves.open(ends);
    into.add(Form.line(path, Pen.solid(style.paper(), width + 2.5 * fine)));
    into.add(Form.line(path, Pen.solid(style.metal(), width)));
    for (Vector2D end : ends) {
      into.add(
          new Form(Curves.disc(end, 0.6 + width), style.paper(), 1, Pen.solid(style.metal(), 1.2)));
    }
    body.add(new Area(new BasicStroke((float) (18 + 20 * fine)).createStrokedShape(path)));
  }

  /** A cross where the coach marked. */
  private Group marks() {
    List<Ink> crosses = new ArrayList<>();
    double reach = 5 * fine;
    for (Mark mark : fit.marks()) {
      Point2D at = over.at(mark.pixel());
      for (double slope : new double[] {-1, 1}) {
        Line2D stroke =
            new Line2D.Double(
                at.getX() - reach,
                at.getY() - reach * slope,
                at.getX() + reach,
                at.getY() + reach * slope);
        crosses.add(Form.line(stroke, Pen.solid(style.paper(), 3.2 * fine)));
        crosses.add(Form.line(stroke, Pen.solid(style.ink(), 1.4 * fine)));
      }
    }
    return new Group(Map.of("class", "marks"), crosses);
  }

  /** How far aside the nearest hold of the main load is, metres. */
  private double aside() {
    return position.forces().stream()
        .filter(f -> f.source().equals(view.line().source()))
        .map(Force::point)
        .mapToDouble(p -> Math.abs(p.getZ()))
        .max()
        .orElse(0);
  }

  private void line() {
    ForceLine force = view.line();
    Point2D from = over.at(force.point(), aside());
    Point2D towards = over.at(force.point().add(force.direction().scalarMultiply(0.35)), aside());
    Line2D whole = Curves.within(over.across(from, towards), room);
    List<Ink> content = new ArrayList<>();
    content.add(Form.line(whole, Pen.solid(style.paper(), 3.4)));
    content.add(Form.line(whole, new Pen(style.ink(), 1.6, List.of(7.0, 4.0))));
    content.add(Form.line(new Line2D.Double(from, towards), Pen.solid(style.ink(), 3 * fine)));
    content.add(Form.filled(Arrows.head(from, towards, 13 * fine, 5.5 * fine), style.ink()));
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "line-of-force");
    attributes.put("data-source", force.source());
    ink.add(new Group(attributes, content));
    lines.add(whole);
    labels.add(
        new Label(
            List.of(
                "line of force: " + force.source(),
                String.format(Locale.ROOT, "%.0f N", force.newtons())),
            style.label(),
            style.ink(),
            List.of(whole.getP1(), from)));
  }

  private void arms() {
    List<JointId> joints = view.arms().stream().map(DrawnArm::id).distinct().toList();
    List<FigureStyle.Accent> accents = style.accents(joints);
    for (DrawnArm arm : view.arms()) {
      FigureStyle.Accent accent = accents.get(joints.indexOf(arm.id()));
      double aside = arm.moment().centre().getZ();
      Point2D joint = over.at(arm.joint(), aside);
      // On the line as it is drawn, at the near hold, so that arm and line meet.
      Point2D foot = over.at(arm.foot(), aside());
      Line2D line = new Line2D.Double(joint, foot);
      Map<String, String> attributes = new LinkedHashMap<>();
      attributes.put("class", "arm");
      attributes.put("data-joint", arm.id().word());
      attributes.put("data-arm-m", String.format(Locale.ROOT, "%.6f", arm.moment().arm()));
      attributes.put("data-moment-nm", String.format(Locale.ROOT, "%.3f", arm.moment().size()));
      ink.add(
          new Group(
              attributes,
              List.of(
                  Form.line(line, Pen.solid(style.paper(), 5.5 * fine)),
                  Form.line(line, new Pen(accent.colour(), 3 * fine, accent.dash())),
                  new Form(
                      Curves.disc(new Vector2D(joint.getX(), joint.getY()), 5 * fine),
                      accent.colour(),
                      1,
                      Pen.solid(style.paper(), 1.4)))));
      lines.add(line);
      Point2D middle =
          new Point2D.Double((joint.getX() + foot.getX()) / 2, (joint.getY() + foot.getY()) / 2);
      labels.add(
          new Label(
              List.of(arm.name(), arm.size(), arm.share()),
              style.label(),
              accent.colour(),
              List.of(middle, joint)));
    }
  }

  private double caption() {
    List<String> sentences = new ArrayList<>(Caption.sentences(view));
    if (!view.arms().isEmpty() && Math.abs(degrees()) > 5) {
      sentences.add(
          0,
          "The arms are square to the line of force in the lifter's own side view; seen obliquely"
              + " they look shorter or longer than they are, and not square.");
    }
    double y = room.getMaxY() + 10;
    for (String sentence : sentences) {
      for (String line : TextWidths.wrapped(sentence, style.caption(), WIDTH - 2 * MARGIN)) {
        y += 1.35 * style.caption();
        ink.add(new Words(line, MARGIN, y, style.caption(), false, style.ink(), false));
      }
      y += 0.3 * style.caption();
    }
    return Math.ceil(y + MARGIN * 0.7);
  }

  private double degrees() {
    return fit.offSquare().getValue().doubleValue();
  }
}
