package org.leverbook.figure;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Picture;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;
import org.leverbook.statics.Position;
import org.leverbook.strength.Demand;
import org.leverbook.study.Comparison;
import org.leverbook.study.Comparison.Row;

/** Lays positions beside each other on a page, to one scale, with their moments as bars below. */
final class SideBySidePage {

  private static final double WIDTH = 900;
  private static final double MARGIN = 28;
  private static final double BETWEEN = 22;
  private static final double TALLEST = 330;
  private static final double LARGEST = 330;
  private static final int MOST_IN_A_ROW = 4;

  /** Of the line of force above the highest point is already in what is seen; this is free air. */
  private static final double AIR = 6;

  private static final double RULER = 0.2;

  private final Comparison comparison;
  private final FigureStyle style;
  private final List<JointId> joints;
  private final int across;
  private final double width;
  private final double perMetre;
  private final double high;
  private final List<SidePanel> panels;
  private final Map<JointId, FigureStyle.Accent> accents = new EnumMap<>(JointId.class);
  private final List<Ink> ink = new ArrayList<>();

  private SideBySidePage(Comparison comparison, List<JointId> wished, FigureStyle style) {
    this.comparison = comparison;
    this.style = style;
    this.joints = wished.isEmpty() ? usual(comparison) : wished;
    int rows = comparison.rows().size();
    int lines = (rows + MOST_IN_A_ROW - 1) / MOST_IN_A_ROW;
    this.across = (rows + lines - 1) / lines;
    this.width = (WIDTH - 2 * MARGIN - (across - 1) * BETWEEN) / across;
    this.panels =
        comparison.rows().stream()
            .map(row -> new SidePanel(row, joints, style, width, told(row)))
            .toList();
    List<Rectangle2D> seen =
        panels.stream().map(SidePanel::seen).flatMap(Optional::stream).toList();
    double wide = seen.stream().mapToDouble(Rectangle2D::getWidth).max().orElse(1);
    this.high = seen.stream().mapToDouble(Rectangle2D::getHeight).max().orElse(0.5);
    this.perMetre = Math.min(LARGEST, Math.min((width - 2 * SidePanel.PAD) / wide, TALLEST / high));
    List<FigureStyle.Accent> each = style.accents(joints);
    for (int i = 0; i < joints.size(); i++) {
      accents.put(joints.get(i), each.get(i));
    }
  }

  static Picture picture(Comparison comparison, List<JointId> joints, FigureStyle style) {
    return new PositionPicture(new SideBySidePage(comparison, joints, style).drawing(), style);
  }

  private static List<JointId> usual(Comparison comparison) {
    return positions(comparison).stream().findFirst().map(Scene::usual).orElse(Scene.USUAL);
  }

  private static List<Position> positions(Comparison comparison) {
    return comparison.rows().stream().map(Row::position).filter(Objects::nonNull).toList();
  }

  /** Load and limiter, and the lifter where they differ. */
  private List<String> told(Row row) {
    List<String> told = new ArrayList<>();
    if (row.position() == null) {
      return told;
    }
    if (lifters().size() > 1) {
      told.add(row.lifter());
    }
    told.add(row.load());
    Optional<Demand> limiter = row.limiter();
    limiter.ifPresent(
        d ->
            told.add(
                String.format(
                    Locale.ROOT,
                    "limiter at %.0f %%: %s",
                    100 * d.effort().orElseThrow(),
                    d.what())));
    return told;
  }

  private List<String> lifters() {
    return comparison.rows().stream()
        .map(Row::lifter)
        .filter(lifter -> !lifter.isEmpty())
        .distinct()
        .toList();
  }

