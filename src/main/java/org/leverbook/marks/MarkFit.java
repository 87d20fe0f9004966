package org.leverbook.marks;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;
import org.leverbook.solve.Answer;
import org.leverbook.solve.Coordinates;
import org.leverbook.solve.Feature;
import org.leverbook.solve.Features;
import org.leverbook.solve.PoseSolver;
import org.leverbook.solve.Statements;

/**
 * The pose that brings a body's landmarks nearest to where they were seen.
 *
 * <p>It makes the sum of (miss / doubt)² over all sightings and of (angle - usual) / spread over
 * all angles least, within the ranges of the joints. What must hold exactly: hips level where both
 * sides go alike; feet flat on the ground where the lifter stands. Where only the near side was
 * marked, the far side mirrors it.
 */
final class MarkFit {

  /**
   * All wishes are said this much weaker, which changes nothing among them but lets what must hold
   * outweigh them from the start, as the solver expects.
   */
  static final double WEIGHT = 0.01;

  private static final double[] ARMS_OUT = {Math.toRadians(10), Math.toRadians(60)};

  private static final double LEVEL_HIPS = 6;

  private final Body body;
  private final List<Sighting> sightings;
  private final Known known;
  private final Vector3D viewer;
  private final Coordinates coordinates;
  private final Frame attitude;

  /**
   * One picture's fit.
   *
   * @param body whose; its lengths are kept
   * @param sightings where landmarks were seen
   * @param known what else is known
   * @param viewer unit vector from the lifter to the camera
   * @param attitude which way the lifter faces upright: the frame that turning is counted from
   */
  MarkFit(Body body, List<Sighting> sightings, Known known, Vector3D viewer, Frame attitude) {
    this.body = body;
    this.sightings = sightings;
    this.known = known;
    this.viewer = viewer;
    this.attitude = attitude;
    boolean both =
        sightings.stream().map(Sighting::side).filter(s -> s != Side.MIDLINE).distinct().count()
            > 1;
    coordinates = both ? Coordinates.eachSide(body) : Coordinates.alikeAnywhere(body);
  }

  /**
   * The best of several starts that the sightings suggest, the upper arms more or less raised
   * sideways.
   *
   * @param turned how far about the vertical from square on, radians
   * @throws Refused if none leads to a pose that meets what must hold
   */
  Answer best(double turned) {
    Answer best = null;
    Answer missed = null;
    double least = Double.POSITIVE_INFINITY;
    for (double out : ARMS_OUT) {
      Statements rough = said();
      new Start(body, sightings, attitude).say(rough, turned, out);
      Answer answer = near(new PoseSolver(rough).solve());
      if (!answer.met()) {
        missed = missed == null || answer.worst() < missed.worst() ? answer : missed;
      } else if (cost(answer) < least) {
        least = cost(answer);
        best = answer;
      }
    }
    return best == null ? refused(missed) : best;
  }

  /** From a neighbour's answer, as of the instant before. */
  Answer refined(Answer before) {
    Answer answer = near(before);
    return answer.met() ? answer : refused(answer);
  }

  /**
   * The pose nearest to given values of which what must hold holds exactly; the marks count no
   * more.
   *
   * @param values one a coordinate
   * @param before an answer near by
   */
  Answer kept(double[] values, Answer before) {
    Statements said = said();
    said.keepTo(values, 1);
    Answer answer = new PoseSolver(said).solveFrom(before);
    return answer.met() ? answer : refused(answer);
  }

  private Answer near(Answer other) {
    return new PoseSolver(said()).solveFrom(other);
  }

  private Answer refused(Answer answer) {
    throw new Refused(
        "The marks cannot be met by a lifter who "
            + (known.standing() ? "stands with both feet flat" : "is built like this")
            + ": "
            + answer.sentence()
            + (known.standing() ? ". If the feet do not stand flat, add .offTheFloor()." : "."));
  }

