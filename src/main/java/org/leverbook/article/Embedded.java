package org.leverbook.article;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leverbook.display.MovingPicture;
import org.leverbook.display.Picture;

/** Pictures as parts of a page, with nothing left to fetch. */
public final class Embedded {

  /** Page units: twice what a phone shows. */
  private static final double WIDE = 700;

  private static final Pattern WIDTH = Pattern.compile(" width=\"(\\d+(?:\\.\\d+)?)\"");

  private Embedded() {}

  /**
   * A picture: as drawing where it is one; a moving picture as a page of its own in a frame, where
   * it is played by its own button.
   *
   * @param picture which; tells listeners its description
   * @param own begins every name in it, as in "figure-1-"; another one for each picture of a page
   * @return a {@code div} of class {@code picture}, or an {@code iframe}
   */
  public static String of(Picture picture, String own) {
    return picture instanceof MovingPicture moving
        ? page(moving.htmlPage(), moving.description())
        : svg(picture.svgDocument(), own, picture.description());
  }

  /**
   * A picture that keeps its colours in the dark, for a place that may be light then.
   *
   * @param picture which; tells listeners its description
   * @param own begins every name in it
   * @return a {@code div} of class {@code picture}, or an {@code iframe}
   */
  static String byDay(Picture picture, String own) {
    return picture instanceof MovingPicture
        ? of(picture, own)
        : InlineSvg.of(picture.svgDocument(), own)
            .map(svg -> box(svg) + labelled(svg, picture.description()) + "</div>\n")
            .orElseGet(() -> of(picture, own));
  }

  /**
   * A drawing; in the dark light and dark change places, unless it holds a photo.
   *
   * @param document an SVG document
   * @param own begins every name in it; another one for each picture of a page
   * @param told what is to be seen, for listeners, where the document does not say it
   * @return a {@code div} of class {@code picture}
   */
  public static String svg(String document, String own, String told) {
    return InlineSvg.of(document, own)
        .map(svg -> NightSvg.of(svg, own))
        .map(svg -> box(svg) + labelled(svg, told) + "</div>\n")
        .orElseGet(() -> image("image/svg+xml", document.getBytes(StandardCharsets.UTF_8), told));
  }

  /**
   * An image file.
   *
   * @param type as in "image/png"
   * @param bytes of the file
   * @param told what is to be seen, for listeners
   * @return a {@code div} of class {@code picture}
   */
  public static String image(String type, byte[] bytes, String told) {
    return "<div class=\"picture\"><img alt=\""
        + Page.escaped(told)
        + "\" src=\"data:"
        + type
        + ";base64,"
        + Base64.getEncoder().encodeToString(bytes)
        + "\"/></div>\n";
  }

  /**
   * A page in a frame. Its own scripts may run, but reach nothing of the page around it.
   *
   * @param document an HTML document
   * @param told what it shows, for listeners
   * @return an {@code iframe}
   */
  public static String page(String document, String told) {
    return "<iframe sandbox=\"allow-scripts\" title=\""
        + Page.escaped(told)
        + "\" srcdoc=\""
        + Page.escaped(document)
        + "\"></iframe>\n";
  }

  /** A wide drawing is not shrunk on a phone until nothing can be read: it is pushed aside. */
  private static String box(String svg) {
    Matcher width = WIDTH.matcher(svg.substring(0, svg.indexOf('>')));
    boolean wide = width.find() && Double.parseDouble(width.group(1)) >= WIDE;
    String night = svg.contains(NightSvg.RULE) ? " night" : "";
    return wide
        ? "<div class=\"picture wide" + night + "\" tabindex=\"0\">"
        : "<div class=\"picture" + night + "\">";
  }

  private static String labelled(String svg, String told) {
    String head = svg.substring(0, svg.indexOf('>'));
    return told.isBlank() || head.contains(" aria-label")
        ? svg
        : "<svg role=\"img\" aria-label=\"" + Page.escaped(told) + "\"" + svg.substring(4);
  }
}
