package org.leverbook.figure;

import java.awt.Color;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Side;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.muscle.Effort;
import org.leverbook.muscle.MusclePath;
import org.leverbook.statics.Position;

/**
 * Muscles as lines, the darker and the broader the harder they pull, so that grey print tells them
 * too; of those that pull less than a twentieth nothing is drawn.
 */
final class MuscleInk {

  private static final double LEAST = 0.05;
  private static final int BANDS = 5;
  private static final Color PALE = new Color(0xe9b59a);
  private static final Color DEEP = new Color(0x6a0f33);

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;
  private int hidden;

  MuscleInk(Scene view, FigureStyle style, PageScale scale) {
    this.view = view;
    this.style = style;
    this.scale = scale;
  }

  /** The lines, the hardest pull on top. */
  Group lines() {
    Position position = view.position();
    Effort effort = position.effort();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < effort.pulls().size(); i++) {
      boolean seen = !view.sight().fromSide() || effort.pulls().get(i).strand().side() != Side.LEFT;
      if (seen && effort.stress(i) >= LEAST) {
        order.add(i);
      }
    }
    order.sort(Comparator.comparingDouble(effort::stress));
    List<Ink> lines = new ArrayList<>();
    hidden = 0;
    for (int strand : order) {
      List<Vector3D> path = MusclePath.of(effort, position.placement(), strand);
      if (path.isEmpty()) {
        hidden++;
        continue;
      }
      lines.add(line(effort, strand, path));
    }
    return new Group(Map.of("class", "muscles"), lines);
  }

  private Group line(Effort effort, int strand, List<Vector3D> path) {
    double stress = effort.stress(strand);
    List<Vector2D> points = path.stream().map(view::seen).map(scale::centred).toList();
    Shape curve = Curves.open(points);
    int band = band(stress);
    double width = 1.6 + 0.7 * band;
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "muscle");
    attributes.put("data-muscle", effort.pulls().get(strand).strand().fullName());
    attributes.put("data-effort", String.format(Locale.ROOT, "%.4f", stress));
    return new Group(
        attributes,
        List.of(
            Form.line(curve, Pen.solid(style.paper(), width + 1.2)),
            Form.line(curve, Pen.solid(colours().get(band), width))));
  }

  private static int band(double stress) {
    return Math.max(0, Math.min(BANDS - 1, (int) Math.floor(stress * BANDS)));
  }

  private static List<String> colours() {
    List<String> colours = new ArrayList<>();
    for (int i = 0; i < BANDS; i++) {
      double share = i / (BANDS - 1.0);
      colours.add(
          String.format(
              Locale.ROOT,
              "#%02x%02x%02x",
              mixed(PALE.getRed(), DEEP.getRed(), share),
              mixed(PALE.getGreen(), DEEP.getGreen(), share),
              mixed(PALE.getBlue(), DEEP.getBlue(), share)));
    }
    return colours;
  }

  private static int mixed(int from, int to, double share) {
    return (int) Math.round(from + share * (to - from));
  }

  static Legend legend() {
    return new Legend(
        "muscles: pull as a share of the greatest, %",
        colours(), List.of("0", "20", "40", "60", "80", "100"));
  }

  /** What a reader must know of the lines; after {@link #lines()}. */
  String sentence() {
    return "Muscles that pull at least a twentieth of their greatest are lines that pass each joint"
        + " at the arm they have there; their ends are drawn by eye."
        + (hidden > 0
            ? String.format(
                Locale.ROOT,
                " %d more pull%s at shoulder girdle and neck, where arms alone tell no path.",
                hidden,
                hidden == 1 ? "s" : "")
            : "");
  }
}
