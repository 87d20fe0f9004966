package org.leverbook.notebook;

import java.util.Set;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Node;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;

/**
 * A formula between dollar signs: shown as it is written, so that its stars and underscores are not
 * taken for emphasis. A dollar beside a blank, or before a digit at the end, is money.
 */
final class Formula extends CustomNode {

  private final String text;

  private Formula(String text) {
    this.text = text;
  }

  /** Finds formulas in text. */
  static final class Factory implements InlineContentParserFactory {
    @Override
    public Set<Character> getTriggerCharacters() {
      return Set.of('$');
    }

    @Override
    public InlineContentParser create() {
      return Formula::parse;
    }
  }

  private static ParsedInline parse(InlineParserState state) {
    Scanner scanner = state.scanner();
    Position start = scanner.position();
    int dollars = scanner.matchMultiple('$');
    if (dollars > 2 || dollars == 1 && scanner.whitespace() > 0) {
      return ParsedInline.none();
    }
    while (scanner.find('$') >= 0) {
      boolean spaced = Character.isWhitespace(scanner.peekPreviousCodePoint());
      boolean escaped = scanner.peekPreviousCodePoint() == '\\';
      int closing = scanner.matchMultiple('$');
      boolean money = dollars == 1 && (spaced || Character.isDigit(scanner.peek()));
      if (closing == dollars && !escaped && !money) {
        String text = scanner.getSource(start, scanner.position()).getContent();
        return ParsedInline.of(new Formula(text), scanner.position());
      }
    }
    return ParsedInline.none();
  }

  /** Writes formulas into HTML. */
  static final class Renderer implements NodeRenderer {

    private final HtmlNodeRendererContext context;

    Renderer(HtmlNodeRendererContext context) {
      this.context = context;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
      return Set.of(Formula.class);
    }

    @Override
    public void render(Node node) {
      var writer = context.getWriter();
      writer.tag("code", java.util.Map.of("class", "formula"));
      writer.text(((Formula) node).text);
      writer.tag("/code");
    }
  }
}
