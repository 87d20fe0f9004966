package org.leverbook.figure;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.geom.Line2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.leverbook.body.JointId;

/**
 * Writes a moving picture as one page: well-formed, so that XML readers take it too, without any
 * reference to another file. Without a script it shows the first frame, the plot and the table.
 */
final class MotionHtml {

  private final MotionPage page;
  private final MotionNumbers numbers;
  private final int poster;
  private final FigureStyle style;
  private final FrameSvg svg;
  private final StringBuilder html = new StringBuilder();

  private MotionHtml(MotionPage page, FigureStyle style) {
    this.page = page;
    this.numbers = page.numbers();
    this.poster = numbers.poster();
    this.style = style;
    this.svg = new FrameSvg(style);
  }

  /**
   * Writes the page.
   *
   * @param page what it shows
   * @param style its colours
   * @param waits how long each frame stands, milliseconds
   * @param back whether it runs back after the last frame
   */
  static String write(MotionPage page, FigureStyle style, List<Integer> waits, boolean back) {
    return new MotionHtml(page, style).document(waits, back);
  }

  private String document(List<Integer> waits, boolean back) {
    // Looks and colours are known when everything is drawn, and stand at the head.
    pictures();
    controls();
    table();
    page.notes().forEach(note -> html.append("<p>").append(escaped(note)).append("</p>\n"));
    String body = html.toString();
    String title = escaped(page.title());
    String lifter = page.numbers().lifter();
    return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n"
        + "<meta charset=\"utf-8\"/>\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n"
        + "<meta name=\"color-scheme\" content=\"light dark\"/>\n"
        + "<meta name=\"description\" content=\""
        + escaped(page.description())
        + "\"/>\n<title>"
        + title
        + "</title>\n<style>\n"
        + styles()
        + "</style>\n</head>\n<body>\n<main>\n<h1>"
        + title
        + "</h1>\n"
        + (lifter.isEmpty()
            ? ""
            : "<p class=\"quiet\">" + escaped(Caption.capital(lifter)) + "</p>\n")
        + "<p class=\"quiet\" id=\"own\">"
        + escaped(numbers.own(poster))
        + "</p>\n"
        + body
        + "</main>\n<script type=\"application/json\" id=\"all\">"
        + places(waits, back)
        + "</script>\n<script>\n//<![CDATA[\n"
        + resource("motion.js")
        + "//]]>\n</script>\n</body>\n</html>\n";
  }

  private String styles() {
    Map<String, String> own = new LinkedHashMap<>();
    own.put("paper", style.paper());
    own.put("ink", style.ink());
    own.put("quiet", style.quiet());
    own.put("line", style.flesh());
    return ":root{color-scheme:light dark;--letters:"
        + style.fonts()
        + ";"
        + palette(own, false)
        + "}\n@media screen and (prefers-color-scheme:dark){:root{"
        + palette(own, true)
        + "}}\n"
        + svg.styleSheet()
        + resource("motion.css").replace("#poster", "#frame-" + poster);
  }

  private String palette(Map<String, String> own, boolean night) {
    return own.entrySet().stream()
            .map(e -> "--" + e.getKey() + ":" + (night ? Night.of(e.getValue()) : e.getValue()))
            .collect(Collectors.joining(";"))
        + ";"
        + svg.palette(night);
  }

  private void pictures() {
    html.append("<div class=\"pictures\">\n<figure>\n<svg xmlns=\"http://www.w3.org/2000/svg\"");
    html.append(" id=\"stage\" role=\"img\" aria-labelledby=\"stage-title stage-told\" viewBox=\"");
    html.append(FrameSvg.window(page.stageBox())).append("\">\n<title id=\"stage-title\">");
    html.append(escaped(page.title())).append("</title>\n<desc id=\"stage-told\">");
    html.append(escaped("At " + numbers.place(poster) + ": " + numbers.told(poster)))
        .append("</desc>\n");
    html.append(stage()).append("</svg>\n</figure>\n<figure>\n");
    html.append("<svg xmlns=\"http://www.w3.org/2000/svg\" id=\"plot\" role=\"img\"");
    html.append(" aria-labelledby=\"plot-title plot-told\" viewBox=\"");
    html.append(FrameSvg.window(page.plotBox())).append("\">\n<title id=\"plot-title\">");
    html.append(escaped("Moments against " + numbers.varied())).append("</title>\n");
    html.append("<desc id=\"plot-told\">").append(escaped(page.description()));
    html.append("</desc>\n").append(svg.text(page.plot().lines()));
    marker();
    html.append("</svg>\n");
    liveNumbers();
    html.append("</figure>\n</div>\n");
  }

  private String stage() {
    List<List<Ink>> frames = new ArrayList<>();
    for (int i = 0; i < numbers.frames(); i++) {
      List<Ink> pieces = new ArrayList<>(page.stage().moving(i, numbers.row(i).reason()));
      pieces.addAll(page.stage().labels(i));
      frames.add(pieces);
      svg.count(pieces);
    }
    StringBuilder content = new StringBuilder();
    for (int i = 0; i < frames.size(); i++) {
      content.append("<g class=\"frame\" id=\"frame-").append(i).append('"');
      content.append(i == poster ? "" : " display=\"none\"").append(">\n");
      content.append(svg.frame(frames.get(i))).append("</g>\n");
    }
    return svg.definitions() + svg.text(page.stage().still()) + content;
  }

