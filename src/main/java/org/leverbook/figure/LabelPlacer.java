package org.leverbook.figure;

import java.awt.geom.Area;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.leverbook.quantity.Refused;

/**
 * Finds places for labels: every label tries every place of a fine grid and takes the cheapest.
 *
 * <p>Never: over another label, over a kept-free box, outside the page. Costly, in this order: over
 * a drawn line, a leader that crosses a drawn line or another leader, over the body, far from its
 * arm. Labels are placed in turn, then each once more with the others in place.
 */
final class LabelPlacer {

  private static final double STEP = 5;
  private static final double GAP = 6;
  private static final double OVER_LINE = 400;
  private static final double CROSSING = 200;
  private static final double OVER_BODY = 420;

  /** A text half on the body is crossed by its outline, which reads worse than one quite on it. */
  private static final double OVER_OUTLINE = 150;

  private static final int ROUNDS = 3;

  private final Rectangle2D page;
  private final List<Rectangle2D> kept;
  private final List<Line2D> lines;
  private final Coverage coverage;

  /**
   * A page to place on.
   *
   * @param page where labels may be
   * @param kept boxes that stay free
   * @param lines drawn lines
   * @param body what is better left visible
   */
  LabelPlacer(Rectangle2D page, List<Rectangle2D> kept, List<Line2D> lines, Area body) {
    this(page, kept, lines, new Coverage(page, body));
  }

  private LabelPlacer(
      Rectangle2D page, List<Rectangle2D> kept, List<Line2D> lines, Coverage coverage) {
    this.page = page;
    this.kept = List.copyOf(kept);
    this.lines = List.copyOf(lines);
    this.coverage = coverage;
  }

  /**
   * Places labels.
   *
   * @param labels which
   * @return one place for each, in the same order
   * @throws Refused if the page is too small for them
   */
  List<Label.Placed> place(List<Label> labels) {
    List<Label.Placed> placed = new ArrayList<>(Collections.nCopies(labels.size(), null));
    for (int round = 0; round < ROUNDS; round++) {
      for (int i = 0; i < labels.size(); i++) {
        placed.set(i, null);
        placed.set(i, best(labels.get(i), placed.stream().filter(p -> p != null).toList()));
      }
    }
    return placed;
  }

  private Label.Placed best(Label label, List<Label.Placed> others) {
    // A coarse look first: what it costs at most rules out most places of the fine grid.
    Choice coarse = cheapest(label, others, 4 * STEP, Double.POSITIVE_INFINITY);
    Choice fine = cheapest(label, others, STEP, coarse.cost() + 1e-9);
    Label.Placed best = fine.placed();
    if (best == null && !kept.isEmpty()) {
      // Rather over a joint than not at all.
      return new LabelPlacer(page, List.of(), lines, coverage).best(label, others);
    }
    if (best == null) {
      throw new Refused(
          "There is no room left on the picture for the label \""
              + label.lines().get(0)
              + "\": show fewer arms, or make several pictures.");
    }
    return best;
  }

  /**
   * A place and what it costs.
   *
   * @param placed where; null where no place is free
   * @param cost of it
   */
  private record Choice(Label.Placed placed, double cost) {}

  private Choice cheapest(Label label, List<Label.Placed> others, double step, double bound) {
    double w = label.width();
    double h = label.height();
    Label.Placed best = null;
    double least = bound;
    for (double y = page.getMinY(); y + h <= page.getMaxY(); y += step) {
      for (double x = page.getMinX(); x + w <= page.getMaxX(); x += step) {
        Rectangle2D box = new Rectangle2D.Double(x, y, w, h);
        // The distance alone rules most places out, and is the cheapest to know.
        if (nearest(label, box) >= least || !free(box, others)) {
          continue;
        }
        double ground = overLines(box) + overBody(box);
        for (int a = 0; a < label.anchors().size() && ground < least; a++) {
          Label.Placed candidate = tied(label, box, label.anchors().get(a));
          double cost =
              ground
                  + candidate.from().distance(candidate.to())
                  + 2 * a
                  + leader(candidate, others);
          if (cost < least) {
            least = cost;
            best = candidate;
          }
        }
      }
    }
    return new Choice(best, least);
  }

