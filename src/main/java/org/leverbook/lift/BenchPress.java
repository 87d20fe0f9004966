package org.leverbook.lift;

import java.util.List;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.solve.Feature;

/** A bench press, flat or inclined, from straight arms down to the chest. */
public final class BenchPress extends Lift<BenchPress>
    implements With.GripWidth<BenchPress>,
        With.BenchAngle<BenchPress>,
        Can.ElbowsOut<BenchPress>,
        With.HoldsBar<BenchPress> {

  private BenchPress(Setup setup) {
    super(setup);
  }

  /**
   * A bench press of this person.
   *
   * @param lifter who
   * @return the press, on a flat bench
   */
  public static BenchPress of(Person lifter) {
    return new BenchPress(nothingSaid(lifter));
  }

  @Override
  BenchPress changed(Setup changed) {
    return new BenchPress(changed);
  }

  @Override
  public String name() {
    return "bench press";
  }

  @Override
  public String purpose() {
    return "Press a bar from the chest lying on a bench: chest, front of the shoulders, triceps.";
  }

  @Override
  public String source() {
    return "common practice, no source";
  }

  @Override
  void say(Posture p) {
    double tilt = p.angle(Setting.BENCH_ANGLE, 0);
    Rests.supine(p, tilt);
    p.spine(-8);
    Weights.bar(p, 0.5, Site.HAND);
    double width = p.value(Setting.GRIP_WIDTH, 3.4 * p.links().shoulderHalfWidth());
    Arms.grasp(p, width, Grip.OVERHAND);
    double out = p.angle(Setting.ELBOWS_OUT, 60);
    p.usually(JointId.SHOULDER, "flexion", p.between(90, 0), Posture.EASY);
    p.usually(JointId.SHOULDER, "abduction", p.between(20, 55), Posture.EASY);
    p.usually(JointId.SHOULDER, "rotation", p.between(30, 0), Posture.EASY);
    p.usually(JointId.ELBOW, "flexion", p.between(0, 100), Posture.EASY);
    double high = Rests.shareOfUpperChest(tilt);
    Feature low = p.place(Site.LOWER_CHEST, Side.RIGHT);
    Feature upper = p.place(Site.UPPER_CHEST, Side.RIGHT);
    Feature shoulder = p.joint(JointId.SHOULDER, Side.RIGHT);
    Feature hand = p.place(Site.HAND, Side.RIGHT);
    List<Vector3D> seen = List.of(Vector3D.PLUS_I, Vector3D.PLUS_J);
    if (p.isStart()) {
      Hands.straight(p);
      p.statements()
          .together(
              "the bar", "over the shoulders", hand, shoulder, Vector3D.ZERO, seen.subList(0, 1));
    } else if (p.isFinish()) {
      Hands.elbowsOut(p, out, 0.5);
      Hands.forearmUpright(p, 1);
      Vector3D over = new Vector3D(Math.sin(tilt), Math.cos(tilt), 0);
      p.statements()
          .between(
              "the bar", "the chest", hand, low, upper, high, over.scalarMultiply(0.014), seen);
    }
    Hands.straightWay(p);
    Arms.forearmsEvenly(p, 2);
  }
}
