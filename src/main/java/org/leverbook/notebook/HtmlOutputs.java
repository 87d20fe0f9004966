package org.leverbook.notebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** What cells gave, as HTML. */
final class HtmlOutputs {

  private static final List<String> IMAGES =
      List.of(MimeBundle.SVG, MimeBundle.PNG, "image/jpeg", "image/webp", MimeBundle.GIF);

  private static final String PROSE = "text/markdown";
  private static final String LATEX = "text/latex";

  private final PictureSource pictures;

  HtmlOutputs(PictureSource pictures) {
    this.pictures = pictures;
  }

  String html(Output output) {
    if (output instanceof Output.Printed printed) {
      return block(printed.stream().equals("stderr") ? "printed aside" : "printed", printed.text());
    }
    if (output instanceof Output.Failed failed) {
      return "<div class=\"failed\" role=\"note\"><p>"
          + Escaped.html(Escaped.plain(failed.message()))
          + "</p>"
          + block("trace", String.join("\n", failed.trace()))
          + "</div>";
    }
    return given(((Output.Given) output).bundle());
  }

  private String given(MimeBundle bundle) {
    Map<String, String> data = bundle.data();
    if (data.containsKey(MimeBundle.HTML)) {
      String clean = new CleanHtml(pictures).of(data.get(MimeBundle.HTML));
      // Nothing may be left of a fragment that was all script.
      if (!clean.isBlank()) {
        return "<div class=\"value\">" + clean + "</div>";
      }
    }
    Optional<String> picture = picture(bundle);
    if (picture.isPresent()) {
      return picture.get();
    }
    if (data.containsKey(PROSE)) {
      return "<div class=\"value\">" + Prose.html(data.get(PROSE), pictures) + "</div>";
    }
    return block("value", bundle.text().isEmpty() ? data.getOrDefault(LATEX, "") : bundle.text());
  }

  /** A picture that cannot run anything: an image in the page, not a part of it. */
  private static Optional<String> picture(MimeBundle bundle) {
    for (String type : IMAGES) {
      String content = bundle.data().get(type);
      if (content != null) {
        return PictureSource.decoded(type, content)
            .map(
                found ->
                    "<figure class=\"picture\"><img alt=\""
                        + Escaped.html(told(bundle))
                        + "\" src=\""
                        + found.dataUri()
                        + "\"></figure>");
      }
    }
    return Optional.empty();
  }

  /**
   * What is to be seen: what the picture says of itself, or what stands below it, or else the
   * value's text.
   */
  static String told(MimeBundle bundle) {
    String svg = bundle.data().getOrDefault(MimeBundle.SVG, "");
    Element root = Jsoup.parse(svg, "", Parser.xmlParser()).selectFirst("svg");
    if (root != null) {
      Map<String, String> parts = new LinkedHashMap<>();
      for (Element child : root.children()) {
        if (child.normalName().equals("title") || child.normalName().equals("desc")) {
          parts.putIfAbsent(child.normalName(), child.text());
        }
      }
      String said = String.join(". ", parts.values());
      if (!said.isBlank()) {
        return said;
      }
    }
    Element moving =
        Jsoup.parseBodyFragment(bundle.data().getOrDefault(MimeBundle.HTML, ""))
            .selectFirst("figure.moving > figcaption");
    return moving == null ? bundle.text() : moving.text();
  }

  private static String block(String kind, String text) {
    String plain = Escaped.plain(text).stripTrailing();
    return plain.isEmpty()
        ? ""
        : "<pre class=\"" + kind + "\" tabindex=\"0\">" + Escaped.html(plain) + "</pre>";
  }
}
