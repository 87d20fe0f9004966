package org.leverbook.notebook;

import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.safety.Cleaner;
import org.jsoup.safety.Safelist;

/**
 * HTML that came in a file, made fit for a page: no scripts, no styles, nothing from the network;
 * pictures inside the page, tables that can scroll.
 */
final class CleanHtml {

  private static final Pattern NUMBER = Pattern.compile("[-\u2212+]?\\d[\\d.,\u2009]*\\s?%?");

  /** A cell so short need not break; a table can scroll. */
  private static final int SHORT = 28;

  private static final Safelist ALLOWED =
      Safelist.relaxed()
          .addTags("figure", "figcaption", "details", "summary", "hr", "kbd", "mark", "s", "del")
          .addTags("ins", "abbr", "iframe", "section")
          .addAttributes("iframe", "srcdoc", "title")
          .addEnforcedAttribute("iframe", "sandbox", "allow-scripts")
          .addAttributes("abbr", "title")
          .addAttributes("code", "class")
          .addAttributes("figure", "class")
          .addAttributes("td", "align")
          .addAttributes("th", "align")
          .addProtocols("img", "src", "data")
          .addProtocols("a", "href", "#")
          .preserveRelativeLinks(true);

  private final PictureSource pictures;

  CleanHtml(PictureSource pictures) {
    this.pictures = pictures;
  }

  static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }

  String of(String html) {
    Document given = Jsoup.parseBodyFragment(html, "https://nowhere.invalid/");
    given.outputSettings().prettyPrint(false);
    given.select("img").forEach(this::embed);
    Document clean = new Cleaner(ALLOWED).clean(given);
    clean.outputSettings().prettyPrint(false);
    clean.select("iframe:not([srcdoc])").remove();
    clean.select("table").forEach(CleanHtml::readable);
    return clean.body().html();
  }

  private void embed(Element image) {
    String address = image.attr("src");
    if (address.startsWith("data:image/")) {
      return;
    }
    var found = pictures.find(address);
    if (found.isPresent()) {
      image.attr("src", found.get().dataUri());
    } else {
      String told = image.attr("alt").isBlank() ? address : image.attr("alt");
      image.replaceWith(new Element("a").attr("href", address).text("picture: " + told));
    }
  }

  private static void readable(Element table) {
    table.select("td").stream()
        .filter(cell -> isNumber(cell.text()))
        .forEach(cell -> cell.addClass("number"));
    table.select("td").stream()
        .filter(cell -> cell.text().length() <= SHORT)
        .forEach(cell -> cell.addClass("short"));
    table.select("thead th").attr("scope", "col");
    table.select("tbody th").attr("scope", "row");
    for (Element head : table.select("thead th")) {
      String under = "tbody tr > :nth-child(" + (head.elementSiblingIndex() + 1) + ")";
      if (table.select(under).stream().anyMatch(cell -> cell.hasClass("number"))) {
        head.addClass("number");
      }
    }
    Element caption = table.selectFirst("caption");
    Element frame =
        new Element("div").addClass("wide").attr("tabindex", "0").attr("role", "region");
    frame.attr("aria-label", caption == null ? "table" : caption.text());
    table.replaceWith(frame);
    frame.appendChild(table);
  }
}
