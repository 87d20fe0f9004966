package org.leverbook.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Site;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Ask;
import org.leverbook.quantity.Refused;

/**
 * A flat cushion in the plane of the person's left and right: chest pad, back rest, seat, thigh
 * pad, shin pad, or a patch of floor under hands or knees.
 *
 * <p>It is a rectangle; it touches the named places of the skin that lie on its face, give and take
 * what cushion and flesh yield ({@link #YIELDS}), and within its length and width. Without a given
 * height it is set against the body where the body is: its face through the foremost of those
 * places, its middle at the middle of those that touch. With a height it stands still, and a body
 * that does not reach it is refused with the distance.
 *
 * @param source what tables call it
 * @param sites places of the skin that may lie on it
 * @param facing the way its face looks and pushes: unit vector in the world, no part to the side
 * @param middle of its face, forward and up in the world, metres; empty to set it against the body
 * @param length along the slope, metres
 * @param width across, metres
 * @param friction coefficient of friction, zero or more
 * @param leanedOn whether the person leans on it by choice; otherwise it carries
 */
public record Pad(
    String source,
    List<Site> sites,
    Vector3D facing,
    Optional<Vector3D> middle,
    double length,
    double width,
    double friction,
    boolean leanedOn)
    implements Support {

  /** How far cushion and flesh yield together, metres. Common practice, no source. */
  public static final double YIELDS = 0.03;

  /** Vinyl or cloth against clothing: a careful value. Common practice, no source. */
  public static final double CLOTH_FRICTION = 0.4;

  /** Keeps its own list, and checks the friction. */
  public Pad {
    sites = List.copyOf(sites);
    if (!(friction >= 0) || Double.isInfinite(friction)) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The friction of the %s is %s, but must be zero or more: about 0.4 for clothing on a"
                  + " vinyl cushion.",
              source,
              friction));
    }
  }

  private static Pad of(
      String source, Vector3D facing, double length, double width, boolean leaned, Site... sites) {
    return new Pad(
        source, List.of(sites), facing, Optional.empty(), length, width, CLOTH_FRICTION, leaned);
  }

  /** Level is 0, upright 90 degrees. */
  private static Vector3D facing(Quantity<Angle> tilt, double forward) {
    double angle = Ask.angle("tilt of the pad", tilt, 0, Math.toRadians(100));
    return new Vector3D(forward * Math.sin(angle), Math.cos(angle), 0);
  }

  /**
   * A chest pad in front of and below the ribs, set against them.
   *
   * @param tilt of its face: 0 lies level, 90 degrees stands upright
   * @return the pad, 30 cm long and 35 cm wide
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad chest(Quantity<Angle> tilt) {
    return of("chest pad", facing(tilt, -1), 0.30, 0.35, true, Site.UPPER_CHEST, Site.LOWER_CHEST);
  }

  /**
   * A back rest behind the trunk, set against it.
   *
   * @param tilt of its face: 0 lies level, 90 degrees stands upright
   * @return the pad, 90 cm long and 40 cm wide
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad back(Quantity<Angle> tilt) {
    return of(
        "back pad",
        facing(tilt, 1),
        0.90,
        0.40,
        true,
        Site.UPPER_BACK_LOW,
        Site.MID_BACK,
        Site.LOW_BACK,
        Site.BUTTOCK,
        Site.BACK_OF_HEAD);
  }

  /**
   * A bench under head, back and hips.
   *
   * @param tilt of its face: 0 for a flat bench
   * @return the bench, 120 cm long and 30 cm wide, which carries
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad bench(Quantity<Angle> tilt) {
    return of(
        "bench",
        facing(tilt, 1),
        1.20,
        0.30,
        false,
        Site.UPPER_BACK_LOW,
        Site.MID_BACK,
        Site.BUTTOCK,
        Site.BACK_OF_HEAD);
  }

  /**
   * A level seat under the sitting bones and thighs.
   *
   * @return the seat, 45 cm long and 45 cm wide, which carries
   */
  public static Pad seat() {
    return of("seat", Vector3D.PLUS_J, 0.45, 0.45, false, Site.SITTING_BONE, Site.BACK_OF_THIGH);
  }

  /**
   * A pad that holds the thighs down from above.
   *
   * @return the pad, 20 cm long and 80 cm wide
   */
  public static Pad thighs() {
    return of("thigh pad", Vector3D.MINUS_J, 0.20, 0.80, true, Site.THIGH);
  }

  /**
   * A pad or roller in front of the lower shins.
   *
   * @param tilt of its face: 90 degrees stands upright, 0 looks up
   * @return the pad, 15 cm long and 80 cm wide
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad shins(Quantity<Angle> tilt) {
    return of("shin pad", facing(tilt, -1), 0.15, 0.80, true, Site.SHIN);
  }

  /**
   * A plate that does not move, ahead of the feet; it pushes at heel, ball and toe tip of each
   * sole, so that the pressure point along the foot is found. For one that slides on a rail see the
   * sled among the loads.
   *
   * @param tilt of its face: 90 degrees stands upright
   * @return the plate, 60 cm long and 60 cm wide, which carries
   * @throws Refused if the tilt is missing or outside 0 to 100 degrees
   */
  public static Pad footPlate(Quantity<Angle> tilt) {
    return of(
            "foot plate",
            facing(tilt, -1),
            0.60,
            0.60,
            false,
            Site.HEEL,
            Site.BALL_OF_FOOT,
            Site.TOE_TIP)
        .friction(Floor.SHOE_FRICTION);
  }

  /**
   * The level floor under both hands.
   *
   * @return a patch at height zero
   */
  public static Pad underHands() {
    return new Pad(
        "floor under the hands",
        List.of(Site.HEEL_OF_HAND, Site.BALL_OF_HAND),
        Vector3D.PLUS_J,
        Optional.of(Vector3D.ZERO),
        10,
        10,
        Floor.SHOE_FRICTION,
        false);
  }

  /**
   * The level floor under knees and insteps.
   *
   * @return a patch at height zero
   */
  public static Pad underKnees() {
    return new Pad(
        "floor under the knees",
        List.of(Site.KNEE_CAP, Site.SHIN, Site.INSTEP),
        Vector3D.PLUS_J,
        Optional.of(Vector3D.ZERO),
        10,
        10,
        Floor.SHOE_FRICTION,
        false);
  }

  /**
   * The same pad with another friction.
   *
   * @param coefficient zero or more
   * @return the changed pad
   * @throws Refused if it is below zero
   */
  public Pad friction(double coefficient) {
    return new Pad(source, sites, facing, middle, length, width, coefficient, leanedOn);
  }

  /**
   * The same pad in another size.
   *
   * @param along the slope, 2 to 300 cm
   * @param across 2 to 300 cm
   * @return the changed pad
   * @throws Refused if a length is missing or outside
   */
  public Pad size(Quantity<Length> along, Quantity<Length> across) {
    double newLength = Ask.length("length of the " + source, along, 0.02, 3);
    double newWidth = Ask.length("width of the " + source, across, 0.02, 3);
    return new Pad(source, sites, facing, middle, newLength, newWidth, friction, leanedOn);
  }

  /**
   * The same pad fixed in the world.
   *
   * @param forward place of the middle of its face, ahead of the world's origin, -5 to 5 m
   * @param up its height above the floor, -1 to 3 m
   * @return the changed pad
   * @throws Refused if a length is missing or outside
   */
  public Pad middleAt(Quantity<Length> forward, Quantity<Length> up) {
    Vector3D at =
        new Vector3D(
            Ask.length("place of the " + source, forward, -5, 5),
            Ask.length("height of the " + source, up, -1, 3),
            0);
    return new Pad(source, sites, facing, Optional.of(at), length, width, friction, leanedOn);
  }

  /**
   * The same pad set against a body where it is now, to stay there.
   *
   * @param where where the body is
   * @param onFace places of the skin that lie on its face; none for the foremost of those that
   *     touch
   * @return the pad, fixed in the world; as it is if it was fixed before
   */
  public Pad setAgainst(Placement where, List<Site> onFace) {
    if (middle.isPresent()) {
      return this;
    }
    List<Vector3D> ends = ends(where);
    Vector3D centre = ends.get(0).add(ends.get(1)).scalarMultiply(0.5);
    double face =
        Skin.of(sites, where).stream()
            .filter(s -> onFace.contains(s.site()))
            .mapToDouble(this::out)
            .average()
            .orElse(centre.dotProduct(facing));
    Vector3D at = centre.add(facing.scalarMultiply(face - centre.dotProduct(facing)));
    return new Pad(source, sites, facing, Optional.of(at), length, width, friction, leanedOn);
  }

  /**
   * The two ends of its face, seen from the side.
   *
   * @param where where the body is
   * @return upper and lower end in the plane of the middle, in the world, metres
   */
  public List<Vector3D> ends(Placement where) {
    List<Skin> skin = Skin.of(sites, where);
    double face = skin.stream().mapToDouble(this::out).min().orElseThrow();
    Vector3D centre =
        middle.orElseGet(
            () -> Skin.centre(skin.stream().filter(s -> out(s) - face <= YIELDS).toList()));
    // On the face, not on the mean of skin that has sunk in.
    Vector3D on =
        middle.isPresent()
            ? centre
            : centre.add(facing.scalarMultiply(face - centre.dotProduct(facing)));
    Vector3D half = Vector3D.PLUS_K.crossProduct(facing).scalarMultiply(length / 2);
    return List.of(on.add(half), on.subtract(half));
  }

  @Override
  public String description() {
    return String.format(
        Locale.ROOT,
        "%s, face tilted %.0f°, friction %.2f",
        source,
        Math.toDegrees(Math.acos(Math.max(-1, Math.min(1, facing.getY())))),
        friction);
  }

  @Override
  public List<Contact> contacts(Placement where) {
    List<Skin> skin = Skin.of(sites, where);
    double face =
        middle
            .map(m -> m.dotProduct(facing))
            .orElseGet(() -> skin.stream().mapToDouble(this::out).min().orElseThrow());
    double nearest = skin.stream().mapToDouble(s -> out(s) - face).min().orElseThrow();
    // A nearest place behind the face is a body inside the pad.
    if (Math.abs(nearest) > YIELDS) {
      throw apart(skin, nearest);
    }
    List<Skin> on = skin.stream().filter(s -> out(s) - face <= YIELDS).toList();
    Vector3D centre = middle.orElseGet(() -> Skin.centre(on));
    Vector3D slope = Vector3D.PLUS_K.crossProduct(facing);
    List<Contact> contacts = new ArrayList<>();
    for (Skin one : on) {
      double along = one.at().subtract(centre).dotProduct(slope);
      if (Math.abs(along) <= length / 2 && Math.abs(one.at().getZ()) <= width / 2) {
        contacts.add(
            new Contact(
                one.place().name(), one.place().segment(), one.at(), facing, friction, false));
      }
    }
    if (contacts.isEmpty()) {
      throw beside(on, centre, slope);
    }
    return contacts;
  }

  /** How far out a place lies along the way the face looks. */
  private double out(Skin skin) {
    return skin.at().dotProduct(facing);
  }

  private Refused apart(List<Skin> skin, double nearest) {
    Skin closest = skin.get(0);
    for (Skin one : skin) {
      closest = out(one) < out(closest) ? one : closest;
    }
    return new Refused(
        String.format(
            Locale.ROOT,
            nearest > 0
                ? "The %s is %.1f cm away from the %s: move the pad or the body by that much along"
                    + " the way it faces, or leave out its place to set it against the body."
                : "The %s stands %.1f cm inside the body at the %s: move the pad back by that much,"
                    + " or leave out its place to set it against the body.",
            source,
            100 * Math.abs(nearest),
            closest.place().name()));
  }

  private Refused beside(List<Skin> on, Vector3D centre, Vector3D slope) {
    double least = Double.POSITIVE_INFINITY;
    String name = "";
    for (Skin one : on) {
      double past =
          Math.max(
              Math.abs(one.at().subtract(centre).dotProduct(slope)) - length / 2,
              Math.abs(one.at().getZ()) - width / 2);
      if (past < least) {
        least = past;
        name = one.place().name();
      }
    }
    return new Refused(
        String.format(
            Locale.ROOT,
            "The %s ends %.1f cm short of the %s: make it longer or wider, or move it.",
            source,
            100 * least,
            name));
  }
}
