package org.leverbook.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Side;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.quantity.Refused;
import org.leverbook.solve.Answer;
import org.leverbook.solve.Feature;
import org.leverbook.solve.Features;
import org.leverbook.solve.PoseSolver;
import org.leverbook.solve.Statements;
import org.leverbook.statics.Fact;
import org.leverbook.statics.Notes;
import org.leverbook.statics.Position;

/**
 * The way of one lift from start to finish.
 *
 * <p>Start and finish are solved first. Between them the recipe's conditions hold as well, and what
 * they leave open keeps to the mixture of start and finish, so that the way is smooth. For the
 * balance everything counts that pulls: what the recipe has in hand or on the back it says itself;
 * of pulls that depend on the pose, and of all that the coach adds (a vest, a second pair of
 * weights, a partner), the pull is taken at the last pose and the pose solved again until it no
 * longer changes.
 */
final class Way {

  /** How strongly a pose between keeps to the mixture of start and finish. */
  private static final double KEEPS = 0.3;

  /** The shoulder girdle follows the arm; it does not make up for what legs or arms should do. */
  private static final double GIRDLE_KEEPS = 3;

  /** The share of the trunk's lean that the neck gives back: common practice, no source. */
  private static final double NECK_GIVES = 0.4;

  /** Lying down there is no looking ahead, radians; on the way there, ever less. */
  private static final double LYING = Math.toRadians(90);

  private static final double LOOKS_AHEAD = Math.toRadians(70);

  private static final int MOST_ROUNDS = 30;

  /** The balance is found when it moves less than this, metres. */
  private static final double STILL = 1e-8;

  private final Lift<?> lift;
  private volatile Answer start;
  private volatile Answer finish;

  Way(Lift<?> lift) {
    this.lift = lift;
  }

  Position at(double share, String name) {
    Posture posture;
    Answer answer;
    if (share == 0) {
      posture = said(0, List.of());
      answer = start(posture);
    } else if (share == 1) {
      posture = saidAtFinish();
      answer = finish(posture);
    } else {
      Answer from = startAnswer();
      Answer to = finishAnswer();
      posture = said(share, List.of(from.pose().placed(), to.pose().placed()));
      // Unknowns beyond the joints differ where the ends say "at least" of different things.
      double[] between = new double[Math.min(from.values().length, to.values().length)];
      for (int i = 0; i < between.length; i++) {
        between[i] = from.values()[i] + share * (to.values()[i] - from.values()[i]);
      }
      answer = solved(posture, between, share);
    }
    return position(posture, answer, lift.name() + ", " + name);
  }

  private Posture said(double share, List<Placement> ends) {
    Posture posture = new Posture(lift.setup(), share, lift.bothSidesAlike(), ends);
    lift.say(posture);
    lift.setup().more().forEach(posture::lifts);
    lift.setup().supports().forEach(posture::on);
    return posture;
  }

  private Posture saidAtFinish() {
    return said(1, List.of(startAnswer().pose().placed()));
  }

  /** How it starts. */
  Answer startAnswer() {
    return start == null ? start(said(0, List.of())) : start;
  }

  /** How it ends. */
  Answer finishAnswer() {
    return finish == null ? finish(saidAtFinish()) : finish;
  }

  private Answer start(Posture posture) {
    start = start == null ? solved(posture, null, 0) : start;
    return start;
  }

  private Answer finish(Posture posture) {
    finish = finish == null ? solved(posture, null, 1) : finish;
    return finish;
  }