  private static double nearest(Label label, Rectangle2D box) {
    double nearest = Double.POSITIVE_INFINITY;
    for (Point2D anchor : label.anchors()) {
      nearest = Math.min(nearest, anchor.distance(nearestPoint(box, anchor)));
    }
    return nearest;
  }

  private static Point2D nearestPoint(Rectangle2D box, Point2D from) {
    return new Point2D.Double(
        Math.max(box.getMinX(), Math.min(box.getMaxX(), from.getX())),
        Math.max(box.getMinY(), Math.min(box.getMaxY(), from.getY())));
  }

  private boolean free(Rectangle2D box, List<Label.Placed> others) {
    Rectangle2D wide = widened(box);
    return kept.stream().noneMatch(wide::intersects)
        && others.stream().noneMatch(o -> wide.intersects(o.box()));
  }

  private static Rectangle2D widened(Rectangle2D box) {
    return new Rectangle2D.Double(
        box.getX() - GAP, box.getY() - GAP, box.getWidth() + 2 * GAP, box.getHeight() + 2 * GAP);
  }

  private double overLines(Rectangle2D box) {
    return OVER_LINE * lines.stream().filter(l -> l.intersects(box)).count();
  }

  private double overBody(Rectangle2D box) {
    double share = coverage.share(box);
    return OVER_BODY * share + (share > 0 && share < 1 ? OVER_OUTLINE : 0);
  }

  private static Label.Placed tied(Label label, Rectangle2D box, Point2D anchor) {
    return new Label.Placed(label, box, anchor, nearestPoint(box, anchor));
  }

  private double leader(Label.Placed candidate, List<Label.Placed> others) {
    double cost = 0;
    Line2D leader = new Line2D.Double(candidate.from(), candidate.to());
    for (Line2D line : lines) {
      // Its own arm touches the leader at the anchor; that is no crossing.
      if (line.intersectsLine(leader) && line.ptSegDist(candidate.from()) > 0.01) {
        cost += CROSSING;
      }
    }
    for (Label.Placed other : others) {
      if (leader.intersects(other.box())) {
        cost += OVER_LINE;
      }
      Line2D theirs = new Line2D.Double(other.from(), other.to());
      if (theirs.intersects(candidate.box())) {
        cost += OVER_LINE;
      }
      if (leader.intersectsLine(theirs)) {
        cost += CROSSING;
      }
    }
    return cost;
  }

  /** How much of a box lies over the body, from sums over a coarse raster. */
  private static final class Coverage {

    private static final double CELL = 6;

    private final Rectangle2D page;
    private final int columns;
    private final int[][] sums;

    Coverage(Rectangle2D page, Area body) {
      this.page = page;
      columns = (int) Math.ceil(page.getWidth() / CELL);
      int rows = (int) Math.ceil(page.getHeight() / CELL);
      sums = new int[rows + 1][columns + 1];
      for (int r = 0; r < rows; r++) {
        for (int c = 0; c < columns; c++) {
          boolean covered =
              body.contains(page.getMinX() + (c + 0.5) * CELL, page.getMinY() + (r + 0.5) * CELL);
          sums[r + 1][c + 1] = sums[r][c + 1] + sums[r + 1][c] - sums[r][c] + (covered ? 1 : 0);
        }
      }
    }

    double share(Rectangle2D box) {
      int left = cell(box.getMinX() - page.getMinX(), columns);
      int right = Math.max(left + 1, cell(box.getMaxX() - page.getMinX(), columns));
      int top = cell(box.getMinY() - page.getMinY(), sums.length - 1);
      int bottom = Math.max(top + 1, cell(box.getMaxY() - page.getMinY(), sums.length - 1));
      right = Math.min(right, columns);
      bottom = Math.min(bottom, sums.length - 1);
      int covered = sums[bottom][right] - sums[top][right] - sums[bottom][left] + sums[top][left];
      return covered / (double) Math.max(1, (right - left) * (bottom - top));
    }

    private static int cell(double offset, int most) {
      return Math.max(0, Math.min(most, (int) Math.round(offset / CELL)));
    }
  }
}
