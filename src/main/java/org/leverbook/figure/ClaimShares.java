package org.leverbook.figure;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.leverbook.study.ClaimGroup;

/** The share of each group in which a claim holds, as bars from 0 to 100 %. */
final class ClaimShares {

  private static final double WIDEST = 90;

  private final List<ClaimGroup> groups;
  private final FigureStyle style;
  private final ClaimInk marks;

  ClaimShares(List<ClaimGroup> groups, FigureStyle style) {
    this.groups = groups;
    this.style = style;
    this.marks = new ClaimInk(style);
  }

  Ink in(Rectangle2D box) {
    List<Ink> ink = new ArrayList<>();
    double top = box.getMinY() + 18;
    double high = box.getMaxY() - top;
    double each = box.getWidth() / groups.size();
    double wide = Math.min(WIDEST, 0.8 * each);
    for (int g = 0; g < groups.size(); g++) {
      ClaimGroup group = groups.get(g);
      double middle = box.getX() + (g + 0.5) * each;
      double level = box.getMaxY() - group.share() * high;
      // The rest of the bar are the exceptions.
      ink.add(
          Ink.Form.line(
              new Rectangle2D.Double(middle - wide / 2, top, wide, high),
              Ink.Pen.solid(marks.fails(), 1)));
      ink.add(marks.bar(middle - wide / 2, level, wide, box.getMaxY(), marks.holds()));
      ink.add(marks.words(percent(group), middle, top - 5, 0.5, false, style.ink()));
      ink.add(marks.words(group.name(), middle, box.getMaxY() + 18, 0.5, false, style.ink()));
    }
    ink.add(marks.line(box.getMinX(), box.getMaxY(), box.getMaxX(), box.getMaxY(), 1));
    ink.add(marks.title(title(), box));
    return new Ink.Group(Map.of("class", "shares"), ink);
  }

  /** Never 0 or 100 where it is not. */
  private String percent(ClaimGroup group) {
    double share = 100 * group.share();
    if (share > 0 && share < 0.5) {
      return "<1";
    }
    if (share < 100 && share >= 99.5) {
      return ">99";
    }
    return String.format(Locale.ROOT, "%.0f", share);
  }

  private String title() {
    String input = groups.get(0).input();
    if (input.isEmpty() || input.equals("sex") || input.equals("lift") || input.equals("setting")) {
      return "per cent that hold";
    }
    boolean values = groups.stream().allMatch(g -> g.from() == g.to());
    return values
        ? "per cent that hold, by " + input
        : "per cent that hold, by " + input + ": each bar up to …";
  }
}