  private Answer solved(Posture posture, double[] between, double share) {
    Statements said = posture.statements();
    if (between != null) {
      said.keepTo(between, KEEPS);
      for (String axis : List.of("flexion", "abduction", "rotation")) {
        for (String girdle : posture.names(JointId.SHOULDER_GIRDLE, axis)) {
          said.strength(girdle, GIRDLE_KEEPS);
        }
      }
    }
    Answer answer = null;
    PoseSolver solver = null;
    List<Force> pulls = List.of();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      if (answer == null || !pulls.isEmpty()) {
        balance(posture, pulls.isEmpty() ? List.of() : weights(pulls, answer.pose().placed()));
        solver = new PoseSolver(said);
      }
      if (answer != null) {
        answer = solver.solveOn(answer);
      } else {
        answer = between != null ? solver.solve() : first(solver, share);
      }
      if (!answer.met()) {
        throw new Refused(
            String.format(
                Locale.ROOT,
                "%s at %.0f %% of the way: %s. %s",
                capital(lift.name()),
                100 * share,
                answer.sentence(),
                lift.wayOut()));
      }
      List<Force> now =
          said.mindsBalance() ? uncounted(posture, answer.pose().placed()) : List.of();
      if ((round > 0 || between != null) && change(pulls, now) < STILL) {
        return answer;
      }
      pulls = now;
      if (round == 0 && between == null) {
        look(said, answer.pose().placed());
      }
    }
    return answer;
  }

  private static void balance(Posture posture, List<Features.Pulled> pulled) {
    for (Map.Entry<Vector3D, Double> e : posture.balance().entrySet()) {
      posture.statements().balanced(e.getKey(), e.getValue(), posture.carried(), pulled);
    }
    if (!pulled.isEmpty()) {
      posture.statements().wishedBalancesCount(pulled);
    }
  }

  private Answer first(PoseSolver solver, double share) {
    return Typical.of(lift, share == 1).map(solver::solveFrom).orElseGet(solver::solve);
  }

  /**
   * Eyes ahead: the neck gives back a part of the trunk's lean, as found in the first round, so
   * that the head's wish moves nothing below it.
   */
  private static void look(Statements said, Placement where) {
    Vector3D up = where.frame(where.tree().indexOf("T1")).y();
    double lean = Math.atan2(up.getX(), up.getY());
    double part = (LYING - Math.abs(lean)) / (LYING - LOOKS_AHEAD);
    double back = NECK_GIVES * lean * Math.max(0, Math.min(1, part));
    said.usually("neck flexion", -back, Posture.FIRM);
  }

  /** Pulls that the recipe has not counted: they depend on the pose, or the coach added them. */
  private List<Force> uncounted(Posture posture, Placement where) {
    List<Load> own = lift.setup().own(posture.loads());
    List<Load> added = lift.setup().more();
    return Stream.concat(own.stream().filter(load -> !load.deadWeight()), added.stream())
        .flatMap(load -> load.forces(where).stream())
        .toList();
  }

  /** How far the pulls moved, in parts of their size. */
  private static double change(List<Force> before, List<Force> now) {
    if (before.size() != now.size()) {
      return now.isEmpty() ? 0 : 1;
    }
    double change = 0;
    for (int i = 0; i < now.size(); i++) {
      double size = Math.max(1, now.get(i).force().getNorm());
      change =
          Math.max(change, now.get(i).force().subtract(before.get(i).force()).getNorm() / size);
    }
    return change;
  }

  private static List<Features.Pulled> weights(List<Force> pulls, Placement where) {
    return pulls.stream()
        .map(
            f ->
                new Features.Pulled(
                    f.force().scalarMultiply(1 / Gravity.STANDARD),
                    new Feature.Point(f.segment(), where.toLocal(f.segment(), f.point()))))
        .toList();
  }

  private Position position(Posture posture, Answer answer, String name) {
    Pose pose = answer.pose();
    List<Fact> facts = new ArrayList<>();
    for (Map.Entry<Setting, Double> e : posture.used().entrySet()) {
      Setting setting = e.getKey();
      facts.add(new Fact(setting.word(), setting.shown(e.getValue()), setting.unit()));
    }
    for (List<Fact> more : List.of(angles(pose), lift.facts(posture, pose))) {
      // What was asked for need not be told again as found.
      more.stream()
          .filter(f -> facts.stream().noneMatch(g -> g.name().equals(f.name())))
          .toList()
          .forEach(facts::add);
    }
    List<String> notes = new ArrayList<>(posture.notes());
    Notes own = lift.notes(posture, pose);
    notes.addAll(own.all());
    notes.add("Usual posture: " + lift.source() + ".");
    return Position.of(
            name,
            lift.body(),
            pose,
            List.copyOf(posture.loads()),
            posture.supports(posture.ends().isEmpty() ? pose.placed() : posture.ends().get(0)),
            facts,
            new Notes(notes, own.ofLoads()))
        .seenFrom(lift.view());
  }

  private static List<Fact> angles(Pose pose) {
    List<Fact> facts = new ArrayList<>();
    Placement where = pose.placed();
    Vector3D hip = where.centre(JointId.HIP.on(Side.RIGHT));
    Vector3D shoulder = where.centre(JointId.SHOULDER.on(Side.RIGHT));
    facts.add(degrees("knee bend", pose.angle(JointId.KNEE, Side.RIGHT, "flexion")));
    facts.add(degrees("hip flexion", pose.angle(JointId.HIP, Side.RIGHT, "flexion")));
    facts.add(degrees("ankle flexion", pose.angle(JointId.ANKLE, Side.RIGHT, "flexion")));
    facts.add(
        degrees(
            "trunk lean", Math.atan2(shoulder.getX() - hip.getX(), shoulder.getY() - hip.getY())));
    facts.add(degrees("spine flexion", spineFlexion(pose)));
    facts.add(degrees("elbow bend", pose.angle(JointId.ELBOW, Side.RIGHT, "flexion")));
    return facts;
  }

  /** How far the trunk is bent in itself; the neck is not counted. */
  static double spineFlexion(Pose pose) {
    return JointId.spine().stream()
        .filter(level -> Body.flexionShare(level) > 0)
        .mapToDouble(level -> pose.angle(level, Side.MIDLINE, "flexion"))
        .sum();
  }

  private static Fact degrees(String name, double radians) {
    return new Fact(name, Math.toDegrees(radians), "°");
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
