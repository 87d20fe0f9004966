package org.leverbook.figure;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Places labels over the frames of a moving picture so that they neither jump nor collide.
 *
 * <p>A place is either fixed on the page or keeps its offset from what the label speaks of. For one
 * label after another the cheapest sequence of places over all frames is found (Viterbi's
 * recursion): each frame costs what lies below the label and how far it is from its arm, each
 * change of place costs as much again as a small collision, so that a label changes its side only
 * where it otherwise would cover something. A label keeps one width in all frames, that of its
 * longest text.
 */
final class LabelTrack {

  private static final double GAP = 5;
  private static final double OVER_LABEL = 50_000;
  private static final double OVER_LINE = 400;
  private static final double CROSSING = 120;
  private static final double OVER_BODY = 420;
  private static final double OVER_OUTLINE = 240;
  private static final double CHANGE = 900;

  /** A label that follows its arm is harder to read than one that stays. */
  private static final double FOLLOWS = 25;

  private static final int ROUNDS = 2;
  private static final int DIRECTIONS = 16;
  private static final double[] DISTANCES = {10, 26, 48, 80, 120};
  private static final double ACROSS = 26;
  private static final double DOWN = 20;

  /**
   * One frame.
   *
   * @param labels what there is to place, by a name that is the same in all frames
   * @param lines to keep clear of
   * @param body to keep visible
   */
  record Frame(Map<String, Label> labels, List<Line2D> lines, BodyMask body) {}

  /** A place: an offset from the anchor, or a point of the page. */
  private record Spot(int anchor, boolean follows, double x, double y, double side, double below) {}

  private final Rectangle2D room;
  private final List<Frame> frames;
  private final List<Map<String, Label.Placed>> placed = new ArrayList<>();

  private LabelTrack(Rectangle2D room, List<Frame> frames) {
    this.room = room;
    this.frames = frames;
    frames.forEach(f -> placed.add(new LinkedHashMap<>()));
  }

  /**
   * Places all labels.
   *
   * @param room where labels may be
   * @param frames in order
   * @return the labels of each frame, by name
   */
  static List<Map<String, Label.Placed>> place(Rectangle2D room, List<Frame> frames) {
    LabelTrack track = new LabelTrack(room, frames);
    List<String> names =
        frames.stream().flatMap(f -> f.labels().keySet().stream()).distinct().toList();
    for (int round = 0; round < ROUNDS; round++) {
      names.forEach(track::placeOne);
    }
    return track.placed;
  }

  private void placeOne(String name) {
    placed.forEach(p -> p.remove(name));
    List<Spot> spots = spots(anchors(name));
    double width = most(name, true);
    double height = most(name, false);
    double[][] reached = new double[frames.size()][];
    int[][] before = new int[frames.size()][spots.size()];
    for (int f = 0; f < frames.size(); f++) {
      reached[f] = costs(f, name, spots, width, height);
      if (f > 0) {
        int best = least(reached[f - 1]);
        for (int s = 0; s < spots.size(); s++) {
          boolean stays = reached[f - 1][s] <= reached[f - 1][best] + CHANGE;
          before[f][s] = stays ? s : best;
          reached[f][s] += stays ? reached[f - 1][s] : reached[f - 1][best] + CHANGE;
        }
      }
    }
    int spot = least(reached[frames.size() - 1]);
    for (int f = frames.size() - 1; f >= 0; f--) {
      Label label = frames.get(f).labels().get(name);
      if (label != null) {
        placed.get(f).put(name, at(label, spots.get(spot), width, height));
      }
      spot = before[f][spot];
    }
  }

  private int anchors(String name) {
    return frames.stream()
        .map(f -> f.labels().get(name))
        .filter(l -> l != null)
        .mapToInt(l -> l.anchors().size())
        .min()
        .orElseThrow();
  }

  private double most(String name, boolean width) {
    return frames.stream()
        .map(f -> f.labels().get(name))
        .filter(l -> l != null)
        .mapToDouble(l -> width ? l.width() : l.height())
        .max()
        .orElseThrow();
  }

