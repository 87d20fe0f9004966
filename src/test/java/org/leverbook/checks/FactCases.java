package org.leverbook.checks;

import static org.leverbook.quantity.Units.cm;
import static org.leverbook.quantity.Units.kg;
import static org.leverbook.quantity.Units.mm;
import static org.leverbook.quantity.Units.newton;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.data.DataTable;
import org.leverbook.load.Band;
import org.leverbook.load.Barbell;
import org.leverbook.load.Chains;
import org.leverbook.load.Force;
import org.leverbook.load.Gravity;
import org.leverbook.load.Load;
import org.leverbook.load.PivotingBar;
import org.leverbook.pose.Placement;
import org.leverbook.pose.Pose;
import org.leverbook.statics.JointMoment;
import org.leverbook.statics.NetLoads;

/**
 * Section D of {@code checks/cases.csv} besides its pulleys: bars, plates and benches by their
 * rules, bands and chains by their laws.
 *
 * <p>Rows that only repeat a rule's number show that the shipped table holds it; where a default of
 * a load uses the number, the answer is taken from that load.
 */
final class FactCases {

  private static final DataTable RULES = DataTable.read("equipment/bars_and_plates.csv");

  private static final List<String> READ_FROM_THE_TABLE =
      List.of(
          "D01c", "D01d", "D01f", "D03", "D04a", "D04b", "D04c", "D04d", "D04e", "D04f", "D04g",
          "D04i", "D04j", "D04k", "D04l", "D04m", "D07a", "D07b", "D07c", "D07d", "D07e", "D07f");

  private static final Body BODY = Person.of(Sex.MALE, kg(80), cm(178)).body();

  private FactCases() {}

  static Map<String, DoubleSupplier> rows() {
    Map<String, DoubleSupplier> rows = new LinkedHashMap<>();
    READ_FROM_THE_TABLE.forEach(id -> rows.put(id, () -> rule(id)));
    PivotingBar usual = PivotingBar.of(Vector3D.ZERO, kg(0));
    rows.put("D01a", usual::bar);
    rows.put("D01b", usual::length);
    rows.put("D01e", () -> 2 * Barbell.GRIP_RADIUS);
    rows.put("D01g", () -> rule("D01b") - rule("D01c") - 2 * rule("D01d"));
    rows.put("D04h", FactCases::barWithCollars);
    Barbell bar = Barbell.of(kg(100));
    rows.put("D05a", () -> 2 * bar.plateRadius());
    rows.put("D05b", bar::plateRadius);
    rows.put("D05c", () -> bar.plateRadius() - Barbell.GRIP_RADIUS);
    rows.put("D05d", () -> bar.plateRadius() - rule("D04e") / 2);
    rows.put("D06a", () -> hangsOnTheHands(barWithCollars() + 2 * 3 * 25) / Gravity.STANDARD);
    rows.put("D06b", () -> hangsOnTheHands(rule("D01a") + 2 * (20 + 10)) / Gravity.STANDARD);
    rows.put("D06c", () -> hangsOnTheHands(rule("D01a") + 2 * (20 + 10)));
    rows.put("D12c", FactCases::bandIsLinear);
    rows.put("D12d", FactCases::bandTorqueRisesThenFalls);
    rows.put("D14a", () -> Chains.ofSteel(mm(8), cm(150)).perMetre());
    rows.put("D14b", () -> Chains.ofSteel(mm(10), cm(150)).perMetre());
    rows.put("D14c", () -> Chains.ofSteel(mm(13), cm(150)).perMetre());
    rows.put("D14d", () -> Chains.ofSteel(mm(16), cm(150)).perMetre());
    rows.put("D14e", FactCases::chainsAreLinear);
    return rows;
  }

  private static double rule(String id) {
    return RULES.only(id, row -> row.is("id", id)).number("value");
  }

  private static double barWithCollars() {
    return rule("D01a") + 2 * rule("D03");
  }

  /** Newtons that both hands of somebody who stands together carry of a bar so heavy. */
  private static double hangsOnTheHands(double kilograms) {
    return down(Barbell.of(kg(kilograms)), Pose.neutral(BODY.tree()).placed());
  }

  private static double down(Load load, Placement where) {
    return -load.forces(where).stream().map(Force::force).mapToDouble(Vector3D::getY).sum();
  }

  /** A standing lifter whose straight right arm is so far out to the side. */
  private static Placement armOut(double degrees) {
    return Pose.neutral(BODY.tree())
        .with(JointId.SHOULDER.on(Side.RIGHT), 0, Math.toRadians(degrees), 0)
        .placed();
  }

  /** Fixed beside the right foot, just slack with the arm 20 degrees out, then pulling 100 N. */
  private static Band tubing() {
    double out = armOut(0).centre("right grip").getZ();
    Vector3D anchor = new Vector3D(0, 0.02, out);
    double slack = anchor.distance(armOut(20).centre("right grip"));
    Band band =
        Band.of(anchor, cm(100 * slack), newton(100), cm(200 * slack))
            .heldBy(Site.HAND, Side.RIGHT);
    return band;
  }

  /**
   * 1 where tension over the range of 30 to 150 degrees follows a straight line in stretch: each
   * newton per metre the same to a hundredth.
   */
  private static double bandIsLinear() {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (double degrees = 30; degrees <= 150; degrees += 5) {
      Placement where = armOut(degrees);
      double pull = pull(where).getNorm();
      double rest = tubing().restLength();
      double stretch = tubing().anchor().distance(where.centre("right grip")) - rest;
      least = Math.min(least, pull / stretch);
      most = Math.max(most, pull / stretch);
    }
    return most / least < 1.01 ? 1 : 0;
  }

  private static Vector3D pull(Placement where) {
    return tubing().forces(where).stream()
        .map(Force::force)
        .reduce(Vector3D.ZERO, (sum, force) -> sum.add(force));
  }

  /** 1 where the band's moment about the shoulder grows to one greatest value and then shrinks. */
  private static double bandTorqueRisesThenFalls() {
    double last = torque(30);
    boolean rose = false;
    boolean falling = false;
    for (double degrees = 35; degrees <= 150; degrees += 5) {
      double now = torque(degrees);
      if (now > last && falling) {
        return 0;
      }
      rose |= now > last;
      falling |= now < last;
      last = now;
    }
    return rose && falling ? 1 : 0;
  }

  private static double torque(double degrees) {
    Placement where = armOut(degrees);
    NetLoads net = NetLoads.of(where, tubing().forces(where), Vector3D.ZERO);
    return -JointMoment.of(net, "right shoulder", "band").about("abduction");
  }

  /** 1 where, on a standing lifter's bar, equal rises of the bar add equal weight of chain. */
  private static double chainsAreLinear() {
    Chains chains = Chains.ofSteel(mm(13), cm(300));
    DoubleUnaryOperator weight =
        height -> {
          Placement standing = Pose.neutral(BODY.tree()).placed();
          Vector3D up = new Vector3D(0, height - standing.centre("right grip").getY(), 0);
          Pose lifted =
              standing
                  .pose()
                  .rootAt(standing.pose().rootPlace().add(up), standing.pose().rootFrame());
          return down(chains, lifted.placed());
        };
    double metre = weight.applyAsDouble(1);
    for (double height = 0.1; height <= 2.5; height += 0.1) {
      // Rounding of the places: 1e-9 of the weight.
      if (Math.abs(weight.applyAsDouble(height) - height * metre) > 1e-9 * metre) {
        return 0;
      }
    }
    return metre > 0 ? 1 : 0;
  }
}
