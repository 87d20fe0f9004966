package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.leverbook.body.JointId;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;

/**
 * What all positions of a page share: joints and their colours, the measure of the bars, and
 * whether lifter and load are the same in all.
 *
 * @param joints of all of them, each once
 * @param accents colour and dash of each
 * @param most the largest moment, which the longest bar stands for, newton metres
 * @param longest the longest bar, so that it has room below the narrowest position, page units
 * @param lifter who, where it is the same in all; else empty
 * @param load what is lifted, where it is the same in all; else empty
 * @param style colours and sizes
 */
record PageKey(
    List<JointId> joints,
    Map<JointId, FigureStyle.Accent> accents,
    double most,
    double longest,
    String lifter,
    String load,
    FigureStyle style) {

  private static final double CHIP = 24;
  private static final double GAP = 20;

  static PageKey of(List<PositionPart> parts, FigureStyle style) {
    List<Scene> scenes = parts.stream().map(PositionPart::scene).toList();
    List<JointId> armed =
        scenes.stream()
            .flatMap(scene -> scene.arms().stream().map(DrawnArm::id))
            .distinct()
            .sorted()
            .toList();
    // Where nothing is held there are no arms, but body weight has its moments.
    List<JointId> joints =
        armed.isEmpty()
            ? scenes.stream()
                .flatMap(scene -> scene.without().stream())
                .distinct()
                .sorted()
                .toList()
            : armed;
    Map<JointId, FigureStyle.Accent> accents = new EnumMap<>(JointId.class);
    List<FigureStyle.Accent> each = style.accents(joints);
    for (int i = 0; i < joints.size(); i++) {
      accents.put(joints.get(i), each.get(i));
    }
    double most =
        parts.stream()
            .flatMap(part -> joints.stream().map(part::told))
            .flatMap(Optional::stream)
            .mapToDouble(told -> Math.abs(told.newtonMetres()))
            .max()
            .orElse(0);
    return new PageKey(
        joints,
        accents,
        most,
        parts.stream().mapToDouble(PositionPart::width).min().orElse(0),
        common(parts.stream().map(PositionPart::lifter)),
        common(scenes.stream().map(Caption::held).map(Caption::capital)),
        style);
  }

  private static String common(Stream<String> texts) {
    List<String> different = texts.distinct().toList();
    return different.size() == 1 ? different.get(0) : "";
  }

  /** Height of the names with their colours, page units. */
  double height(double width) {
    return joints.isEmpty() ? 0 : 1.6 * style.caption() * lines(width).size() + 4;
  }

  /** The names of the joints with their colours and dashes. */
  Group names(double left, double top, double width) {
    List<Ink> content = new ArrayList<>();
    double y = top;
    for (List<JointId> line : lines(width)) {
      y += 1.6 * style.caption();
      double x = left;
      for (JointId joint : line) {
        FigureStyle.Accent accent = accents.get(joint);
        content.add(
            Form.line(
                new Line2D.Double(x, y - 4, x + CHIP, y - 4),
                new Pen(accent.colour(), 2.6, accent.dash())));
        content.add(
            new Words(
                JointNames.of(joint), x + CHIP + 6, y, style.caption(), false, style.ink(), false));
        x += width(joint);
      }
    }
    return new Group(Map.of("class", "legend"), content);
  }

  private double width(JointId joint) {
    return CHIP + 6 + TextWidths.of(JointNames.of(joint), style.caption(), false) + GAP;
  }

  private List<List<JointId>> lines(double width) {
    List<List<JointId>> lines = new ArrayList<>();
    double used = Double.POSITIVE_INFINITY;
    for (JointId joint : joints) {
      if (used + width(joint) - GAP > width) {
        lines.add(new ArrayList<>());
        used = 0;
      }
      lines.get(lines.size() - 1).add(joint);
      used += width(joint);
    }
    return lines;
  }
}
