package org.leverbook.lever;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.pose.Placement;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.JointMoment;

/**
 * How hard muscles pull to hold a joint against the resistance, about its main axis.
 *
 * <p>Alone: F = M / r. Shared: the pulls with the least sum of (F/Fmax)², each between 0 and Fmax,
 * with sum r F = M. For muscles below their limit this means F = k r Fmax² with one k for all:
 * force goes to the strong and to those with long arms; a muscle that would help the resistance
 * stays slack. k rises with M; it is found by walking through the values of k at which one muscle
 * after another reaches its limit, k = 1 / (r Fmax), between which the sum is linear.
 *
 * <p>Symbols: M size of the moment (N·m), r arm (m), F force (N), Fmax greatest force (N). The
 * squared criterion is a convention of the field, not a law of the body: real people co-contract.
 */
public final class Opposition {

  /** A moment below this is rounding, newton metres: it asks no pull of any muscle. */
  private static final double NOTHING = 1e-9;

  private Opposition() {}

  /**
   * Pulls that share a moment.
   *
   * @param pulls one for each muscle asked, in their order; slack ones with zero force
   * @param missing what they cannot hold with all their strength, newton metres; zero where they
   *     hold it
   */
  public record Shared(List<MusclePull> pulls, double missing) {

    /** Keeps its own copy of the list. */
    public Shared {
      pulls = List.copyOf(pulls);
    }
  }

  /**
   * One muscle holds the joint alone.
   *
   * @param moment what the resistance asks of the joint
   * @param where where the segments are
   * @param line the muscle
   * @return its pull
   * @throws Refused if it does not cross the joint, has no arm there, or would have to push
   */
  public static MusclePull alone(JointMoment moment, Placement where, LineOfPull line) {
    int distal = where.tree().distalOf(moment.joint().fullName());
    double force = line.on(where, distal).sizeAgainst(moment);
    if (moment.size() < NOTHING) {
      return new MusclePull(line, 0);
    }
    if (force < 0) {
      throw new Refused(
          String.format(
              Locale.ROOT,
              "The %s would have to push with %.0f N, and a muscle can only pull: the resistance"
                  + " tends to %s the %s, which the %s oppose. Ask one of them.",
              line.name(),
              -force,
              moment.tendsTo(),
              moment.joint().fullName(),
              moment.opposedBy()));
    }
    return new MusclePull(line, force);
  }

  /**
   * Several muscles hold the joint together.
   *
   * @param moment what the resistance asks of the joint
   * @param where where the segments are
   * @param muscles all that may pull
   * @return their pulls, and what they cannot hold
   * @throws Refused if one of them does not cross the joint
   */
  public static Shared shared(JointMoment moment, Placement where, List<Muscle> muscles) {
    int distal = where.tree().distalOf(moment.joint().fullName());
    Vector3D axis = moment.axes().get(moment.main()).direction();
    double against = moment.signed() > 0 ? -1 : 1;
    double[] arms = new double[muscles.size()];
    double strongest = 0;
    for (int i = 0; i < arms.length; i++) {
      double arm = muscles.get(i).line().on(where, distal).arm(moment.centre(), axis);
      arms[i] = Math.max(0, against * arm);
      strongest += arms[i] * muscles.get(i).maxForce();
    }
    double wanted = Math.min(moment.size(), strongest);
    double factor = factor(muscles, arms, wanted);
    List<MusclePull> pulls = new ArrayList<>();
    for (int i = 0; i < arms.length; i++) {
      Muscle muscle = muscles.get(i);
      pulls.add(new MusclePull(muscle.line(), pull(muscle, arms[i], factor)));
    }
    return new Shared(pulls, moment.size() - wanted);
  }

  private static double pull(Muscle muscle, double arm, double factor) {
    double most = muscle.maxForce();
    return arm == 0 ? 0 : Math.min(most, factor * arm * most * most);
  }

  private static double factor(List<Muscle> muscles, double[] arms, double wanted) {
    List<Double> limits = new ArrayList<>();
    for (int i = 0; i < arms.length; i++) {
      if (arms[i] > 0) {
        limits.add(1 / (arms[i] * muscles.get(i).maxForce()));
      }
    }
    limits.sort(Double::compare);
    double below = 0;
    double held = 0;
    for (double limit : limits) {
      double sum = 0;
      for (int i = 0; i < arms.length; i++) {
        sum += arms[i] * pull(muscles.get(i), arms[i], limit);
      }
      if (sum >= wanted) {
        return below + (limit - below) * (wanted - held) / (sum - held);
      }
      below = limit;
      held = sum;
    }
    return below;
  }
}