  private Statements said() {
    Statements said = new Statements(body, coordinates, attitude);
    Usual.say(said);
    new Start(body, sightings, attitude).place(said);
    List<Side> sides =
        coordinates.bothAlike() ? List.of(Side.RIGHT) : List.of(Side.RIGHT, Side.LEFT);
    Feature right = Features.direction(body, "pelvis", Vector3D.PLUS_K);
    if (known.toTheRight().isPresent() && coordinates.bothAlike()) {
      said.points("the pelvis", "square to the lift", right, known.toTheRight().get());
    } else if (coordinates.bothAlike()) {
      said.leans("the hips", "level", right, Vector3D.PLUS_J, 0);
    } else {
      said.rather(right, Vector3D.PLUS_J, 0, WEIGHT * LEVEL_HIPS);
    }
    if (known.standing()) {
      stand(said, sides);
    }
    Usual.grip(said, known);
    for (Known.Pair pair : known.nearer()) {
      said.beyond(
          "the " + pair.oneSide().of(pair.one().word()),
          "the " + pair.otherSide().of(pair.other().word()),
          pair.one().on(body, pair.oneSide()),
          pair.other().on(body, pair.otherSide()),
          viewer,
          0);
    }
    for (Sighting at : sightings) {
      Feature point = at.landmark().on(body, at.side());
      for (int i = 0; i < at.normals().size(); i++) {
        said.rather(
            point, at.normals().get(i), at.offsets().get(i), WEIGHT / at.landmark().doubt());
      }
    }
    return said;
  }

  private void stand(Statements said, List<Side> sides) {
    for (Side side : sides) {
      String foot = "the " + side.of("foot");
      Feature sole = Features.direction(body, side.of("foot"), Vector3D.PLUS_J);
      said.leans(foot, "the ground", sole, Vector3D.PLUS_I, 0);
      said.leans(foot, "the ground", sole, Vector3D.PLUS_K, 0);
      String ball = coordinates.bothAlike() ? "ball of the foot" : side.of("ball of the foot");
      said.exactly(ball + " flexion", 0);
      if (known.planted().containsKey(side)) {
        said.at(
            "the " + side.of("ankle"),
            "its place",
            Features.joint(body, JointId.ANKLE.on(side)),
            known.planted().get(side));
      }
    }
    if (sides.size() > 1 && known.planted().isEmpty()) {
      said.together(
          "the right ankle",
          "the left one",
          Features.joint(body, "right ankle"),
          Features.joint(body, "left ankle"),
          Vector3D.ZERO,
          List.of(Vector3D.PLUS_J));
    }
    if (known.planted().isEmpty()) {
      Usual.stance(said, known, sides);
    }
  }

  /** The sum that was made least, as far as marks and angles go: to compare two answers. */
  double cost(Answer answer) {
    Placement where = answer.pose().placed();
    double sum = 0;
    for (Sighting at : sightings) {
      double miss = at.miss(place(at, where)) / at.landmark().doubt();
      sum += miss * miss;
    }
    sum += said().unusual(answer.values()) / (WEIGHT * WEIGHT);
    return known.standing() && known.planted().isEmpty()
        ? sum + Usual.unusualStance(body, known, where)
        : sum;
  }

  /** Where the fitted body has a landmark. */
  Vector3D place(Sighting at, Placement where) {
    Feature.Point point = at.landmark().on(body, at.side());
    return where.toWorld(point.segment(), point.local());
  }

  List<Sighting> sightings() {
    return sightings;
  }

  /** The angles at the end of their range. */
  List<String> ends(Answer answer) {
    double[] x = answer.values();
    return java.util.stream.IntStream.range(0, coordinates.count())
        .filter(i -> coordinates.low(i) < coordinates.high(i))
        .filter(i -> x[i] <= coordinates.low(i) + 1e-9 || x[i] >= coordinates.high(i) - 1e-9)
        .mapToObj(
            i ->
                String.format(
                    java.util.Locale.ROOT, "%s (%.0f°)", coordinates.name(i), Math.toDegrees(x[i])))
        .toList();
  }
}
