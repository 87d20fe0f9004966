package org.leverbook.notebook;

import java.util.List;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/** Markdown as HTML. */
final class Prose {

  private static final List<Extension> TABLES = List.of(TablesExtension.create());

  private static final Parser PARSER =
      Parser.builder()
          .extensions(TABLES)
          .customInlineContentParserFactory(new Formula.Factory())
          .build();

  private static final HtmlRenderer RENDERER =
      HtmlRenderer.builder().extensions(TABLES).nodeRendererFactory(Formula.Renderer::new).build();

  private Prose() {}

  /** A text, safe for a page: what HTML it holds is cleaned. */
  static String html(String markdown, PictureSource pictures) {
    return new CleanHtml(pictures).of(RENDERER.render(PARSER.parse(markdown)));
  }
}
