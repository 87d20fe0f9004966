package org.leverbook.figure;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;

/**
 * The body through all frames of a moving picture: one scale, one floor, labels that keep still.
 */
final class MotionStage {

  /** Page units. */
  static final double WIDTH = 540;

  /** What the marks below the floor need, page units. */
  static final double BELOW = 46;

  private static final double EDGE = 6;
  private static final double ASIDE = 70;
  private static final double TALLEST = 450;

  /** Lying bodies leave this much above for labels. */
  private static final double LOWEST = 330;

  private static final double LARGEST = 420;
  private static final double ARROW = 0.22;
  private static final double RULER = 0.2;

  private final FigureStyle style;
  private final Map<JointId, FigureStyle.Accent> accents;
  private final List<Optional<Scene>> scenes;
  private final double left;
  private final Rectangle2D room;
  private final PageScale scale;
  private final List<Map<String, Label.Placed>> labels;

  MotionStage(
      List<Optional<Scene>> scenes,
      Map<JointId, FigureStyle.Accent> accents,
      FigureStyle style,
      Point2D corner) {
    this.scenes = scenes;
    this.accents = accents;
    this.style = style;
    this.left = corner.getX();
    Rectangle2D seen = seen(scenes);
    double perMetre =
        Math.min(
            LARGEST, Math.min((WIDTH - 2 * ASIDE) / seen.getWidth(), TALLEST / seen.getMaxY()));
    double high = Math.max(LOWEST, perMetre * seen.getMaxY() + 2 * EDGE);
    double floor = corner.getY() + high;
    this.room = new Rectangle2D.Double(left + EDGE, corner.getY(), WIDTH - 2 * EDGE, high - EDGE);
    this.scale =
        new PageScale(
            perMetre,
            left + WIDTH / 2 - perMetre * seen.getCenterX(),
            floor,
            corner.getY(),
            new Rectangle2D.Double(
                seen.getCenterX() - WIDTH / 2 / perMetre, 0, WIDTH / perMetre, seen.getMaxY()));
    this.labels = LabelTrack.place(room, scenes.stream().map(this::toPlace).toList());
  }

  private static Rectangle2D seen(List<Optional<Scene>> scenes) {
    Rectangle2D seen = null;
    for (Scene view : scenes.stream().flatMap(Optional::stream).toList()) {
      Rectangle2D own = PageScale.fitted(view, 900, 0).seen();
      SupportInk.extent(view).forEach(point -> own.add(point.getX(), point.getY()));
      seen = seen == null ? own : seen.createUnion(own);
    }
    return seen == null ? new Rectangle2D.Double(0, 0, 1, 1) : seen;
  }

  /** Where the drawing ends. */
  double bottom() {
    return scale.floor() + BELOW;
  }

  /** Page units for a metre. */
  double perMetre() {
    return scale.perMetre();
  }

  /** Whether any frame shows pushes of benches, pads or hands. */
  boolean pushes() {
    return scenes.stream()
        .flatMap(Optional::stream)
        .anyMatch(view -> !new SupportInk(view, style, scale).labels().isEmpty());
  }

  /** What is the same in all frames: floor and scale. */
  List<Ink> still() {
    double y = scale.floor();
    List<Ink> content = new ArrayList<>();
    Line2D floor = new Line2D.Double(left + EDGE, y, left + WIDTH - EDGE, y);
    content.add(Form.line(floor, Pen.solid(style.quiet(), 1.4)));
    Path2D hatch = new Path2D.Double();
    for (double x = left + EDGE + 8; x < left + WIDTH - EDGE; x += 14) {
      hatch.moveTo(x, y);
      hatch.lineTo(x - 5, y + 6);
    }
    content.add(Form.line(hatch, Pen.solid(style.quiet(), 0.6)));
    double end = left + WIDTH - EDGE - 6;
    double start = end - RULER * scale.perMetre();
    Path2D bar = new Path2D.Double();
    bar.moveTo(start, y + 18);
    bar.lineTo(start, y + 26);
    bar.moveTo(start, y + 22);
    bar.lineTo(end, y + 22);
    bar.moveTo(end, y + 18);
    bar.lineTo(end, y + 26);
    content.add(Form.line(bar, Pen.solid(style.quiet(), 1.4)));
    double size = style.caption();
    content.add(new Words("20 cm", start, y + 40, size, false, style.quiet(), false));
    return List.of(new Group(Map.of("class", "floor"), content));
  }

  /**
   * What moves, without labels.
   *
   * @param frame which
   * @param reason told where there is no position
   */
  List<Ink> moving(int frame, String reason) {
    List<Ink> ink = new ArrayList<>();
    scenes.get(frame).ifPresentOrElse(view -> pieces(view, ink), () -> nothing(reason, ink));
    return ink;
  }

  private void nothing(String reason, List<Ink> ink) {
    double size = style.label();
    double y = room.getY() + 0.35 * room.getHeight();
    for (String line : TextWidths.wrapped("No position here: " + reason, size, WIDTH - 120)) {
      ink.add(new Words(line, left + 60, y, size, false, style.ink(), false));
      y += 1.35 * size;
    }
  }

