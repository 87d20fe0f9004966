package org.leverbook.figure;

import java.awt.Shape;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes a drawing as one SVG document: real text, the same characters on every machine. */
final class SvgWriter {

  private static final int DECIMALS = 3;

  private final FigureStyle style;
  private final StringBuilder svg = new StringBuilder();
  private int insets;

  private SvgWriter(FigureStyle style) {
    this.style = style;
  }

  static String write(Drawing drawing, FigureStyle style) {
    return new SvgWriter(style).document(drawing);
  }

  private String document(Drawing drawing) {
    String width = number(drawing.width());
    String height = number(drawing.height());
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(width);
    svg.append("\" height=\"").append(height).append("\" viewBox=\"0 0 ");
    svg.append(width).append(' ').append(height).append("\" role=\"img\"");
    String key = Told.key(drawing.title(), drawing.description());
    svg.append(" aria-labelledby=\"t").append(key).append(" d").append(key);
    svg.append("\" font-family=\"");
    svg.append(escaped(style.fonts())).append('"');
    attributes(drawing.attributes());
    svg.append(">\n<title id=\"t")
        .append(key)
        .append("\">")
        .append(escaped(drawing.title()))
        .append("</title>\n<desc id=\"d");
    svg.append(key).append("\">");
    svg.append(escaped(drawing.description())).append("</desc>\n<rect width=\"").append(width);
    svg.append("\" height=\"").append(height);
    svg.append("\" fill=\"").append(style.paper()).append("\"/>\n");
    drawing.content().forEach(this::ink);
    return svg.append("</svg>\n").toString();
  }

  private void ink(Ink ink) {
    if (ink instanceof Ink.Group group) {
      svg.append("<g");
      attributes(group.attributes());
      svg.append(">\n");
      group.content().forEach(this::ink);
      svg.append("</g>\n");
    } else if (ink instanceof Ink.Words words) {
      words(words, "");
    } else if (ink instanceof Ink.Upward upward) {
      String at = number(upward.words().x()) + " " + number(upward.words().y());
      words(upward.words(), " transform=\"rotate(-90 " + at + ")\"");
    } else if (ink instanceof Ink.Form form) {
      form(form);
    } else if (ink instanceof Ink.Photograph photo) {
      photo(photo);
    } else if (ink instanceof Ink.Inset inset) {
      svg.append(InsetSvg.of(inset, "part" + ++insets + "-"));
    }
  }

  /** The pixels themselves, so that no reader turns them by what a camera noted of its pose. */
  private void photo(Ink.Photograph photo) {
    svg.append("<image x=\"").append(number(photo.x()));
    svg.append("\" y=\"").append(number(photo.y()));
    svg.append("\" width=\"").append(number(photo.width()));
    svg.append("\" height=\"").append(number(photo.height()));
    svg.append("\" preserveAspectRatio=\"none\" href=\"data:image/png;base64,");
    byte[] file = RasterPainter.file(photo.pixels());
    svg.append(Base64.getEncoder().encodeToString(file)).append("\"/>\n");
  }

  private void attributes(Map<String, String> attributes) {
    // The JDK shuffles the entries of Map.of anew in every run.
    Map<String, String> ordered =
        attributes instanceof LinkedHashMap ? attributes : new TreeMap<>(attributes);
    ordered.forEach(
        (name, value) ->
            svg.append(' ').append(name).append("=\"").append(escaped(value)).append('"'));
  }

  private void words(Ink.Words words, String turned) {
    svg.append("<text").append(turned).append(" x=\"").append(number(words.x()));
    svg.append("\" y=\"").append(number(words.y()));
    svg.append("\" font-size=\"").append(number(words.size()));
    svg.append(words.bold() ? "\" font-weight=\"bold" : "");
    svg.append("\" fill=\"").append(words.colour());
    if (words.halo()) {
      svg.append("\" stroke=\"").append(style.paper());
      svg.append("\" stroke-width=\"3\" stroke-linejoin=\"round\" paint-order=\"stroke");
    }
    svg.append("\">").append(escaped(words.words())).append("</text>\n");
  }

  private void form(Ink.Form form) {
    svg.append("<path d=\"").append(path(form.shape()));
    svg.append("\" fill=\"").append(form.fill().isEmpty() ? "none" : form.fill());
    if (form.opacity() < 1) {
      svg.append("\" fill-opacity=\"").append(number(form.opacity()));
    }
    Ink.Pen pen = form.pen();
    if (pen != null) {
      svg.append("\" stroke=\"").append(pen.colour());
      svg.append("\" stroke-width=\"").append(number(style.line() * pen.width()));
      svg.append("\" stroke-linejoin=\"round");
      if (!pen.dash().isEmpty()) {
        svg.append("\" stroke-dasharray=\"").append(dashes(pen.dash(), style.line()));
      }
    }
    svg.append("\"/>\n");
  }

  private static String dashes(List<Double> dash, double times) {
    return dash.stream().map(d -> number(times * d)).collect(Collectors.joining(" "));
  }

  private static String path(Shape shape) {
    StringBuilder path = new StringBuilder();
    double[] at = new double[6];
    for (PathIterator i = shape.getPathIterator(null); !i.isDone(); i.next()) {
      switch (i.currentSegment(at)) {
        case PathIterator.SEG_MOVETO -> points(path.append('M'), at, 2);
        case PathIterator.SEG_LINETO -> points(path.append('L'), at, 2);
        case PathIterator.SEG_QUADTO -> points(path.append('Q'), at, 4);
        case PathIterator.SEG_CUBICTO -> points(path.append('C'), at, 6);
        default -> path.append('Z');
      }
    }
    return path.toString();
  }

  private static void points(StringBuilder path, double[] at, int count) {
    for (int k = 0; k < count; k++) {
      path.append(k == 0 ? "" : " ").append(number(at[k]));
    }
  }

  /** A number with at most three decimals, no exponent, and no minus before zero. */
  static String number(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Text made safe for XML; control characters, which XML cannot hold, become spaces. */
  static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .map(c -> c < 0x20 || Character.getType(c) == Character.SURROGATE ? ' ' : c)
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case 0xFFFE, 0xFFFF -> safe.append(' ');
                default -> safe.appendCodePoint(c);
              }
            });
    return safe.toString();
  }
}
