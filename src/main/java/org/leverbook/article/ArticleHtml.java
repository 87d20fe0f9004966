package org.leverbook.article;

import java.util.List;
import org.leverbook.display.Caution;
import org.leverbook.display.Sheet;

/** Writes an article as HTML: a fragment for a cell, or a whole page. */
final class ArticleHtml {

  private final Article article;
  private final boolean alone;
  private final Labels labels;
  private final Numbering numbers;
  private final Back back;
  private final StringBuilder html = new StringBuilder();

  /**
   * Writes an article.
   *
   * @param article which
   * @param alone whether it is a page of its own, which knows that it is dark when its reader's
   *     screen is
   */
  ArticleHtml(Article article, boolean alone) {
    this.alone = alone;
    this.article = article;
    this.labels = article.labels();
    this.numbers = article.numbering();
    this.back = article.back();
  }

  /** The whole document. */
  String page() {
    String who = article.author().isEmpty() ? "" : article.author() + ". ";
    return new Page(article.title(), labels.language(), who + labels.say(Caution.TEXT))
        .around(fragment());
  }

  /** The article without a frame. */
  String fragment() {
    html.setLength(0);
    html.append("<article>\n<header>\n<h1>").append(escaped(article.title())).append("</h1>\n");
    if (!article.author().isEmpty()) {
      html.append("<p class=\"quiet\">").append(escaped(article.author())).append("</p>\n");
    }
    html.append("</header>\n");
    boolean placed = false;
    for (Part part : article.parts()) {
      if (part instanceof Part.MethodPlace) {
        method();
        placed = true;
      } else {
        part(part);
      }
    }
    html.append("<aside class=\"caution\"><p><span class=\"number\">");
    html.append(escaped(labels.say("Caution"))).append(".</span> ");
    html.append(escaped(labels.say(Caution.TEXT))).append("</p></aside>\n");
    if (!placed) {
      method();
    }
    reproduction();
    return html.append("</article>\n").toString();
  }

  private void part(Part part) {
    if (part instanceof Part.Text text) {
      html.append(prose(text.words()));
    } else if (part instanceof Part.Heading heading) {
      html.append("<h2>").append(escaped(heading.words())).append("</h2>\n");
    } else if (part instanceof Part.Quote quote) {
      html.append("<blockquote>\n").append(prose(quote.words()));
      html.append("<p>— ").append(escaped(quote.who())).append("</p>\n</blockquote>\n");
    } else if (part instanceof Part.Note note) {
      html.append("<aside>\n").append(prose(note.words())).append("</aside>\n");
    } else if (part instanceof Part.Tabled tabled) {
      table(tabled);
    } else if (part instanceof Part.Pictured pictured) {
      figure(pictured);
    }
  }

  private void figure(Part.Pictured part) {
    Numbering.Place place = numbers.of(part);
    html.append("<figure id=\"").append(place.anchor()).append("\">\n");
    String own = place.anchor() + "-";
    html.append(alone ? Embedded.of(part.picture(), own) : Embedded.byDay(part.picture(), own));
    caption(place, part.caption());
    html.append("</figure>\n");
  }

  private void table(Part.Tabled part) {
    Numbering.Place place = numbers.of(part);
    html.append("<figure class=\"table\" id=\"").append(place.anchor()).append("\">\n");
    caption(place, part.caption());
    html.append(SheetHtml.of(part.sheet(), place.word()));
    notes(part.sheet());
    html.append("</figure>\n");
  }

  private void notes(Sheet sheet) {
    List<String> notes = Tables.notes(sheet);
    if (!notes.isEmpty()) {
      html.append("<div class=\"notes\">\n");
      notes.forEach(note -> html.append("<p>").append(escaped(note)).append("</p>\n"));
      html.append("</div>\n");
    }
  }

  private void caption(Numbering.Place place, Prose caption) {
    html.append("<figcaption><span class=\"number\">").append(escaped(place.word()));
    html.append(".</span> ").append(prose(caption).strip()).append("</figcaption>\n");
  }

  private void method() {
    heading("method", "Method");
    article.ownMethods().forEach(own -> html.append(prose(own)));
    for (Method.Paragraph told : back.method().paragraphs()) {
      html.append("<p><span class=\"number\">").append(escaped(labels.say(told.topic())));
      html.append(".</span> ").append(escaped(told.text())).append("</p>\n");
    }
    if (!back.method().data().isEmpty()) {
      html.append("<p><span class=\"number\">").append(escaped(labels.say("Sources")));
      html.append(".</span></p>\n<ul>\n");
      back.method().data().forEach(d -> html.append("<li>").append(escaped(d)).append("</li>\n"));
      html.append("</ul>\n");
    }
    back.method().limits().forEach(l -> html.append("<p>").append(escaped(l)).append("</p>\n"));
    back.untracedSentence().ifPresent(s -> html.append("<p>").append(escaped(s)).append("</p>\n"));
    html.append("</section>\n");
  }

  private void reproduction() {
    heading("reproduce", "To reproduce");
    html.append("<p>").append(escaped(back.versions())).append(' ');
    html.append(escaped(labels.say(back.code().isPresent() ? Back.AGAIN : Back.KEEP)));
    html.append("</p>\n");
    back.code()
        .ifPresent(
            code ->
                html.append("<pre tabindex=\"0\"><code>")
                    .append(escaped(code))
                    .append("</code></pre>\n"));
    html.append("</section>\n");
  }

  private void heading(String name, String english) {
    html.append("<section class=\"").append(name).append("\">\n<h2>");
    html.append(escaped(labels.say(english))).append("</h2>\n");
  }

  /** Markdown with references as links; a name that nothing is called by stays to be seen. */
  private String prose(Prose prose) {
    String markdown =
        prose.markdown(
            name ->
                numbers
                    .called(name)
                    .map(p -> "[" + Prose.literal(p.word()) + "](#" + p.anchor() + ")")
                    .orElse("{" + Prose.literal(name) + "}"));
    return Markdown.html(markdown, 1);
  }

  private static String escaped(String text) {
    return Page.escaped(text);
  }
}
