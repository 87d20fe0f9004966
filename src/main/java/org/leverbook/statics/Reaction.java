package org.leverbook.statics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.SegmentTree;
import org.leverbook.display.Shown;
import org.leverbook.load.Force;
import org.leverbook.support.Contact;

/**
 * What one support gives one part of the body; also a load whose push the body shares out, as a
 * sled gives a foot.
 *
 * @param source as in "chest pad"
 * @param on the part, as in "right foot" or "trunk"
 * @param force on the body, in the world, newtons
 * @param point where the pushes act on average, in the world, metres
 * @param push sum of the pushes along the normals, newtons
 * @param along size of the force along the surface, newtons; of a grip, of the whole force
 * @param frictionUsed what its contacts hold sideways, each taken by its size, as a share of what
 *     they could, 0 to 1; empty for grips and smooth contacts
 */
public record Reaction(
    String source,
    String on,
    Vector3D force,
    Vector3D point,
    double push,
    double along,
    OptionalDouble frictionUsed)
    implements Shown {

  /** Gathers the forces of a kind at single contacts by support (or load) and part of the body. */
  static List<Reaction> gathered(
      SegmentTree tree, List<ContactProblem.Touch> touches, List<Force> forces, Force.Kind kind) {
    Map<String, List<ContactProblem.Touch>> groups = new LinkedHashMap<>();
    for (ContactProblem.Touch touch : touches) {
      String on = part(tree, touch.contact().segment());
      groups.computeIfAbsent(touch.source() + "\n" + on, k -> new ArrayList<>()).add(touch);
    }
    List<Reaction> all = new ArrayList<>();
    groups.forEach(
        (key, group) -> {
          Reaction one = of(key.split("\n")[0], key.split("\n")[1], group, forces, kind);
          if (one != null) {
            all.add(one);
          }
        });
    return all;
  }

  private static Reaction of(
      String source,
      String on,
      List<ContactProblem.Touch> group,
      List<Force> forces,
      Force.Kind kind) {
    Vector3D sum = Vector3D.ZERO;
    Vector3D point = Vector3D.ZERO;
    Vector3D sideways = Vector3D.ZERO;
    double push = 0;
    double weights = 0;
    double holds = 0;
    double couldHold = 0;
    for (ContactProblem.Touch touch : group) {
      Contact contact = touch.contact();
      Force force = at(contact, touch.source(), forces, kind);
      if (force == null) {
        continue;
      }
      double normal = contact.grips() ? 0 : force.force().dotProduct(contact.normal());
      Vector3D side = force.force().subtract(contact.normal().scalarMultiply(normal));
      double weight = contact.grips() ? force.force().getNorm() : normal;
      sum = sum.add(force.force());
      sideways = sideways.add(side);
      point = point.add(contact.point().scalarMultiply(weight));
      weights += weight;
      push += normal;
      if (contact.friction() > 0 && !contact.grips() && normal > 0) {
        holds += side.getNorm();
        couldHold += contact.friction() * normal;
      }
    }
    return weights <= 0
        ? null
        : new Reaction(
            source,
            on,
            sum,
            point.scalarMultiply(1 / weights),
            push,
            sideways.getNorm(),
            couldHold > 0 ? OptionalDouble.of(holds / couldHold) : OptionalDouble.empty());
  }

  private static Force at(Contact contact, String source, List<Force> forces, Force.Kind kind) {
    for (Force force : forces) {
      if (force.kind() == kind
          && force.source().equals(source)
          && force.segment() == contact.segment()
          && force.point().equals(contact.point())) {
        return force;
      }
    }
    return null;
  }

  /** Vertebrae count as the trunk, toes with their foot, fingers with their hand. */
  static String part(SegmentTree tree, int segment) {
    String name = tree.segment(segment).name();
    if (name.matches("[LT]\\d+")) {
      return "trunk";
    }
    return name.replace("toes", "foot").replace("fingers", "hand");
  }

  @Override
  public String text() {
    return String.format(Locale.ROOT, "%s on the %s: %.0f N", source, on, force.getNorm());
  }

  @Override
  public String toString() {
    return text();
  }
}
