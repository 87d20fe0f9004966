package org.leverbook.figure;

import java.awt.Shape;
import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.figure.Ink.Form;
import org.leverbook.figure.Ink.Group;
import org.leverbook.figure.Ink.Pen;
import org.leverbook.load.Band;
import org.leverbook.load.Cable;
import org.leverbook.load.Chains;
import org.leverbook.load.Grasps;
import org.leverbook.load.HandWeights;
import org.leverbook.load.LeverMachine;
import org.leverbook.load.Load;
import org.leverbook.load.PivotingBar;
import org.leverbook.load.Worn;
import org.leverbook.pose.Placement;

/**
 * Draws what is lifted besides a bar: ropes and bands run to scale from the hand to where they are
 * fixed; sizes of weights are drawn by eye, because only their mass is known.
 */
final class LoadInk {

  /** Drawn by eye, metres. */
  private static final double PULLEY = 0.05;

  private static final double WEIGHT = 0.09;
  private static final double PLATE = 0.16;
  private static final double LINK = 0.045;
  private static final double ZIGZAG = 0.022;
  private static final double DROP = 0.25;

  /** What is fixed farther from the hand than this is drawn as a rope that leaves the picture. */
  private static final double FARTHEST = 2.0;

  private final Scene view;
  private final FigureStyle style;
  private final PageScale scale;

  LoadInk(Scene view, FigureStyle style, PageScale scale) {
    this.view = view;
    this.style = style;
    this.scale = scale;
  }

  /** Points that the page must hold, metres. */
  static List<Vector2D> extent(Scene view) {
    Placement where = view.position().placement();
    List<Vector2D> points = new ArrayList<>();
    for (Load load : view.position().loads()) {
      tether(load, where)
          .ifPresent(t -> points.addAll(around(end(t.handle(), t.fixed(), view), PULLEY)));
      if (load.setTo(where) instanceof LeverMachine machine && machine.cam().isEmpty()) {
        points.addAll(around(plates(machine, where, view), PLATE));
      }
    }
    return points;
  }

  /**
   * A load that runs from the body to a fixed point.
   *
   * @param handle where it is held, in the world, metres
   * @param fixed its other end
   */
  private record Tether(Vector3D handle, Vector3D fixed) {}

  private static Optional<Tether> tether(Load told, Placement where) {
    Load load = told.setTo(where);
    if (load instanceof Cable cable) {
      return Optional.of(new Tether(cable.grasps().handle(where), cable.pulley()));
    } else if (load instanceof Band band) {
      return Optional.of(new Tether(band.grasps().handle(where), band.anchor()));
    } else if (load instanceof LeverMachine machine) {
      return Optional.of(new Tether(machine.grasps().handle(where), machine.pivot()));
    } else if (load instanceof PivotingBar bar) {
      return Optional.of(new Tether(bar.grasps().handle(where), bar.pivot()));
    }
    return Optional.empty();
  }

  private static List<Vector2D> around(Vector2D point, double reach) {
    Vector2D corner = new Vector2D(reach, reach);
    return List.of(point.subtract(corner), point.add(corner));
  }

  /** Where a rope from a handle is drawn to: its fixed end, or a point on the way there. */
  private static Vector2D end(Vector3D handle, Vector3D fixed, Scene view) {
    Vector2D from = view.seen(handle);
    Vector2D line = view.seen(fixed).subtract(from);
    double length = line.getNorm();
    return length <= FARTHEST ? from.add(line) : from.add(line.scalarMultiply(FARTHEST / length));
  }

  /** Ropes and levers on the page, for labels to keep clear of. */
  List<Line2D> lines() {
    Placement where = view.position().placement();
    List<Line2D> lines = new ArrayList<>();
    for (Load load : view.position().loads()) {
      tether(load, where).ifPresent(t -> lines.add(between(t.handle(), t.fixed())));
    }
    return lines;
  }

  private Line2D between(Vector3D handle, Vector3D fixed) {
    return new Line2D.Double(
        scale.onPage(view.seen(handle)), scale.onPage(end(handle, fixed, view)));
  }

  List<Ink> pieces() {
    List<Ink> pieces = new ArrayList<>();
    for (Load load : view.position().loads()) {
      List<Ink> symbol = symbol(load, view.position().placement());
      if (!symbol.isEmpty()) {
        pieces.add(new Group(Map.of("class", "load", "data-source", load.source()), symbol));
      }
    }
    return pieces;
  }

  private List<Ink> symbol(Load told, Placement where) {
    Load load = told.setTo(where);
    if (load instanceof Cable cable) {
      return rope(cable.grasps(), cable.pulley(), where, false);
    } else if (load instanceof Band band) {
      return rope(band.grasps(), band.anchor(), where, true);
    } else if (load instanceof HandWeights weights) {
      return weights(weights, where);
    } else if (load instanceof Chains chains) {
      return chains(chains, where);
    } else if (load instanceof LeverMachine machine) {
      return lever(machine, where);
    } else if (load instanceof PivotingBar bar) {
      return pivoting(bar, where);
    } else if (load instanceof Worn worn && worn.kind().equals("belt")) {
      Vector2D belt = view.seen(new Grasps(worn.carriers()).handle(where));
      Vector2D weight = belt.add(down(DROP));
      return List.of(line(List.of(belt, weight), 1.2), disc(weight, WEIGHT));
    }
    return List.of();
  }

