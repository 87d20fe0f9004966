package org.leverbook.figure;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.figure.Ink.Words;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.study.Sweep;
import org.leverbook.study.SweepRow;

/** Lays out what moves: the body at the left, the plot and the numbers at the right. */
final class MotionPage {

  /** Page units. */
  static final double WIDTH = 1000;

  private static final double MARGIN = 24;
  private static final double PLOT = 300;

  private final FigureStyle style;
  private final MotionNumbers numbers;
  private final Map<JointId, FigureStyle.Accent> accents = new EnumMap<>(JointId.class);
  private final List<Optional<Scene>> scenes;
  private final MotionStage stage;
  private final MotionPlot plot;
  private final double top;

  private MotionPage(Sweep sweep, List<JointId> wished, FigureStyle style) {
    this.style = style;
    Position first = new MotionNumbers(sweep, List.of()).first();
    List<JointId> joints = wished.isEmpty() ? Scene.usual(first) : wished;
    this.numbers = new MotionNumbers(sweep, joints);
    List<FigureStyle.Accent> each = style.accents(joints);
    for (int i = 0; i < joints.size(); i++) {
      accents.put(joints.get(i), each.get(i));
    }
    this.top = MARGIN + style.title() + 1.35 * style.caption() * heading().size() + 30;
    Sight sight = Sight.of(first.view(), first.placement());
    this.scenes =
        sweep.rows().stream()
            .map(row -> position(row).map(p -> Scene.of(p, joints, sight)))
            .toList();
    this.stage = new MotionStage(scenes, accents, style, new Point2D.Double(8, top));
    double left = 8 + MotionStage.WIDTH + 16;
    this.plot =
        new MotionPlot(
            numbers,
            accents,
            style,
            new Rectangle2D.Double(left, top, WIDTH - MARGIN - left, PLOT));
  }

  static MotionPage of(Sweep sweep, List<JointId> wished, FigureStyle style) {
    return new MotionPage(sweep, wished, style);
  }

  /** Also where it cannot be held, as the picture of such a position is drawn too. */
  private static Optional<Position> position(SweepRow row) {
    try {
      return Optional.of(row.position());
    } catch (Refused e) {
      // The row's reason says why; the frame shows it.
      return Optional.empty();
    }
  }

  MotionNumbers numbers() {
    return numbers;
  }

  MotionStage stage() {
    return stage;
  }

  MotionPlot plot() {
    return plot;
  }

  FigureStyle.Accent accent(JointId joint) {
    return accents.get(joint);
  }

  /** The part of the page that the body has. */
  Rectangle2D stageBox() {
    return new Rectangle2D.Double(8, top, MotionStage.WIDTH, stage.bottom() - top);
  }

  /** The part of the page that the plot has. */
  Rectangle2D plotBox() {
    double left = 8 + MotionStage.WIDTH + 16;
    return new Rectangle2D.Double(left, top, WIDTH - MARGIN - left, PLOT);
  }

  String title() {
    String loads = numbers.loads();
    return numbers.name() + (loads.isEmpty() ? "" : ": " + loads);
  }

  /** For readers who listen: what runs, and from where to where. */
  String description() {
    int last = numbers.frames() - 1;
    return Caption.capital(numbers.sweep().title())
        + ", in "
        + numbers.frames()
        + " frames from "
        + numbers.place(0)
        + " to "
        + numbers.place(last)
        + ". At "
        + numbers.place(0)
        + ": "
        + numbers.told(0)
        + " At "
        + numbers.place(last)
        + ": "
        + numbers.told(last);
  }

  private List<String> heading() {
    String lifter = numbers.lifter();
    return lifter.isEmpty()
        ? List.of()
        : TextWidths.wrapped(Caption.capital(lifter), style.caption(), WIDTH - 2 * MARGIN);
  }

