package org.leverbook.figure;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.leverbook.display.Caution;
import org.leverbook.study.ClaimAnswer;
import org.leverbook.study.ClaimGroup;
import org.leverbook.study.ClaimSplit;

/**
 * Lays out a claim's answer: the sentence, how often it holds, how its margins spread around zero,
 * how the share that holds goes with the input that separates best.
 */
final class ClaimPage {

  private static final double WIDTH = 900;
  private static final double MARGIN = 28;
  private static final double HIGH = 270;

  /** Room below a panel's bars for its ticks and its title. */
  private static final double BELOW = 72;

  private final ClaimAnswer answer;
  private final boolean margins;
  private final FigureStyle style;
  private final List<Ink> ink = new ArrayList<>();
  private double y = MARGIN;

  ClaimPage(ClaimAnswer answer, boolean margins, FigureStyle style) {
    this.answer = answer;
    this.margins = margins && answer.tellsMargins();
    this.style = style;
  }

  Drawing drawing() {
    y += 0.6 * style.title();
    lines(Caption.capital(answer.words()), style.title(), true, style.ink());
    lines(verdict(), style.label(), false, style.quiet());
    y += 18;
    panels();
    y += HIGH + BELOW;
    for (ClaimSplit split : answer.splits()) {
      lines(Caption.capital(split.text()), style.caption(), false, style.ink());
    }
    lines(Caution.TEXT, style.caption(), false, style.ink());
    return new Drawing(
        WIDTH, y + MARGIN / 2, answer.words(), verdict(), Map.of("class", "claim"), ink);
  }

  private void panels() {
    List<ClaimGroup> groups = answer.groups();
    double inner = WIDTH - 2 * MARGIN;
    if (margins && !groups.isEmpty()) {
      double half = (inner - 50) / 2;
      ink.add(new ClaimHistogram(answer, style).in(new Rectangle2D.Double(MARGIN, y, half, HIGH)));
      ink.add(
          new ClaimShares(groups, style)
              .in(new Rectangle2D.Double(MARGIN + half + 50, y, half, HIGH)));
    } else if (margins) {
      ink.add(new ClaimHistogram(answer, style).in(new Rectangle2D.Double(MARGIN, y, inner, HIGH)));
    } else {
      List<ClaimGroup> some =
          groups.isEmpty()
              ? List.of(new ClaimGroup("", "all cases", 0, 0, answer.tested(), answer.holding()))
              : groups;
      ink.add(new ClaimShares(some, style).in(new Rectangle2D.Double(MARGIN, y, inner, HIGH)));
    }
  }

  private String verdict() {
    int apart = answer.cases() - answer.tested();
    return String.format(
        Locale.ROOT,
        "Holds in %s of %,d cases%s.",
        answer.shareText(),
        answer.tested(),
        apart == 0 ? "" : String.format(Locale.ROOT, "; %,d more cannot be tested", apart));
  }

  private void lines(String text, double size, boolean bold, String colour) {
    double room = (WIDTH - 2 * MARGIN) / (bold ? 1.15 : 1);
    for (String line : TextWidths.wrapped(style.sentence(text), size, room)) {
      ink.add(new Ink.Words(line, MARGIN, y, size, bold, colour, false));
      y += 1.4 * size;
    }
    y += 0.2 * size;
  }
}
