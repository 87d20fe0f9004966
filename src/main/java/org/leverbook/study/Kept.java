package org.leverbook.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.leverbook.body.JointId;
import org.leverbook.quantity.Refused;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.Position;

/**
 * What is kept of a position when it is let go: the numbers at every joint, some 900 bytes, so that
 * a hundred thousand fit where a few thousand positions would.
 */
final class Kept {

  private static final List<JointId> JOINTS = List.of(JointId.values());
  private static final double CM = 100;

  /** The same few words in every row: kept once. */
  private static final Map<Told, Told> WORDS = new ConcurrentHashMap<>();

  /** What a joint's moment is, besides its size. */
  private record Told(String side, String tendsTo, String opposedBy) {}

  private final String reason;
  private final boolean found;
  private final double[] moments;
  private final double[] arms;
  private final Told[] told;
  private final Double balance;

  private Kept(Attempt tried, List<JointId> joints) {
    Position position = tried.position();
    reason = tried.reason();
    found = position != null;
    int all = tried.held() ? JOINTS.size() : 0;
    moments = new double[all];
    arms = new double[all];
    told = new Told[all];
    if (tried.held()) {
      for (JointId joint : joints) {
        JointMoment moment = position.moment(joint);
        moments[joint.ordinal()] = moment.signed();
        arms[joint.ordinal()] = moment.signedArm();
        told[joint.ordinal()] = told(moment);
      }
    }
    balance = tried.held() ? Tables.balance(position) : null;
  }

  static Kept of(Attempt tried) {
    return new Kept(tried, JOINTS);
  }

  /** Of these joints only, for a row that is written at once; the others must not be asked. */
  static Kept of(Attempt tried, List<JointId> joints) {
    return new Kept(tried, joints);
  }

  private static Told told(JointMoment moment) {
    Told own = new Told(moment.joint().side().word(), moment.tendsTo(), moment.opposedBy());
    return WORDS.computeIfAbsent(own, same -> same);
  }

  /** Whether there is a position, held or not. */
  boolean found() {
    return found;
  }

  boolean held() {
    return moments.length > 0;
  }

  String reason() {
    return reason;
  }

  /** Newton metres, positive where the resistance flexes. */
  double moment(JointId joint) {
    return known(moments)[joint.ordinal()];
  }

  /** Metres, with the sign of the moment. */
  double arm(JointId joint) {
    return known(arms)[joint.ordinal()];
  }

  /** Per cent of the foot from the heel; null where nothing stands on level ground. */
  Double balance() {
    return balance;
  }

  private double[] known(double[] numbers) {
    if (!held()) {
      throw new Refused("There is no moment here: " + reason);
    }
    return numbers;
  }

  /** The cells of a row of the wide form, after what is varied. */
  List<Object> wide(List<JointId> joints) {
    List<Object> cells = new ArrayList<>();
    joints.forEach(j -> cells.add(held() ? moment(j) : null));
    joints.forEach(j -> cells.add(held() ? CM * arm(j) : null));
    cells.add(balance);
    cells.add(reason);
    return cells;
  }

  /** The cells of a row of the tidy form, after what is varied. */
  List<Object> tidy(JointId joint) {
    List<Object> cells = new ArrayList<>();
    Told words = held() ? told[joint.ordinal()] : new Told("", "", "");
    cells.add(joint.word());
    cells.add(words.side());
    cells.add(held() ? moment(joint) : null);
    cells.add(held() ? CM * arm(joint) : null);
    cells.add(words.tendsTo());
    cells.add(words.opposedBy());
    cells.add(reason);
    return cells;
  }
}