  private static int least(double[] costs) {
    int best = 0;
    for (int s = 1; s < costs.length; s++) {
      best = costs[s] < costs[best] ? s : best;
    }
    return best;
  }

  private List<Spot> spots(int anchors) {
    List<Spot> spots = new ArrayList<>();
    for (int anchor = 0; anchor < anchors; anchor++) {
      for (double y = room.getMinY(); y < room.getMaxY(); y += DOWN) {
        for (double x = room.getMinX(); x < room.getMaxX(); x += ACROSS) {
          spots.add(new Spot(anchor, false, x, y, 0, 0));
        }
      }
      for (double distance : DISTANCES) {
        for (int d = 0; d < DIRECTIONS; d++) {
          double x = Math.cos(2 * Math.PI * d / DIRECTIONS);
          double y = Math.sin(2 * Math.PI * d / DIRECTIONS);
          spots.add(new Spot(anchor, true, distance * x, distance * y, x, y));
        }
      }
    }
    return spots;
  }

  private Label.Placed at(Label label, Spot spot, double width, double height) {
    Point2D anchor = label.anchors().get(spot.anchor());
    double x = spot.x();
    double y = spot.y();
    if (spot.follows()) {
      x += anchor.getX() + (spot.side() - 1) * width / 2;
      y += anchor.getY() + (spot.below() - 1) * height / 2;
    }
    Rectangle2D box =
        new Rectangle2D.Double(
            Math.max(room.getMinX(), Math.min(room.getMaxX() - width, x)),
            Math.max(room.getMinY(), Math.min(room.getMaxY() - height, y)),
            width,
            height);
    // The leader ends at the text itself, which may be shorter than in other frames.
    double own = label.width();
    Point2D to =
        new Point2D.Double(
            Math.max(box.getMinX(), Math.min(box.getMinX() + own, anchor.getX())),
            Math.max(box.getMinY(), Math.min(box.getMaxY(), anchor.getY())));
    return new Label.Placed(label, box, anchor, to);
  }

  private double[] costs(int f, String name, List<Spot> spots, double width, double height) {
    double[] costs = new double[spots.size()];
    Label label = frames.get(f).labels().get(name);
    if (label == null) {
      return costs;
    }
    for (int s = 0; s < costs.length; s++) {
      costs[s] = cost(f, at(label, spots.get(s), width, height));
      costs[s] += (spots.get(s).follows() ? FOLLOWS : 0) + 4 * spots.get(s).anchor();
    }
    return costs;
  }

  private double cost(int f, Label.Placed candidate) {
    double covered = frames.get(f).body().share(candidate.box());
    double cost = candidate.from().distance(candidate.to()) + OVER_BODY * covered;
    cost += covered > 0 && covered < 1 ? OVER_OUTLINE : 0;
    Line2D leader = new Line2D.Double(candidate.from(), candidate.to());
    for (Line2D line : frames.get(f).lines()) {
      cost += line.intersects(candidate.box()) ? OVER_LINE : 0;
      // Its own arm touches the leader at the anchor; that is no crossing.
      boolean own = line.ptSegDist(candidate.from()) < 0.01;
      cost += !own && line.intersectsLine(leader) ? CROSSING : 0;
    }
    for (Label.Placed other : placed.get(f).values()) {
      Rectangle2D wide =
          new Rectangle2D.Double(
              other.box().getX() - GAP,
              other.box().getY() - GAP,
              other.box().getWidth() + 2 * GAP,
              other.box().getHeight() + 2 * GAP);
      Line2D theirs = new Line2D.Double(other.from(), other.to());
      cost += wide.intersects(candidate.box()) ? OVER_LABEL : 0;
      cost += leader.intersects(other.box()) ? OVER_LINE : 0;
      cost += theirs.intersects(candidate.box()) ? OVER_LINE : 0;
      cost += leader.intersectsLine(theirs) ? CROSSING : 0;
    }
    return cost;
  }
}