  /** What stands below: how to read it, what is missing, the caution. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    boolean arms = scenes.stream().flatMap(Optional::stream).anyMatch(s -> !s.arms().isEmpty());
    boolean front = scenes.stream().flatMap(Optional::stream).anyMatch(s -> s.sight().frontal());
    notes.add(
        (arms
                ? "Arms run from the joint square onto the dashed line of force, to one scale in"
                    + " all frames; each moment is that of everything together. "
                : "The dashed line is the line of force. ")
            + "The triangle below the floor is where the floor's push acts."
            + (stage.pushes() ? " Grey arrows are what benches, pads and supports push." : ""));
    if (front) {
      notes.add(
          "Seen from the front, arms and moments in the picture are about the line of sight; plot"
              + " and table tell them about the joint's own axis.");
    }
    oblique().ifPresent(notes::add);
    notes.addAll(SweepNotes.gapsAndSides(numbers.sweep(), numbers.joints()));
    notes.add(Caution.TEXT);
    return notes;
  }

  /** Where what is told of an arm is not what is drawn, and by how much at most. */
  private Optional<String> oblique() {
    Map<JointId, Double> most = new EnumMap<>(JointId.class);
    scenes.stream()
        .flatMap(Optional::stream)
        .flatMap(scene -> scene.arms().stream())
        .filter(DrawnArm::axisOblique)
        .forEach(a -> most.merge(a.id(), Math.abs(a.told() - a.length()), Math::max));
    if (most.isEmpty()) {
      return Optional.empty();
    }
    String joints =
        most.entrySet().stream()
            .map(
                e ->
                    String.format(
                        Locale.ROOT,
                        "about the %s's own axis (up to %.1f cm)",
                        e.getKey().word(),
                        100 * e.getValue()))
            .collect(Collectors.joining(", "));
    return Optional.of(
        "Arms are told about a joint's own axis; where that lies aslant they are drawn longer or"
            + " shorter: "
            + joints
            + ".");
  }

  /** One frame as a page. */
  Drawing drawing(int frame) {
    List<Ink> ink = new ArrayList<>(head(frame));
    ink.addAll(stage.still());
    ink.addAll(stage.moving(frame, numbers.row(frame).reason()));
    ink.addAll(stage.labels(frame));
    ink.addAll(plot.lines());
    ink.addAll(plot.marker(frame));
    double y = Math.max(table(frame, ink), stage.bottom()) + 6;
    for (String note : notes()) {
      for (String line : TextWidths.wrapped(note, style.caption(), WIDTH - 2 * MARGIN)) {
        y += 1.35 * style.caption();
        ink.add(words(line, MARGIN, y, false));
      }
    }
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("data-scale", String.format(Locale.ROOT, "%.6f", stage.perMetre()));
    attributes.put("data-frame", Integer.toString(frame));
    String told = "At " + numbers.place(frame) + ": " + numbers.told(frame) + " " + Caution.TEXT;
    return new Drawing(WIDTH, Math.ceil(y + MARGIN / 2), title(), told, attributes, ink);
  }

  private List<Ink> head(int frame) {
    List<Ink> ink = new ArrayList<>();
    double room = WIDTH - 2 * MARGIN;
    double size = style.title();
    size *= Math.min(1, room / TextWidths.of(title(), size, true));
    double y = MARGIN + style.title() - 4;
    ink.add(new Words(title(), MARGIN, y, size, true, style.ink(), false));
    for (String line : heading()) {
      y += 1.35 * style.caption();
      ink.add(words(line, MARGIN, y, true));
    }
    String own = numbers.own(frame);
    String place = numbers.place(frame) + (own.isEmpty() ? "" : ": " + own);
    List<String> lines = TextWidths.wrapped(place, 1.15 * style.label(), room - 20);
    String cut = lines.get(0) + (lines.size() > 1 ? " …" : "");
    ink.add(new Words(cut, MARGIN, top - 9, style.label(), true, style.ink(), false));
    return ink;
  }

  /** The numbers of a frame below the plot, always at the same places; returns where they end. */
  private double table(int frame, List<Ink> ink) {
    Rectangle2D box = plotBox();
    double y = box.getMaxY() + 20;
    double size = style.label();
    double leading = 1.45 * size;
    double moments = box.getX() + 0.72 * box.getWidth();
    double arms = box.getX() + box.getWidth() - 4;
    if (numbers.row(frame).held()) {
      right(ink, "moment", moments, y, style.quiet());
      right(ink, "arm", arms, y, style.quiet());
    }
    for (JointId joint : numbers.joints()) {
      y += leading;
      if (numbers.row(frame).held()) {
        Rectangle2D chip = new Rectangle2D.Double(box.getX(), y - size + 2, 10, size - 2);
        ink.add(Ink.Form.filled(chip, accents.get(joint).colour()));
        String name = JointNames.of(joint);
        ink.add(new Words(name, box.getX() + 16, y, size, false, style.ink(), false));
        right(ink, numbers.moment(frame, joint) + " N·m", moments, y, style.ink());
        right(ink, numbers.arm(frame, joint) + " cm", arms, y, style.ink());
      }
    }
    return y + size;
  }

  private void right(List<Ink> ink, String text, double end, double y, String colour) {
    double x = end - TextWidths.of(text, style.label(), false);
    ink.add(new Words(text, x, y, style.label(), false, colour, false));
  }

  private Words words(String text, double x, double y, boolean quiet) {
    String colour = quiet ? style.quiet() : style.ink();
    return new Words(text, x, y, style.caption(), false, colour, false);
  }
}
