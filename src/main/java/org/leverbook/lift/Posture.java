package org.leverbook.lift;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Links;
import org.leverbook.body.Place;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.load.Load;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.solve.Coordinates;
import org.leverbook.solve.Feature;
import org.leverbook.solve.Features;
import org.leverbook.solve.Statements;
import org.leverbook.support.Pad;
import org.leverbook.support.Support;

/**
 * What a recipe says of a lift at one share of its way, in a coach's words: how the body stands,
 * sits or lies, where the hands are, what is usual, what is lifted and what carries.
 *
 * <p>World: x forward, y up from the floor, z to the lifter's right; the middle of the standing
 * feet is at x = 0 unless the recipe says otherwise.
 */
final class Posture {

  /** Strength of what most joints usually do; 1 gives way last. */
  static final double EASY = 0.05;

  static final double FIRM = 1;

  /** How strongly a hand on a straight way keeps to equal parts of it. */
  private static final double EQUAL_PARTS = 2;

  private final Setup setup;
  private final double share;
  private final boolean alike;
  private final Statements statements;
  private final List<Load> loads = new ArrayList<>();
  private final List<Function<Placement, Support>> supports = new ArrayList<>();
  private final List<Features.Carried> carried = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();
  private final Map<Setting, Double> used = new EnumMap<>(Setting.class);
  private final List<Placement> ends;
  private final Map<Vector3D, Double> balance = new HashMap<>();

  /**
   * Nothing said yet but habits.
   *
   * @param setup what the coach said
   * @param share of the way, 0 to 1
   * @param alike whether both sides go alike
   * @param ends the poses already known: none at the start, that of the start at the finish, both
   *     between them
   */
  Posture(Setup setup, double share, boolean alike, List<Placement> ends) {
    this.setup = setup;
    this.ends = ends;
    this.share = share;
    this.alike = alike;
    Body body = setup.body();
    statements =
        new Statements(
            body, alike ? Coordinates.alike(body) : Coordinates.eachSide(body), Frame.WORLD);
    Habits.of(this);
  }

  Body body() {
    return setup.body();
  }

  Links links() {
    return setup.body().links();
  }

  Setup setup() {
    return setup;
  }

  Statements statements() {
    return statements;
  }

  /** The poses already known: none at the start, then that of the start, between them both. */
  List<Placement> ends() {
    return ends;
  }

  /** Share of the way from start to finish, 0 to 1. */
  double share() {
    return share;
  }

  boolean isStart() {
    return share == 0;
  }

  boolean isFinish() {
    return share == 1;
  }

  /**
   * Between start and finish a point stays on the straight line from the one place to the other,
   * seen from the side, and rather goes along it in equal parts. At the ends nothing is said.
   */
  Posture straight(String what, Feature.Point point) {
    return straight(what, point, EQUAL_PARTS);
  }

  /** The same, equal parts wished with a weight; with none, only the line holds. */
  Posture straight(String what, Feature.Point point, double equalParts) {
    if (ends.size() == 2) {
      Vector3D from = ends.get(0).toWorld(point.segment(), point.local());
      Vector3D line = ends.get(1).toWorld(point.segment(), point.local()).subtract(from);
      double length = Math.hypot(line.getX(), line.getY());
      List<Vector3D> square =
          length < 1e-6
              ? List.of(Vector3D.PLUS_I, Vector3D.PLUS_J)
              : List.of(new Vector3D(-line.getY() / length, line.getX() / length, 0));
      statements.along(what, "its straight way", point, from, square);
      if (length >= 1e-6 && equalParts > 0) {
        Vector3D along = new Vector3D(line.getX() / length, line.getY() / length, 0);
        double now = from.dotProduct(along) + share * length;
        statements.ratherOnTheWay(point, along, now, equalParts);
      }
    }
    return this;
  }

  /** After the start a point stays where it was, as far as some directions go. */
  Posture stays(String what, Feature.Point point, List<Vector3D> directions) {
    if (!ends.isEmpty()) {
      Vector3D there = ends.get(0).toWorld(point.segment(), point.local());
      statements.along(what, "its place at the start", point, there, directions);
    }
    return this;
  }

