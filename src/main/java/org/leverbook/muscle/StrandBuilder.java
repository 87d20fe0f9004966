package org.leverbook.muscle;

import java.util.ArrayList;
import java.util.List;
import org.leverbook.body.SegmentTree;
import org.leverbook.body.Side;
import org.leverbook.body.Variation;

/** Puts the tables onto the joints of a tree. */
final class StrandBuilder {

  private final SegmentTree tree;
  private final Scaling scaling;
  private final Variation varied;

  StrandBuilder(SegmentTree tree, Scaling scaling, Variation varied) {
    this.tree = tree;
    this.scaling = scaling;
    this.varied = varied;
  }

  List<Strand> strands() {
    List<Strand> strands = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      for (MuscleRow muscle : MuscleTable.SHIPPED.all()) {
        double force =
            scaling.maxForce(muscle) * varied.factor(Variation.Trait.PULL, muscle.group());
        List<Crossing> crossings = crossings(muscle, side, force);
        if (!crossings.isEmpty()) {
          strands.add(new Strand(muscle, side, force, crossings));
        }
      }
    }
    return List.copyOf(strands);
  }

  private List<Crossing> crossings(MuscleRow muscle, Side side, double force) {
    List<ArmSeries> series = ArmTable.SHIPPED.of(muscle.key());
    double scale = scaling.arm() * varied.factor(Variation.Trait.ARM, muscle.group());
    SpineCrossings spine = new SpineCrossings(tree, scale);
    List<Crossing> crossings = new ArrayList<>(spine.of(muscle, side, series, force));
    for (ArmSeries one : series) {
      if (!one.joint().startsWith("spine_") && !one.joint().equals("shoulder")) {
        AxisWords.of(one).ifPresent(axis -> crossings.add(limb(one, axis, side, scale)));
      }
    }
    if (ShoulderArms.crosses(series)) {
      ShoulderArms arms = new ShoulderArms(series, scale);
      int[] angles = new ShoulderFrame(tree, side).shoulder();
      for (int k = 0; k < 3; k++) {
        crossings.add(new ShoulderCrossing(tree, side, angles[k], k, arms));
      }
    }
    return crossings;
  }

  private Crossing limb(ArmSeries series, AxisWords.Axis axis, Side side, double scale) {
    int index = tree.angleOf(axis.joint().on(side), axis.axis());
    ArmCurve curve = series.curve().times(axis.sign() * scale);
    return PlainCrossing.of(index, 1, curve, AxisWords.coordinate(series, tree, side), series);
  }
}
