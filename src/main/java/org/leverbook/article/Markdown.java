package org.leverbook.article;

import java.util.List;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * Prose in Markdown as HTML: emphasis, lists, links, tables. Raw HTML stands as text, links lead to
 * web pages and mail only, and pictures become links, so that a page fetches nothing.
 */
public final class Markdown {

  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  private static final HtmlRenderer HTML =
      HtmlRenderer.builder()
          .extensions(List.of(TablesExtension.create()))
          .escapeHtml(true)
          .sanitizeUrls(true)
          .build();

  private Markdown() {}

  /**
   * A text as HTML.
   *
   * @param markdown CommonMark, with tables
   * @param deeper by how many steps its headings go down, so that the page keeps one title
   * @return well-formed HTML
   */
  public static String html(String markdown, int deeper) {
    Node document = PARSER.parse(markdown);
    document.accept(new Tamed(deeper));
    return HTML.render(document).replace('\u0000', ' ');
  }

  /** Sets headings deeper, and links in the place of pictures. */
  private static final class Tamed extends AbstractVisitor {

    private final int deeper;

    Tamed(int deeper) {
      this.deeper = deeper;
    }

    @Override
    public void visit(Heading heading) {
      heading.setLevel(Math.min(6, heading.getLevel() + deeper));
      visitChildren(heading);
    }

    @Override
    public void visit(Image image) {
      var link = new org.commonmark.node.Link(image.getDestination(), image.getTitle());
      Node child = image.getFirstChild();
      if (child == null) {
        link.appendChild(new Text(image.getDestination()));
      }
      while (child != null) {
        Node next = child.getNext();
        link.appendChild(child);
        child = next;
      }
      image.insertBefore(link);
      image.unlink();
    }
  }
}