  private List<Ink> rope(Grasps grasps, Vector3D fixed, Placement where, boolean elastic) {
    Vector2D from = view.seen(grasps.handle(where));
    Vector2D to = end(grasps.handle(where), fixed, view);
    List<Ink> ink = new ArrayList<>();
    ink.add(line(elastic ? zigzag(from, to) : List.of(from, to), 1.6));
    if (to.distance(view.seen(fixed)) < 1e-9) {
      ink.add(disc(to, elastic ? PULLEY / 2 : PULLEY));
    }
    return ink;
  }

  private static List<Vector2D> zigzag(Vector2D from, Vector2D to) {
    Vector2D line = to.subtract(from);
    double length = line.getNorm();
    int waves = Math.max(2, (int) Math.round(length / (4 * ZIGZAG)));
    List<Vector2D> points = new ArrayList<>(List.of(from));
    if (length > 0) {
      Vector2D along = line.scalarMultiply(1 / length);
      Vector2D across = new Vector2D(-along.getY(), along.getX());
      for (int i = 0; i < 2 * waves; i++) {
        double share = (i + 0.5) / (2 * waves);
        double off = i % 2 == 0 ? ZIGZAG : -ZIGZAG;
        points.add(from.add(line.scalarMultiply(share)).add(across.scalarMultiply(off)));
      }
    }
    points.add(to);
    return points;
  }

  private List<Ink> weights(HandWeights weights, Placement where) {
    List<Ink> ink = new ArrayList<>();
    List<Vector2D> drawn = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      double kilograms = side == Side.RIGHT ? weights.right() : weights.left();
      Grasps held = weights.shared() ? Grasps.BOTH_HANDS : Grasps.at(Site.HAND, side);
      Vector2D hand = view.seen(held.handle(where));
      // Two weights seen end-on behind each other are one disc.
      if (kilograms > 0 && drawn.stream().noneMatch(other -> other.distance(hand) < 0.02)) {
        drawn.add(hand);
        boolean hangs = weights.kind().equals("kettlebell");
        Vector2D centre = hangs ? hand.add(down(1.5 * WEIGHT)) : hand;
        if (hangs) {
          ink.add(line(List.of(hand, centre), 2.4));
        }
        ink.add(disc(centre, WEIGHT));
      }
    }
    return ink;
  }

  private List<Ink> chains(Chains chains, Placement where) {
    Vector3D bar = chains.grasps().handle(where);
    List<Ink> ink = new ArrayList<>();
    double lowest = Math.max(0, bar.getY() - chains.length());
    for (double y = bar.getY() - LINK; y > lowest; y -= LINK) {
      ink.add(
          new Form(
              Curves.disc(
                  scale.centred(view.seen(new Vector3D(bar.getX(), y, bar.getZ()))),
                  0.25 * LINK * scale.perMetre()),
              "",
              1,
              Pen.solid(style.metal(), 1.2)));
    }
    return ink;
  }

  private List<Ink> lever(LeverMachine machine, Placement where) {
    Vector2D pivot = view.seen(machine.pivot());
    Vector2D handle = view.seen(machine.grasps().handle(where));
    List<Ink> ink = new ArrayList<>(List.of(line(List.of(pivot, handle), 3)));
    if (machine.cam().isEmpty()) {
      Vector2D plates = plates(machine, where, view);
      ink.add(line(List.of(pivot, plates), 3));
      ink.add(disc(plates, PLATE));
    } else {
      ink.add(disc(pivot, machine.cam().get().radius(0)));
    }
    ink.add(disc(pivot, PULLEY / 2));
    return ink;
  }

  /** Where the plates of a lever are. */
  private static Vector2D plates(LeverMachine machine, Placement where, Scene view) {
    Vector3D lever = machine.grasps().handle(where).subtract(machine.pivot());
    double angle = Math.atan2(lever.getY(), lever.getX()) + machine.offset();
    double arm = machine.arm();
    return view.seen(
        machine.pivot().add(new Vector3D(arm * Math.cos(angle), arm * Math.sin(angle), 0)));
  }

  private List<Ink> pivoting(PivotingBar bar, Placement where) {
    Vector2D pivot = view.seen(bar.pivot());
    Vector2D hand = view.seen(bar.grasps().handle(where));
    Vector2D line = hand.subtract(pivot);
    double reach = bar.grasps().handle(where).distance(bar.pivot());
    Vector2D tip = pivot.add(line.scalarMultiply(bar.length() / reach));
    List<Ink> ink = new ArrayList<>(List.of(line(List.of(pivot, tip), 3), disc(pivot, PULLEY / 2)));
    if (bar.plates() > 0) {
      ink.add(disc(tip, PLATE));
    }
    return ink;
  }

  /** So far down in the world, as it is seen. */
  private Vector2D down(double metres) {
    return view.seen(new Vector3D(0, -metres, 0));
  }

  private Form line(List<Vector2D> points, double width) {
    Shape path = Curves.open(points.stream().map(scale::centred).toList());
    return Form.line(path, Pen.solid(style.metal(), width));
  }

  private Form disc(Vector2D centre, double radius) {
    return new Form(
        Curves.disc(scale.centred(centre), radius * scale.perMetre()),
        style.metal(),
        0.25,
        Pen.solid(style.metal(), 1.4));
  }
}