  /** Right alone where both sides go alike, otherwise both. */
  List<Side> sides() {
    return alike ? List.of(Side.RIGHT) : List.of(Side.RIGHT, Side.LEFT);
  }

  /** What was set, or else the recipe's own value. */
  double value(Setting setting, double usual) {
    double value = setup.values().getOrDefault(setting, usual);
    used.put(setting, value);
    return value;
  }

  /** An angle that was set, or else the recipe's own in degrees; radians. */
  double angle(Setting setting, double degrees) {
    return value(setting, Math.toRadians(degrees));
  }

  boolean isSet(Setting setting) {
    return setup.values().containsKey(setting);
  }

  Grip grip(Grip usual) {
    return setup.grip().orElse(usual);
  }

  /** Along the way from a value at the start to one at the finish. */
  double between(double start, double finish) {
    return start + share * (finish - start);
  }

  /** A joint usually stands so, in degrees; both sides. */
  Posture usually(JointId joint, String axis, double degrees, double strength) {
    for (String name : names(joint, axis)) {
      statements.usually(name, Math.toRadians(degrees), strength);
    }
    return this;
  }

  /** A joint stands so, in degrees; both sides. */
  Posture exactly(JointId joint, String axis, double degrees) {
    return exactlyRadians(joint, axis, Math.toRadians(degrees));
  }

  Posture exactlyRadians(JointId joint, String axis, double radians) {
    for (String name : names(joint, axis)) {
      statements.exactly(name, radians);
    }
    return this;
  }

  /** A joint of one side usually stands so, in degrees. */
  Posture usually(JointId joint, Side side, String axis, double degrees, double strength) {
    statements.usually(name(joint, side, axis), Math.toRadians(degrees), strength);
    return this;
  }

  /** A joint of one side stands so, in degrees. */
  Posture exactly(JointId joint, Side side, String axis, double degrees) {
    statements.exactly(name(joint, side, axis), Math.toRadians(degrees));
    return this;
  }

  List<String> names(JointId joint, String axis) {
    return alike
        ? List.of(joint.word() + " " + axis)
        : List.of(name(joint, Side.RIGHT, axis), name(joint, Side.LEFT, axis));
  }

  String name(JointId joint, Side side, String axis) {
    return (alike ? joint.word() : joint.on(side)) + " " + axis;
  }

  /** Where the pelvis roughly is and how it leans, to start the search from. */
  Posture roughly(double forward, double up, double leanDegrees) {
    statements.usually("pelvis forward", forward, 0.003);
    statements.usually("pelvis up", up, 0.003);
    statements.usually("pelvis lean", Math.toRadians(leanDegrees), 0.003);
    return this;
  }

  /** The trunk is bent in itself by this much, shared over its levels. */
  Posture rounded(double radians) {
    statements.usually("low back flexion", 0.72 * radians, FIRM);
    statements.usually("upper back flexion", 0.28 * radians, FIRM);
    statements.sum("the spine", radians, "low back flexion", "upper back flexion");
    return this;
  }

  /** The spine keeps its standing shape, unless the coach has it rounded. */
  Posture spine() {
    return spine(0);
  }

  /** The spine is bent by so many degrees, unless the coach says otherwise; firmly, not exactly. */
  Posture spine(double degrees) {
    if (isSet(Setting.SPINE_ROUNDING)) {
      return rounded(angle(Setting.SPINE_ROUNDING, degrees));
    }
    statements.usually("low back flexion", Math.toRadians(0.72 * degrees), FIRM);
    statements.usually("upper back flexion", Math.toRadians(0.28 * degrees), FIRM);
    return this;
  }

  /** The line from hip to shoulder leans forward by this much. */
  Posture trunkLeans(double radians) {
    statements.usually("pelvis lean", radians, 0.003);
    return segmentLeans(
        "the trunk",
        Features.joint(body(), JointId.HIP.on(Side.RIGHT)),
        Features.joint(body(), JointId.SHOULDER.on(Side.RIGHT)),
        radians);
  }

