package org.leverbook.figure;

import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.leverbook.body.JointId;
import org.leverbook.figure.Ink.Words;
import org.leverbook.quantity.Refused;

/** Lays a view out on a page: one scale, the line of force, the arms, labels, caption. */
final class PositionPage {

  private static final double WIDTH = 900;
  private static final double MARGIN = 28;
  private static final double ARROW = 74;

  /** Pages without room for all labels are made taller by this, page units, and no more than. */
  private static final double MORE = 90;

  private static final double MOST = 540;

  private final Scene view;
  private final FigureStyle style;
  private final Extras extras;
  private final PageScale scale;
  private final Area body;
  private final Map<JointId, FigureStyle.Accent> accents;
  private final List<Ink> ink = new ArrayList<>();

  private PositionPage(Scene view, FigureStyle style, Extras extras, double more) {
    this.view = view;
    this.extras = extras;
    this.style = style;
    double head = MARGIN + 2.2 * style.title() + headLines().size() * 1.35 * style.caption();
    this.scale = PageScale.fitted(view, WIDTH, head, more);
    this.body = new Area();
    this.accents = accents(view, style);
    view.body().forEach(piece -> body.add(scale.onPage(piece.area())));
    MachineInk.covered(view).forEach(area -> body.add(scale.onPage(area)));
    BodyInk.plates(view).forEach(plate -> body.add(scale.onPage(plate)));
    SupportInk.covered(view).forEach(pad -> body.add(scale.onPage(pad)));
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

  static Drawing drawing(Scene view, FigureStyle style, Extras extras) {
    for (double more = 0; more <= MOST; more += MORE) {
      try {
        return new PositionPage(view, style, extras, more).page();
      } catch (Refused crowded) {
        // A taller page has room for the labels that this one has none for.
        continue;
      }
    }
    return new PositionPage(view, style, extras, MOST + MORE).page();
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
    MuscleInk muscles = new MuscleInk(view, style, scale);
    if (extras.muscles()) {
      ink.add(muscles.lines());
    }
    if (extras.spine()) {
      ink.add(new SpineInk(view, style, scale).levels());
    }
    ink.addAll(new LoadInk(view, style, scale).pieces());
    ink.add(floor.marks());
    ink.addAll(
        extras.reactions() ? new ReactionInk(view, style, scale).arrows() : supports.arrows());
    ink.add(forces().line());
    view.arms().forEach(arm -> ink.add(forces().arm(arm, accents.get(arm.id()))));
    view.arms().stream()
        .filter(DrawnArm::turns)
        .forEach(arm -> ink.add(forces().arc(arm, accents.get(arm.id()))));
    labels();
    double below = legends(scale.bottom() + FloorInk.DEPTH + 14);
    double height = caption(below, extras.muscles() ? List.of(muscles.sentence()) : List.of());
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("data-scale", String.format(Locale.ROOT, "%.6f", scale.perMetre()));
    attributes.put("data-floor-y", SvgWriter.number(scale.bottom()));
    return new Drawing(
        WIDTH, height, Caption.title(view), Caption.description(view), attributes, ink);
  }

  /** The title, or where that is too long only the name: what is lifted then stands below. */
  private String head() {
    double room = WIDTH - 2 * MARGIN;
    String whole = style.say(Caption.title(view));
    boolean fits = TextWidths.of(whole, style.title(), true) <= room;
    return fits ? whole : style.say(Caption.name(view));
  }

  /** What stands in large letters: a name that is too long for them is whole only below. */
  private String shown() {
    double room = WIDTH - 2 * MARGIN;
    double size = TextWidths.fitting(head(), style.title(), room);
    return TextWidths.shortened(head(), size, true, room);
  }

  private List<String> headLines() {
    List<String> lines = new ArrayList<>();
    if (!shown().equals(head())) {
      lines.addAll(TextWidths.wrapped(head(), style.caption(), WIDTH - 2 * MARGIN));
    }
    if (!head().equals(style.say(Caption.title(view)))) {
      String held = style.say(Caption.capital(Caption.held(view)));
      lines.addAll(TextWidths.wrapped(held, style.caption(), WIDTH - 2 * MARGIN));
    }
    lines.addAll(
        TextWidths.wrapped(style.say(Caption.person(view)), style.caption(), WIDTH - 2 * MARGIN));
    return lines;
  }

  private void heading() {
    double y = MARGIN + style.title();
    double room = WIDTH - 2 * MARGIN;
    double size = TextWidths.fitting(head(), style.title(), room);
    ink.add(new Words(shown(), MARGIN, y, size, true, style.ink(), false));
    y += 0.35 * style.title();
    for (String line : headLines()) {
      y += 1.35 * style.caption();
      ink.add(new Words(line, MARGIN, y, style.caption(), false, style.quiet(), false));
    }
  }

  private ForceInk forces() {
    return new ForceInk(view, style, scale, room(), ARROW);
  }

  /** Where figure and labels may be: above the floor, between the margins. */
  private Rectangle2D room() {
    return new Rectangle2D.Double(
        MARGIN, scale.top(), WIDTH - 2 * MARGIN, scale.bottom() - scale.top());
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
    Line2D force = forces().whole();
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
    if (extras.reactions()) {
      ReactionInk reactions = new ReactionInk(view, style, scale);
      labels.addAll(reactions.labels());
      lines.addAll(reactions.lines());
    } else {
      labels.addAll(new SupportInk(view, style, scale).labels());
    }
    lines.addAll(new LoadInk(view, style, scale).lines());
    view.bar()
        .map(Scene.BarSeen::ends)
        .ifPresent(
            ends ->
                lines.add(new Line2D.Double(scale.onPage(ends.get(0)), scale.onPage(ends.get(1)))));
    new LabelPlacer(room(), kept(), lines, body)
        .place(labels.stream().map(label -> label.in(style)).toList())
        .forEach(placed -> ink.add(LabelInk.onPage(placed, style)));
  }

  /** Joints and the arcs around them stay free of labels. */
  private List<Rectangle2D> kept() {
    List<Rectangle2D> kept = new ArrayList<>();
    view.joints().forEach(joint -> kept.add(around(scale.onPage(joint), 4)));
    for (DrawnArm arm : view.arms()) {
      kept.add(around(scale.onPage(arm.joint()), arm.turns() ? TurnArc.RADIUS : 5));
    }
    return kept;
  }

  private static Rectangle2D around(Point2D point, double reach) {
    return new Rectangle2D.Double(point.getX() - reach, point.getY() - reach, 2 * reach, 2 * reach);
  }

  private static Point2D between(Point2D from, Point2D to, double share) {
    return new Point2D.Double(
        from.getX() + share * (to.getX() - from.getX()),
        from.getY() + share * (to.getY() - from.getY()));
  }

  /** What colours and arrows mean, a row each. */
  private double legends(double top) {
    double y = top;
    if (extras.reactions()) {
      ink.add(new ReactionInk(view, style, scale).bar(MARGIN, y));
      y += 0.6 * Legend.HEIGHT;
    }
    if (extras.muscles()) {
      ink.add(MuscleInk.legend().at(MARGIN, y, style));
      y += Legend.HEIGHT;
    }
    if (extras.spine()) {
      ink.add(new SpineInk(view, style, scale).legend().at(MARGIN, y, style));
      y += Legend.HEIGHT;
    }
    return y;
  }

  private double caption(double top, List<String> first) {
    double y = top;
    List<String> sentences = new ArrayList<>(first);
    Caption.arcs(view).ifPresent(sentences::add);
    sentences.addAll(Caption.sentences(view));
    for (String sentence : sentences) {
      for (String line :
          TextWidths.wrapped(style.sentence(sentence), style.caption(), WIDTH - 2 * MARGIN)) {
        y += 1.35 * style.caption();
        ink.add(new Words(line, MARGIN, y, style.caption(), false, style.ink(), false));
      }
      y += 0.3 * style.caption();
    }
    return Math.ceil(y + MARGIN * 0.7);
  }
}
