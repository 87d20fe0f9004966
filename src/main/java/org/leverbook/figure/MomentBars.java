package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.leverbook.body.JointId;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.figure.Ink.Words;
import org.leverbook.statics.JointMoment;

/**
 * The moments of one position as bars below it: a line with joint, moment and arm, a bar below.
 *
 * @param joints one bar each, the same in every panel
 * @param most the moment that a bar of full length stands for, newton metres
 * @param accents colours
 * @param style sizes
 */
record MomentBars(
    List<JointId> joints,
    double most,
    Map<JointId, FigureStyle.Accent> accents,
    FigureStyle style) {

  private static final double THICK = 8;

  /** One joint's share of the height, page units. */
  private static final double ROW = 31;

  private static final double CHIP = 18;

  /**
   * What a bar tells.
   *
   * @param newtonMetres with its sign
   * @param arm metres, with the sign of what the load does; empty where no load has one
   */
  record Told(double newtonMetres, OptionalDouble arm) {

    static Told of(JointMoment moment) {
      return new Told(
          moment.signed(),
          moment.mainLoad().isEmpty()
              ? OptionalDouble.empty()
              : OptionalDouble.of(moment.signedArm()));
    }

    String text() {
      String size = number(newtonMetres, 0) + " N·m";
      return arm.isEmpty() ? size : size + ", " + number(100 * arm.getAsDouble(), 1) + " cm";
    }

    private static String number(double value, int decimals) {
      String text = String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(value));
      boolean zero = Double.parseDouble(text) == 0;
      return value < 0 && !zero ? "−" + text : text;
    }
  }

  double height() {
    return ROW * joints.size();
  }

  Group of(SidePanel panel, double left, double top, double width) {
    List<Ink> ink = new ArrayList<>();
    double y = top;
    for (JointId joint : joints) {
      ink.add(one(panel, joint, left, y, width));
      y += ROW;
    }
    return new Group(Map.of("class", "moments", "data-name", panel.called()), ink);
  }

  private Group one(SidePanel panel, JointId joint, double left, double top, double width) {
    FigureStyle.Accent accent = accents.get(joint);
    Optional<Told> told = panel.told(joint);
    String words = style.say(joint.word()) + "  " + told.map(Told::text).orElse("not known");
    double room = width - CHIP - 5;
    double size = style.caption();
    double needed = TextWidths.of(words, size, false);
    size = needed > room ? size * room / needed : size;
    double line = top + style.caption();
    List<Ink> ink = new ArrayList<>();
    ink.add(
        Form.line(
            new Line2D.Double(left, line - 4, left + CHIP, line - 4),
            new Pen(accent.colour(), 2.6, accent.dash())));
    ink.add(new Words(words, left + CHIP + 5, line, size, false, style.ink(), false));
    Map<String, String> attributes = new LinkedHashMap<>();
    attributes.put("class", "moment");
    attributes.put("data-joint", joint.word());
    if (told.isPresent()) {
      double signed = told.get().newtonMetres();
      double length = most == 0 ? 0 : width * Math.abs(signed) / most;
      Rectangle2D bar = new Rectangle2D.Double(left, line + 4, Math.max(0.5, length), THICK);
      Pen edge = Pen.solid(accent.colour(), 1);
      // Hollow where the resistance extends.
      ink.add(new Form(bar, signed < 0 ? style.paper() : accent.colour(), 1, edge));
      attributes.put("data-moment-nm", String.format(Locale.ROOT, "%.3f", signed));
      attributes.put("data-length", SvgWriter.number(length));
    }
    return new Group(attributes, ink);
  }
}