  /** The same as a wish. */
  Posture ratherTrunkLeans(double radians, double weight) {
    Vector3D across = new Vector3D(Math.cos(radians), -Math.sin(radians), 0);
    statements.ratherTogether(
        joint(JointId.SHOULDER, Side.RIGHT), joint(JointId.HIP, Side.RIGHT), across, weight);
    return this;
  }

  /** A line of the body leans forward from the vertical by this much, seen from the side. */
  Posture segmentLeans(String what, Feature from, Feature to, double radians) {
    statements.inclined(what, from, to, radians);
    return this;
  }

  /** A joint's centre. */
  Feature.Point joint(JointId joint, Side side) {
    return Features.joint(body(), joint.on(side));
  }

  /** A place of the body. */
  Feature.Point place(Site site, Side side) {
    return Features.point(body().place(site, side));
  }

  /** A direction that goes with a segment. */
  Feature direction(String segment, Vector3D local) {
    return Features.direction(body(), segment, local);
  }

  /** A point of a site is at a height. */
  Posture atHeight(Site site, double metres, String where) {
    for (Side side : site.sides().size() == 1 ? site.sides() : sides()) {
      statements.along(
          "the " + site.on(side),
          where,
          place(site, side),
          new Vector3D(0, metres, 0),
          List.of(Vector3D.PLUS_J));
    }
    return this;
  }

  /** A joint is at a height. */
  Posture atHeight(JointId joint, double metres, String where) {
    return along(joint, Vector3D.PLUS_J, metres, where);
  }

  /** A joint is at a place forward. */
  Posture atForward(JointId joint, double metres, String where) {
    return along(joint, Vector3D.PLUS_I, metres, where);
  }

  private Posture along(JointId joint, Vector3D direction, double metres, String where) {
    for (Side side : joint.paired() ? sides() : List.of(Side.MIDLINE)) {
      statements.along(
          "the " + joint.on(side),
          where,
          joint(joint, side),
          direction.scalarMultiply(metres),
          List.of(direction));
    }
    return this;
  }

  /** The common centre of body and what it carries is over this place forward. */
  Posture balancedOver(double forward) {
    balance.put(Vector3D.PLUS_I, forward);
    return this;
  }

  /** The same sideways, to the lifter's right. */
  Posture balancedSideways(double right) {
    balance.put(Vector3D.PLUS_K, right);
    return this;
  }

  /** The same as a wish. */
  Posture ratherBalancedOver(double forward, double weight) {
    statements.ratherBalanced("the middle of the foot", forward, List.copyOf(carried), weight);
    return this;
  }

  /** A weight hangs on a place of the body and counts for the balance. */
  Posture carries(double kilograms, Place... on) {
    for (Place place : on) {
      carried.add(new Features.Carried(kilograms / on.length, Features.point(place)));
    }
    return this;
  }

  Posture lifts(Load load) {
    loads.add(load);
    return this;
  }

  Posture on(Support support) {
    supports.add(start -> support);
    return this;
  }

  /**
   * A pad that is set against the body at the start and stays there.
   *
   * @param pad which
   * @param onFace places of the skin that the recipe puts on its face; none for the foremost
   */
  Posture against(Pad pad, Site... onFace) {
    supports.add(start -> pad.setAgainst(start, List.of(onFace)));
    return this;
  }

  Posture note(String sentence) {
    notes.add(sentence);
    return this;
  }

  Map<Vector3D, Double> balance() {
    return balance;
  }

  List<Load> loads() {
    return loads;
  }

  /** What carries, set up for a body that starts there. */
  List<Support> supports(Placement start) {
    return supports.stream().map(support -> support.apply(start)).toList();
  }

  List<Features.Carried> carried() {
    return carried;
  }

  List<String> notes() {
    return notes;
  }

  Map<Setting, Double> used() {
    return used;
  }
}
