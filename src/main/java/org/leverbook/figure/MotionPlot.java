package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;

/**
 * The moments of all frames against what is varied, with a marker at one of them.
 *
 * <p>Drawn here and not by XChart, because the marker must stand at the very place of its frame
 * wherever the page is opened, and XChart spaces a plot by the machine's fonts.
 */
final class MotionPlot {

  private static final double LEFT = 50;

  /** Between the plot and the names beside it. */
  private static final double NAMES = 13;

  private static final double HEAD = 40;
  private static final double FOOT = 44;

  /** So many values are told apart by points too. */
  private static final int POINTS = 15;

  private final MotionNumbers numbers;
  private final Map<JointId, FigureStyle.Accent> accents;
  private final FigureStyle style;
  private final Rectangle2D box;
  private final double[] across;
  private final double[] upwards;

  MotionPlot(
      MotionNumbers numbers,
      Map<JointId, FigureStyle.Accent> accents,
      FigureStyle style,
      Rectangle2D room) {
    this.numbers = numbers;
    this.accents = accents;
    this.style = style;
    double names =
        numbers.joints().stream()
            .mapToDouble(j -> TextWidths.of(name(j), style.caption(), false))
            .max()
            .orElse(0);
    this.box =
        new Rectangle2D.Double(
            room.getX() + LEFT,
            room.getY() + HEAD,
            room.getWidth() - LEFT - NAMES - names,
            room.getHeight() - HEAD - FOOT);
    this.across = span(numbers.sweep().rows().stream().mapToDouble(r -> r.value()));
    this.upwards =
        span(
            DoubleStream.concat(
                DoubleStream.of(0, 1),
                numbers.sweep().rows().stream()
                    .filter(r -> r.held())
                    .flatMapToDouble(
                        r -> numbers.joints().stream().mapToDouble(j -> r.moment(j)))));
    double room5 = 0.05 * (upwards[1] - upwards[0]);
    upwards[0] -= upwards[0] < 0 ? room5 : 0;
    upwards[1] += room5;
  }

  /** Beside a line; that a paired joint's is of one side stands below. */
  private static String name(JointId joint) {
    return joint.paired() ? joint.word() : JointNames.of(joint);
  }

  private static double[] span(DoubleStream values) {
    double[] sorted = values.sorted().toArray();
    return new double[] {sorted[0], sorted[sorted.length - 1]};
  }

  /** Where a frame is from left to right, page units. */
  double x(int frame) {
    double width = across[1] - across[0];
    double share = width > 0 ? (numbers.row(frame).value() - across[0]) / width : 0.5;
    return box.getX() + share * box.getWidth();
  }

  /** Where a frame's moment is from top to bottom; there must be one. */
  double y(int frame, JointId joint) {
    return y(numbers.row(frame).moment(joint));
  }

  private double y(double moment) {
    return box.getMaxY() - (moment - upwards[0]) / (upwards[1] - upwards[0]) * box.getHeight();
  }

  /** Axes, lines and their names. */
  List<Ink> lines() {
    List<Ink> ink = new ArrayList<>();
    double left = box.getX() - LEFT;
    double small = style.caption();
    ink.add(words("Moment (N·m)", left, box.getY() - HEAD + style.label(), style.label(), true));
    ink.add(
        words(
            "above zero the resistance flexes, below it extends",
            left,
            box.getY() - HEAD + style.label() + 1.35 * small,
            small,
            false));
    double step = step(upwards[1] - upwards[0], 5);
    for (double v = Math.ceil(upwards[0] / step) * step; v <= upwards[1]; v += step) {
      boolean zero = Math.abs(v) < step / 2;
      Line2D line = new Line2D.Double(box.getX(), y(v), box.getMaxX(), y(v));
      ink.add(Form.line(line, Pen.solid(zero ? style.quiet() : style.flesh(), zero ? 1.4 : 1)));
      String told = Plots.tick(zero ? 0 : v);
      double width = TextWidths.of(told, small, false);
      ink.add(words(told, box.getX() - 6 - width, y(v) + 0.35 * small, small, false));
    }
    ticksAcross(ink);
    numbers.joints().forEach(joint -> ink.add(line(joint)));
    names(ink);
    return ink;
  }