  private void pieces(Scene view, List<Ink> ink) {
    SupportInk supports = new SupportInk(view, style, scale);
    ink.addAll(new StandInk(view, style, scale).pieces());
    ink.addAll(new MachineInk(view, style, scale).pieces());
    ink.addAll(supports.pads());
    ink.addAll(new BodyInk(view, style, scale).pieces());
    ink.addAll(new LoadInk(view, style, scale).pieces());
    ink.addAll(supports.arrows(BELOW - 20));
    view.position()
        .onGround()
        .filter(balance -> view.position().held())
        .ifPresent(b -> ink.add(push(view.seen(b.centreOfPressure()).getX())));
    ink.add(forces(view).line());
    view.arms().forEach(arm -> ink.add(forces(view).arm(arm, accents.get(arm.id()))));
  }

  /** The labels of a frame. */
  List<Ink> labels(int frame) {
    List<Ink> ink = new ArrayList<>();
    labels.get(frame).values().forEach(placed -> ink.add(LabelInk.onPage(placed, style)));
    return ink;
  }

  /** Where the labels of a frame are, by what they are of. */
  Map<String, Label.Placed> placed(int frame) {
    return labels.get(frame);
  }

  private ForceInk forces(Scene view) {
    return new ForceInk(view, style, scale, room, ARROW * scale.perMetre());
  }

  private Ink push(double metres) {
    Vector2D at = scale.centred(new Vector2D(metres, 0));
    double x = Math.max(left + EDGE + 6, Math.min(left + WIDTH - EDGE - 6, at.getX()));
    Path2D mark = new Path2D.Double();
    mark.moveTo(x, at.getY() + 1);
    mark.lineTo(x - 6, at.getY() + 13);
    mark.lineTo(x + 6, at.getY() + 13);
    mark.closePath();
    return new Form(mark, style.ink(), 1, Pen.solid(style.paper(), 1));
  }

  /** From the side with a sign, as in the plot: so a label is of one length in all frames. */
  private static String size(DrawnArm arm) {
    if (arm.sight().frontal()) {
      return arm.size();
    }
    return MotionNumbers.signed(100 * arm.told(), 1)
        + " cm, "
        + MotionNumbers.signed(arm.moment().signed(), 0)
        + " N·m";
  }

  private LabelTrack.Frame toPlace(Optional<Scene> scene) {
    Map<String, Label> wanted = new LinkedHashMap<>();
    List<Line2D> lines = new ArrayList<>();
    List<Shape> body = new ArrayList<>();
    scene.ifPresent(view -> toPlace(view, wanted, lines, body));
    return new LabelTrack.Frame(wanted, lines, new BodyMask(room, body));
  }

  private void toPlace(
      Scene view, Map<String, Label> wanted, List<Line2D> lines, List<Shape> body) {
    for (DrawnArm arm : view.arms()) {
      Point2D joint = scale.onPage(arm.joint());
      Point2D foot = scale.onPage(arm.foot());
      lines.add(new Line2D.Double(joint, foot));
      Point2D middle =
          new Point2D.Double((joint.getX() + foot.getX()) / 2, (joint.getY() + foot.getY()) / 2);
      wanted.put(
          arm.name(),
          new Label(
              List.of(arm.name(), size(arm)),
              style.label(),
              accents.get(arm.id()).colour(),
              List.of(middle, joint)));
    }
    Line2D force = forces(view).whole();
    lines.add(force);
    lines.addAll(new LoadInk(view, style, scale).lines());
    String newtons = MotionNumbers.signed(view.line().newtons(), 0) + " N";
    wanted.put(
        "line of force",
        new Label(
            List.of(view.line().source() + ": " + newtons),
            style.label(),
            style.ink(),
            Stream.of(0.06, 0.3, 0.94).map(share -> along(force, share)).toList()));
    view.body().forEach(piece -> body.add(scale.onPage(piece.area())));
    MachineInk.covered(view).forEach(area -> body.add(scale.onPage(area)));
    view.bar()
        .ifPresent(b -> body.add(Curves.disc(scale.centred(b.centre()), b.plate() * perMetre())));
    SupportInk supports = new SupportInk(view, style, scale);
    new StandInk(view, style, scale).pieces().forEach(piece -> shapes(piece, body));
    supports.pads().forEach(piece -> shapes(piece, body));
    supports.arrows(BELOW - 20).forEach(piece -> shapes(piece, body));
    new LoadInk(view, style, scale).pieces().forEach(piece -> shapes(piece, body));
  }

  /** All that a piece covers of the page. */
  private static void shapes(Ink ink, List<Shape> into) {
    if (ink instanceof Group group) {
      group.content().forEach(piece -> shapes(piece, into));
    } else if (ink instanceof Form form) {
      into.add(
          form.fill().isEmpty()
              ? new BasicStroke((float) (form.pen().width() + 2)).createStrokedShape(form.shape())
              : form.shape());
    }
  }

  private static Point2D along(Line2D line, double share) {
    return new Point2D.Double(
        line.getX1() + share * (line.getX2() - line.getX1()),
        line.getY1() + share * (line.getY2() - line.getY1()));
  }
}
