package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.leverbook.body.JointId;
import org.leverbook.display.Caution;
import org.leverbook.display.Picture;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;
import org.leverbook.lift.Library;
import org.leverbook.lift.Lift;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.Position;
import org.leverbook.study.Comparison.Row;

/** Every lift of a library on one sheet, start beside finish, all to one scale. */
final class LiftSheet {

  private static final double MARGIN = 28;
  private static final double PANEL = 264;
  private static final double BETWEEN = 8;

  /** Start and finish of so many lifts in a row. */
  private static final int LIFTS_ACROSS = 3;

  private static final int ACROSS = 2 * LIFTS_ACROSS;
  private static final double WIDTH = 2 * MARGIN + ACROSS * PANEL + (ACROSS - 1) * BETWEEN;
  private static final double BELOW_FLOOR = 34;
  private static final int MOMENTS = 2;

  private final Library library;
  private final FigureStyle style;
  private final Map<JointId, FigureStyle.Accent> accents = new EnumMap<>(JointId.class);
  private final Set<JointId> drawn = new LinkedHashSet<>();
  private final List<SidePanel> panels = new ArrayList<>();
  private final List<String> told = new ArrayList<>();
  private final List<Ink> ink = new ArrayList<>();

  private LiftSheet(Library library, FigureStyle style) {
    this.library = library;
    this.style = style;
    for (JointId joint : JointId.values()) {
      accents.put(joint, style.accent(joint));
    }
    for (Lift<?> lift : library) {
      panel(lift, "start", lift::start);
      panel(lift, "finish", lift::finish);
    }
  }

  static Picture picture(Library library, FigureStyle style) {
    if (library.lifts().isEmpty()) {
      throw new Refused("This library holds no lift, so there is nothing to draw.");
    }
    return new PositionPicture(new LiftSheet(library, style).drawing(), style);
  }

  /** A lift that this lifter cannot get into keeps its place, with the reason. */
  private void panel(Lift<?> lift, String when, Supplier<Position> position) {
    String name = Caption.capital(lift.name()) + ", " + when;
    Position found = null;
    String reason = "";
    List<String> moments = List.of();
    List<JointId> joints = Scene.USUAL;
    try {
      found = position.get();
      joints = Scene.usual(found);
      moments = moments(found, joints);
      reason = found.held() ? "" : found.holding().sentence();
    } catch (Refused e) {
      reason = e.getMessage();
    }
    panels.add(new SidePanel(new Row(name, found, reason), joints, style, PANEL, moments));
    String numbers = String.join(", ", moments) + (reason.isEmpty() ? "" : " " + reason);
    told.add(name + (numbers.isBlank() ? "" : ": " + numbers.strip()));
  }

  /** The greatest of the arms that are drawn; with nothing held, of the usual joints. */
  private List<String> moments(Position position, List<JointId> joints) {
    Map<String, Double> all = new LinkedHashMap<>();
    for (DrawnArm arm : Scene.of(position, joints).arms()) {
      drawn.add(arm.id());
      all.merge(arm.id().word(), arm.newtonMetres(), Math::max);
    }
    if (all.isEmpty()) {
      Plots.usual().stream()
          .filter(j -> j.sides().stream().allMatch(side -> position.knows(j, side)))
          .forEach(j -> all.put(j.word(), position.moment(j).size()));
    }
    return all.entrySet().stream()
        .filter(entry -> entry.getValue() >= 0.5)
        .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
        .limit(MOMENTS)
        .map(entry -> String.format(Locale.ROOT, "%s %.0f N·m", entry.getKey(), entry.getValue()))
        .toList();
  }

  private Drawing drawing() {
    List<Rectangle2D> seen =
        panels.stream().map(SidePanel::seen).flatMap(Optional::stream).toList();
    double widest = seen.stream().mapToDouble(Rectangle2D::getWidth).max().orElse(1);
    double perMetre = (PANEL - 2 * SidePanel.PAD) / widest;
    double y = heading();
    for (int from = 0; from < panels.size(); from += ACROSS) {
      List<SidePanel> row = panels.subList(from, Math.min(panels.size(), from + ACROSS));
      y = row(row, y, perMetre);
    }
    double height = caption(y);
    String title = title();
    return new Drawing(
        WIDTH,
        height,
        title,
        "Start and finish of each, drawn to one scale. " + String.join(". ", told) + ".",
        Map.of("data-scale", String.format(Locale.ROOT, "%.6f", perMetre)),
        ink);
  }

  private double row(List<SidePanel> row, double y, double perMetre) {
    double head = row.stream().mapToDouble(SidePanel::head).max().orElseThrow();
    double high =
        row.stream()
            .map(SidePanel::seen)
            .flatMap(Optional::stream)
            .mapToDouble(Rectangle2D::getHeight)
            .max()
            .orElse(0.3);
    double top = y + head;
    double floor = top + high * perMetre;
    for (int i = 0; i < row.size(); i++) {
      double left = MARGIN + i * (PANEL + BETWEEN);
      ink.addAll(row.get(i).heading(left, y));
      ink.add(row.get(i).body(left, top, floor, perMetre, accents));
    }
    return floor + BELOW_FLOOR;
  }

  private String title() {
    return library.lifts().size() == 1
        ? Caption.capital(library.lifts().get(0).name()) + ", start and finish"
        : library.lifts().size() + " lifts, start and finish";
  }

  private double heading() {
    double y = MARGIN + style.title();
    ink.add(new Words(title(), MARGIN, y, style.title(), true, style.ink(), false));
    String who = Caption.capital(library.lifts().get(0).body().person().text());
    y = lines(who, y + 0.35 * style.title(), style.quiet());
    return y + 14;
  }

  private double caption(double top) {
    double y = key(top + 8);
    List<String> sentences =
        List.of(
            "All to one scale. The dashed line is the line of force; arms run from the joint square"
                + " onto it. Where nothing is held it is that of the body's own weight, without arms."
                + " Above each: the two greatest moments, of a paired joint on one side.",
            Caution.TEXT);
    for (String sentence : sentences) {
      y = lines(sentence, y, style.ink()) + 0.3 * style.caption();
    }
    return Math.ceil(y + MARGIN * 0.7);
  }

  /** Which colour and dash is which joint. */
  private double key(double top) {
    double x = MARGIN;
    double y = top;
    for (JointId joint : drawn.stream().sorted().collect(Collectors.toList())) {
      FigureStyle.Accent accent = accents.get(joint);
      double wide = 34 + TextWidths.of(joint.word(), style.caption(), false) + 22;
      if (x + wide > WIDTH - MARGIN) {
        x = MARGIN;
        y += 1.6 * style.caption();
      }
      Pen pen = new Pen(accent.colour(), 3, accent.dash());
      ink.add(Form.line(new Line2D.Double(x, y - 4, x + 28, y - 4), pen));
      ink.add(new Words(joint.word(), x + 34, y, style.caption(), false, style.ink(), false));
      x += wide;
    }
    return y + 8;
  }

  private double lines(String text, double top, String colour) {
    double y = top;
    for (String line : TextWidths.wrapped(text, style.caption(), WIDTH - 2 * MARGIN)) {
      y += 1.35 * style.caption();
      ink.add(new Words(line, MARGIN, y, style.caption(), false, colour, false));
    }
    return y;
  }
}
