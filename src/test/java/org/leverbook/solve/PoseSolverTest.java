package org.leverbook.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.leverbook.body.Body;
import org.leverbook.body.JointId;
import org.leverbook.body.Person;
import org.leverbook.body.Sex;
import org.leverbook.body.Side;
import org.leverbook.body.Site;
import org.leverbook.pose.Frame;
import org.leverbook.pose.Ranges;
import org.leverbook.quantity.Units;

class PoseSolverTest {

  private final Body body = Person.of(Sex.MALE, Units.kg(85), Units.cm(178)).body();

  /** A deadlift's start, said condition by condition. */
  static Statements hinge(Body body, double hipHeight) {
    Coordinates c = Coordinates.alike(body);
    Statements s = new Statements(body, c, Frame.WORLD);
    double ankleBack = -0.25 * body.links().footLength();
    Vector3D ankle = new Vector3D(ankleBack, body.links().footHeight(), 0.12);
    s.usually("pelvis up", hipHeight, 0.01).usually("pelvis lean", 1, 0.01);
    s.usually("knee flexion", 1.2, 0.05).usually("hip flexion", 1.8, 0.05);
    s.usually("low back flexion", 0, 1).usually("upper back flexion", 0, 1);
    s.usually("neck flexion", 0, 1).usually("wrist flexion", 0, 1).usually("wrist abduction", 0, 1);
    s.usually("forearm rotation", 2.6, 0.1).usually("shoulder flexion", 0.8, 0.05);
    s.usually("ball of the foot flexion", 0, 1).exactly("ball of the foot flexion", 0);
    s.exactly("shoulder girdle rotation", 0).exactly("shoulder girdle abduction", 0);
    s.exactly("shoulder girdle flexion", 0).exactly("elbow flexion", 0);
    s.along(
        "the hips",
        "their height",
        Features.joint(body, "right hip"),
        new Vector3D(0, hipHeight, 0),
        List.of(Vector3D.PLUS_J));
    s.at("the right ankle", "its place", Features.joint(body, "right ankle"), ankle);
    s.points(
        "the right foot",
        "flat",
        Features.direction(body, "right foot", Vector3D.PLUS_J),
        Vector3D.PLUS_J);
    s.points(
        "the right foot",
        "ahead",
        Features.direction(body, "right foot", Vector3D.PLUS_I),
        Vector3D.PLUS_I);
    s.at(
        "the right hand",
        "the bar",
        Features.point(body.place(Site.HAND, Side.RIGHT)),
        new Vector3D(0, 0.225, 0.24));
    s.points(
        "the right hand",
        "the bar's line",
        Features.direction(body, "right hand", Vector3D.PLUS_K),
        Vector3D.MINUS_K);
    return s;
  }

  @Test
  void meetsAllConditionsOfAHinge() {
    Answer answer = new PoseSolver(hinge(body, 0.58)).solve();
    assertThat(answer.met()).as(answer.sentence()).isTrue();
    var where = answer.pose().placed();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      Vector3D hand = where.at(body.place(Site.HAND, side));
      assertThat(hand.distance(new Vector3D(0, 0.225, 0.24 * side.sign()))).isLessThan(1e-6);
      assertThat(where.centre(JointId.HIP.on(side)).getY()).isCloseTo(0.58, within(1e-6));
    }
    assertThat(Ranges.exceeded(answer.pose())).isEmpty();
  }

  @Test
  void aNeighboursAnswerAsStartLeadsToTheSamePose() {
    Answer start = new PoseSolver(hinge(body, 0.58)).solve();
    PoseSolver next = new PoseSolver(hinge(body, 0.585));
    Answer warm = next.solveFrom(start);
    Answer cold = next.solve();
    assertThat(warm.steps()).isLessThan(cold.steps());
    for (int i = 0; i < cold.values().length; i++) {
      assertThat(warm.values()[i]).isCloseTo(cold.values()[i], within(1e-5));
    }
  }

  @Test
  void whatCannotBeReachedIsToldWithItsAmountAndNoRangeIsBlamedForShortLegs() {
    Answer high = new PoseSolver(hinge(body, 1.2)).solve();
    assertThat(high.met()).isFalse();
    // Straight legs are too short for that; no joint's range is in the way.
    assertThat(high.sentence()).contains("cm").doesNotContain("At the end of their range");
  }

  @Test
  void slopesAreThoseOfTheResiduals() {
    PoseProblem p = new PoseProblem(hinge(body, 0.58));
    Random random = new Random(3);
    double[] x = new double[p.unknowns];
    for (int i = 0; i < x.length; i++) {
      x[i] = random.nextGaussian() * 0.5;
    }
    double[] r = new double[p.rows];
    double[] up = new double[p.rows];
    double[] down = new double[p.rows];
    p.residuals(x, r);
    double[] j = slopes(p);
    for (int k = 0; k < x.length; k++) {
      double[] y = x.clone();
      y[k] += 1e-6;
      p.residuals(y, up);
      y[k] -= 2e-6;
      p.residuals(y, down);
      for (int row = 0; row < p.rows; row++) {
        assertThat(j[row * p.unknowns + k]).isCloseTo((up[row] - down[row]) / 2e-6, within(1e-8));
      }
    }
  }

  @Test
  void curvesAreThoseOfTheSlopes() {
    Statements said = hinge(body, 0.58);
    said.balanced(
        Vector3D.PLUS_I,
        0,
        List.of(new Features.Carried(20, Features.joint(body, "right hip"))),
        List.of(new Features.Pulled(new Vector3D(3, 4, 5), Features.joint(body, "right elbow"))));
    said.product(
        "a",
        "b",
        Features.direction(body, "right hand", Vector3D.PLUS_K),
        new Feature.Way(Features.joint(body, "right hip"), Features.joint(body, "right elbow")),
        0.2);
    PoseProblem p = new PoseProblem(said);
    Random random = new Random(4);
    double[] x = random.doubles(p.unknowns, -1, 1).toArray();
    double[] pulls = random.doubles(p.rows, -1, 1).toArray();
    double[] r = new double[p.rows];
    double[] matrix = new double[p.unknowns * p.unknowns];
    p.residuals(x, r);
    p.slopes();
    p.curve(pulls, matrix);
    for (int k = 0; k < x.length; k++) {
      double[] y = x.clone();
      y[k] += 1e-6;
      p.residuals(y, r);
      double[] up = slopes(p);
      y[k] -= 2e-6;
      p.residuals(y, r);
      double[] down = slopes(p);
      for (int l = 0; l <= k; l++) {
        double expected = 0;
        for (int row = 0; row < p.rows; row++) {
          int at = row * p.unknowns + l;
          expected += pulls[row] * (up[at] - down[at]) / 2e-6;
        }
        assertThat(matrix[k * p.unknowns + l]).isCloseTo(expected, within(1e-7));
      }
    }
  }

  /** All slopes row by row, zeros too. */
  private static double[] slopes(PoseProblem p) {
    p.slopes();
    double[] all = new double[p.rows * p.unknowns];
    for (int r = 0; r < p.rows; r++) {
      for (int k = 0; k < p.flat[r].columns.length; k++) {
        all[r * p.unknowns + p.flat[r].columns[k]] = p.flat[r].slopes[k];
      }
    }
    return all;
  }
}
