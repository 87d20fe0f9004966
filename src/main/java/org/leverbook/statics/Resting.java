package org.leverbook.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.SegmentTree;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.load.SharedPush;
import org.leverbook.pose.Placement;
import org.leverbook.statics.ContactProblem.Press;
import org.leverbook.statics.ContactProblem.Touch;
import org.leverbook.support.Support;

/**
 * What the supports of a setting give.
 *
 * <p>One principle for all: the least effort within push-only and friction limits ({@link
 * ContactProblem}). So a squatter's feet press a little outward, which brings the floor's push
 * nearer to the hips; force plates find the same, more in a wide stance (Sinclair et al. 2022,
 * Sports 10, 136, abstract). Ground that alone must carry a weight which falls beside it is told as
 * tipping first.
 *
 * @param forces loads first, then supports
 * @param holding whether they hold
 * @param balance on level ground, where something stands on it
 * @param touches every contact, of supports and of what is shared out
 * @param ground what of the supports is level ground, where something is
 */
record Resting(
    List<Force> forces,
    Holding holding,
    Optional<Balance> balance,
    List<Touch> touches,
    Optional<Ground> ground) {

  /** Avoiding a pad costs so much more than any effort, where it cannot be left out. */
  private static final double AVOID = 1e3;

  /**
   * Whether a support touches something distal to a joint.
   *
   * @param tree the body's
   * @param distal index of the segment that hangs on the joint
   */
  boolean touchesBeyond(SegmentTree tree, int distal) {
    return touches.stream().anyMatch(t -> tree.hangsOn(t.contact().segment(), distal));
  }

  /** The support whose push is told as what it carries: the level ground under the feet. */
  String passedOn() {
    return ground.filter(Ground::feet).map(Ground::source).orElse("");
  }

  /** The work of one setting: loads and contacts are asked at once, what supports give later. */
  static final class Finder {

    private final Setting setting;
    private final Placement where;
    private final List<Force> given = new ArrayList<>();
    private final List<Touch> touches = new ArrayList<>();
    private final List<Press> presses = new ArrayList<>();
    private final List<Touch> all;
    private final NetLoads known;
    private final Vector3D force;
    private final Vector3D moment;
    private final Optional<Ground> ground;
    private final double unit;

    Finder(Setting setting, Placement where) {
      this.setting = setting;
      this.where = where;
      for (Load load : setting.loads()) {
        Optional<SharedPush> shared = load.shared(where);
        if (shared.isPresent()) {
          presses.add(Press.of(shared.get(), where));
        } else {
          given.addAll(load.forces(where));
        }
      }
      known = NetLoads.of(where, given, Gravity.VECTOR);
      force = known.force(0);
      Vector3D sum = Vector3D.ZERO;
      for (String source : known.sources()) {
        sum = sum.add(known.moment(source, 0, Vector3D.ZERO));
      }
      moment = sum;
      for (Support support : setting.supports()) {
        support
            .contacts(where)
            .forEach(c -> touches.add(new Touch(support.source(), support.leanedOn(), c)));
      }
      all = new ArrayList<>(touches);
      presses.forEach(press -> all.addAll(press.places()));
      ground = Ground.under(setting.body(), where, touches);
      unit = where.tree().mass() * Gravity.STANDARD;
    }

    Resting resting() {
      if (presses.isEmpty()
          && ground.isPresent()
          && ground.get().carriesAll()
          && force.getY() < 0) {
        Ground feet = ground.get();
        Balance balance = feet.against(force, moment);
        if (!balance.held()) {
          Holding tips = feet.tips(balance, InPlay.told(setting.loads(), given), -force.getY());
          return new Resting(given, tips, Optional.of(balance), touches, ground);
        }
      }
      return general();
    }

    private Resting general() {
      ContactProblem problem = problem(touches);
      NonNegative.Answer start = problem.possible();
      if (!start.held()) {
        Holding why =
            new Lack(where, touches, presses, unit, force, moment, setting.sides()).told();
        return new Resting(asGuessed(), why, Optional.empty(), all, ground);
      }
      List<Force> found = problem.forces(answer(problem, start), where);
      return held(found, ground.flatMap(g -> g.balance(found, unit)));
    }

    private double[] answer(ContactProblem problem, NonNegative.Answer start) {
      if (touches.stream().noneMatch(Touch::leanedOn)) {
        return problem.leastEffort(start.x(), where, known, 0);
      }
      double[] relaxed =
          setting.leaning() > 0 ? problem.leastEffort(start.x(), where, known, 0) : null;
      double[] away = setting.leaning() < 1 ? untouched(problem, start) : null;
      return between(away, relaxed, setting.leaning());
    }

    /** The loads where nothing balances: what is shared out stands where a coach would guess. */
    private List<Force> asGuessed() {
      return setting.loads().stream().flatMap(load -> load.forces(where).stream()).toList();
    }

    /** Without the pads where that can be, otherwise with as little of them as can be. */
    private double[] untouched(ContactProblem problem, NonNegative.Answer start) {
      List<Touch> others = touches.stream().filter(t -> !t.leanedOn()).toList();
      ContactProblem alone = problem(others);
      NonNegative.Answer possible = alone.possible();
      if (!possible.held()) {
        return problem.leastEffort(start.x(), where, known, AVOID);
      }
      return problem.spread(alone.leastEffort(possible.x(), where, known, 0));
    }

    /** Mixtures of two answers balance too, and stay within friction: those sets are convex. */
    private static double[] between(double[] away, double[] relaxed, double share) {
      if (away == null || relaxed == null) {
        return away == null ? relaxed : away;
      }
      double[] mixed = new double[away.length];
      for (int j = 0; j < mixed.length; j++) {
        mixed[j] = (1 - share) * away[j] + share * relaxed[j];
      }
      return mixed;
    }

    private ContactProblem problem(List<Touch> some) {
      return new ContactProblem(
          some, presses, unit, force, moment, setting.sides(), where.frame(0));
    }

    private Resting held(List<Force> found, Optional<Balance> balance) {
      List<Force> forces = new ArrayList<>(given);
      forces.addAll(found);
      return new Resting(List.copyOf(forces), Holding.FIRM, balance, all, ground);
    }
  }
}
