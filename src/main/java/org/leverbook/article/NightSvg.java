package org.leverbook.article;

import java.awt.Color;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leverbook.figure.Night;

/**
 * Gives a drawing of a page its colours for a dark screen: a rule for each colour it is drawn in.
 * What holds a photo stays as it is.
 */
final class NightSvg {

  /** Begins the rules. */
  static final String RULE = "<style>@media screen and (prefers-color-scheme:dark){";

  private static final Pattern COLOUR =
      Pattern.compile(
          " (fill|stroke|stop-color)=\"(#[0-9a-fA-F]{6}|rgb\\([^)\"]*\\)|white|black)\"");

  private static final Pattern RGB =
      Pattern.compile("rgb\\(\\s*(\\d+)\\s*,\\s*(\\d+)\\s*,\\s*(\\d+)\\s*\\)");

  private NightSvg() {}

  /**
   * The drawing with its rules.
   *
   * @param svg an element that begins with {@code <svg}
   * @param own begins the names of its elements; so does the name it gets itself
   */
  static String of(String svg, String own) {
    int head = svg.indexOf('>');
    if (svg.contains("<image") || svg.charAt(head - 1) == '/') {
      return svg;
    }
    Map<String, String> rules = new LinkedHashMap<>();
    Matcher colour = COLOUR.matcher(svg);
    while (colour.find()) {
      String selector = "[" + colour.group(1) + "=\"" + colour.group(2) + "\"]";
      hex(colour.group(2))
          .ifPresent(day -> rules.put(selector, colour.group(1) + ":" + Night.of(day)));
    }
    String name = own + "drawing";
    StringBuilder css = new StringBuilder(RULE);
    // Nobody said a colour where black is meant: letters of charts.
    css.append('#').append(name).append("{fill:").append(Night.of("#000000")).append('}');
    rules.forEach(
        (selector, rule) ->
            css.append('#')
                .append(name)
                .append(' ')
                .append(selector)
                .append('{')
                .append(rule)
                .append('}'));
    String named = svg.substring(0, head).replaceFirst(" id=\"[^\"]*\"", "");
    return named + " id=\"" + name + "\">" + css + "}</style>" + svg.substring(head + 1);
  }

  private static Optional<String> hex(String colour) {
    Matcher rgb = RGB.matcher(colour);
    if (rgb.matches()) {
      Color parts =
          new Color(
              Integer.parseInt(rgb.group(1)),
              Integer.parseInt(rgb.group(2)),
              Integer.parseInt(rgb.group(3)));
      return Optional.of(String.format(Locale.ROOT, "#%06x", parts.getRGB() & 0xFFFFFF));
    }
    return switch (colour) {
      case "white" -> Optional.of("#ffffff");
      case "black" -> Optional.of("#000000");
      default -> colour.startsWith("#") ? Optional.of(colour) : Optional.empty();
    };
  }
}