  private void ticksAcross(List<Ink> ink) {
    double small = style.caption();
    double y = box.getMaxY();
    ink.add(Form.line(new Line2D.Double(box.getX(), y, box.getMaxX(), y), pen(style.quiet(), 1)));
    double step = step(across[1] - across[0], 4);
    step = numbers.sweep().named() ? Math.max(1, step) : step;
    for (double v = Math.ceil(across[0] / step - 1e-9) * step;
        v <= across[1] + 1e-9 * step;
        v += step) {
      double x =
          box.getX() + (v - across[0]) / Math.max(1e-12, across[1] - across[0]) * box.getWidth();
      ink.add(Form.line(new Line2D.Double(x, y, x, y + 5), pen(style.quiet(), 1)));
      String told = Plots.tick(Math.abs(v) < step / 2 ? 0 : v);
      double width = TextWidths.of(told, small, false);
      ink.add(words(told, x - width / 2, y + 6 + small, small, false));
    }
    String title = numbers.sweep().named() ? numbers.varied() + ", in order" : numbers.varied();
    double width = TextWidths.of(title, style.label(), false);
    double x = Math.max(box.getX() - LEFT, box.getCenterX() - width / 2);
    ink.add(words(title, x, y + 12 + small + style.label(), style.label(), false));
  }

  private Group line(JointId joint) {
    FigureStyle.Accent accent = accents.get(joint);
    Path2D path = new Path2D.Double();
    List<Ink> content = new ArrayList<>();
    boolean on = false;
    for (int i = 0; i < numbers.frames(); i++) {
      if (!numbers.row(i).held()) {
        on = false;
        continue;
      }
      boolean alone = !on && (i + 1 == numbers.frames() || !numbers.row(i + 1).held());
      if (on && !numbers.sweep().named()) {
        path.lineTo(x(i), y(i, joint));
      } else {
        path.moveTo(x(i), y(i, joint));
      }
      if (alone || numbers.sweep().named() || numbers.frames() <= POINTS) {
        content.add(Form.filled(Curves.disc(new Vector2D(x(i), y(i, joint)), 3), accent.colour()));
      }
      on = true;
    }
    content.add(0, Form.line(path, new Pen(accent.colour(), 2.2, accent.dash())));
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "curve");
    attributes.put("data-joint", joint.word());
    return new Group(attributes, content);
  }

  /** The joints' names beside the ends of their lines, moved apart where they would touch. */
  private void names(List<Ink> ink) {
    int last = numbers.frames() - 1;
    while (!numbers.row(last).held()) {
      last--;
    }
    int end = last;
    List<JointId> order =
        numbers.joints().stream().sorted(Comparator.comparingDouble(j -> y(end, j))).toList();
    double leading = 1.3 * style.caption();
    double[] at = new double[order.size()];
    for (int i = 0; i < at.length; i++) {
      double wished = y(end, order.get(i));
      at[i] = i == 0 ? Math.max(box.getY(), wished) : Math.max(wished, at[i - 1] + leading);
    }
    for (int i = at.length - 1; i >= 0; i--) {
      double most = i == at.length - 1 ? box.getMaxY() : at[i + 1] - leading;
      at[i] = Math.min(at[i], most);
    }
    for (int i = 0; i < at.length; i++) {
      JointId joint = order.get(i);
      FigureStyle.Accent accent = accents.get(joint);
      double x = box.getMaxX() + 4;
      Line2D tie = new Line2D.Double(x(end) + 4, y(end, joint), x + 7, at[i]);
      ink.add(Form.line(tie, pen(accent.colour(), 1)));
      double base = at[i] + 0.35 * style.caption();
      ink.add(words(name(joint), x + 9, base, style.caption(), false));
    }
  }

  /** The marker's upright line, at the left end of the plot; moved by {@link #x}. */
  Line2D upright(int frame) {
    return new Line2D.Double(x(frame), box.getY(), x(frame), box.getMaxY());
  }

  /** The marker at a frame. */
  List<Ink> marker(int frame) {
    List<Ink> ink = new ArrayList<>();
    ink.add(Form.line(upright(frame), pen(style.ink(), 1.2)));
    if (numbers.row(frame).held()) {
      for (JointId joint : numbers.joints()) {
        ink.add(
            new Form(
                Curves.disc(new Vector2D(x(frame), y(frame, joint)), 5),
                accents.get(joint).colour(),
                1,
                pen(style.paper(), 1.5)));
      }
    }
    return List.of(new Group(Map.of("class", "marker"), ink));
  }

  private static Pen pen(String colour, double width) {
    return Pen.solid(colour, width);
  }

  private Words words(String text, double x, double y, double size, boolean bold) {
    return new Words(text, x, y, size, bold, bold ? style.ink() : style.quiet(), false);
  }

  /** The round step, of 1, 2 or 5 times a power of ten, that gives about so many. */
  private static double step(double span, int wished) {
    double rough = Math.max(1e-9, span) / wished;
    double power = Math.pow(10, Math.floor(Math.log10(rough)));
    double share = rough / power;
    return power * (share < 1.5 ? 1 : share < 3.5 ? 2 : share < 7.5 ? 5 : 10);
  }
}