  private Drawing drawing() {
    double y = heading();
    double most =
        panels.stream()
            .flatMap(panel -> joints.stream().map(panel::told))
            .flatMap(Optional::stream)
            .mapToDouble(told -> Math.abs(told.newtonMetres()))
            .max()
            .orElse(0);
    MomentBars bars = new MomentBars(joints, most, accents, style);
    for (int from = 0; from < panels.size(); from += across) {
      int to = Math.min(panels.size(), from + across);
      double head =
          panels.subList(from, to).stream().mapToDouble(SidePanel::head).max().orElseThrow();
      double top = y + head + AIR;
      double floor = top + high * perMetre;
      for (int i = from; i < to; i++) {
        double left = MARGIN + (i - from) * (width + BETWEEN);
        ink.addAll(panels.get(i).heading(left, y));
        ink.add(panels.get(i).body(left, top, floor, perMetre, accents));
        ink.add(bars.of(panels.get(i), left, floor + 20, width));
      }
      y = floor + 20 + bars.height() + 18;
    }
    ruler(y);
    double height = caption(y + 24);
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("data-scale", String.format(Locale.ROOT, "%.6f", perMetre));
    return new Drawing(WIDTH, height, title(), description(), attributes, ink);
  }

  private String title() {
    return "Side by side: " + comparison.loads();
  }

  private String description() {
    return panels.stream()
        .map(
            panel ->
                panel.called()
                    + ": "
                    + joints.stream()
                        .map(
                            j ->
                                j.word()
                                    + " "
                                    + panel.told(j).map(MomentBars.Told::text).orElse("not known"))
                        .collect(Collectors.joining("; ")))
        .collect(Collectors.joining(". ", "Drawn to one scale. ", "."));
  }

  private double heading() {
    double y = MARGIN + style.title();
    double needed = TextWidths.of(title(), style.title(), true);
    double size = style.title() * Math.min(1, (WIDTH - 2 * MARGIN) / needed);
    ink.add(new Words(style.say(title()), MARGIN, y, size, true, style.ink(), false));
    y += 0.35 * style.title();
    if (lifters().size() == 1) {
      String person = Caption.capital(positions(comparison).get(0).body().person().text());
      for (String line : TextWidths.wrapped(person, style.caption(), WIDTH - 2 * MARGIN)) {
        y += 1.35 * style.caption();
        ink.add(new Words(line, MARGIN, y, style.caption(), false, style.quiet(), false));
      }
    }
    return y + 12;
  }

  /** The scale all share. */
  private void ruler(double y) {
    double length = RULER * perMetre;
    Path2D bar = new Path2D.Double();
    bar.moveTo(MARGIN, y - 4);
    bar.lineTo(MARGIN, y + 4);
    bar.moveTo(MARGIN, y);
    bar.lineTo(MARGIN + length, y);
    bar.moveTo(MARGIN + length, y - 4);
    bar.lineTo(MARGIN + length, y + 4);
    List<Ink> content =
        List.of(
            Form.line(bar, Pen.solid(style.quiet(), 1.4)),
            new Words(
                "20 cm, the same in all",
                MARGIN + length + 8,
                y + 4,
                style.caption(),
                false,
                style.quiet(),
                false));
    ink.add(new Group(Map.of("class", "ruler"), content));
  }

  private double caption(double top) {
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "Arms run from the joint square onto the dashed line of force, in the colour and dash of the"
            + " joint's row. Bars: the moment at the joint, of a paired joint on the side that has"
            + " more, with the arm beside it; hollow, with a minus, where the resistance extends.");
    if (panels.stream().anyMatch(SidePanel::fromFront)) {
      sentences.add(
          "Seen from the front, arm and moment are about the line of sight; tables tell them about"
              + " the joint's own axis.");
    }
    if (panels.stream().anyMatch(SidePanel::holdsNothing)) {
      sentences.add(
          "Where nothing is held the line is that of the body's own weight, without arms.");
    }
    if (lifters().size() > 1) {
      sentences.add("The lifters differ, so a difference may be theirs.");
    }
    sentences.add(Caution.TEXT);
    double y = top;
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
