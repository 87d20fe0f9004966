package org.leverbook.marks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
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

  /** Joints that tell two poses apart, and by how much, metres. */
  private static final List<Landmark> PLACES =
      List.of(Landmark.KNEE, Landmark.ANKLE, Landmark.SHOULDER, Landmark.ELBOW, Landmark.WRIST);

  private static final double APART = 0.05;

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
   * The best of the starts that the sightings suggest.
   *
   * @param turned how far about the vertical from square on, radians
   * @throws Refused if none leads to a pose that meets what must hold
   */
  Answer best(double turned) {
    return all(Guess.plain(turned)).get(0);
  }

  /**
   * All poses that every way of turning short parts out of the picture leads to.
   *
   * @param turns about the vertical from square on, radians
   * @return one or more, the likeliest first
   * @throws Refused if none meets what must hold
   */
  List<Answer> every(double... turns) {
    return all(start().guesses(turns));
  }

  private List<Answer> all(List<Guess> guesses) {
    List<Answer> found = new ArrayList<>();
    Answer missed = null;
    for (Guess guess : guesses) {
      Answer answer = near(begun(rough -> start().say(rough, guess)));
      if (answer.met()) {
        found.add(answer);
      } else if (missed == null || answer.worst() < missed.worst()) {
        missed = answer;
      }
    }
    if (found.isEmpty()) {
      return List.of(refused(missed));
    }
    found.sort(Comparator.comparingDouble(this::cost));
    List<Answer> distinct = new ArrayList<>();
    for (Answer answer : found) {
      if (distinct.stream().noneMatch(a -> alike(a, answer))) {
        distinct.add(answer);
      }
    }
    return distinct;
  }

  /** Whether two poses have all joints in about the same places, seen from the hip. */
  private boolean alike(Answer one, Answer other) {
    Placement a = one.pose().placed();
    Placement b = other.pose().placed();
    for (Landmark landmark : PLACES) {
      for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
        String name = side.of(landmark.word());
        Vector3D first = a.centre(name).subtract(a.centre("right hip"));
        Vector3D second = b.centre(name).subtract(b.centre("right hip"));
        if (first.distance(second) > APART) {
          return false;
        }
      }
    }
    return true;
  }

  private Start start() {
    return new Start(body, sightings, attitude, viewer);
  }

  /** From a neighbour's answer, as of the instant before. */
  Answer refined(Answer before) {
    Answer answer = near(before);
    return answer.met() ? answer : refused(answer);
  }

  /** From a neighbour's answer, with more said. */
  Answer refined(Consumer<Statements> more, Answer before) {
    Answer answer = held(more, before);
    return answer.met() ? answer : refused(answer);
  }

  /** The names of all coordinates. */
  List<String> names() {
    return IntStream.range(0, coordinates.count()).mapToObj(coordinates::name).toList();
  }

  int indexOf(String name) {
    return coordinates.indexOf(name);
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

  /** From any answer near by, whether what must hold is met or not. */
  Answer near(Answer other) {
    return new PoseSolver(said()).solveFrom(other);
  }

  /** From the usual posture, with more said. */
  Answer begun(Consumer<Statements> more) {
    Statements said = said();
    more.accept(said);
    return new PoseSolver(said).solve();
  }

  /** From an answer near by, with more said. */
  Answer held(Consumer<Statements> more, Answer other) {
    Statements said = said();
    more.accept(said);
    return new PoseSolver(said).solveFrom(other);
  }

  /** From the lifter to the camera, of unit length. */
  Vector3D viewer() {
    return viewer;
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
    start().place(said);
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

  /**
   * The sum that was made least: to compare two answers. Differences count as those of twice the
   * logarithm of a likelihood.
   */
  double cost(Answer answer) {
    return new PoseSolver(said()).unwished(answer.values()) / (WEIGHT * WEIGHT);
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
    return IntStream.range(0, coordinates.count())
        .filter(i -> coordinates.low(i) < coordinates.high(i))
        .filter(i -> x[i] <= coordinates.low(i) + 1e-9 || x[i] >= coordinates.high(i) - 1e-9)
        .mapToObj(
            i ->
                String.format(
                    java.util.Locale.ROOT, "%s (%.0f°)", coordinates.name(i), Math.toDegrees(x[i])))
        .toList();
  }
}
