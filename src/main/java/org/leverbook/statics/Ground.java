package org.leverbook.statics;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Side;
import org.leverbook.load.Force;
import org.leverbook.pose.Placement;
import org.leverbook.support.Contact;

/**
 * What of the supports is level ground: contacts at one height that push straight up.
 *
 * @param source the support's name
 * @param contacts those of the ground
 * @param carriesAll whether there is no other support
 * @param height of the ground, metres
 * @param heel forward place of the back of the feet (or of the rearmost contact), metres
 * @param toe forward place of the toe tips (or of the foremost contact), metres
 * @param feet whether the feet stand on it
 */
record Ground(
    String source,
    List<Contact> contacts,
    boolean carriesAll,
    double height,
    double heel,
    double toe,
    boolean feet) {

  /** Heights that differ by less are one level, metres. */
  private static final double LEVEL = 1e-6;

  /** A ground that carries less than this share of the weight has no balance worth telling. */
  private static final double HARDLY = 1e-3;

  /**
   * The level ground under a body, where there is any: three contacts at least of one support at
   * one height. Of several, the one the feet stand on; a bench presser's balance is told of the
   * feet.
   */
  static Optional<Ground> under(Body body, Placement where, List<ContactProblem.Touch> touches) {
    List<Level> levels = new ArrayList<>();
    for (ContactProblem.Touch touch : touches) {
      Contact contact = touch.contact();
      if (contact.normal().getY() > 1 - 1e-12 && !contact.grips() && !touch.leanedOn()) {
        Level own = new Level(touch.source(), contact.point().getY(), new ArrayList<>());
        Level known = levels.stream().filter(own::same).findFirst().orElse(own);
        if (known == own) {
          levels.add(own);
        }
        known.contacts().add(contact);
      }
    }
    joinHeelsAndBalls(levels, where);
    levels.removeIf(level -> level.contacts().size() < 3);
    return levels.stream()
        .filter(level -> level.feet(where) == level.contacts().size())
        .findFirst()
        .or(() -> levels.stream().findFirst())
        .map(level -> of(body, where, level, level.contacts().size() == touches.size()));
  }

  /**
   * Feet whose heels stand on plates stand on two levels or more; their balance is that of the
   * whole soles. Feet of which one is on a step stay apart.
   */
  private static void joinHeelsAndBalls(List<Level> levels, Placement where) {
    for (int i = 0; i < levels.size(); i++) {
      Level one = levels.get(i);
      for (int j = levels.size() - 1; j > i; j--) {
        Level other = levels.get(j);
        if (one.underSameFeet(other, where)) {
          one = one.joined(other);
          levels.set(i, one);
          levels.remove(j);
        }
      }
    }
  }

  private static Ground of(Body body, Placement where, Level level, boolean all) {
    List<Contact> contacts = level.contacts();
    long onFeet = level.feet(where);
    double[] span = onFeet == body.soles().size() ? footSpan(body, where) : span(contacts);
    boolean feet = onFeet == contacts.size();
    boolean flat =
        contacts.stream().allMatch(c -> Math.abs(c.point().getY() - level.height()) <= LEVEL);
    return new Ground(
        level.source(), contacts, all && flat, level.height(), span[0], span[1], feet);
  }

  /** Contacts of one support at one height, or those of the same feet at several. */
  private record Level(String source, double height, List<Contact> contacts) {

    boolean same(Level other) {
      return source.equals(other.source) && Math.abs(height - other.height) <= LEVEL;
    }

    boolean underSameFeet(Level other, Placement where) {
      return source.equals(other.source)
          && feet(where) == contacts.size()
          && other.feet(where) == other.contacts.size()
          && sides(where).equals(other.sides(where));
    }

    Level joined(Level other) {
      List<Contact> both = new ArrayList<>(contacts);
      both.addAll(other.contacts());
      return new Level(source, Math.min(height, other.height), both);
    }

    private Set<Side> sides(Placement where) {
      Set<Side> sides = EnumSet.noneOf(Side.class);
      for (Contact contact : contacts) {
        String name = where.tree().segment(contact.segment()).name();
        sides.add(name.startsWith(Side.RIGHT.word()) ? Side.RIGHT : Side.LEFT);
      }
      return sides;
    }

    long feet(Placement where) {
      return contacts.stream().filter(c -> ofFoot(where, c)).count();
    }
  }

  private static boolean ofFoot(Placement where, Contact contact) {
    String name = where.tree().segment(contact.segment()).name();
    return name.endsWith("foot") || name.endsWith("toes");
  }

  private static double[] span(List<Contact> contacts) {
    return new double[] {
      contacts.stream().mapToDouble(c -> c.point().getX()).min().orElseThrow(),
      contacts.stream().mapToDouble(c -> c.point().getX()).max().orElseThrow()
    };
  }

  /** Back of the heels and toe tips, forward places averaged over both feet. */
  private static double[] footSpan(Body body, Placement where) {
    double heel = 0;
    double toe = 0;
    double length = body.links().footLength();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Body.SolePoint tip =
          body.soles().stream()
              .filter(p -> p.name().equals(side.of("toe tip")))
              .findFirst()
              .orElseThrow();
      Vector3D point = where.toWorld(tip.segment(), tip.place());
      toe += point.getX() / 2;
      Vector3D forward = where.frame(where.tree().indexOf(side.of("foot"))).x();
      heel += (point.getX() - length * forward.getX()) / 2;
    }
    return new double[] {heel, toe};
  }

  /** The balance when the ground alone must answer a wrench about the world's origin. */
  Balance against(Vector3D force, Vector3D moment) {
    Vector3D here = moment.subtract(new Vector3D(0, height, 0).crossProduct(force));
    Vector3D pressure =
        new Vector3D(here.getZ() / force.getY(), height, -here.getX() / force.getY());
    return Balance.of(contacts, pressure, heel, toe, feet);
  }

  /** The balance that found reactions give, unless the ground carries hardly anything. */
  Optional<Balance> balance(List<Force> reactions, double weight) {
    double up = 0;
    Vector3D sum = Vector3D.ZERO;
    for (Force force : reactions) {
      boolean ours =
          contacts.stream()
              .anyMatch(c -> c.segment() == force.segment() && c.point().equals(force.point()));
      if (ours) {
        up += force.force().getY();
        // Heels on plates may push against the balls below them: that moment moves the pressure.
        double above = force.point().getY() - height;
        sum = sum.add(force.point().scalarMultiply(force.force().getY()));
        sum = sum.subtract(force.force().scalarMultiply(above));
      }
    }
    return up < HARDLY * weight
        ? Optional.empty()
        : Optional.of(Balance.of(contacts, onGround(sum.scalarMultiply(1 / up)), heel, toe, feet));
  }

  private Vector3D onGround(Vector3D place) {
    return new Vector3D(place.getX(), height, place.getZ());
  }

  /**
   * Which way a person tips, and by how much.
   *
   * @param balance outside this ground
   * @param what falls there, as in "the weight of lifter and bar together"
   * @param weight how much of it points down, newtons
   */
  Holding tips(Balance balance, String what, double weight) {
    double x = balance.centreOfPressure().getX();
    double[] ends = span(contacts);
    String sentence;
    if (x > ends[1]) {
      sentence =
          String.format(
              Locale.ROOT,
              "Tips forward: %s falls %.1f cm ahead of %s." + " Bring the load or the hips back.",
              what,
              100 * (x - ends[1]),
              feet ? "the toes" : "what carries it");
    } else if (x < ends[0]) {
      sentence =
          String.format(
              Locale.ROOT,
              "Tips backward: %s falls %.1f cm behind %s."
                  + " Bring the load or the shoulders forward.",
              what,
              100 * (ends[0] - x),
              feet ? "the heels' support" : "what carries it");
    } else {
      sentence =
          String.format(
              Locale.ROOT,
              "Tips sideways: %s falls %.1f cm outside %s."
                  + " Widen the stance or centre the load.",
              what,
              100 * -balance.margin(),
              feet ? "the feet" : "what carries it");
    }
    var edge = balance.nearestEdge();
    Vector3D back =
        new Vector3D(edge.getX(), height, edge.getY()).subtract(balance.centreOfPressure());
    Vector3D moment = back.crossProduct(new Vector3D(0, -weight, 0));
    return new Holding(Holding.Verdict.TIPS, sentence, Vector3D.ZERO, moment, 0);
  }
}
