package org.leverbook.figure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.statics.Position;

/** The levels of the spine, coloured by the moment there about the level's own side axis. */
final class SpineInk {

  private static final double RADIUS = 4.8;

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;
  private final Map<JointId, Double> moments = new LinkedHashMap<>();
  private final Bands bands;

  SpineInk(Scene view, FigureStyle style, PageScale scale) {
    this.view = view;
    this.style = style;
    this.scale = scale;
    Position position = view.position();
    for (JointId level : JointId.spine()) {
      if (position.knows(level, Side.MIDLINE)) {
        moments.put(level, position.moment(level).signed());
      }
    }
    double least = moments.values().stream().mapToDouble(m -> m).min().orElse(0);
    double most = moments.values().stream().mapToDouble(m -> m).max().orElse(0);
    bands = Bands.over(Math.min(0, least), Math.max(0, most), false, style);
  }

  Group levels() {
    List<Ink> marks = new ArrayList<>();
    moments.forEach(
        (level, moment) -> {
          Vector2D at = scale.centred(view.seen(view.position().placement().centre(level.word())));
          Map<String, String> attributes = new LinkedHashMap<>();
          attributes.put("class", "level");
          attributes.put("data-level", level.word());
          attributes.put("data-moment-nm", String.format(Locale.ROOT, "%.3f", moment));
          marks.add(
              new Group(
                  attributes,
                  List.of(
                      new Form(
                          Curves.disc(at, RADIUS),
                          colour(moment),
                          1,
                          Pen.solid(style.metal(), 0.8)))));
        });
    return new Group(Map.of("class", "levels"), marks);
  }

  private String colour(double moment) {
    return String.format(Locale.ROOT, "#%06x", bands.of(moment).getRGB() & 0xffffff);
  }

  Legend legend() {
    List<String> colours = new ArrayList<>();
    List<String> marks = new ArrayList<>();
    for (int i = 0; i < bands.colours().size(); i++) {
      colours.add(colour(bands.low() + (i + 0.5) * bands.step()));
      marks.add(number(bands.low() + i * bands.step()));
    }
    marks.add(number(bands.high()));
    boolean both = bands.low() < 0;
    String title = "spine: moment, N·m, tends to flex" + (both ? " (minus: to extend)" : "");
    return new Legend(title, colours, marks);
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.0f", Math.abs(value));
    return value < 0 ? "−" + text : text;
  }
}
