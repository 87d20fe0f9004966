package org.leverbook.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.Freedom;
import org.leverbook.body.JointId;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.body.Variation;
import org.leverbook.pose.Placement;

/** Lays strengths over the joints of one body. */
final class Abilities {

  private final SegmentTree tree;
  private final Map<String, Strength> strengths;
  private final Girdle girdle;
  private final Grip grip;
  private final Variation varied;
  private final List<Ability> all = new ArrayList<>();

  Abilities(Body body, Who who, Map<String, Strength> strengths) {
    tree = body.tree();
    this.strengths = strengths;
    girdle = new Girdle(who, tree);
    grip = new Grip(who);
    varied = body.person().variation();
  }

  List<Ability> all() {
    for (JointId joint : JointId.values()) {
      for (Side side : joint.sides()) {
        switch (joint) {
          case SHOULDER -> shoulder(side);
          case GRIP -> grip(side);
          default -> joint(joint, side);
        }
      }
    }
    return all;
  }

  /** Both directions of every axis that the joint turns about; bone and ligament hold the rest. */
  private void joint(JointId joint, Side side) {
    int segment = tree.distalOf(joint.on(side));
    List<Freedom> freedoms = tree.segment(segment).joint().freedoms();
    for (int k = 0; k < freedoms.size(); k++) {
      Freedom freedom = freedoms.get(k);
      if (freedom.high() > freedom.low()) {
        int angle = tree.firstAngle(segment) + k;
        for (int sign : new int[] {1, -1}) {
          String action = freedom.motion().verb(sign);
          all.add(
              joint == JointId.SHOULDER_GIRDLE
                  ? girdle(side, action, sign, angle)
                  : new Ability(
                      joint,
                      side,
                      action,
                      "N·m",
                      (loads, where) -> -sign * loads.about(angle),
                      most(joint, action, angle),
                      evidence(Capacity.group(joint) + " " + action)));
        }
      }
    }
  }

  private double factor(JointId joint) {
    return varied.factor(Variation.Trait.STRENGTH, joint.word());
  }

  private Ability girdle(Side side, String action, int sign, int angle) {
    return new Ability(
        JointId.SHOULDER_GIRDLE,
        side,
        action,
        "N·m",
        girdle.asked(sign, side, angle),
        girdle
            .most(action, side, angle)
            .map(most -> where -> factor(JointId.SHOULDER_GIRDLE) * most.applyAsDouble(where)),
        girdle.evidence(action));
  }

  private Optional<ToDoubleFunction<Placement>> most(JointId joint, String action, int angle) {
    Strength strength = strengths.get(Capacity.group(joint) + " " + action);
    if (strength == null) {
      return Optional.empty();
    }
    if (Capacity.group(joint).equals("trunk")) {
      return Optional.of(where -> strength.at(lumbarBend(where)));
    }
    return Optional.of(where -> strength.at(where.pose().angle(angle)));
  }

  private Evidence evidence(String name) {
    Strength strength = strengths.get(name);
    return strength == null ? Evidence.NONE : strength.evidence();
  }

  private double lumbarBend(Placement where) {
    double bend = 0;
    for (JointId level : TrunkStrengths.lumbar()) {
      bend += where.pose().angle(tree.angleOf(level.word(), "flexion"));
    }
    return bend;
  }

  private void shoulder(Side side) {
    ShoulderStrength s = new ShoulderStrength(strengths);
    Strength in = strengths.get("shoulder rotate inward");
    Strength out = strengths.get("shoulder rotate outward");
    shoulder(side, "raise", 1, RaisedArm::raise, s::raise, "flex", "abduct");
    shoulder(side, "lower", -1, RaisedArm::raise, s::lower, "extend", "adduct");
    shoulder(
        side, "adduct horizontally", 1, RaisedArm::across, s::across, "adduct horizontally", "");
    shoulder(
        side, "abduct horizontally", -1, RaisedArm::across, s::apart, "abduct horizontally", "");
    shoulder(side, "rotate inward", 1, RaisedArm::inward, arm -> in.at(0), "rotate inward", "");
    shoulder(side, "rotate outward", -1, RaisedArm::inward, arm -> out.at(0), "rotate outward", "");
  }

  private void shoulder(
      Side side,
      String action,
      int sign,
      java.util.function.Function<RaisedArm, Vector3D> axis,
      ToDoubleFunction<RaisedArm> most,
      String first,
      String second) {
    int segment = tree.distalOf(JointId.SHOULDER.on(side));
    Evidence evidence = evidence("shoulder " + first);
    if (!second.isEmpty()) {
      Evidence other = evidence("shoulder " + second);
      evidence =
          new Evidence(
              evidence.source() + "; " + other.source(),
              "from memory",
              "mixed by the plane the arm is in; " + evidence.note());
    }
    all.add(
        new Ability(
            JointId.SHOULDER,
            side,
            action,
            "N·m",
            (loads, where) ->
                -sign * loads.moment(segment).dotProduct(axis.apply(RaisedArm.of(where, side))),
            Optional.of(where -> most.applyAsDouble(RaisedArm.of(where, side))),
            evidence));
  }

  /** The fingers must hold what pulls the bar out of the hand, away from the forearm. */
  private void grip(Side side) {
    int fingers = tree.distalOf(JointId.GRIP.on(side));
    int hand = tree.distalOf(JointId.WRIST.on(side));
    all.add(
        new Ability(
            JointId.GRIP,
            side,
            "hold",
            "N",
            (loads, where) -> -loads.force(fingers).dotProduct(where.frame(hand).y()),
            Optional.of(where -> factor(JointId.GRIP) * grip.newtons()),
            grip.evidence()));
  }
}
