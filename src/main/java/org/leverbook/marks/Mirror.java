package org.leverbook.marks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.pose.Placement;
import org.leverbook.solve.Answer;
import org.leverbook.solve.Feature;
import org.leverbook.solve.Statements;

/**
 * The mirror solution of a photo: what one picture cannot tell is on which side of its plane a part
 * that looks short lies, so each such part is turned to the other side of the picture, and the
 * lifter as far away from the camera as he was turned towards it.
 *
 * <p>1. The pose with all depths reversed is sought as a wish. 2. Those parts that got there are
 * held there, the rest is left to marks and habits. 3. A part that did not get there is named: a
 * knee bends one way only, and feet stay on the floor.
 */
final class Mirror {

  /** Parts and views turned out by less have no other side worth telling, radians. */
  static final double FLAT = Math.toRadians(5);

  private static final double DEEP = MarkFit.WEIGHT / 0.02;

  private final Solved solved;
  private final MarkFit fit;
  private final Body body;
  private final Vector3D viewer;

  private Mirror(Solved solved) {
    this.solved = solved;
    fit = solved.fit();
    body = solved.body();
    viewer = fit.viewer();
  }

  /** A part that looks short: its way from end to end, and how much nearer its far end is. */
  private record Deep(String name, Feature.Point from, Feature.Point to, double depth) {

    boolean reversedIn(Placement where, Vector3D viewer) {
      return depthIn(where, viewer) * depth <= 0;
    }

    double depthIn(Placement where, Vector3D viewer) {
      Vector3D start = where.toWorld(from.segment(), from.local());
      return where.toWorld(to.segment(), to.local()).subtract(start).dotProduct(viewer);
    }
  }

  /** The mirror of a solution; empty where it is square on, or nothing can turn the other way. */
  static Optional<Mirrored> of(Solved solved) {
    return new Mirror(solved).mirrored();
  }

  private Optional<Mirrored> mirrored() {
    List<Deep> parts = parts();
    boolean oblique = Math.abs(solved.turned()) > FLAT;
    if (parts.isEmpty() && !oblique) {
      return Optional.empty();
    }
    Answer rough = fit.near(wished(parts));
    if (!rough.met()) {
      return Optional.empty();
    }
    Placement where = rough.pose().placed();
    List<Deep> turned = parts.stream().filter(p -> p.reversedIn(where, viewer)).toList();
    Answer held = fit.held(said -> turned.forEach(p -> hold(said, p)), rough);
    Solved other = solved.with(held.met() ? held : rough);
    Placement there = other.answer().pose().placed();
    List<String> stayed = new ArrayList<>();
    parts.stream()
        .filter(p -> !p.reversedIn(there, viewer))
        .forEach(p -> stayed.add("the " + p.name()));
    boolean back = other.turned() * solved.turned() <= 0;
    if (stayed.size() == parts.size() && !(oblique && back)) {
      return Optional.empty();
    }
    if (oblique && !back) {
      stayed.add("the lifter as a whole");
    }
    return Optional.of(new Mirrored(other, stayed));
  }

  private List<Deep> parts() {
    Placement where = solved.answer().pose().placed();
    List<Deep> parts = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      for (Stretch stretch : Stretch.values()) {
        if (marked(stretch.from, side) && marked(stretch.to, side)) {
          Feature.Point from = stretch.from.on(body, side);
          Feature.Point to = stretch.to.on(body, side);
          Deep open = new Deep(side.of(stretch.word()), from, to, 0);
          double depth = open.depthIn(where, viewer);
          if (Math.abs(depth) > stretch.length(body.links()) * Math.sin(FLAT)) {
            parts.add(new Deep(open.name(), from, to, depth));
          }
        }
      }
    }
    return parts;
  }

  private boolean marked(Landmark landmark, Side side) {
    return solved.marks().stream().anyMatch(m -> m.landmark() == landmark && m.side() == side);
  }

  /** All depths reversed, the pelvis turned and leaned to the other side. */
  private Answer wished(List<Deep> parts) {
    double[] x = solved.answer().values().clone();
    return fit.begun(
        said -> {
          for (String name : Usual.PELVIS) {
            int i = said.coordinates().indexOf(name);
            boolean across = name.equals("pelvis turn") || name.equals("pelvis side lean");
            said.usually(name, across ? -x[i] : x[i], 10 * MarkFit.WEIGHT);
          }
          parts.forEach(
              p -> said.rather(new Feature.Way(p.from(), p.to()), viewer, -p.depth(), DEEP));
        });
  }

  private void hold(Statements said, Deep part) {
    boolean nearer = part.depth() < 0;
    said.beyond(
        "the lower end of the " + part.name(),
        "its upper end",
        nearer ? part.to() : part.from(),
        nearer ? part.from() : part.to(),
        viewer,
        0);
  }
}
