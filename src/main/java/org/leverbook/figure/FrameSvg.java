package org.leverbook.figure;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Writes ink for pages that hold many frames: tenths of a page unit, paths relative to their last
 * point, looks as classes of a style sheet with a day and a night, and what several frames share
 * once only.
 */
final class FrameSvg {

  private static final int TENTHS = 10;

  private final FigureStyle style;
  private final Map<String, String> classes = new LinkedHashMap<>();
  private final Map<String, String> colours = new LinkedHashMap<>();
  private final Map<String, Integer> uses = new HashMap<>();
  private final Map<String, String> shared = new LinkedHashMap<>();

  FrameSvg(FigureStyle style) {
    this.style = style;
  }

  /** Counts the pieces of a frame, so that those of several frames are known. */
  void count(List<Ink> pieces) {
    pieces.forEach(piece -> uses.merge(text(piece), 1, Integer::sum));
  }

  /** The pieces of a frame; those counted more than once stand in {@link #definitions}. */
  String frame(List<Ink> pieces) {
    StringBuilder svg = new StringBuilder();
    for (Ink piece : pieces) {
      String text = text(piece);
      if (uses.getOrDefault(text, 1) > 1 && text.length() > 60) {
        String id = shared.computeIfAbsent(text, t -> "p" + (shared.size() + 1));
        svg.append("<use href=\"#").append(id).append("\"/>\n");
      } else {
        svg.append(text);
      }
    }
    return svg.toString();
  }

  /** What several frames use, after all frames were written. */
  String definitions() {
    StringBuilder svg = new StringBuilder("<defs>\n");
    shared.forEach(
        (text, id) ->
            svg.append("<g id=\"").append(id).append("\">\n").append(text).append("</g>\n"));
    return svg.append("</defs>\n").toString();
  }

  /** Pieces that stand once. */
  String text(List<Ink> pieces) {
    return pieces.stream().map(this::text).collect(Collectors.joining());
  }

  /** The variable that holds a colour, by day or by night. */
  String colour(String hex) {
    return "var(--" + colours.computeIfAbsent(hex, h -> "k" + (colours.size() + 1)) + ")";
  }

  /** The classes, after everything was written. */
  String styleSheet() {
    StringBuilder sheet = new StringBuilder();
    classes.forEach((look, name) -> sheet.append('.').append(name).append(look).append('\n'));
    return sheet.toString();
  }

  /** The colours' values by day or by night. */
  String palette(boolean night) {
    return colours.entrySet().stream()
        .map(e -> "--" + e.getValue() + ":" + (night ? Night.of(e.getKey()) : e.getKey()))
        .collect(Collectors.joining(";"));
  }

  /** The window onto the page that an SVG element shows. */
  static String window(Rectangle2D box) {
    return number(box.getX())
        + " "
        + number(box.getY())
        + " "
        + number(box.getWidth())
        + " "
        + number(box.getHeight());
  }

  private String text(Ink ink) {
    if (ink instanceof Ink.Group group) {
      String content = group.content().stream().map(this::text).collect(Collectors.joining());
      return "<g" + attributes(group.attributes()) + ">\n" + content + "</g>\n";
    } else if (ink instanceof Ink.Words words) {
      return words(words);
    } else if (ink instanceof Ink.Form form) {
      return form(form);
    }
    throw new IllegalArgumentException("No photo moves.");
  }

  /** The kind and the joint; the numbers stand in the table. */
  private static String attributes(Map<String, String> attributes) {
    return attributes.entrySet().stream()
        .filter(e -> e.getKey().equals("data-joint") || e.getKey().equals("class"))
        .map(e -> " " + e.getKey() + "=\"" + SvgWriter.escaped(e.getValue()) + "\"")
        .collect(Collectors.joining());
  }

  private String words(Ink.Words words) {
    String look =
        "{font-size:"
            + number(words.size())
            + "px;fill:"
            + colour(words.colour())
            + (words.bold() ? ";font-weight:bold" : "")
            + (words.halo()
                ? ";stroke:"
                    + colour(style.paper())
                    + ";stroke-width:3px;stroke-linejoin:round;paint-order:stroke"
                : "")
            + "}";
    return "<text class=\""
        + named(look)
        + "\" x=\""
        + number(words.x())
        + "\" y=\""
        + number(words.y())
        + "\">"
        + SvgWriter.escaped(words.words())
        + "</text>\n";
  }

  private String form(Ink.Form form) {
    StringBuilder look = new StringBuilder("{fill:");
    look.append(form.fill().isEmpty() ? "none" : colour(form.fill()));
    if (form.opacity() < 1) {
      look.append(";fill-opacity:").append(SvgWriter.number(form.opacity()));
    }
    Ink.Pen pen = form.pen();
    if (pen != null) {
      look.append(";stroke:").append(colour(pen.colour()));
      look.append(";stroke-width:").append(number(pen.width())).append("px;stroke-linejoin:round");
      if (!pen.dash().isEmpty()) {
        look.append(";stroke-dasharray:");
        look.append(pen.dash().stream().map(FrameSvg::number).collect(Collectors.joining(" ")));
      }
    }
    String name = named(look.append('}').toString());
    return "<path class=\"" + name + "\" d=\"" + path(form.shape()) + "\"/>\n";
  }

  private String named(String look) {
    return classes.computeIfAbsent(look, l -> "s" + (classes.size() + 1));
  }

  /** A path in whole tenths, each point told from the last one, so that errors do not add up. */
  private static String path(Shape shape) {
    StringBuilder path = new StringBuilder();
    double[] at = new double[6];
    long[] last = new long[2];
    long[] start = new long[2];
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      int kind = i.currentSegment(at);
      if (kind == PathIterator.SEG_CLOSE) {
        path.append('z');
        System.arraycopy(start, 0, last, 0, 2);
        continue;
      }
      int count = kind == PathIterator.SEG_QUADTO ? 4 : kind == PathIterator.SEG_CUBICTO ? 6 : 2;
      boolean move = kind == PathIterator.SEG_MOVETO;
      path.append(move ? 'M' : kind == PathIterator.SEG_LINETO ? 'l' : count == 4 ? 'q' : 'c');
      long[] whole = new long[count];
      for (int k = 0; k < count; k++) {
        whole[k] = Math.round(at[k] * TENTHS);
        tenths(path, whole[k] - (move ? 0 : last[k % 2]), k == 0);
      }
      last[0] = whole[count - 2];
      last[1] = whole[count - 1];
      if (move) {
        System.arraycopy(last, 0, start, 0, 2);
      }
    }
    return path.toString();
  }

  private static void tenths(StringBuilder path, long tenths, boolean first) {
    if (!first && tenths >= 0) {
      path.append(' ');
    }
    path.append(tenths < 0 ? "-" : "");
    long size = Math.abs(tenths);
    path.append(size / TENTHS == 0 && size > 0 ? "" : Long.toString(size / TENTHS));
    if (size % TENTHS != 0) {
      path.append('.').append(size % TENTHS);
    }
  }

  /** A number in tenths. */
  static String number(double value) {
    String told = String.format(Locale.ROOT, "%.1f", value);
    told = told.endsWith(".0") ? told.substring(0, told.length() - 2) : told;
    return told.equals("-0") ? "0" : told;
  }
}