  private void marker() {
    Line2D line = page.plot().upright(poster);
    html.append("<g id=\"marker\"><line id=\"upright\" stroke=\"").append(svg.colour(style.ink()));
    html.append("\" stroke-width=\"1.2\"");
    attribute("x1", line.getX1());
    attribute("x2", line.getX1());
    attribute("y1", line.getY1());
    attribute("y2", line.getY2());
    html.append("/>\n");
    for (JointId joint : numbers.joints()) {
      html.append("<circle r=\"5\" data-joint=\"").append(joint.word()).append("\" fill=\"");
      html.append(svg.colour(page.accent(joint).colour())).append("\" stroke=\"");
      html.append(svg.colour(style.paper())).append("\" stroke-width=\"1.5\"");
      attribute("cx", line.getX1());
      attribute("cy", page.plot().y(poster, joint));
      html.append("/>\n");
    }
    html.append("</g>\n");
  }

  private void attribute(String name, double value) {
    html.append(' ').append(name).append("=\"").append(FrameSvg.number(value)).append('"');
  }

  private void controls() {
    int last = numbers.frames() - 1;
    html.append("<div class=\"controls\">\n<button id=\"play\" type=\"button\">Play</button>\n");
    html.append("<label id=\"label\" for=\"slider\">").append(escaped(numbers.place(poster)));
    html.append("</label>\n<input id=\"slider\" type=\"range\" min=\"0\" max=\"").append(last);
    html.append("\" step=\"1\" value=\"").append(poster);
    html.append("\" aria-label=\"").append(escaped(numbers.varied()));
    html.append("\" aria-valuetext=\"")
        .append(escaped(numbers.place(poster)))
        .append("\"/>\n</div>\n");
    html.append("<output id=\"now\" for=\"slider\" role=\"status\" aria-live=\"polite\">");
    html.append(escaped(numbers.place(poster) + ": " + numbers.told(poster))).append("</output>\n");
    html.append("<p class=\"quiet keys\">Keys: left and right arrow for a frame, Home and End for");
    html.append(" the ends, space to play and pause. The plot can be touched too.</p>\n");
  }

  private void liveNumbers() {
    html.append("<table id=\"numbers\">\n<caption>Numbers of this frame</caption>\n<thead><tr>");
    html.append("<th scope=\"col\">joint</th><th scope=\"col\">moment (N·m)</th>");
    html.append("<th scope=\"col\">arm (cm)</th></tr></thead>\n<tbody>\n");
    for (JointId joint : numbers.joints()) {
      html.append("<tr><th scope=\"row\">").append(chip(joint));
      html.append(escaped(JointNames.of(joint))).append("</th><td>");
      html.append(numbers.moment(poster, joint)).append("</td><td>");
      html.append(numbers.arm(poster, joint)).append("</td></tr>\n");
    }
    html.append("</tbody>\n</table>\n");
  }

  private String chip(JointId joint) {
    String colour = svg.colour(page.accent(joint).colour());
    return "<span class=\"chip\" style=\"background:" + colour + "\"></span>";
  }

  private void table() {
    boolean gaps = IntStream.range(0, numbers.frames()).anyMatch(i -> !numbers.row(i).held());
    html.append("<h2>All values</h2>\n<div class=\"scroll\" tabindex=\"0\" role=\"region\"");
    html.append(" aria-label=\"All values\">\n<table id=\"values\">\n<caption>");
    html.append(escaped("Moments and arms " + numbers.sweep().title()));
    html.append("</caption>\n<thead><tr><th scope=\"col\">").append(escaped(numbers.varied()));
    html.append("</th>");
    numbers.joints().forEach(j -> head(j, "moment (N·m)"));
    numbers.joints().forEach(j -> head(j, "arm (cm)"));
    html.append(gaps ? "<th scope=\"col\">why not held</th>" : "");
    html.append("</tr></thead>\n<tbody>\n");
    for (int i = 0; i < numbers.frames(); i++) {
      int frame = i;
      html.append("<tr><th scope=\"row\">").append(escaped(numbers.value(i))).append("</th>");
      numbers.joints().forEach(j -> cell(numbers.moment(frame, j)));
      numbers.joints().forEach(j -> cell(numbers.arm(frame, j)));
      if (gaps) {
        html.append("<td class=\"why\">").append(escaped(numbers.row(i).reason())).append("</td>");
      }
      html.append("</tr>\n");
    }
    html.append("</tbody>\n</table>\n</div>\n");
  }

  private void head(JointId joint, String what) {
    html.append("<th scope=\"col\">").append(escaped(JointNames.of(joint) + " " + what));
    html.append("</th>");
  }

  private void cell(String text) {
    html.append("<td>").append(text).append("</td>");
  }

  /** Where the marker stands and what is told at each frame, for the script. */
  private String places(List<Integer> waits, boolean back) {
    Map<String, Object> all = new LinkedHashMap<>();
    List<Integer> frames = IntStream.range(0, numbers.frames()).boxed().toList();
    all.put("poster", poster);
    all.put("wait", waits);
    all.put("back", back);
    all.put("x", frames.stream().map(i -> FrameSvg.number(page.plot().x(i))).toList());
    all.put("y", frames.stream().map(this::heights).toList());
    all.put("place", frames.stream().map(numbers::place).toList());
    all.put("told", frames.stream().map(numbers::told).toList());
    all.put("own", frames.stream().map(numbers::own).toList());
    try {
      // So written it ends no script and opens no tag, for readers of HTML and XML alike.
      return new ObjectMapper()
          .writeValueAsString(all)
          .replace("&", "\\u0026")
          .replace("<", "\\u003c")
          .replace(">", "\\u003e");
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private List<String> heights(int frame) {
    List<String> heights = new ArrayList<>();
    for (JointId joint : numbers.joints()) {
      boolean held = numbers.row(frame).held();
      heights.add(held ? FrameSvg.number(page.plot().y(frame, joint)) : null);
    }
    return heights;
  }

  private static String escaped(String text) {
    return SvgWriter.escaped(text);
  }

  private static String resource(String name) {
    try (InputStream in = MotionHtml.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
